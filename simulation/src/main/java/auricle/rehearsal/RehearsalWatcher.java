package auricle.rehearsal;

import java.util.List;

/** Is told how a rehearsal gets on, and may end it. Called on the thread that computes. */
public interface RehearsalWatcher {
  /** Hears nothing and never cancels. */
  RehearsalWatcher SILENT =
      new RehearsalWatcher() {
        @Override
        public void progress(String words, double share) {}

        @Override
        public boolean cancelled() {
          return false;
        }
      };

  /**
   * What is being done now.
   *
   * @param words for a user, such as "tying upper fold suture"
   * @param share of the whole that is done, 0 … 1, never falling
   */
  void progress(String words, double share);

  /**
   * A step has come to rest while others are still to be done.
   *
   * @param done the ear before the plan, then after each step so far
   */
  default void reached(List<StepResult> done) {}

  /**
   * The end of the plan under turned doses is foreseen; it is led to rest from there when this
   * returns. Not told where the turn is too great to be foreseen.
   */
  default void foreseen(Foreseen end) {}

  /** Whether to end as soon as may be; asked at every iteration of the solver. */
  boolean cancelled();
}
