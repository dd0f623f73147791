package auricle.assessment;

import auricle.plan.BowlStrip;
import auricle.plan.ConchaMastoidSuture;
import auricle.plan.FoldSuture;
import auricle.plan.FullThicknessIncision;
import auricle.plan.Operation;
import auricle.plan.Scoring;
import auricle.plan.SkinStrip;
import auricle.plan.Tie;
import auricle.plan.TiedOperation;
import java.util.List;
import java.util.Locale;

/** What to beware of in a plan and its threads. */
final class PlanCautions {
  private final Limits limits;
  private final List<Operation> done;
  private final List<Caution> cautions;

  PlanCautions(Limits limits, List<Operation> done, List<Caution> cautions) {
    this.limits = limits;
    this.done = done;
    this.cautions = cautions;
  }

  /** Adds what follows from the operations. */
  void addForPlan(double bowlDepth_mm) {
    for (Operation operation : done) {
      if (operation instanceof FullThicknessIncision) {
        String words = "The edges of the full-thickness cut will show from the front";
        add(CautionKind.FULL_THICKNESS_CUT, "full_thickness_cut", words, 1, operation.name());
      }
    }
    if (has(SkinStrip.class) && done.stream().allMatch(o -> o instanceof SkinStrip)) {
      String words = "Skin alone is relied on; it stretches and does not hold the ear";
      add(CautionKind.SKIN_ALONE, "skin_alone", words, done.size(), first(SkinStrip.class));
    }
    if (has(Scoring.class) && !has(TiedOperation.class)) {
      String words = "Scoring alone is relied on; without sutures it recurs most often";
      add(CautionKind.SCORING_ALONE, "scoring_alone", words, 1, first(Scoring.class));
    }
    conchaMastoidAlone(bowlDepth_mm);
  }

  private void conchaMastoidAlone(double bowlDepth_mm) {
    boolean alone =
        has(ConchaMastoidSuture.class) && !has(BowlStrip.class) && !has(FoldSuture.class);
    if (alone && bowlDepth_mm > limits.of("concha_mastoid_alone").value()) {
      String words =
          String.format(
              Locale.ROOT,
              "A concha-mastoid suture alone is relied on with a bowl %.1f mm deep",
              bowlDepth_mm);
      String where = first(ConchaMastoidSuture.class);
      add(CautionKind.CONCHA_MASTOID_ALONE, "concha_mastoid_alone", words, bowlDepth_mm, where);
    }
  }

  /** Adds what follows from what the threads carry. */
  void addForThreads(List<ThreadLoad> threads) {
    for (ThreadLoad now : threads) {
      ThreadLoad thread = asTied(now);
      slack(thread);
      share(
          CautionKind.TENSION_NEAR_KNOT_PULL,
          "knot_pull_share",
          thread,
          thread.knotPull_n(),
          "its knot-pull strength");
      share(
          CautionKind.TENSION_NEAR_TEAR_THROUGH,
          "tear_through_share",
          thread,
          thread.tearThrough_n(),
          "the tension that tears out its bites");
    }
  }

  /** With the tension that was asked for where it let go under that. */
  private ThreadLoad asTied(ThreadLoad thread) {
    double bears = Math.min(thread.knotPull_n(), thread.tearThrough_n());
    return done.stream()
        .filter(o -> o.name().equals(thread.name()))
        .filter(o -> o instanceof TiedOperation tied && tied.tie() instanceof Tie.Tension)
        .mapToDouble(o -> ((TiedOperation) o).tie().dose().value())
        .filter(asked -> asked > bears)
        .mapToObj(
            asked ->
                new ThreadLoad(thread.name(), asked, thread.knotPull_n(), thread.tearThrough_n()))
        .findFirst()
        .orElse(thread);
  }

  private void slack(ThreadLoad thread) {
    if (thread.tension_n() < limits.of("slack_thread").value()) {
      String words =
          thread.name() + " is slack: its bites lie nearer than it is tied, so it carries nothing";
      add(CautionKind.SLACK_THREAD, "slack_thread", words, thread.tension_n(), thread.name());
    }
  }

  private void share(
      CautionKind kind, String key, ThreadLoad thread, double bears_n, String strength) {
    double share = thread.tension_n() / bears_n;
    if (share > limits.of(key).value()) {
      String words =
          String.format(
              Locale.ROOT,
              "%s %s %.2f N, %.0f %% of %s (%.2f N)",
              thread.name(),
              share > 1 ? "was asked to carry" : "carries",
              thread.tension_n(),
              100 * share,
              strength,
              bears_n);
      add(kind, key, words, share, thread.name());
    }
  }

  private void add(CautionKind kind, String key, String words, double measured, String where) {
    cautions.add(new Caution(kind, words, measured, limits.of(key), where));
  }

  private boolean has(Class<?> kind) {
    return done.stream().anyMatch(kind::isInstance);
  }

  private String first(Class<?> kind) {
    return done.stream().filter(kind::isInstance).findFirst().map(Operation::name).orElse("");
  }
}
