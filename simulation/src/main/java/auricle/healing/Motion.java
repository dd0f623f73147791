package auricle.healing;

import auricle.equilibrium.TotalEnergy;
import auricle.mesh.Directors;

/**
 * The motion of the body over the last step in time: continued, it is where the next solution
 * starts (straight in time or evenly in its logarithm, as bodies creep, or between, as the last two
 * steps went); continued straight in time, it is a measure of how far the motion bends.
 */
final class Motion {
  /** Earlier than this the logarithm of time is not told from time, s. */
  private static final double START_S = 1;

  private final TotalEnergy energy;
  private final Directors directors;
  private final int coordinates;
  private double[] place;
  private double[] rate = new double[0];
  private double length_s;
  private double time_s;

  /** 0: goes on evenly in the logarithm of time, 1: evenly in time. */
  private double straightness;

  Motion(TotalEnergy energy, Directors directors) {
    this.energy = energy;
    this.directors = directors;
    coordinates = 3 * directors.unknowns().vertexCount();
    place = read();
  }

  /** Coordinates, then the three components of every director, at the point last settled. */
  private double[] read() {
    int n = directors.unknowns().directorCount();
    double[] now = new double[coordinates + 3 * n];
    System.arraycopy(energy.unknowns(), 0, now, 0, coordinates);
    for (int i = 0; i < n; i++) {
      directors.value(i, energy.unknowns(), now, coordinates + 3 * i);
    }
    return now;
  }

  /** Takes the present state as the end of a step, s, at a time, s. */
  void learn(double step_s, double at_s) {
    double[] now = read();
    double[] before = rate;
    rate = new double[now.length];
    for (int i = 0; i < now.length; i++) {
      rate[i] = (now[i] - place[i]) / step_s;
    }
    straightness = before.length > 0 ? straightness(before, step_s) : 0;
    place = now;
    length_s = step_s;
    time_s = at_s;
  }

  /** Where the step just made lies between an even and a straight continuation of that before. */
  private double straightness(double[] before, double step_s) {
    double product = 0;
    double square = 0;
    for (int i = 0; i < before.length; i++) {
      product += rate[i] * before[i];
      square += before[i] * before[i];
    }
    double straight = step_s / length_s;
    double even = evenly(step_s);
    double made = square > 0 ? straight * product / square : straight;
    return Math.max(0, Math.min(1, (made - even) / (straight - even)));
  }

  /** Forgets: what comes next does not continue what was before. */
  void forget() {
    place = read();
    rate = new double[0];
  }

  /** The free unknowns after a step, s, if the motion went on as it was. */
  double[] continued(double step_s) {
    double even = evenly(step_s);
    return ahead(length_s * (even + straightness * (step_s / length_s - even)));
  }

  /** What a step is of the one before, in the logarithm of time. */
  private double evenly(double step_s) {
    double before = Math.log1p(length_s / (START_S + time_s - length_s));
    return Math.log1p(step_s / (START_S + time_s)) / before;
  }

  private double[] ahead(double step_s) {
    double[] x = energy.free();
    if (rate.length == 0) {
      return x;
    }
    double[] all = energy.unknowns().clone();
    for (int i = 0; i < coordinates; i++) {
      all[i] += step_s * rate[i];
    }
    for (int i = 0; i < directors.unknowns().directorCount(); i++) {
      tilt(i, step_s, all);
    }
    for (int k = 0; k < x.length; k++) {
      x[k] = all[energy.supports().unknown(k)];
    }
    return Double.isFinite(energy.value(x)) ? x : energy.free();
  }

  /** Tilts, in the present frame, of a director moved on by its rate. */
  private void tilt(int director, double step_s, double[] all) {
    double[] parts = new double[3];
    for (int c = 0; c < 3; c++) {
      int at = coordinates + 3 * director + c;
      double moved = place[at] + step_s * rate[at];
      for (int k = 0; k < 3; k++) {
        parts[k] += moved * directors.frame(director, k, c);
      }
    }
    if (parts[0] > 0.1) {
      int w = directors.unknowns().director(director);
      all[w] = parts[1] / parts[0];
      all[w + 1] = parts[2] / parts[0];
    }
  }

  /**
   * Bound on the error of coordinates by taking the motion as straight within a step, mm: ⅛ |ü| h²,
   * with ü from how far the step, s, ended from the straight continuation of the one before, ½ |ü|
   * h (h + h₀). Zero where nothing came before.
   */
  double bend(double step_s) {
    double most = 0;
    for (int i = 0; rate.length > 0 && i < coordinates; i++) {
      double off = energy.unknowns()[i] - place[i] - step_s * rate[i];
      most = Math.max(most, Math.abs(off));
    }
    return most * step_s / (4 * (step_s + length_s));
  }
}
