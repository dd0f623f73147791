package auricle.healing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.energy.DirectorMoment;
import auricle.energy.EnergyTerm;
import auricle.energy.PointForce;
import auricle.energy.ShellState;
import auricle.energy.VertexPoint;
import auricle.equilibrium.TotalEnergy;
import auricle.material.Prony;
import auricle.numerics.NewtonMinimiser;
import auricle.testing.Check;
import auricle.verification.ReferenceTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A shell strip against the closed forms of a standard linear solid and of a three-term series, in
 * bending and in stretch: tables visco_*.csv, whose heads give formula and constants.
 */
class RelaxingLayerTest {
  private static final Prony STANDARD = new Prony(List.of(new Prony.Term(0.4, 10)));
  private static final Prony THREE =
      new Prony(
          List.of(new Prony.Term(0.2, 1), new Prony.Term(0.15, 30), new Prony.Term(0.15, 1000)));
  private static final double[] Y = {0, 1, 0};
  private static final String SOURCE = "closed form in the head of the table (computed)";
  private static final TimeStepSettings FINE =
      TimeStepSettings.USUAL.withTolerance(1e-4).withFirst(1e-2);

  /** 0.1 % of the first value, as asked of the model. */
  private static final double SHARE = 1e-3;

  private static final double LITTLE = 0.03;

  /** A triangle halfway along the strip. */
  private static final int MIDDLE = 16;

  /** How the strip is deformed, and by how much of its length or how many radians. */
  private enum Way {
    BEND(0.2),
    STRETCH(1e-4 * ViscousStrip.LENGTH);

    private final double amount;

    Way(double amount) {
      this.amount = amount;
    }

    TotalEnergy hold(ViscousStrip strip) {
      return this == BEND ? strip.turned(amount) : strip.drawn(amount);
    }

    double answer(ViscousStrip strip, TotalEnergy energy) {
      return (this == BEND ? strip.turn(energy) : strip.elongation(energy)) / amount;
    }

    double load(ViscousStrip strip, TotalEnergy energy) {
      double stiffness =
          this == BEND ? ViscousStrip.BEND_STIFFNESS : ViscousStrip.STRETCH_STIFFNESS;
      return strip.reaction(energy, this == BEND) * ViscousStrip.LENGTH / (stiffness * amount);
    }

    /** Curvature or stretch along the strip in its middle. */
    double strain(ShellState state) {
      return this == BEND ? state.curvature(MIDDLE, 0) : state.strain(MIDDLE, 0);
    }

    /** Steps are judged in mm: a strip that is stretched a little needs smaller ones. */
    TimeStepSettings settings() {
      return this == BEND ? FINE : FINE.withTolerance(1e-7);
    }
  }

  @ParameterizedTest
  @EnumSource
  void standardSolidIsHeldAndReleasedAsTabulated(Way way) {
    holdAndRelease(way, STANDARD, "visco_sls_hold_release.csv");
  }

  @ParameterizedTest
  @EnumSource
  void threeTermSeriesIsHeldAndReleasedAsTabulated(Way way) {
    holdAndRelease(way, THREE, "visco_prony3_hold_release.csv");
  }

  private static void holdAndRelease(Way way, Prony prony, String file) {
    ReferenceTable table = ReferenceTable.read(file);
    double[] hold = table.column("hold_time");
    double[] after = table.column("time_after_release");
    double[] moment = table.column("M_over_E0Ikappa0_at_end_of_hold");
    double[] left = table.column("kappa_over_kappa0_after_release");
    int row = 0;
    while (row < hold.length) {
      double held = hold[row];
      ViscousStrip strip = new ViscousStrip(prony, way.settings());
      TotalEnergy energy = way.hold(strip);
      assertTrue(strip.steps(energy, 0).reach(held).converged());
      Check.close(way.load(strip, energy), moment[row], SHARE * moment[row], SOURCE);
      TotalEnergy free = strip.letGo(energy);
      TimeSteps steps = strip.steps(free, held);
      assertTrue(steps.settle().converged());
      for (; row < hold.length && hold[row] == held; row++) {
        assertTrue(steps.reach(held + after[row]).converged());
        Check.close(way.answer(strip, free), left[row], SHARE, 1, SOURCE);
      }
    }
  }

