package auricle.analysis;

import auricle.diagnostics.Finding;
import java.util.function.Supplier;

/** Follows a run and may end it. Called from the solving thread. */
public interface AnalysisWatcher {
  /** Watches nothing. */
  AnalysisWatcher NONE = new AnalysisWatcher() {};

  /** Whether the run should end as soon as it can. */
  default boolean cancelled() {
    return false;
  }

  /** Something in the input is doubtful. */
  default void warned(Finding finding) {}

  /** The model is ready to be solved. */
  default void prepared(AnalysisResult.Size size) {}

  /** An iteration has been made towards a load factor; the residual is in N. */
  default void iterated(double loadFactor, int iteration, double residual) {}

  /**
   * A load step that was asked for is done.
   *
   * @param step its result
   * @param snapshot the shell at it; to be asked for within this call only
   */
  default void stepped(StepResult step, Supplier<ShellSnapshot> snapshot) {}
}
