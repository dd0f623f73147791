package auricle.anatomy;

import auricle.geometry.Vectors;
import java.util.Arrays;

/** Arc length along a section at its real size, from the fold line. */
final class ProfileLengths {
  private static final int STEPS = 100;
  private final double[] lengths = new double[STEPS + 1];
  private final double fold;

  ProfileLengths(Section section) {
    double[] last = section.point(0);
    for (int i = 1; i <= STEPS; i++) {
      double[] next = section.point((double) i / STEPS);
      lengths[i] = lengths[i - 1] + Vectors.norm(Vectors.subtract(next, last));
      last = next;
    }
    fold = length(Section.FOLD);
  }

  private double length(double across) {
    double place = Math.min(1, Math.max(0, across)) * STEPS;
    int i = Math.min(STEPS - 1, (int) place);
    return lengths[i] + (place - i) * (lengths[i + 1] - lengths[i]);
  }

  /** Arc length from the fold to a place across, positive towards the rim, mm. */
  double offset(double across) {
    return length(across) - fold;
  }

  /** Place across at an arc length from the fold. */
  double acrossAt(double offset) {
    double goal = Math.min(lengths[STEPS], Math.max(0, offset + fold));
    int found = Arrays.binarySearch(lengths, goal);
    int i = Math.min(STEPS - 1, Math.max(0, found >= 0 ? found : -found - 2));
    return (i + (goal - lengths[i]) / (lengths[i + 1] - lengths[i])) / STEPS;
  }
}
