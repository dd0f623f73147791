package auricle.measurement;

/**
 * Places around, evenly spaced.
 *
 * @param from first place
 * @param to last place
 * @param count number of places, at least 2
 */
record Stations(double from, double to, int count) {
  /** Place around of a station, from 0. */
  double around(int station) {
    return from + (to - from) * station / (count - 1);
  }
}
