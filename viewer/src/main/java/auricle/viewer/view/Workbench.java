package auricle.viewer.view;

import auricle.report.UseNotice;
import auricle.viewer.scene.ClinicalView;
import auricle.viewer.viewmodel.Balance;
import auricle.viewer.viewmodel.EarSheet;
import auricle.viewer.viewmodel.Files;
import auricle.viewer.viewmodel.Lessons;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.Models;
import auricle.viewer.viewmodel.Reactions;
import auricle.viewer.viewmodel.Showing;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The whole window: plan at the left, ear in the middle, what is measured at the right. */
public final class Workbench extends StackPane {
  private final Models models;
  private final EarPane ear;
  private final EarHands hands;
  private final TimeBar time;
  private final SectionPane section;
  private final Tabs results = new Tabs("tabs");
  private final Tabs inputs = new Tabs("inputs");
  private final VBox top = new VBox();
  private final Columns columns;
  private final Room room;

  /** A window's content for its view models. */
  public Workbench(Models models) {
    this.models = models;
    DragNote note = new DragNote();
    this.ear = new EarPane(models.showing(), models.steps(), models.look());
    this.hands = new EarHands(ear, models.showing(), models.steps(), note);
    this.time = new TimeBar(models.showing(), models.look());
    this.section = new SectionPane(models.showing(), models.look());
    ear.getChildren().add(note);
    StateChip state = new StateChip(models.solving(), models.showing());
    ear.state(state);
    ear.setId("ear-pane");
    fill();
    ToolRow tools = new ToolRow(models, this);
    BorderPane middle = new BorderPane(ear, tools, null, time, null);
    room = new Room(middle, models.look());
    room.narrow().addListener((o, was, now) -> tools.narrow(now));
    room.low().addListener((o, was, now) -> low(state, now));
    columns = new Columns(inputs, middle, results);
    getChildren().add(new BorderPane(columns, top, null, useLine(), null));
    addEventFilter(KeyEvent.KEY_PRESSED, new Shortcuts(models.showing(), time, this::view));
    new Dress(this, columns, models.look()).follow(results);
  }

  private void low(StateChip state, boolean now) {
    state.low(now);
    time.low(now);
    ear.low(now);
  }

  private void fill() {
    Showing showing = models.showing();
    Look look = models.look();
    inputs.addWhole("Plan", () -> new PlanPane(models.steps()));
    EarSheet sheet = new EarSheet(models.desk(), models.solving());
    inputs.add("Ear", () -> new EarForm(sheet));
    inputs.add("Target", () -> new TargetForm(sheet));
    results.add("Balance", () -> new BalancePane(showing, models.steps(), look, this::light));
    results.add("Section", () -> section);
    results.add("Both ears", () -> new HeadPane(showing, models.other(), look));
    results.add("Course", () -> new CoursePane(showing, models.solving(), look));
  }

  /** Adds what each dose does. */
  public void addReactions(Reactions reactions) {
    results.add("Reactions", () -> new ReactionPane(reactions, models.steps(), models.look()));
  }

  /** Adds lessons. */
  public void addLessons(Lessons lessons) {
    results.addWhole("Lessons", () -> new LessonPane(lessons, models.look()));
  }

  /** Adds the bar that tells what went wrong with a file. */
  public void addMessages(Files files) {
    top.getChildren().add(new MessageBar(files));
  }

  /** Shows the pane that has a title. */
  public void openTab(String title) {
    inputs.open(title);
    results.open(title);
  }

  /** Title of the pane that is open at the right. */
  public String openTab() {
    return results.openTitle();
  }

  private void light(auricle.anatomy.Level level) {
    ear.pointOut(level);
    time.setAccessibleHelp(Balance.label(level));
  }

  private static Node useLine() {
    Label line = Texts.paragraph(UseNotice.TEXT);
    line.setMaxWidth(Double.MAX_VALUE);
    line.getStyleClass().add("use-line");
    line.setId("use-line");
    return line;
  }

  /** Gives the side panes a width in heights of text, as far as the window allows. */
  public void sidePanes(double left_em, double right_em, double window_px) {
    columns.sidePanes(left_em, right_em, window_px);
  }

  /** Width of the pane at the left in heights of text. */
  public double leftPane_em() {
    return columns.left_em();
  }

  /** Width of the pane at the right in heights of text. */
  public double rightPane_em() {
    return columns.right_em();
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

  /** The picture in three dimensions, without what is written over and below it. */
  public Node picture() {
    return ear.scene().picture();
  }

  /** The ear. */
  EarPane ear() {
    return ear;
  }
}
