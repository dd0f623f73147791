package auricle.measurement;

/**
 * Where a block of samples stands among all points that are read.
 *
 * @param start its first point
 * @param stations number of stations
 * @param across number of points a station
 */
record SampleBlock(int start, int stations, int across) {
  /** Index of the x coordinate of a point; y and z follow. */
  int at(int station, int place) {
    return 3 * (start + station * across + place);
  }
}
