package auricle.scenario;

import auricle.anatomy.Auricle;
import auricle.anatomy.Chart;
import auricle.anatomy.MeshLevel;
import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import auricle.fitting.EarFitter;
import auricle.plan.Bite;
import auricle.plan.EarCase;
import auricle.plan.FoldSuture;
import auricle.plan.Operation;
import auricle.plan.Plan;
import java.util.List;
import java.util.Locale;

/**
 * Whether there is an ear with the measurements, and whether the bites of fold sutures lie on it
 * where they are said to lie.
 */
public final class PlaceCheck {
  /**
   * How far the fold line may miss a level before that is told, % of the height; our own choice.
   */
  private static final double LEVEL_MISS_PERCENT = 2;

  private static final List<String> BITES =
      List.of("scapha_upper", "scapha_lower", "concha_upper", "concha_lower");

  private final Chart chart;
  private final Auricle auricle;
  private final Findings findings = new Findings();

  private PlaceCheck(Auricle auricle) {
    this.auricle = auricle;
    this.chart = auricle.chart();
  }

  /**
   * Whether the measurements of an ear hold together, and if they do, where its bites lie.
   *
   * @return findings whose places are JSON pointers below the ear
   */
  public static List<Finding> findings(EarCase ear) {
    try {
      Auricle auricle = EarFitter.fit(ear.ear(), MeshLevel.PLANNING, "/ear").auricle();
      return findings(auricle, ear.plan());
    } catch (BadInputException e) {
      return e.findings();
    }
  }

  /**
   * Warnings of bites that are off the scapha, off the wall of the bowl, or beyond the ends of the
   * fold line.
   *
   * @param auricle the ear at rest
   * @return findings whose places are JSON pointers below the ear: {@code /plan/0/fold_suture/…}
   */
  public static List<Finding> findings(Auricle auricle, Plan plan) {
    PlaceCheck check = new PlaceCheck(auricle);
    for (int i = 0; i < plan.operations().size(); i++) {
      Operation operation = plan.operations().get(i);
      if (operation.enabled() && operation instanceof FoldSuture suture) {
        check.suture(suture, "/plan/" + i + "/" + FoldSuture.KIND);
      }
    }
    return check.findings.list();
  }

  private void suture(FoldSuture suture, String at) {
    for (int i = 0; i < BITES.size(); i++) {
      bite(suture.bites().get(i), i < 2, at + "/" + BITES.get(i));
    }
  }

  private void bite(Bite bite, boolean scapha, String at) {
    double around = chart.aroundAtHeight(bite.level_percent());
    double level_percent = heightPercent(around);
    if (Math.abs(level_percent - bite.level_percent()) > LEVEL_MISS_PERCENT) {
      warn(
          at + "_level_percent",
          "a bite at " + number(bite.level_percent()) + " %",
          "a level that the fold line reaches; here it ends at " + number(level_percent) + " %",
          "It is taken at the end of the fold line.");
    }
    double end_mm = chart.foldOffsetAt_mm(around, scapha ? Chart.SCAPHA_END : Chart.FOOT);
    if (scapha ? bite.fromFold_mm() > end_mm : bite.fromFold_mm() < end_mm) {
      warn(
          at + "_from_fold_mm",
          "a bite " + number(bite.fromFold_mm()) + " mm from the fold line",
          "at most " + number(Math.abs(end_mm)) + " mm at this level",
          scapha
              ? "It lies off the scapha, on the helix."
              : "It lies off the wall of the bowl, on its floor.");
    }
  }

  private double heightPercent(double around) {
    double[] place =
        chart.spot(around, Chart.FOLD).position(chart.topology(), auricle.mesh().positions());
    double low = chart.lowest_mm();
    return 100 * (place[2] - low) / (chart.highest_mm() - low);
  }

  private void warn(String where, String found, String expected, String remedy) {
    findings.warning(where, found, expected, remedy);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
