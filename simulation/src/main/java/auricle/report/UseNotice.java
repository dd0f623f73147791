package auricle.report;

/** What every result and every help text says about its use. */
public final class UseNotice {
  /** For rehearsal, teaching and research. */
  public static final String TEXT =
      "For rehearsal, teaching and research. Not a medical device, not validated for any patient; "
          + "defers to local rules and to licensed clinical judgement.";

  private UseNotice() {}
}
