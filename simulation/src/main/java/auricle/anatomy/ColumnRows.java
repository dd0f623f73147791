package auricle.anatomy;

import auricle.geometry.Vectors;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the rows of a mesh cross one section: even steps in ∫ √(1/h² + κ²/φ²) ds between foot,
 * fold, end of the scapha and free edge, which are rows themselves. h: longest step, mm; κ:
 * curvature of the profile, 1/mm; φ: largest turn in a step, rad.
 */
final class ColumnRows {
  private static final double LONGEST = 2.8;
  private static final double TURN = 0.52;
  private static final int SAMPLES = 60;
  private static final double GREATEST_TURN = 0.58;
  private static final int MORE = 4;
  private static final double FORGIVEN = 0.15;
  private static final double[] LANDMARKS = {Section.FOOT, Section.FOLD, Section.SCAPHA_END, 1};

  private ColumnRows() {}

  /**
   * Numbers of steps between the landmarks that a slice asks for: as many as the integral says, and
   * up to {@code MORE} more where the normal still turns too much in a step.
   */
  static List<Integer> steps(AuricleSurface.Slice slice, int division) {
    List<Integer> steps = new ArrayList<>();
    for (int k = 0; k + 1 < LANDMARKS.length; k++) {
      double total = measure(slice.section(), LANDMARKS[k], LANDMARKS[k + 1])[SAMPLES];
      int count = (int) Math.max(1, Math.ceil(total - FORGIVEN));
      int most = count + MORE;
      while (count < most && greatestTurn(slice, k, count) > GREATEST_TURN) {
        count++;
      }
      steps.add(division * count);
    }
    return steps;
  }

  private static double greatestTurn(AuricleSurface.Slice slice, int segment, int steps) {
    List<Double> rows = new ArrayList<>(List.of(LANDMARKS[segment]));
    addSegment(slice.section(), LANDMARKS[segment], LANDMARKS[segment + 1], steps, rows);
    double most = 0;
    for (int i = 1; i < rows.size(); i++) {
      double cos = Vectors.dot(slice.normal(rows.get(i - 1)), slice.normal(rows.get(i)));
      most = Math.max(most, Math.acos(Math.min(1, cos)));
    }
    return most;
  }

  /** Places across of all rows from the foot to the edge. */
  static List<Double> across(Section section, List<Integer> steps) {
    List<Double> rows = new ArrayList<>();
    rows.add(Section.FOOT);
    for (int k = 0; k + 1 < LANDMARKS.length; k++) {
      addSegment(section, LANDMARKS[k], LANDMARKS[k + 1], steps.get(k), rows);
    }
    return rows;
  }

  private static void addSegment(
      Section section, double from, double to, int steps, List<Double> rows) {
    double[] measure = measure(section, from, to);
    int i = 0;
    for (int k = 1; k < steps; k++) {
      double goal = measure[SAMPLES] * k / steps;
      while (measure[i + 1] < goal) {
        i++;
      }
      double part = i + (goal - measure[i]) / (measure[i + 1] - measure[i]);
      rows.add(from + (to - from) * part / SAMPLES);
    }
    rows.add(to);
  }

  private static double[] measure(Section section, double from, double to) {
    double[] measure = new double[SAMPLES + 1];
    double length = (section.lengthAt(to) - section.lengthAt(from)) / SAMPLES;
    double way = length * length / (LONGEST * LONGEST);
    double start = section.lengthAt(from);
    double slope = section.profile().at(start).slope();
    for (int i = 0; i < SAMPLES; i++) {
      double next = section.profile().at(start + (i + 1) * length).slope();
      double turn = Math.abs(next - slope) / TURN;
      measure[i + 1] = measure[i] + Math.sqrt(way + turn * turn);
      slope = next;
    }
    return measure;
  }
}
