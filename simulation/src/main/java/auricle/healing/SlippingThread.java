package auricle.healing;

import auricle.energy.ElasticThread;
import auricle.energy.ThreadLaw;
import java.util.List;
import java.util.Optional;

/**
 * A tied thread whose bites migrate, whose knot seats, which may lose its strength and let go.
 *
 * <p>Migration lengthens the loop and leaves the bites where they are in the tissue: a slip is
 * small against the span, and the stencil of the thread stays. With length L, compliance c of the
 * thread and slip s, T = (L − L₀ − σ(t) − s)/c. Over a step in which T goes linearly (see {@link
 * Migration#slip}: weights a, b)
 *
 * <pre>
 *   s₁ = s₀ + a T₀ + b T₁,   T₁ = (L − (L₀ + σ₁ + s₀ + a T₀)) / (c + b):
 * </pre>
 *
 * the thread of that moment is elastic, longer and softer, whatever the step. So that a long step
 * does not slip farther than the tension lasts, the weights are fitted to a tension that decays
 * with the compliance by which the thread's length followed its tension in the step before (its
 * own, where that is not known: then the step is backward Euler's).
 */
public final class SlippingThread implements TimePart {
  private static final double SLACK = 2 * ThreadLaw.Elastic.BLEND_TENSION;

  private final String name;
  private final ElasticThread thread;
  private final ThreadStrength strength;
  private final Migration migration;
  private final ScarGrowth growth;
  private final double tiedLength;
  private final double compliance;
  private double slip;
  private double length;
  private double observedCompliance;
  private double tension;
  private double time;
  private double end;
  private boolean gone;
  private StepWeights weights = new StepWeights(0, 0);

  /**
   * @param name what it is called in messages and results
   * @param thread tied: its law is elastic
   * @throws IllegalArgumentException if it is not tied
   */
  public SlippingThread(
      String name,
      ElasticThread thread,
      ThreadStrength strength,
      Migration migration,
      ScarGrowth growth) {
    if (!(thread.law() instanceof ThreadLaw.Elastic law)) {
      throw new IllegalArgumentException(name + " is not tied");
    }
    this.name = name;
    this.thread = thread;
    this.strength = strength;
    this.migration = migration;
    this.growth = growth;
    tiedLength = law.restLength_mm();
    compliance = law.restLength_mm() / law.axialStiffness_N();
    observedCompliance = compliance;
  }

  @Override
  public List<ElasticThread> terms() {
    return List.of(thread);
  }

  @Override
  public void aim(double from_s, double to_s) {
    time = from_s;
    end = to_s;
    StepWeights even = migration.slip(growth, from_s, to_s);
    weights = even.fitted((even.start() + even.end()) / observedCompliance);
    thread.follow(gone ? new ThreadLaw.ConstantPull(0) : law());
  }

  private ThreadLaw law() {
    double rest = tiedLength + migration.slack_mm(end) + slip + weights.start() * tension;
    return new ThreadLaw.Elastic(rest / (compliance + weights.end()), rest);
  }

  @Override
  public void arrive(double[] u) {
    double next = thread.tension(u);
    double longer = thread.length(u) - length;
    observedCompliance =
        next < tension && longer > 0 ? compliance + longer / (tension - next) : compliance;
    length += longer;
    slip += weights.start() * tension + weights.end() * next;
    tension = next;
    time = end;
    weights = new StepWeights(0, 0);
  }

  @Override
  public Optional<String> yields(double[] u) {
    double pull = thread.tension(u);
    return !gone && pull > strength.bears_n(end)
        ? Optional.of(name + ": " + strength.words(pull, end))
        : Optional.empty();
  }

  @Override
  public void give(double[] u) {
    gone = true;
    thread.letGo();
  }

  /** Lets it go for a trial, from load factor 0 to 1; the next {@link #aim} ties it again. */
  void cut() {
    thread.letGo();
  }

  /** How it is at the state arrived at last. */
  public ThreadAtMoment state() {
    return new ThreadAtMoment(
        name,
        tension,
        strength.knotPull_n(time),
        strength.tearThrough_n(),
        slip + migration.slack_mm(time),
        !gone && tension < SLACK,
        gone);
  }
}
