package auricle.fitting;

import auricle.diagnostics.Finding;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Measurements that no shape has together, in words: those that are missed, with the nearest values
 * that hold together, and those that pull the other way.
 */
final class Conflict {
  private static final double PULLS = 0.2;
  private final List<FitResidual> residuals;
  private final String at;

  Conflict(List<FitResidual> residuals, String at) {
    this.residuals = residuals;
    this.at = at;
  }

  /** One finding for each measurement that is missed. */
  List<Finding> findings() {
    return residuals.stream().filter(r -> !r.met()).map(this::finding).toList();
  }

  private Finding finding(FitResidual missed) {
    String others =
        residuals.stream()
            .filter(r -> r != missed && Math.abs(r.share()) > PULLS)
            .map(r -> r.figure().label() + " " + words(r.wanted(), r))
            .collect(Collectors.joining(", "));
    String found =
        words(missed.wanted(), missed)
            + " does not hold together with "
            + (others.isEmpty() ? "the rest of this ear" : others);
    return Finding.error(
        at + "/" + missed.figure().key(),
        found,
        "about "
            + words(missed.reached(), missed)
            + ", where all of them come nearest: "
            + nearest(),
        "Measure again, all at one sitting and from the same plane; then change what was misread.");
  }

  private String nearest() {
    return residuals.stream()
        .filter(r -> Math.abs(r.share()) > PULLS)
        .map(r -> r.figure().label() + " " + words(r.reached(), r))
        .collect(Collectors.joining(", "));
  }

  private static String words(double value, FitResidual residual) {
    return String.format(Locale.ROOT, "%.1f %s", value, residual.figure().unit());
  }
}
