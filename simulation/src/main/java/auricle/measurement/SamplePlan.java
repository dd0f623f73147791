package auricle.measurement;

import auricle.anatomy.RestSurface;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntToDoubleFunction;

/**
 * The places on the chart at which an ear is read, in blocks of stations around with the same
 * number of places across each.
 */
final class SamplePlan {
  private final RestSurface surface;
  private final List<RestSurface.Place> stations = new ArrayList<>();
  private final Map<Double, Integer> stationAt = new TreeMap<>();
  private final List<Spot> spots = new ArrayList<>();

  /**
   * A place.
   *
   * @param station its number among the stations
   * @param across its place across
   */
  private record Spot(int station, double across) {}

  /**
   * @param surface the rest shape, by which lengths along profiles become places across
   */
  SamplePlan(RestSurface surface) {
    this.surface = surface;
  }

  /** A block whose places lie evenly across. */
  SampleBlock even(Stations stations, double from, double to, int count) {
    return block(stations, count, place -> i -> from + (to - from) * i / Math.max(1, count - 1));
  }

  /** A block whose places lie at even lengths along the profile from the fold line, mm. */
  SampleBlock fromFold(Stations stations, double first_mm, double step_mm, int count) {
    return block(
        stations,
        count,
        place -> {
          RestSurface.Profile profile = surface.profile(place);
          return i -> profile.acrossFromFold(first_mm + step_mm * i);
        });
  }

  private SampleBlock block(Stations row, int count, Across places) {
    SampleBlock block = new SampleBlock(spots.size(), row.count(), count);
    for (int k = 0; k < row.count(); k++) {
      int station = stationAt.computeIfAbsent(row.around(k), this::newStation);
      IntToDoubleFunction across = places.on(stations.get(station));
      for (int i = 0; i < count; i++) {
        spots.add(new Spot(station, across.applyAsDouble(i)));
      }
    }
    return block;
  }

  private int newStation(double around) {
    stations.add(new RestSurface.Place(around));
    return stations.size() - 1;
  }

  /** Number of places. */
  int size() {
    return spots.size();
  }

  /** Around of a place. */
  double around(int place) {
    return stations.get(spots.get(place).station).around();
  }

  /** Across of a place. */
  double across(int place) {
    return spots.get(place).across;
  }

  /**
   * All places on a smooth rest surface, x, y, z each, mm.
   *
   * @param shape the surface of this plan or of a shape like it
   */
  double[] restPoints(RestSurface shape) {
    List<RestSurface.Profile> profiles = stations.stream().map(shape::profile).toList();
    double[] points = new double[3 * size()];
    for (int i = 0; i < size(); i++) {
      Spot spot = spots.get(i);
      System.arraycopy(profiles.get(spot.station).point(spot.across), 0, points, 3 * i, 3);
    }
    return points;
  }

  private interface Across {
    IntToDoubleFunction on(RestSurface.Place place);
  }
}
