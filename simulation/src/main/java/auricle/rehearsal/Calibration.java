package auricle.rehearsal;

import auricle.anatomy.Level;
import auricle.diagnostics.BadInputException;
import auricle.healing.MomentResult;
import auricle.healing.Timeline;
import auricle.material.MaterialTables;
import auricle.plan.EarCase;
import auricle.plan.Plan;
import auricle.plan.Scoring;
import auricle.plan.TissueChoice;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Sets the one parameter of the time after the operation that nobody has measured and that outcome
 * can tell, the speed at which bites migrate, so that an open fold treated by sutures with
 * posterior scoring loses what common practice says. Secant steps in the logarithm of the speed.
 */
public final class Calibration {
  /** Slot of the row that is set. */
  public static final String SLOT = "bite.migration_mm_per_day_n";

  private static final double FIRST = 0.1;
  private static final double SECOND = 0.3;
  private static final double CLOSE = 0.0005;
  private static final int MOST_TRIALS = 8;

  private final EarCase ear;
  private final MaterialTables tables;
  private final RehearsalWatcher watcher;
  private final List<Trial> trials = new ArrayList<>();

  /**
   * One trial.
   *
   * @param value of the row
   * @param meanLoss that the model gives
   */
  public record Trial(double value, double meanLoss) {}

  /**
   * What came of it.
   *
   * @param value of the row, best of all trials
   * @param trials all of them, in order
   * @param rows outcome rows with what the model gives for them at that value
   */
  public record Fitted(double value, List<Trial> trials, List<OutcomeRow> rows) {
    /** Keeps its own copies. */
    public Fitted {
      trials = List.copyOf(trials);
      rows = List.copyOf(rows);
    }
  }

  /**
   * @param ear an open fold with sutures and posterior scoring
   */
  public Calibration(EarCase ear, MaterialTables tables, RehearsalWatcher watcher) {
    this.ear = ear;
    this.tables = tables;
    this.watcher = watcher;
  }

  /**
   * Fits.
   *
   * @return empty if an ear did not come to rest or the watcher asked to stop
   * @throws BadInputException if a row is not in the tables
   */
  public Optional<Fitted> fit() throws BadInputException {
    OutcomeRows outcome = OutcomeRows.load();
    double aim = outcome.aim();
    double value = FIRST;
    while (trials.size() < MOST_TRIALS && !watcher.cancelled()) {
      Optional<Timeline> line = year(ear.plan(), value);
      if (line.isEmpty()) {
        return Optional.empty();
      }
      trials.add(new Trial(value, meanLoss(line.get())));
      if (Math.abs(meanLoss(line.get()) - aim) < CLOSE || trials.size() == MOST_TRIALS) {
        Optional<Timeline> unscored = year(withoutScoring(), value);
        Map<String, Double> found = found(line.get(), unscored);
        return Optional.of(new Fitted(value, trials, outcome.with(found)));
      }
      value = trials.size() == 1 ? SECOND : next(aim);
    }
    return Optional.empty();
  }

  private double next(double aim) {
    Trial a = trials.get(trials.size() - 2);
    Trial b = trials.get(trials.size() - 1);
    double slope = (b.meanLoss() - a.meanLoss()) / Math.log(b.value() / a.value());
    double step = (aim - b.meanLoss()) / slope;
    return b.value() * Math.exp(Math.max(-1.5, Math.min(1.5, Double.isFinite(step) ? step : 1)));
  }

  private Plan withoutScoring() {
    return new Plan(ear.plan().operations().stream().filter(o -> !(o instanceof Scoring)).toList());
  }

  private Optional<Timeline> year(Plan plan, double value) throws BadInputException {
    String without = plan.equals(ear.plan()) ? "" : ", without scoring";
    watcher.progress("a year with %s = %.4g%s".formatted(SLOT, value, without), 0);
    Map<String, Double> overrides = new TreeMap<>(ear.tissue().overrides());
    overrides.put(SLOT, value);
    TissueChoice tissue = new TissueChoice(ear.tissue().rows(), overrides, ear.tissue().press());
    EarCase changed = new EarCase(ear.ear(), tissue, plan, ear.target());
    return Rehearsal.run(changed, RehearsalSettings.usual(), tables, watcher)
        .timeline()
        .filter(Timeline::converged);
  }

  static double meanLoss(Timeline line) {
    return (loss(line.last(), Level.UPPER) + loss(line.last(), Level.MIDDLE)) / 2;
  }

  private static double loss(MomentResult moment, Level level) {
    return moment.loss().getOrDefault(level, Double.NaN);
  }

  static Map<String, Double> found(Timeline line, Optional<Timeline> unscored) {
    double upper = loss(line.last(), Level.UPPER);
    double three = at(line, 91);
    Map<String, Double> found = new TreeMap<>();
    found.put("mean_loss", meanLoss(line));
    found.put("loss_upper", upper);
    found.put("loss_middle", loss(line.last(), Level.MIDDLE));
    found.put("loss_lower", loss(line.last(), Level.LOWER));
    found.put("by_3_months", three / upper);
    found.put("from_3_to_6_months", (at(line, 182) - three) / upper);
    unscored.ifPresent(other -> found.put("without_scoring", meanLoss(other) / meanLoss(line)));
    return found;
  }

  private static double at(Timeline line, double days) {
    return line.moments().stream()
        .filter(moment -> moment.days() == days)
        .mapToDouble(moment -> loss(moment, Level.UPPER))
        .findFirst()
        .orElse(Double.NaN);
  }
}
