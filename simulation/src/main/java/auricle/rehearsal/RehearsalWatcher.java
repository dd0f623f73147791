package auricle.rehearsal;

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

  /** Whether to end as soon as may be; asked at every iteration of the solver. */
  boolean cancelled();
}
