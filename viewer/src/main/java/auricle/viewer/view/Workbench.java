package auricle.viewer.view;

import auricle.viewer.scene.ClinicalView;
import auricle.viewer.viewmodel.Balance;
import auricle.viewer.viewmodel.EarSheet;
import auricle.viewer.viewmodel.Files;
import auricle.viewer.viewmodel.Lessons;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.Models;
import auricle.viewer.viewmodel.Reactions;
import auricle.viewer.viewmodel.Showing;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The whole window: plan at the left, ear in the middle, what is measured at the right. */
public final class Workbench extends StackPane {
  private static final double LEFT_EM = 22;
  private static final double RIGHT_EM = 30;

  private final Models models;
  private final EarPane ear;
  private final EarHands hands;
  private final TimeBar time;
  private final SectionPane section;
  private final TabPane tabs = new TabPane();
  private final TabPane inputs = new TabPane();
  private final VBox left = new VBox();
  private final VBox top = new VBox();
  private final SplitPane split = new SplitPane();
  private final BorderPane frame = new BorderPane();

  /** A window's content for its view models. */
  public Workbench(Models models) {
    this.models = models;
    DragNote note = new DragNote();
    this.ear = new EarPane(models.showing(), models.steps(), models.look());
    this.hands = new EarHands(ear, models.showing(), models.steps(), note);
    this.time = new TimeBar(models.showing(), models.look());
    this.section = new SectionPane(models.showing(), models.look());
    ear.getChildren().add(note);
    StateChip chip = new StateChip(models.solving(), models.showing());
    ear.getChildren().add(chip);
    StackPane.setAlignment(chip, Pos.TOP_LEFT);
    StackPane.setMargin(chip, new Insets(10));
    ear.setId("ear-pane");
    tabs();
    EarSheet sheet = new EarSheet(models.desk(), models.solving());
    inputs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
    inputs.setId("inputs");
    addTab(inputs, "Plan", () -> new PlanPane(models.steps(), models.look()));
    addTab(inputs, "Ear", () -> scrolled(new EarForm(sheet)));
    addTab(inputs, "Target", () -> scrolled(new TargetForm(sheet)));
    left.getChildren().add(inputs);
    VBox.setVgrow(inputs, javafx.scene.layout.Priority.ALWAYS);
    left.getStyleClass().add("left-pane");
    BorderPane middle = new BorderPane(ear, new ToolRow(models, this), null, time, null);
    middle.setMinWidth(260);
    split.getItems().addAll(left, middle, tabs);
    split.setDividerPositions(0.237, 0.7);
    SplitPane.setResizableWithParent(left, false);
    SplitPane.setResizableWithParent(tabs, false);
    frame.setTop(top);
    frame.setCenter(split);
    frame.setBottom(useLine());
    getChildren().add(frame);
    addEventFilter(KeyEvent.KEY_PRESSED, this::shortcuts);
    style();
  }

  private void tabs() {
    tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
    tabs.getStyleClass().add("right-pane");
    tabs.setId("tabs");
    Showing showing = models.showing();
    Look look = models.look();
    addTab("Balance", () -> new BalancePane(showing, models.steps(), look, this::light));
    addTab("Section", () -> section);
    addTab("Both ears", () -> new HeadPane(showing, models.other(), look));
    addTab("Course", () -> new CoursePane(showing, models.solving(), look));
  }

  /** Adds what each dose does. */
  public void addReactions(Reactions reactions) {
    addTab("Reactions", () -> new ReactionPane(reactions, models.steps(), models.look()));
  }

  /** Adds lessons. */
  public void addLessons(Lessons lessons) {
    addTab("Lessons", () -> new LessonPane(lessons, models.look()));
  }

  /** Adds the bar that tells what went wrong with a file. */
  public void addMessages(Files files) {
    top.getChildren().add(new MessageBar(files));
  }

  private void addTab(String title, Supplier<Node> pane) {
    addTab(tabs, title, () -> scrolled(pane.get()));
  }

  private static ScrollPane scrolled(Node pane) {
    ScrollPane scroll = new ScrollPane(pane);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    return scroll;
  }

  /**
   * Adds a pane that is drawn while its tab is open. It is made and comes into the window when the
   * tab is opened first: the first ear need not wait until the controls of all tabs are made,
   * styled and laid out.
   */
  private static void addTab(TabPane to, String title, Supplier<Node> pane) {
    Tab tab = new Tab(title);
    tab.setId("tab-" + title.toLowerCase(java.util.Locale.ROOT).replace(' ', '-'));
    tab.selectedProperty().addListener((o, was, now) -> opened(tab, now, pane));
    to.getTabs().add(tab);
  }

  private static void opened(Tab tab, boolean now, Supplier<Node> pane) {
    if (now && tab.getContent() == null) {
      tab.setContent(pane.get());
    }
    if (tab.getContent() instanceof ScrollPane s && s.getContent() instanceof SidePane side) {
      side.seen(now);
    }
  }

  /** Shows the pane at the right that has a title. */
  public void openTab(String title) {
    for (TabPane pane : List.of(tabs, inputs)) {
      pane.getTabs().stream()
          .filter(t -> t.getText().equals(title))
          .findFirst()
          .ifPresent(t -> pane.getSelectionModel().select(t));
    }
  }

  /** Title of the pane that is open at the right. */
  public String openTab() {
    return tabs.getSelectionModel().getSelectedItem().getText();
  }

