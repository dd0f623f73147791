package auricle.plan;

import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import java.util.ArrayList;
import java.util.List;

/**
 * Mattress suture between concha and scapha: a closed loop through four bites with one tension all
 * round, which folds the antihelix.
 *
 * @param name of the step
 * @param enabled whether it is done
 * @param scaphaUpper upper bite on the scapha
 * @param scaphaLower lower bite on the scapha
 * @param conchaUpper upper bite on the wall of the bowl
 * @param conchaLower lower bite on the wall of the bowl
 * @param tie gap between the two bite lines, or tension
 * @param thread row of the thread table
 */
public record FoldSuture(
    String name,
    boolean enabled,
    Bite scaphaUpper,
    Bite scaphaLower,
    Bite conchaUpper,
    Bite conchaLower,
    Tie tie,
    String thread)
    implements TiedOperation {

  /** Kind, as files name it. */
  public static final String KIND = "fold_suture";

  /** Names of the four bites, in the order of the components. */
  private static final List<String> BITES =
      List.of("scapha_upper", "scapha_lower", "concha_upper", "concha_lower");

  /**
   * A suture square to the fold line.
   *
   * @param level_percent level of its middle, % of the height of the ear
   * @param scaphaFromFold_mm distance of the outer bite line from the fold line, mm, positive
   * @param conchaFromFold_mm distance of the inner bite line from the fold line, mm, negative
   * @param biteWidth_percent distance between its upper and lower bites, % of the height of the ear
   */
  public static FoldSuture square(
      String name,
      double level_percent,
      double scaphaFromFold_mm,
      double conchaFromFold_mm,
      double biteWidth_percent,
      Tie tie,
      String thread) {
    double upper = level_percent + biteWidth_percent / 2;
    double lower = level_percent - biteWidth_percent / 2;
    return new FoldSuture(
        name,
        true,
        new Bite(upper, scaphaFromFold_mm),
        new Bite(lower, scaphaFromFold_mm),
        new Bite(upper, conchaFromFold_mm),
        new Bite(lower, conchaFromFold_mm),
        tie,
        thread);
  }

  /** Mean arc length between the two bite lines at rest, mm. */
  public double span_mm() {
    double scapha = (scaphaUpper.fromFold_mm() + scaphaLower.fromFold_mm()) / 2;
    double concha = (conchaUpper.fromFold_mm() + conchaLower.fromFold_mm()) / 2;
    return scapha - concha;
  }

  /** Mean level of the four bites, % of the height of the ear. */
  public double level_percent() {
    return bites().stream().mapToDouble(Bite::level_percent).sum() / 4;
  }

  /** The four bites in the order of the loop's bite lines: scapha, then concha, upper first. */
  public List<Bite> bites() {
    return List.of(scaphaUpper, scaphaLower, conchaUpper, conchaLower);
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public String words() {
    return "fold suture";
  }

  @Override
  public List<Dose> doses() {
    List<Dose> doses = new ArrayList<>();
    for (int i = 0; i < BITES.size(); i++) {
      doses.add(level(i).at(bites().get(i).level_percent()));
      doses.add(offset(i).at(bites().get(i).fromFold_mm()));
    }
    doses.add(tie.dose());
    return List.copyOf(doses);
  }

  @Override
  public FoldSuture with(String newName, boolean isEnabled, DoseValues d) {
    return new FoldSuture(
        newName, isEnabled, bite(0, d), bite(1, d), bite(2, d), bite(3, d), tie.from(d), thread);
  }

  @Override
  public FoldSuture withTie(Tie other) {
    return new FoldSuture(
        name, enabled, scaphaUpper, scaphaLower, conchaUpper, conchaLower, other, thread);
  }

  @Override
  public FoldSuture withThread(String other) {
    return new FoldSuture(
        name, enabled, scaphaUpper, scaphaLower, conchaUpper, conchaLower, tie, other);
  }

  @Override
  public List<Finding> findings(String at) {
    Findings findings = new Findings();
    findings.addAll(TiedOperation.super.findings(at));
    for (int i = 0; i < BITES.size(); i++) {
      side(findings, at + "/" + offset(i).key(), bites().get(i).fromFold_mm(), i < 2);
    }
    upperAboveLower(findings, at, "scapha", scaphaUpper, scaphaLower);
    upperAboveLower(findings, at, "concha", conchaUpper, conchaLower);
    return findings.list();
  }

  private static void side(Findings findings, String at, double fromFold_mm, boolean scapha) {
    if (scapha ? fromFold_mm <= 0 : fromFold_mm >= 0) {
      findings.error(
          at,
          (scapha ? "a bite on the scapha " : "a bite on the concha ")
              + OperationCheck.number(fromFold_mm, "mm")
              + " from the fold line",
          scapha ? "more than 0 mm, towards the rim" : "less than 0 mm, towards the bowl",
          "A fold suture takes its bites on both sides of the fold line.");
    }
  }

  private static void upperAboveLower(
      Findings findings, String at, String where, Bite upper, Bite lower) {
    if (upper.level_percent() <= lower.level_percent()) {
      findings.error(
          at + "/" + where + "_upper_level_percent",
          "the upper bite on the " + where + " not above the lower one",
          "a higher level than " + OperationCheck.number(lower.level_percent(), "%"),
          "Levels count upwards from the lobule.");
    }
  }

  private static Bite bite(int i, DoseValues d) {
    return new Bite(d.get(level(i)), d.get(offset(i)));
  }

  private static DoseRange level(int i) {
    return DoseRange.level(BITES.get(i) + "_level_percent", "level of the " + words(i));
  }

  private static DoseRange offset(int i) {
    return DoseRange.fromFold(
        BITES.get(i) + "_from_fold_mm", "distance from the fold of the " + words(i));
  }

  private static String words(int i) {
    return (i % 2 == 0 ? "upper" : "lower") + (i < 2 ? " scapha bite" : " concha bite");
  }
}
