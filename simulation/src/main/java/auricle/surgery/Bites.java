package auricle.surgery;

import auricle.anatomy.SurfacePlace;
import auricle.energy.MaterialPoint;
import auricle.energy.MeanPoint;
import auricle.energy.SurfacePoint;
import auricle.geometry.Vectors;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where threads hold on to the posterior face of the sheet. A pull on a face reaches the
 * mid-surface spread out: by half of the sheet's thickness to every side of the thread (dispersal
 * at one to one down to the middle of a plate, as codes for slabs take it: EN 1991-2:2003, 4.3.6;
 * recalled). Published radii for the bending under a small spot are somewhat smaller, and half or
 * half again of it changes little (THEORY, Operations). A shell cannot know what happens on less
 * than that, and under the pull of a single point it would give way the more, the finer its mesh
 * is.
 */
final class Bites {
  /** Rings of places in the disc: one in the middle, six and twelve around it. */
  private static final int RINGS = 2;

  private final EarPlaces places;
  private final EarWall wall;

  Bites(EarPlaces places, EarWall wall) {
    this.places = places;
    this.wall = wall;
  }

  /**
   * A bite.
   *
   * @param place beyond the foot of the wall
   * @param diameter_mm of what holds there
   */
  MaterialPoint at(SurfacePlace place, double diameter_mm) {
    int triangle = place.spot().triangle();
    double radius = (diameter_mm + wall.sheet_mm(triangle)) / 2;
    Map<Integer, List<double[]>> held = new LinkedHashMap<>();
    List<SurfacePlace> disc = places.chart().disc(place, radius, RINGS);
    for (SurfacePlace one : disc) {
      held.computeIfAbsent(one.spot().triangle(), t -> new ArrayList<>())
          .add(one.point(wall.posteriorFace_mm(triangle)));
    }
    List<SurfacePoint> points = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    held.forEach(
        (t, on) -> {
          points.add(places.carried(t, mean(on)));
          shares.add((double) on.size() / disc.size());
        });
    return new MeanPoint(points, shares);
  }

  /** A triangle carries the mean of points as it carries each of them. */
  private static double[] mean(List<double[]> points) {
    double[] mean = new double[3];
    for (double[] p : points) {
      mean = Vectors.add(mean, 1.0 / points.size(), p);
    }
    return mean;
  }
}
