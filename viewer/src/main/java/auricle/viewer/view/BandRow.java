package auricle.viewer.view;

import auricle.viewer.viewmodel.Solving;
import auricle.viewer.viewmodel.Solving.Extra;
import auricle.viewer.viewmodel.Work;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Asks for the spread over the year by samples of tissue; says how far it is, and ends it. */
final class BandRow extends VBox {
  private static final int USUAL = 20;

  private final Solving solving;
  private final Spinner<Integer> samples = new Spinner<>(5, 200, USUAL, 5);
  private final Button ask = new Button("Work out the 10–90 % band");
  private final Button stop = new Button("Stop");
  private final Label words = Texts.paragraph("", "hint");
  private boolean asked;

  BandRow(Solving solving) {
    super(4);
    this.solving = solving;
    ask.setId("work-band");
    ask.setOnAction(e -> ask());
    stop.setId("stop-band");
    stop.setOnAction(e -> solving.cancel());
    samples.setId("band-samples");
    samples.setEditable(true);
    samples.getStyleClass().add("bite-field");
    samples.getEditor().setAccessibleText("Number of tissue samples");
    FlowPane row = new FlowPane(6, 4, ask, samples, Texts.label("samples"), stop);
    row.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    getChildren().addAll(row, words);
    solving.work().addListener(o -> follow());
    follow();
  }

  private void ask() {
    asked = true;
    solving.ask(new Extra.Spread(samples.getValue()));
  }

  private void follow() {
    Work work = solving.work().get();
    boolean busy = work.state() == Work.State.SOLVING;
    asked = asked && busy;
    stop.setVisible(asked);
    stop.setManaged(asked);
    ask.setDisable(busy && !asked);
    words.setText(asked ? work.words() : said());
  }

  private String said() {
    int bands = solving.result().get().map(r -> r.bands().size()).orElse(0);
    return bands == 0
        ? "The band is where 80 of 100 ears of this shape lie by the spread of the tissue tables; it takes seconds a sample."
        : "Shaded: 10 to 90 % of the tissue samples.";
  }
}
