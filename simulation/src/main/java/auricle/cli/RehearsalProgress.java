package auricle.cli;

import auricle.rehearsal.RehearsalWatcher;
import java.io.PrintWriter;
import java.util.Locale;

/** Tells the progress of a rehearsal, a line for each thing that is begun. */
final class RehearsalProgress implements RehearsalWatcher {
  private final PrintWriter out;
  private final boolean quiet;
  private final Cancellation cancellation;
  private final String ear;
  private String last = "";

  /**
   * @param ear what stands before every line; empty for a single ear
   */
  RehearsalProgress(PrintWriter out, boolean quiet, Cancellation cancellation, String ear) {
    this.out = out;
    this.quiet = quiet;
    this.cancellation = cancellation;
    this.ear = ear;
  }

  @Override
  public synchronized void progress(String words, double share) {
    if (!quiet && !words.equals(last)) {
      out.println(String.format(Locale.ROOT, "%3.0f %%  %s%s", 100 * share, ear, words));
      out.flush();
      last = words;
    }
  }

  @Override
  public boolean cancelled() {
    return cancellation.asked();
  }
}
