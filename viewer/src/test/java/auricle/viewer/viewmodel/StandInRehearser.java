package auricle.viewer.viewmodel;

import auricle.measurement.Evenness;
import auricle.measurement.HelicalShow;
import auricle.measurement.Measures;
import auricle.plan.EarCase;
import auricle.plan.FoldSuture;
import auricle.plan.Operation;
import auricle.rehearsal.Position;
import auricle.rehearsal.RehearsalWatcher;
import auricle.rehearsal.StepOutcome;
import auricle.rehearsal.ThreadState;
import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.Spot;
import auricle.viewer.scene.StandInEar;
import auricle.viewer.task.Caution;
import auricle.viewer.task.EarMap;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.task.Rehearser;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Answers as the simulation would, at once and with invented numbers; for tests of screens. */
public final class StandInRehearser implements Rehearser {
  private static final int ACROSS = 14;
  private static final int AROUND = 40;

  private boolean converges = true;

  /** Whether the states it gives are at rest. */
  public void converges(boolean yes) {
    converges = yes;
  }

  @Override
  public Optional<Rehearsed> tied(EarCase ear, RehearsalWatcher watcher) {
    List<Moment> steps = new ArrayList<>();
    steps.add(moment("before", 0, false, 0, List.of()));
    double back = 0;
    List<ThreadState> threads = new ArrayList<>();
    for (Operation o : ear.plan().enabled()) {
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
    return Optional.of(
        new Rehearsed(
            ear, map(), steps, List.of(), List.of(), List.of(caution), List.of("stand-in")));
  }

  @Override
  public Optional<Rehearsed> overAYear(Rehearsed r, RehearsalWatcher watcher) {
    double back = 1 - r.tied().measures().helixMastoidUpper_mm() / 20;
    List<Moment> times = new ArrayList<>();
    double[] days = {1, 7, 30, 91, 182, 365};
    String[] words = {"1 day", "1 week", "1 month", "3 months", "6 months", "12 months"};
    for (int i = 0; i < days.length; i++) {
      times.add(moment(words[i], days[i], true, back * (1 - 0.03 * i), r.tied().threads()));
    }
    return Optional.of(
        new Rehearsed(r.ear(), r.map(), r.steps(), times, List.of(), r.cautions(), r.basis()));
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