  private void light(auricle.anatomy.Level level) {
    ear.pointOut(level);
    time.setAccessibleHelp(Balance.label(level));
  }

  private static HBox useLine() {
    HBox line =
        new HBox(
            Texts.label(
                "For rehearsal, teaching and research. Not a medical device, not validated for any patient; local rules and licensed clinical judgement come first."));
    line.getStyleClass().add("use-line");
    line.setId("use-line");
    return line;
  }

  private void style() {
    getStylesheets()
        .add(
            java.util.Objects.requireNonNull(Workbench.class.getResource("viewer.css"))
                .toExternalForm());
    getStyleClass().add("root");
    Look look = models.look();
    look.theme().addListener(o -> theme());
    look.textScale().addListener(o -> theme());
    look.fullScreen().addListener(o -> project());
    tabs.getSelectionModel().selectedItemProperty().addListener(o -> project());
    widthProperty().addListener(o -> widths(Texts.em(look)));
    theme();
  }

  private void theme() {
    Look look = models.look();
    getStyleClass().removeAll("light", "dark", "contrast");
    getStyleClass().add(look.theme().get().name().toLowerCase(java.util.Locale.ROOT));
    double em = Texts.em(look);
    widths(em);
    setStyle("-fx-font-size: " + Math.round(Texts.em(look) * 10) / 10.0 + "px;");
  }

  /** A lesson that fills the screen is read from afar: large type, and no plan beside it. */
  private void project() {
    boolean lesson = models.look().fullScreen().get() && openTab().equals("Lessons");
    getStyleClass().remove("projected");
    if (lesson) {
      getStyleClass().add("projected");
      split.getItems().remove(left);
      split.setDividerPositions(0.62);
    } else if (!split.getItems().contains(left)) {
      split.getItems().add(0, left);
      split.setDividerPositions(0.237, 0.7);
    }
  }

  /**
   * Side panes take their share of a wide window, and as much as their text needs of a narrow one,
   * as long as the ear keeps its place in the middle.
   */
  private void widths(double em) {
    double all = getWidth();
    width(left, Math.max(LEFT_EM * em, Math.min(0.18 * all, 27 * em)), 0.28 * all, 0.25 * all);
    width(tabs, Math.max(RIGHT_EM * em, Math.min(0.27 * all, 40 * em)), 0.4 * all, 0.34 * all);
  }

  private static void width(Region pane, double text, double most, double usual) {
    pane.setMinWidth(Math.min(text, most));
    pane.setMaxWidth(Math.max(usual, Math.min(text, most)));
  }

  /** Gives the side panes a width in heights of text, as far as the window allows. */
  public void sidePanes(double left_em, double right_em, double window_px) {
    double em = Texts.em(models.look());
    split.setDividerPositions(left_em * em / window_px, 1 - right_em * em / window_px);
  }

  /** Width of the pane at the left in heights of text. */
  public double leftPane_em() {
    return left.getWidth() / Texts.em(models.look());
  }

  /** Width of the pane at the right in heights of text. */
  public double rightPane_em() {
    return tabs.getWidth() / Texts.em(models.look());
  }

  /** Where the eye is. */
  public auricle.viewer.scene.Orbit orbit() {
    return ear.scene().orbit();
  }

  /** Moves the eye at once. */
  public void look(auricle.viewer.scene.Orbit orbit) {
    ear.scene().look(orbit);
  }

  /** Moves the eye on its way, as a hand does. */
  public void sweep(auricle.viewer.scene.Orbit orbit) {
    ear.scene().sweep(orbit);
  }

  /** Bars above everything: menus, messages. */
  public VBox top() {
    return top;
  }

  /** Flies to a clinical view. */
  public void view(ClinicalView view) {
    hands.fly(view);
  }

  /** Says what this is for, over everything, until it is closed. */
  public void welcome() {
    over(new Welcome("Rehearse the set-back of an ear", Welcome.purpose(), this::closeOver));
  }

  /** Tells the keys. */
  public void keys() {
    over(new Welcome("Keys", Welcome.keys(), this::closeOver));
  }

  private void over(Welcome welcome) {
    closeOver();
    getChildren().add(welcome);
    welcome.requestFocus();
  }

  /** Closes what was said over everything. */
  public void closeWelcome() {
    closeOver();
  }

  private void closeOver() {
    getChildren().removeIf(Welcome.class::isInstance);
    ear.requestFocus();
  }

  private void shortcuts(KeyEvent e) {
    if (e.getTarget() instanceof TextInputControl || e.isShortcutDown() || e.isAltDown()) {
      return;
    }
    for (ClinicalView v : ClinicalView.values()) {
      if (e.getText().equals(Integer.toString(v.digit()))) {
        view(v);
        e.consume();
      }
    }
    switch (e.getText()) {
      case "," -> models.showing().step(-1);
      case "." -> models.showing().step(1);
      case "p", "P" -> time.toggle();
      default -> {}
    }
  }

  /** Height of a line of text, pixels. */
  double em() {
    return Texts.em(models.look());
  }

  /** The bar of the course. */
  TimeBar time() {
    return time;
  }

  /** The section. */
  SectionPane section() {
    return section;
  }

  /** The ball of a bite that can be dragged, by the dose that holds its level. */
  public Optional<Node> ball(String levelKey) {
    return ear.marks().ball(levelKey);
  }

  /** What takes the keys that turn the ear. */
  public Node ear3d() {
    return ear;
  }

  /** The ear. */
  EarPane ear() {
    return ear;
  }
}
