package auricle.cli;

import auricle.rehearsal.RehearsalWatcher;
import java.io.PrintWriter;
import java.util.Locale;

/** Tells the progress of a rehearsal, a line for each thing that is begun. */
final class RehearsalProgress implements RehearsalWatcher {
  private static final long QUIET_NS = 2_000_000_000L;

  private final PrintWriter out;
  private final boolean quiet;
  private final Cancellation cancellation;
  private final String ear;
  private String last = "";
  private long lastWord = System.nanoTime();

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
    boolean news = !words.equals(last) || System.nanoTime() - lastWord > QUIET_NS;
    if (!quiet && news) {
      out.println(String.format(Locale.ROOT, "%3.0f %%  %s%s", 100 * share, ear, words));
      out.flush();
      last = words;
      lastWord = System.nanoTime();
    }
  }

  @Override
  public boolean cancelled() {
    return cancellation.asked();
  }
}
