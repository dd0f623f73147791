package auricle.anatomy;

import auricle.geometry.Vectors;

/**
 * Where the columns of a mesh stand around: even steps in ∫ max over across of (|∂x/∂a| / h,
 * |∂n/∂a| / φ) da on the normal shape, so that no step is longer than h or turns the normal by more
 * than φ. The same places serve every shape, so that a mesh changes smoothly with the shape.
 */
final class ColumnPlaces {
  private static final double LONGEST = 3.9;
  private static final double TURN = 0.57;
  private static final int SAMPLES = 500;
  private static final int ROWS = 24;
  private final double[] measure = new double[SAMPLES + 1];
  private final int count;

  private ColumnPlaces() {
    AuricleSurface normal = new AuricleSurface(ShapeParameters.normalAdult());
    double[][] last = line(normal, 0);
    for (int i = 1; i <= SAMPLES; i++) {
      double[][] next = line(normal, PlanForm.PERIOD * i / SAMPLES);
      measure[i] = measure[i - 1] + step(last, next);
      last = next;
    }
    count = (int) Math.ceil(measure[SAMPLES]);
  }

  /** The places of the shipped plan form. */
  static ColumnPlaces shipped() {
    return Shipped.PLACES;
  }

  private static double[][] line(AuricleSurface surface, double around) {
    AuricleSurface.Slice slice = surface.slice(around);
    double[][] line = new double[2 * ROWS][];
    for (int k = 0; k < ROWS; k++) {
      double across = Section.FOOT + (1 - Section.FOOT) * k / (ROWS - 1);
      line[2 * k] = slice.section().point(across);
      line[2 * k + 1] = slice.normal(across);
    }
    return line;
  }

  private static double step(double[][] last, double[][] next) {
    double most = 0;
    for (int k = 0; k < ROWS; k++) {
      double length = Vectors.norm(Vectors.subtract(next[2 * k], last[2 * k]));
      double turn = Vectors.norm(Vectors.subtract(next[2 * k + 1], last[2 * k + 1]));
      most = Math.max(most, Math.hypot(length / LONGEST, turn / TURN));
    }
    return most;
  }

  /** Columns of the planning mesh. */
  int count() {
    return count;
  }

  /** Around of column i of {@code columns}. */
  double around(int i, int columns) {
    double goal = measure[SAMPLES] * i / columns;
    int k = 0;
    while (k < SAMPLES - 1 && measure[k + 1] <= goal) {
      k++;
    }
    double part = (goal - measure[k]) / (measure[k + 1] - measure[k]);
    return PlanForm.PERIOD * (k + part) / SAMPLES;
  }

  private static final class Shipped {
    private static final ColumnPlaces PLACES = new ColumnPlaces();
  }
}
