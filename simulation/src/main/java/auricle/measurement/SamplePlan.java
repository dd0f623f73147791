package auricle.measurement;

import auricle.anatomy.RestSurface;
import java.util.ArrayList;
import java.util.List;

/**
 * The places on the chart at which an ear is read, in blocks of stations around with the same
 * number of places across each.
 */
final class SamplePlan {
  private final RestSurface surface;
  private final List<Double> around = new ArrayList<>();
  private final List<Double> across = new ArrayList<>();

  /**
   * @param surface the rest shape, by which lengths along profiles become places across
   */
  SamplePlan(RestSurface surface) {
    this.surface = surface;
  }

  /** A block whose places lie evenly across. */
  SampleBlock even(Stations stations, double from, double to, int count) {
    return block(stations, count, (profile, i) -> from + (to - from) * i / Math.max(1, count - 1));
  }

  /** A block whose places lie at even lengths along the profile from the fold line, mm. */
  SampleBlock fromFold(Stations stations, double first_mm, double step_mm, int count) {
    return block(stations, count, (profile, i) -> profile.acrossFromFold(first_mm + step_mm * i));
  }

  private SampleBlock block(Stations stations, int count, Across places) {
    SampleBlock block = new SampleBlock(around.size(), stations.count(), count);
    for (int k = 0; k < stations.count(); k++) {
      RestSurface.Profile profile = surface.profile(stations.around(k));
      for (int i = 0; i < count; i++) {
        around.add(stations.around(k));
        across.add(places.at(profile, i));
      }
    }
    return block;
  }

  /** Number of places. */
  int size() {
    return around.size();
  }

  /** Around of a place. */
  double around(int place) {
    return around.get(place);
  }

  /** Across of a place. */
  double across(int place) {
    return across.get(place);
  }

  /**
   * All places on a smooth rest surface, x, y, z each, mm.
   *
   * @param shape the surface of this plan or of a shape like it
   */
  double[] restPoints(RestSurface shape) {
    double[] points = new double[3 * size()];
    RestSurface.Profile profile = shape.profile(0);
    for (int i = 0; i < size(); i++) {
      if (i == 0 || around(i) != around(i - 1)) {
        profile = shape.profile(around(i));
      }
      System.arraycopy(profile.point(across(i)), 0, points, 3 * i, 3);
    }
    return points;
  }

  private interface Across {
    double at(RestSurface.Profile profile, int i);
  }
}
