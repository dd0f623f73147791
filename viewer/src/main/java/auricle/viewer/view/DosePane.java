package auricle.viewer.view;

import auricle.plan.Dose;
import auricle.plan.Face;
import auricle.plan.Operation;
import auricle.plan.Scoring;
import auricle.plan.Tie;
import auricle.plan.TiedOperation;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.PlanSteps;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.Spinner;
import javafx.scene.control.SpinnerValueFactory;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** The doses of the step that is worked on, each with a slider and a field. */
final class DosePane extends VBox {
  private final PlanSteps steps;
  private final List<Row> rows = new ArrayList<>();
  private final VBox findings = new VBox(4);
  private String shown = "";
  private boolean filling;

  /** One dose with its controls. */
  private record Row(String key, Optional<Slider> slider, Spinner<Double> field) {}

  DosePane(PlanSteps steps, Look look) {
    this.steps = steps;
    getStyleClass().add("dose-pane");
    steps.plan().addListener(o -> refresh());
    steps.chosen().addListener(o -> refresh());
    refresh();
  }

  private void refresh() {
    Optional<Operation> operation = steps.operation();
    String shape =
        operation
            .map(o -> steps.chosen().get() + o.kind() + keys(o) + o.name() + face(o))
            .orElse("");
    if (!shape.equals(shown)) {
      shown = shape;
      lay(operation);
    }
    operation.ifPresent(this::fill);
  }

  private static String keys(Operation o) {
    return o.doses().stream().map(Dose::key).toList().toString();
  }

  private static String face(Operation o) {
    return o instanceof Scoring s ? s.face().name() : "";
  }

  private void lay(Optional<Operation> operation) {
    getChildren().clear();
    rows.clear();
    if (operation.isEmpty()) {
      return;
    }
    Operation o = operation.get();
    TextField name = new TextField(o.name());
    name.setId("step-name");
    name.setAccessibleText("Name of the step");
    name.setOnAction(e -> steps.rename(name.getText()));
    name.focusedProperty().addListener((x, was, now) -> leave(now, name));
    getChildren().add(name);
    choices(o);
    GridPane grid = new GridPane();
    grid.getStyleClass().add("dose-grid");
    List<Dose> ordered = new ArrayList<>(o.doses());
    ordered.sort(java.util.Comparator.comparingInt(DosePane::rank));
    GridPane bites = new GridPane();
    bites.getStyleClass().add("dose-grid");
    for (Dose dose : ordered) {
      if (ofBite(dose)) {
        bite(bites, dose);
      } else {
        add(grid, dose);
      }
    }
    getChildren().addAll(grid, bites, findings);
  }

  private void leave(boolean now, TextField name) {
    if (!now) {
      steps.rename(name.getText());
    }
  }

  /** The tie first: it is turned most. */
  private static int rank(Dose dose) {
    return dose.key().equals("tension_n") || dose.key().equals("gap_mm") ? 0 : 1;
  }

  private void choices(Operation o) {
    if (o instanceof TiedOperation tied) {
      boolean gap = tied.tie() instanceof Tie.Gap;
      getChildren()
          .add(
              pair(
                  "Tied to a gap",
                  gap,
                  () -> steps.replace(tied.withTie(new Tie.Gap(8))),
                  "Tied at a tension",
                  () -> steps.replace(tied.withTie(new Tie.Tension(0.3)))));
    }
    if (o instanceof Scoring scoring) {
      getChildren()
          .add(
              pair(
                  "Posterior face",
                  scoring.face() == Face.POSTERIOR,
                  () -> steps.replace(scoring.withFace(Face.POSTERIOR)),
                  "Anterior face",
                  () -> steps.replace(scoring.withFace(Face.ANTERIOR))));
    }
  }

  private static HBox pair(
      String one, boolean isOne, Runnable toOne, String other, Runnable toOther) {
    ToggleGroup group = new ToggleGroup();
    ToggleButton first = new ToggleButton(one);
    ToggleButton second = new ToggleButton(other);
    first.setToggleGroup(group);
    second.setToggleGroup(group);
    (isOne ? first : second).setSelected(true);
    first.setOnAction(e -> choose(first, isOne, toOne));
    second.setOnAction(e -> choose(second, !isOne, toOther));
    first.getStyleClass().add("pair-left");
    second.getStyleClass().add("pair-right");
    HBox box = new HBox(first, second);
    for (ToggleButton b : List.of(first, second)) {
      HBox.setHgrow(b, Priority.ALWAYS);
      b.setMaxWidth(Double.MAX_VALUE);
    }
    return box;
  }

  private static void choose(ToggleButton button, boolean already, Runnable action) {
    button.setSelected(true);
    if (!already) {
      action.run();
    }
  }

