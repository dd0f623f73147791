package auricle.viewer.view;

import auricle.plan.Dose;
import auricle.plan.Face;
import auricle.plan.Operation;
import auricle.plan.Scoring;
import auricle.plan.Tie;
import auricle.plan.TiedOperation;
import auricle.viewer.viewmodel.PlanSteps;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** Name, choices and doses of the step that is worked on, and what is wrong with it. */
final class DosePane extends VBox {
  private final PlanSteps steps;
  private final Turning turning;
  private final VBox findings = new VBox(4);
  private DoseGrid grid;
  private BiteGrid bites;
  private String shown = "";

  DosePane(PlanSteps steps) {
    this.steps = steps;
    this.turning = new Turning(steps);
    this.grid = new DoseGrid(turning);
    this.bites = new BiteGrid(turning);
    getStyleClass().add("dose-pane");
    steps.plan().addListener(o -> refresh());
    steps.chosen().addListener(o -> refresh());
    refresh();
  }

  /** Lays the controls anew where another step, or another choice in it, asks for others. */
  private void refresh() {
    Optional<Operation> operation = steps.operation();
    String shape =
        operation
            .map(o -> steps.chosen().get() + o.kind() + keys(o) + o.name() + face(o))
            .orElse("");
    if (!shape.equals(shown)) {
      shown = shape;
      getChildren().clear();
      operation.ifPresent(this::lay);
    }
    operation.ifPresent(this::fill);
  }

  private static String keys(Operation o) {
    return o.doses().stream().map(Dose::key).toList().toString();
  }

  private static String face(Operation o) {
    return o instanceof Scoring s ? s.face().name() : "";
  }

  private void lay(Operation o) {
    grid = new DoseGrid(turning);
    bites = new BiteGrid(turning);
    List<Dose> ordered = new ArrayList<>(o.doses());
    ordered.sort(Comparator.comparingInt(DosePane::rank));
    for (Dose dose : ordered) {
      if (BiteGrid.holds(dose)) {
        bites.add(dose);
      } else {
        grid.add(dose);
      }
    }
    getChildren().add(name(o));
    choices(o).ifPresent(getChildren()::add);
    getChildren().addAll(grid, bites, findings);
  }

  /** The tie first: it is turned most. */
  private static int rank(Dose dose) {
    return dose.key().equals("tension_n") || dose.key().equals("gap_mm") ? 0 : 1;
  }

  private TextField name(Operation o) {
    TextField name = new TextField(o.name());
    name.setId("step-name");
    name.setAccessibleText("Name of the step");
    name.setOnAction(e -> steps.rename(name.getText()));
    name.focusedProperty().addListener((x, was, now) -> leave(now, name));
    return name;
  }

  private void leave(boolean now, TextField name) {
    if (!now) {
      steps.rename(name.getText());
    }
  }

  private Optional<EitherOr> choices(Operation o) {
    if (o instanceof TiedOperation tied) {
      return Optional.of(
          new EitherOr(
              "Tied to a gap",
              "Tied at a tension",
              tied.tie() instanceof Tie.Gap,
              () -> steps.replace(tied.withTie(new Tie.Gap(8))),
              () -> steps.replace(tied.withTie(new Tie.Tension(0.3)))));
    }
    if (o instanceof Scoring scoring) {
      return Optional.of(
          new EitherOr(
              "Posterior face",
              "Anterior face",
              scoring.face() == Face.POSTERIOR,
              () -> steps.replace(scoring.withFace(Face.POSTERIOR)),
              () -> steps.replace(scoring.withFace(Face.ANTERIOR))));
    }
    return Optional.empty();
  }

  private void fill(Operation operation) {
    turning.filling(
        () -> {
          grid.show(operation);
          bites.show(operation);
        });
    findings
        .getChildren()
        .setAll(
            steps.findings(steps.chosen().get()).stream()
                .map(words -> Texts.paragraph(words, "finding"))
                .toList());
  }
}
