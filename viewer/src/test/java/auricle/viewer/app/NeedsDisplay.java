package auricle.viewer.app;

import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Tests of windows are skipped where there is no display, except in continuous integration. */
public final class NeedsDisplay implements ExecutionCondition {
  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    boolean linux = System.getProperty("os.name", "").startsWith("Linux");
    if (!linux || System.getenv("DISPLAY") != null || System.getenv("CI") != null) {
      return ConditionEvaluationResult.enabled("there is a display, or there must be one");
    }
    return ConditionEvaluationResult.disabled("no display: run under xvfb-run to test the windows");
  }
}