  private void add(GridPane grid, Dose dose) {
    Node label = Texts.paragraph(Texts.upper(dose.label()), "dose-label");
    Slider slider = new Slider(dose.low(), sliderHigh(dose), dose.value());
    slider.setBlockIncrement(dose.step());
    slider.setAccessibleText(dose.label());
    slider.setId("slide-" + dose.key());
    Spinner<Double> field = spinner(dose);
    slider
        .valueProperty()
        .addListener((o, was, now) -> turn(dose, snapped(dose, now.doubleValue())));
    slider.setOnMouseReleased(e -> steps.endTurn());
    int r = grid.getRowCount();
    GridPane.setColumnSpan(label, 3);
    grid.add(label, 0, r);
    grid.add(slider, 0, r + 1);
    grid.add(field, 1, r + 1);
    grid.add(Texts.label(unit(dose), "unit"), 2, r + 1);
    GridPane.setHgrow(slider, Priority.ALWAYS);
    rows.add(new Row(dose.key(), Optional.of(slider), field));
  }

  /** Level and place of the four bites of a fold suture stand in a table of their own. */
  private static boolean ofBite(Dose dose) {
    return dose.key().startsWith("scapha_") || dose.key().startsWith("concha_");
  }

  private void bite(GridPane grid, Dose dose) {
    boolean isLevel = dose.key().endsWith("_level_percent");
    if (grid.getRowCount() == 0) {
      grid.add(Texts.label("Bites", "sub-title"), 0, 0);
      grid.add(Texts.label("level, %", "dose-label"), 1, 0);
      grid.add(Texts.paragraph("from fold, mm", "dose-label"), 2, 0);
    }
    int r = isLevel ? grid.getRowCount() : grid.getRowCount() - 1;
    if (isLevel) {
      String[] words = dose.key().split("_", 3);
      Label name = Texts.paragraph(Texts.upper(words[1] + " " + words[0]), "bite-name");
      GridPane.setHgrow(name, Priority.ALWAYS);
      grid.add(name, 0, r);
    }
    Spinner<Double> field = spinner(dose);
    field.getStyleClass().add("bite-field");
    grid.add(field, isLevel ? 1 : 2, r);
    rows.add(new Row(dose.key(), Optional.empty(), field));
  }

  private static String unit(Dose dose) {
    return dose.unit().startsWith("of") ? "of 1" : dose.unit();
  }

  private static double snapped(Dose dose, double value) {
    return Math.round(value / dose.step()) * dose.step();
  }

  /** A field that turns a dose, with its bounds and why they are there as a tip. */
  private Spinner<Double> spinner(Dose dose) {
    Spinner<Double> field = field(dose);
    field.setId("dose-" + dose.key());
    field.getEditor().setAccessibleText(dose.label() + ", " + dose.unit());
    String bounds = value(dose.low(), dose.step()) + " to " + value(dose.high(), dose.step());
    field.setTooltip(
        new Tooltip(
            Texts.upper(dose.label()) + ": " + bounds + " " + dose.unit() + "; " + dose.reason()));
    field.valueProperty().addListener((o, was, now) -> turn(dose, now));
    return field;
  }

  /** Upper end of the slider: what is usual; the field goes as far as is allowed. */
  private static double sliderHigh(Dose dose) {
    double usual =
        switch (dose.key()) {
          case "tension_n" -> 2;
          case "gap_mm" -> 24;
          default -> dose.high();
        };
    return Math.max(dose.value(), Math.min(dose.high(), usual));
  }

  private Spinner<Double> field(Dose dose) {
    var values =
        new SpinnerValueFactory.DoubleSpinnerValueFactory(
            dose.low(), dose.high(), dose.value(), dose.step());
    values.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(Double v) {
            return v == null ? "" : value(v, dose.step());
          }

          @Override
          public Double fromString(String text) {
            try {
              double v = Double.parseDouble(text.strip().replace(',', '.'));
              return Math.max(dose.low(), Math.min(dose.high(), v));
            } catch (NumberFormatException e) {
              return values.getValue();
            }
          }
        });
    Spinner<Double> field = new Spinner<>(values);
    field.setEditable(true);
    field.getStyleClass().add("dose-field");
    field.focusedProperty().addListener((o, was, now) -> commit(field, now));
    return field;
  }

  private void commit(Spinner<Double> field, boolean focused) {
    if (!focused) {
      field.commitValue();
      steps.endTurn();
    }
  }

  private void turn(Dose dose, double value) {
    if (!filling) {
      steps.turn(dose.key(), value);
    }
  }

  private void fill(Operation operation) {
    filling = true;
    for (Row row : rows) {
      double value = operation.dose(row.key()).value();
      row.slider()
          .filter(s -> Math.abs(s.getValue() - value) > 1e-9)
          .ifPresent(s -> s.setValue(value));
      row.field().getValueFactory().setValue(value);
    }
    filling = false;
    findings.getChildren().clear();
    for (String words : steps.findings(steps.chosen().get())) {
      findings.getChildren().add(Texts.paragraph(words, "finding"));
    }
  }

  /** A value with as many decimals as its step has. */
  static String value(double value, double step) {
    int decimals = 0;
    double s = step;
    while (decimals < 3 && Math.abs(s - Math.round(s)) > 1e-9) {
      s *= 10;
      decimals++;
    }
    double rounded = Math.round(value * 10) / 10.0;
    if (decimals == 0
        && Math.abs(value - Math.round(value)) > 1e-9
        && Math.abs(rounded - value) < 1e-9) {
      decimals = 1;
    }
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }
}
