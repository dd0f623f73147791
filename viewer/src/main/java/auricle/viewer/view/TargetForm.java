package auricle.viewer.view;

import auricle.plan.Range;
import auricle.viewer.viewmodel.Aim;
import auricle.viewer.viewmodel.EarSheet;
import java.util.EnumMap;
import java.util.Map;
import javafx.scene.control.Label;

/** The balance that is aimed at: a least and a greatest value of each figure, and who says so. */
final class TargetForm extends SidePane {
  private final EarSheet sheet;
  private final Map<Aim, Row> rows = new EnumMap<>(Aim.class);

  /** One range with its two fields. */
  private record Row(FieldRow low, FieldRow high, Label source) {}

  TargetForm(EarSheet sheet) {
    super("target-form");
    this.sheet = sheet;
    getStyleClass().add("form");
    for (Aim aim : Aim.values()) {
      Row row =
          new Row(
              field(aim, "from", v -> sheet.aim(aim, v, range(aim).high())),
              field(aim, "to", v -> sheet.aim(aim, range(aim).low(), v)),
              Texts.paragraph("", "hint"));
      rows.put(aim, row);
      getChildren().addAll(Texts.label(aim.label(), "sub-title"), row.low(), row.high());
      getChildren().add(row.source());
    }
    sheet.follow(o -> changed());
  }

  private FieldRow field(Aim aim, String end, java.util.function.DoubleConsumer change) {
    double step = aim.unit().equals("deg") ? 1 : 0.5;
    return new FieldRow(aim.key() + "-" + end, end, aim.unit(), step, change, sheet::endTurn);
  }

  private Range range(Aim aim) {
    return aim.of(sheet.ear().target());
  }

  @Override
  void draw() {
    rows.forEach(
        (aim, row) -> {
          Range range = range(aim);
          row.low().fill(range.low(), java.util.List.of());
          row.high().fill(range.high(), sheet.findings("target/" + aim.key()));
          row.source().setText(Texts.upper(range.source()) + " (" + range.confidence() + ").");
        });
  }
}