  /** What is held carries the tabulated share; the rest of its strain is that of no stress. */
  @ParameterizedTest
  @EnumSource
  void strainFromTheUnstressedShapeIsWhatIsCarried(Way way) {
    ReferenceTable table = ReferenceTable.read("visco_prony3_hold_release.csv");
    double[] hold = table.column("hold_time");
    double[] moment = table.column("M_over_E0Ikappa0_at_end_of_hold");
    double held = -1;
    for (int row = 0; row < hold.length; row++) {
      if (hold[row] != held) {
        held = hold[row];
        ViscousStrip strip = new ViscousStrip(THREE, way.settings());
        TotalEnergy energy = way.hold(strip);
        assertTrue(strip.steps(energy, 0).reach(held).converged());
        double whole = way.strain(strip.whole(energy));
        double carried = way.strain(strip.carried(energy));
        Check.close(carried / whole, moment[row], SHARE * moment[row], SOURCE);
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void standardSolidCreepsAsTabulated(Way way) {
    ReferenceTable table = ReferenceTable.read("visco_sls_creep_constant_moment.csv");
    double[] time = table.column("t");
    double[] compliance = table.column("kappa_I_over_M");
    ViscousStrip strip = new ViscousStrip(STANDARD, way.settings());
    TotalEnergy energy = strip.under(loads(way, strip));
    TimeSteps steps = strip.steps(energy, 0);
    for (int row = 0; row < time.length; row++) {
      assertTrue(steps.reach(time[row]).converged());
      Check.within(SHARE, way.answer(strip, energy), compliance[row], SOURCE);
    }
  }

  /** The loads that deform the strip by its amount at once. */
  private static List<EnergyTerm> loads(Way way, ViscousStrip strip) {
    double stiffness =
        way == Way.BEND ? ViscousStrip.BEND_STIFFNESS : ViscousStrip.STRETCH_STIFFNESS;
    double full = stiffness * way.amount / ViscousStrip.LENGTH;
    Map<Integer, Double> shares = strip.endShares();
    if (way == Way.BEND) {
      shares.replaceAll((v, share) -> share * full);
      return List.of(new DirectorMoment("turn", strip.directors, Y, shares));
    }
    List<EnergyTerm> pulls = new ArrayList<>();
    double[] rest = strip.mesh().unknowns();
    shares.forEach(
        (v, share) ->
            pulls.add(
                new PointForce(
                    "pull", new VertexPoint(v), rest, new double[] {share * full, 0, 0})));
    return pulls;
  }

  @Test
  void errorFallsWithTheSquareOfTheStep() {
    List<Double> errors = new ArrayList<>();
    for (int halving = 0; halving < 5; halving++) {
      errors.add(errorOfRelease(10 / Math.pow(2, halving)));
    }
    for (int i = 1; i < errors.size(); i++) {
      double order = Math.log(errors.get(i - 1) / errors.get(i)) / Math.log(2);
      assertTrue(order > 1.9 && order < 2.2, "errors by halving the step: " + errors);
    }
  }

  /** Largest error after release from a hold of 10 s, in even steps, over the rows to 20 s. */
  private static double errorOfRelease(double step) {
    ReferenceTable table = ReferenceTable.read("visco_sls_hold_release.csv");
    ViscousStrip strip =
        new ViscousStrip(STANDARD, TimeStepSettings.USUAL.withTolerance(1e3).withFirst(step));
    // bent a little only, so that the mesh's own error stays below that of the steps
    TotalEnergy energy = strip.turned(LITTLE);
    strip.steps(energy, 0).reach(10);
    TotalEnergy free = strip.letGo(energy);
    TimeSteps steps = strip.steps(free, 10);
    steps.settle();
    for (double t = step; t <= 20; t += step) {
      steps.reach(10 + t);
    }
    double expected = 0;
    for (int row = 0; row < table.rows(); row++) {
      if (table.column("hold_time")[row] == 10 && table.column("time_after_release")[row] == 20) {
        expected = table.column("kappa_over_kappa0_after_release")[row];
      }
    }
    return Math.abs(strip.turn(free) / LITTLE - expected);
  }

  /**
   * A Maxwell body and a spring, both held at 1 for t, then free: the curvature left at last is the
   * mean of what both have grown to, weighted by g τ (forces of both cancel at any time).
   */
  @Test
  void whatGrewIntoABendStaysAsTheClosedFormSays() {
    double g = STANDARD.terms().get(0).fraction();
    double tau = STANDARD.terms().get(0).time_s();
    double growing = 200;
    double held = 60;
    ViscousStrip strip = new ViscousStrip(STANDARD, growing, FINE);
    TotalEnergy energy = strip.turned(0.2);
    assertTrue(strip.steps(energy, 0).reach(held).converged());
    TotalEnergy free = strip.letGo(energy);
    TimeSteps steps = strip.steps(free, held);
    assertTrue(steps.settle().converged() && steps.reach(held + 400).converged());
    double weights = g * tau + (1 - g) * growing;
    double grown = -Math.expm1(-held / growing);
    double left = (g * tau * -Math.expm1(-held / tau) + (1 - g) * growing * grown) / weights;
    Check.close(strip.turn(free) / 0.2, left, SHARE, 1, "closed form beside the test (computed)");
  }

  /** Work done on a body at rest is stored or lost, never negative: at any time, in any cycle. */
  @ParameterizedTest
  @CsvSource({
    "0.3, Infinity",
    "3, Infinity",
    "40, Infinity",
    "2000, Infinity",
    "0.3, 50",
    "40, 50",
    "40, 5000"
  })
  void noEnergyIsCreatedWhileTheStripIsBentToAndFro(double step_s, double remodelling_s) {
    ViscousStrip strip = new ViscousStrip(THREE, remodelling_s, FINE);
    TotalEnergy energy = strip.turned(0.2);
    NewtonMinimiser minimiser = new NewtonMinimiser(energy);
    double work = 0.5 * strip.reaction(energy, true) * 0.2;
    double most = work;
    double angle = 0.2;
    for (int n = 1; n <= 48; n++) {
      double next = 0.2 * Math.cos(Math.PI * n / 8);
      double before = strip.reaction(energy, true);
      strip.sheet().aim((n - 1) * step_s, n * step_s);
      energy.setLoadFactor(next / 0.2);
      assertTrue(minimiser.minimise(energy.free(), FINE.newton(), line -> true).converged());
      strip.sheet().arrive(energy.unknowns());
      work += 0.5 * (before + strip.reaction(energy, true)) * (next - angle);
      angle = next;
      assertTrue(work > -1e-9 * most, "work " + work + " mJ after step " + n);
    }
    assertTrue(work > 0.01 * most, "six cycles must have cost work, not " + work);
  }
}
