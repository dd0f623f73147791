package auricle.viewer.viewmodel;

import auricle.anatomy.Level;
import auricle.measurement.Evenness;
import auricle.measurement.Figure;
import auricle.measurement.HelicalShow;
import auricle.measurement.Measures;
import auricle.plan.Dose;
import auricle.plan.EarCase;
import auricle.plan.FoldSuture;
import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.plan.Target;
import auricle.rehearsal.Position;
import auricle.rehearsal.RehearsalWatcher;
import auricle.rehearsal.StepOutcome;
import auricle.rehearsal.ThreadState;
import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.Spot;
import auricle.viewer.scene.StandInEar;
import auricle.viewer.task.Band;
import auricle.viewer.task.Caution;
import auricle.viewer.task.EarMap;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Reaction;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.task.Rehearsed.Reach;
import auricle.viewer.task.Rehearser;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Answers as the simulation would, at once and with invented numbers; for tests of screens. */
public class StandInRehearser implements Rehearser {
  private static final int ACROSS = 14;
  private static final int AROUND = 40;

  private boolean converges = true;
  private Optional<EarCase> last = Optional.empty();

  /** Whether the states it gives are at rest. */
  public void converges(boolean yes) {
    converges = yes;
  }

  @Override
  public Optional<Rehearsed> atOnce(
      EarCase ear, RehearsalWatcher watcher, Consumer<Rehearsed> foreseen) {
    boolean known = last.filter(e -> e.ear().equals(ear.ear())).isPresent();
    int before = last.map(e -> e.plan().enabled().size()).orElse(0);
    boolean turned = known && before == ear.plan().enabled().size();
    if (known && !turned) {
      return Optional.empty();
    }
    Rehearsed all = tied(turned ? ear : ear.withPlan(Plan.of()), watcher, p -> {}).orElseThrow();
    Reach reach = turned ? Reach.END : Reach.BEFORE;
    return Optional.of(
        new Rehearsed(
            ear,
            reach,
            all.map(),
            all.steps(),
            List.of(),
            List.of(),
            List.of(),
            all.cautions(),
            all.basis()));
  }

  @Override
  public Optional<Rehearsed> tied(
      EarCase ear, RehearsalWatcher watcher, Consumer<Rehearsed> onTheWay) {
    last = Optional.of(ear);
    List<Moment> steps = new ArrayList<>();
    steps.add(moment("before", 0, false, 0, List.of()));
    double back = 0;
    List<ThreadState> threads = new ArrayList<>();
    for (Operation o : ear.plan().enabled()) {
      if (steps.size() > 1) {
        onTheWay.accept(result(ear, Reach.PART, steps, List.of()));
      }
      double pull = o instanceof FoldSuture f ? f.tie().dose().value() : 0.1;
      back += 0.3 * pull;
      if (o instanceof FoldSuture f) {
        threads.add(
            new ThreadState(
                o.name(),
                true,
                pull,
                5.88,
                13.5,
                false,
                22,
                true,
                List.of(
                    new Position(12, -12, 12),
                    new Position(11, -18, 12),
                    new Position(11, -18, 5),
                    new Position(12, -12, 5))));
      }
      steps.add(moment(o.name(), 0, false, Math.min(0.7, back), threads));
    }
    Caution caution =
        new Caution(
            "The middle stands further out than upper and lower third.",
            "18.2 mm against 16-18 mm, target of the scenario",
            "",
            List.of(50.0));
    return Optional.of(result(ear, Reach.STEPS, steps, List.of(caution)));
  }

  private static Rehearsed result(
      EarCase ear, Reach reach, List<Moment> steps, List<Caution> cautions) {
    return new Rehearsed(
        ear, reach, map(), steps, List.of(), List.of(), List.of(), cautions, List.of("stand-in"));
  }

