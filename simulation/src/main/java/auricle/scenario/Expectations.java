package auricle.scenario;

import auricle.anatomy.Side;
import auricle.assessment.CautionKind;
import auricle.assessment.SideDifference;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.Sides;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Holds what came out of a rehearsal against what a scenario expects. */
public final class Expectations {
  private final Side side;
  private final Course own;
  private final Optional<Course> other;

  private Expectations(Side side, Course own, Optional<Course> other) {
    this.side = side;
    this.own = own;
    this.other = other;
  }

  /**
   * Every expectation of an ear, met or not. Left out are those of times after the operation where
   * none was rehearsed, and cautions where the result was not assessed.
   *
   * @param results of the ears that were rehearsed, this one among them
   */
  public static List<ExpectationResult> check(ScenarioEar ear, Map<Side, RehearsalResult> results) {
    Map<Side, Course> courses = new EnumMap<>(Side.class);
    List<SideDifference> sides = Sides.of(results);
    results.forEach((side, result) -> courses.put(side, new RehearsedCourse(result, sides)));
    Course own = courses.remove(ear.side());
    if (own == null) {
      throw new IllegalArgumentException("the ear was not rehearsed: " + ear.side());
    }
    return check(ear, own, courses.values().stream().findFirst());
  }

  /**
   * Every expectation of an ear, met or not. Left out are those of times after the operation where
   * none was rehearsed, and cautions where the result was not assessed.
   */
  static List<ExpectationResult> check(ScenarioEar ear, Course own, Optional<Course> other) {
    Expectations expectations = new Expectations(ear.side(), own, other);
    List<ExpectationResult> results = new ArrayList<>();
    Expected expected = ear.expected();
    results.add(expectations.equilibrium(expected.converged()));
    own.cautions().ifPresent(raised -> results.addAll(expectations.cautions(expected, raised)));
    expected.figures().stream()
        .filter(x -> own.timed() || !(x.from().isTime() || x.to().isTime()))
        .forEach(x -> results.addAll(expectations.figure(x)));
    return List.copyOf(results);
  }

  /** Whether all are met. */
  public static boolean allMet(List<ExpectationResult> results) {
    return results.stream().allMatch(ExpectationResult::met);
  }

  private ExpectationResult equilibrium(boolean expected) {
    return words("equilibrium of every step", found(expected), found(own.converged()));
  }

  private static String found(boolean converged) {
    return converged ? "found" : "not found";
  }

  private List<ExpectationResult> cautions(Expected expected, Set<CautionKind> raised) {
    List<ExpectationResult> results = new ArrayList<>();
    expected.cautions().forEach(c -> results.add(caution(c, true, raised.contains(c))));
    expected.noCautions().forEach(c -> results.add(caution(c, false, raised.contains(c))));
    return results;
  }

  private ExpectationResult caution(CautionKind kind, boolean expected, boolean raised) {
    return words("caution '" + kind.key() + "'", raised(expected), raised(raised));
  }

  private static String raised(boolean raised) {
    return raised ? "raised" : "not raised";
  }

  private ExpectationResult words(String what, String expected, String found) {
    boolean met = expected.equals(found);
    return new ExpectationResult(side, what, expected, Double.NaN, found, "", met, "");
  }

  /** One result for each thing that an expectation asks of its number. */
  private List<ExpectationResult> figure(Expectation x) {
    List<ExpectationResult> results = new ArrayList<>();
    double value = new ExpectedValue(x).in(own).orElse(Double.NaN);
    x.range()
        .ifPresent(
            r ->
                results.add(
                    number(
                        x,
                        number(r.low()) + " to " + number(r.high()),
                        value,
                        value >= r.low() && value <= r.high())));
    x.sign().ifPresent(s -> results.add(sign(x, s, value)));
    x.otherSide().ifPresent(s -> results.add(otherSide(x, s, value)));
    return results;
  }

  private ExpectationResult sign(Expectation x, Expectation.Sign sign, double value) {
    boolean up = sign == Expectation.Sign.RISES;
    String expected =
        x.kind() == Expectation.Kind.CHANGE ? (up ? "rises" : "falls") : up ? "above" : "below";
    double signed = up ? value : -value;
    boolean met = x.byAtLeast() > 0 ? signed >= x.byAtLeast() : signed > 0;
    return number(x, expected + by(x), value, met);
  }

  private static String by(Expectation x) {
    return x.byAtLeast() > 0 ? " by at least " + number(x.byAtLeast()) : "";
  }

  /** Changes are compared by magnitude, values as they are. */
  private ExpectationResult otherSide(Expectation x, Expectation.OtherSide side, double value) {
    OptionalDouble there =
        other.map(o -> new ExpectedValue(x).in(o)).orElse(OptionalDouble.empty());
    double compared = there.orElse(Double.NaN);
    boolean change = x.kind() == Expectation.Kind.CHANGE;
    double more = change ? Math.abs(value) - Math.abs(compared) : value - compared;
    double signed = side == Expectation.OtherSide.MORE ? more : -more;
    boolean met = x.byAtLeast() > 0 ? signed >= x.byAtLeast() : signed > 0;
    String word = side == Expectation.OtherSide.MORE ? "more" : "less";
    return number(x, word + " than the other ear's " + number(compared) + by(x), value, met);
  }

  private ExpectationResult number(Expectation x, String expected, double value, boolean met) {
    ExpectedValue meant = new ExpectedValue(x);
    String found = Double.isNaN(value) ? "nothing" : number(value);
    return new ExpectationResult(
        side, meant.words(), expected, value, found, meant.unit(), met, x.because());
  }

  private static String number(double value) {
    return Double.isNaN(value)
        ? "nothing"
        : String.format(Locale.ROOT, Math.abs(value) < 10 ? "%.2f" : "%.1f", value);
  }
}
