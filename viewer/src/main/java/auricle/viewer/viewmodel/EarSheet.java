package auricle.viewer.viewmodel;

import auricle.anatomy.Side;
import auricle.diagnostics.Finding;
import auricle.plan.EarCase;
import auricle.plan.EarMeasure;
import auricle.plan.Plan;
import auricle.plan.PressTest;
import auricle.plan.Range;
import auricle.plan.TissueChoice;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import javafx.beans.InvalidationListener;

/** Measurements, tissue and target of the ear on the desk, with what is wrong beside each. */
public final class EarSheet {
  private final Desk desk;
  private final Solving solving;

  /** The ear of a desk; what the solver says against it is told too. */
  public EarSheet(Desk desk, Solving solving) {
    this.desk = desk;
    this.solving = solving;
  }

  /** The ear as it stands. */
  public EarCase ear() {
    return desk.document().get().ear();
  }

  /** Is told when the ear changes (not the plan alone), or what is wrong with it. */
  public void follow(InvalidationListener told) {
    desk.document()
        .addListener(
            (o, was, now) -> {
              if (!was.ear().withPlan(Plan.of()).equals(now.ear().withPlan(Plan.of()))) {
                told.invalidated(o);
              }
            });
    solving
        .work()
        .addListener(
            (o, was, now) -> {
              if (!was.findings().equals(now.findings())) {
                told.invalidated(o);
              }
            });
  }

  /** Whether the scenario has both ears. */
  public boolean pair() {
    return desk.document().get().pair();
  }

  /** The side of the ear that is shown. */
  public Side side() {
    return ear().ear().side();
  }

  /** One ear changes its side; of a pair the ear of that side is shown. */
  public void side(Side side) {
    desk.edit(d -> d.pair() ? d.showing(side) : d.onSide(side), "");
  }

  /** Adds the other ear as a mirror image, plan and all, and shows it. */
  public void addOther() {
    desk.edit(Document::withOther, "");
  }

  /** Takes the ear that is shown out of a pair. */
  public void removeShown() {
    desk.edit(Document::withoutShown, "");
  }

  /** Gives the ear another measurement; turns of the same one are undone together. */
  public void measure(EarMeasure measure, double value) {
    edit(e -> e.withEar(measure.with(e.ear(), value)), measure.key());
  }

  /** Aims at another range. */
  public void aim(Aim aim, double low, double high) {
    edit(e -> e.withTarget(aim.with(e.target(), Range.of(low, high))), aim.key());
  }

  /** Takes the tissue of another row of the tables; the standard one for an empty name. */
  public void row(String slot, String variant) {
    tissue(
        t ->
            new TissueChoice(
                with(t.rows(), slot, variant), without(t.overrides(), slot), t.press()));
  }

  /** Puts a number of the user's in the place of the tables'. */
  public void number(String slot, double value) {
    edit(e -> e.withTissue(e.tissue().withOverride(slot, value)), slot);
  }

  /** Takes the result of a press at the bedside, or none. */
  public void press(Optional<PressTest> press) {
    edit(
        e -> e.withTissue(new TissueChoice(e.tissue().rows(), e.tissue().overrides(), press)),
        "press");
  }

  private void tissue(UnaryOperator<TissueChoice> change) {
    edit(e -> e.withTissue(change.apply(e.tissue())), "");
  }

  private void edit(UnaryOperator<EarCase> change, String gesture) {
    String name = gesture.isEmpty() ? "" : "ear/" + desk.document().get().shown() + "/" + gesture;
    desk.edit(d -> d.withEar(change), name);
  }

  /** Ends a turn of a field. */
  public void endTurn() {
    desk.endGesture();
  }

  private static Map<String, String> with(Map<String, String> rows, String slot, String variant) {
    Map<String, String> changed = new TreeMap<>(rows);
    changed.remove(slot);
    if (!variant.isEmpty()) {
      changed.put(slot, variant);
    }
    return changed;
  }

  private static Map<String, Double> without(Map<String, Double> numbers, String slot) {
    Map<String, Double> changed = new TreeMap<>(numbers);
    changed.remove(slot);
    return changed;
  }

  /**
   * What is wrong with a field, in sentences: what the ear says by itself, and what the solver said
   * when it was asked to work this ear out.
   *
   * @param place name of the field in files
   */
  public List<String> findings(String place) {
    Set<String> sentences = new LinkedHashSet<>();
    ear().findings("").stream().filter(f -> about(f, place)).forEach(f -> sentences.add(words(f)));
    solving.work().get().findings().stream()
        .filter(f -> about(f, place))
        .forEach(f -> sentences.add(words(f)));
    return List.copyOf(sentences);
  }

  private static boolean about(Finding finding, String place) {
    return finding.where().endsWith("/" + place) || finding.where().contains("/" + place + "/");
  }

  /** What is wrong with the ear as a whole: findings that are about none of its fields. */
  public List<String> findings() {
    return solving.work().get().findings().stream()
        .filter(f -> f.where().equals("/ear") || f.where().startsWith("/tissue"))
        .map(EarSheet::words)
        .toList();
  }

  private static String words(Finding f) {
    String found = f.found().isEmpty() ? f.expected() : f.found();
    String first = Character.toUpperCase(found.charAt(0)) + found.substring(1);
    String expected =
        f.expected().isEmpty() || found.equals(f.expected()) ? "" : "; expected " + f.expected();
    return first + expected + "." + (f.remedy().isEmpty() ? "" : " " + f.remedy());
  }
}