  @Override
  public Optional<Rehearsed> overAYear(Rehearsed r, int samples, RehearsalWatcher watcher) {
    double back = 1 - r.tied().measures().helixMastoidUpper_mm() / 20;
    List<Moment> times = new ArrayList<>();
    double[] days = {1, 7, 30, 91, 182, 365};
    String[] words = {"1 day", "1 week", "1 month", "3 months", "6 months", "12 months"};
    for (int i = 0; i < days.length; i++) {
      times.add(moment(words[i], days[i], true, back * (1 - 0.03 * i), r.tied().threads()));
    }
    for (int i = 1; i <= samples; i++) {
      watcher.progress("tissue sample " + i + " of " + samples, 1);
    }
    return watcher.cancelled()
        ? Optional.empty()
        : Optional.of(r.with(times, samples == 0 ? List.of() : bands(times)));
  }

  private static List<Band> bands(List<Moment> times) {
    List<Band> bands = new ArrayList<>();
    for (Moment m : times) {
      for (Level level : Level.values()) {
        double now = Balance.distance(level).applyAsDouble(m.measures());
        bands.add(new Band(m.days(), Target.key(level), now - 1, now + 2));
      }
    }
    return bands;
  }

  @Override
  public Optional<Rehearsed> withReactions(Rehearsed r, RehearsalWatcher watcher) {
    List<Reaction> found = new ArrayList<>();
    for (Operation o : r.ear().plan().enabled()) {
      for (Dose d : o.doses()) {
        double strength = o instanceof FoldSuture ? 0.1 : 0.0001;
        found.add(
            new Reaction(
                o.name(),
                d.key(),
                d.label(),
                "+" + d.step() + " " + d.unit(),
                Map.of(Figure.HELIX_MASTOID_UPPER, -strength, Figure.LOBULE_MASTOID, strength)));
      }
    }
    return Optional.of(r.with(found));
  }

  private Moment moment(
      String label, double days, boolean healed, double back, List<ThreadState> threads) {
    EarSurface s = StandInEar.of(back);
    List<Spot> rim = new ArrayList<>();
    List<Spot> fold = new ArrayList<>();
    for (int i = 0; i <= AROUND; i++) {
      rim.add(spot(s, i * (ACROSS + 1) + ACROSS - 1));
      fold.add(spot(s, i * (ACROSS + 1) + 7));
    }
    List<HelicalShow> show = new ArrayList<>();
    for (int l = 20; l <= 95; l += 5) {
      show.add(new HelicalShow(l, 6 - 8 * back - 0.002 * (l - 60) * (l - 60)));
    }
    Measures m =
        new Measures(
            20 * (1 - back),
            22 * (1 - 0.8 * back),
            19 * (1 - 0.4 * back),
            17 * (1 - 0.1 * back),
            130 - 60 * back,
            128 - 50 * back,
            45 - 20 * back,
            14,
            5 - 8 * back,
            4 - 6 * back,
            10 * back,
            12,
            show,
            new Evenness(5, 80, 0),
            new Evenness(4, 60, 0),
            62,
            33);
    return new Moment(
        label,
        days,
        healed,
        s,
        Map.of("rim", rim, "fold", fold),
        m,
        threads,
        new StepOutcome(
            converges,
            false,
            converges ? "forces balance" : "no balance was found",
            12,
            1e-9,
            1e-6,
            List.of()),
        Optional.empty());
  }

  private static Spot spot(EarSurface s, int v) {
    return new Spot(s.points()[3 * v], s.points()[3 * v + 1], s.points()[3 * v + 2]);
  }

  private static EarMap map() {
    return new EarMap() {
      @Override
      public OnTriangle besideFold(double level, double fromFold) {
        return at(level, 7 + fromFold / 2.2);
      }

      @Override
      public OnTriangle onWall(double level, double wall) {
        return at(level, 2 + wall / 20);
      }

      @Override
      public OnTriangle onCauda(double fromTip) {
        return at(20 + fromTip, 12.5);
      }

      @Override
      public OnTriangle onRim(double level) {
        return at(level, 13);
      }

      private OnTriangle at(double level, double across) {
        double i = Math.max(0, Math.min(AROUND - 0.01, AROUND * (0.95 - level / 110)));
        double j = Math.max(0, Math.min(ACROSS - 0.01, across));
        double v = i - Math.floor(i);
        double u = j - Math.floor(j);
        int quad = (int) i * ACROSS + (int) j;
        return u >= v ? new OnTriangle(2 * quad, u - v, v) : new OnTriangle(2 * quad + 1, u, v - u);
      }
    };
  }
}
