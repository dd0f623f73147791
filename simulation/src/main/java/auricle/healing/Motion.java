package auricle.healing;

import auricle.equilibrium.TotalEnergy;
import auricle.mesh.Directors;

/**
 * The motion of the body over the last step in time, continued straight: where the next solution
 * starts, and a measure of how far the motion bends.
 */
final class Motion {
  private final TotalEnergy energy;
  private final Directors directors;
  private final int coordinates;
  private double[] place;
  private double[] rate = new double[0];
  private double length_s;

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

  /** Takes the present state as the end of a step, s. */
  void learn(double step_s) {
    double[] now = read();
    rate = new double[now.length];
    for (int i = 0; i < now.length; i++) {
      rate[i] = (now[i] - place[i]) / step_s;
    }
    place = now;
    length_s = step_s;
  }

  /** Forgets: what comes next does not continue what was before. */
  void forget() {
    place = read();
    rate = new double[0];
  }

  /** The free unknowns after a step, s, if the motion went on as it was. */
  double[] continued(double step_s) {
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
