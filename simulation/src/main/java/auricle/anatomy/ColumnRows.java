package auricle.anatomy;

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
  private static final int SAMPLES = 120;
  private static final double FORGIVEN = 0.15;
  private static final double[] LANDMARKS = {Section.FOOT, Section.FOLD, Section.SCAPHA_END, 1};

  private ColumnRows() {}

  /** Places across of all rows from the foot to the edge. */
  static List<Double> across(Section section, int division) {
    List<Double> rows = new ArrayList<>();
    rows.add(Section.FOOT);
    for (int k = 0; k + 1 < LANDMARKS.length; k++) {
      addSegment(section, LANDMARKS[k], LANDMARKS[k + 1], division, rows);
    }
    return rows;
  }

  private static void addSegment(
      Section section, double from, double to, int division, List<Double> rows) {
    double[] measure = measure(section, from, to);
    int steps = division * (int) Math.max(1, Math.ceil(measure[SAMPLES] - FORGIVEN));
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
    double start = section.lengthAt(from);
    double slope = section.profile().at(start).slope();
    for (int i = 0; i < SAMPLES; i++) {
      double next = section.profile().at(start + (i + 1) * length).slope();
      double turn = Math.abs(next - slope) / TURN;
      measure[i + 1] = measure[i] + Math.hypot(length / LONGEST, turn);
      slope = next;
    }
    return measure;
  }
}
