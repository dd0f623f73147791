package auricle.viewer.view;

import auricle.plan.PressTest;
import auricle.viewer.viewmodel.EarSheet;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.scene.layout.VBox;

/** A press on the rim at the bedside: where, how far, how hard. */
final class PressRows extends VBox {
  private final EarSheet sheet;
  private final FieldRow level;
  private final FieldRow depth;
  private final FieldRow force;

  PressRows(EarSheet sheet) {
    this.sheet = sheet;
    level = row("level_percent", "Level on the rim", "%", 1, this::level);
    depth = row("depth_mm", "Towards the head", "mm", 0.5, this::depth);
    force = row("force_n", "Force", "N", 0.01, this::force);
    getChildren().addAll(level, depth, force);
  }

  private FieldRow row(
      String key, String label, String unit, double step, java.util.function.DoubleConsumer turn) {
    return new FieldRow(key, label, unit, step, turn, sheet::endTurn);
  }

  private void level(double v) {
    change(p -> new PressTest(v, p.depth_mm(), p.force_n()));
  }

  private void depth(double v) {
    change(p -> new PressTest(p.level_percent(), v, p.force_n()));
  }

  private void force(double v) {
    change(p -> new PressTest(p.level_percent(), p.depth_mm(), v));
  }

  private void change(UnaryOperator<PressTest> to) {
    sheet.ear().tissue().press().ifPresent(p -> sheet.press(Optional.of(to.apply(p))));
  }

  void fill(PressTest press) {
    level.fill(press.level_percent(), sheet.findings("press_test/level_percent"));
    depth.fill(press.depth_mm(), sheet.findings("press_test/depth_mm"));
    force.fill(press.force_n(), sheet.findings("press_test/force_n"));
  }
}
