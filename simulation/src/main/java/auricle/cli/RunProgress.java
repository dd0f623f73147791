package auricle.cli;

import auricle.analysis.AnalysisResult;
import auricle.analysis.AnalysisWatcher;
import auricle.analysis.ShellSnapshot;
import auricle.analysis.StepResult;
import auricle.diagnostics.Finding;
import auricle.report.StepFiles;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.function.Supplier;

/** Tells the progress of a run and writes the shell at every step. */
final class RunProgress implements AnalysisWatcher {
  private static final long QUIET_NS = 1_000_000_000L;

  private final PrintWriter out;
  private final boolean quiet;
  private final Cancellation cancellation;
  private final StepFiles files;
  private final boolean noFields;
  private long lastWord = System.nanoTime();
  private long prepared = lastWord;

  RunProgress(
      PrintWriter out,
      boolean quiet,
      Cancellation cancellation,
      StepFiles files,
      boolean noFields) {
    this.out = out;
    this.quiet = quiet;
    this.cancellation = cancellation;
    this.files = files;
    this.noFields = noFields;
  }

  @Override
  public boolean cancelled() {
    return cancellation.asked();
  }

  @Override
  public void warned(Finding finding) {
    out.println("warning: " + finding.line());
    out.flush();
  }

  @Override
  public void prepared(AnalysisResult.Size size) {
    prepared = System.nanoTime();
    say(
        "%d vertices, %d triangles, %d unknowns"
            .formatted(size.vertices(), size.triangles(), size.freeUnknowns()));
  }

  @Override
  public void iterated(double loadFactor, int iteration, double residual) {
    if (System.nanoTime() - lastWord > QUIET_NS) {
      say(
          String.format(
              Locale.ROOT,
              "  towards load factor %.6g: iteration %d, residual %.3g N",
              loadFactor,
              iteration,
              residual));
    }
  }

  @Override
  public void stepped(StepResult step, Supplier<ShellSnapshot> snapshot) {
    say(
        String.format(
            Locale.ROOT,
            "step %d, load factor %.6g: %s",
            step.number(),
            step.loadFactor(),
            step.converged() ? "converged" : "NOT CONVERGED, " + step.reason()));
    if (step.converged() && !noFields) {
      try {
        files.write(step, snapshot.get());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** When the model was ready to be solved, by {@link System#nanoTime}. */
  long preparedAt() {
    return prepared;
  }

  private void say(String line) {
    lastWord = System.nanoTime();
    if (!quiet) {
      out.println(line);
      out.flush();
    }
  }
}
