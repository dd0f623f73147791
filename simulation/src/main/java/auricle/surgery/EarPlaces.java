package auricle.surgery;

import auricle.anatomy.Auricle;
import auricle.anatomy.Chart;
import auricle.anatomy.Region;
import auricle.anatomy.SurfacePlace;
import auricle.energy.SurfacePoint;
import auricle.geometry.Vectors;
import auricle.mesh.Topology;
import java.util.List;

/**
 * Where the words of a plan are on the mesh: levels, distances from the fold line, places on the
 * wall of the bowl, along the rim and along the cauda. All on the ear at rest.
 */
final class EarPlaces {
  private final Auricle auricle;
  private final Chart chart;
  private final LineLengths fold;
  private final LineLengths rim;
  private final double[] around;
  private final double[] foldOffset;
  private final double[] size;
  private final double[] unknowns;

  EarPlaces(Auricle auricle) {
    this.auricle = auricle;
    chart = auricle.chart();
    Topology topology = auricle.mesh().topology();
    double[] positions = auricle.mesh().positions();
    fold = new LineLengths(chart.foldLine(), topology, positions);
    rim = new LineLengths(chart.rim(), topology, positions);
    around = new double[topology.triangleCount()];
    foldOffset = new double[around.length];
    size = new double[around.length];
    unknowns = auricle.mesh().unknowns();
    for (int t = 0; t < around.length; t++) {
      around[t] = chart.aroundOf(t);
      foldOffset[t] = chart.foldOffset_mm(t);
      size[t] = size(t, positions);
    }
  }

  int triangleCount() {
    return around.length;
  }

  Region region(int triangle) {
    return auricle.region(triangle);
  }

  Topology topology() {
    return auricle.mesh().topology();
  }

  Chart chart() {
    return chart;
  }

  /** Length of an edge of an even triangle of the same area, mm. */
  double size_mm(int triangle) {
    return size[triangle];
  }

  private double size(int t, double[] positions) {
    double[] a = Vectors.at(positions, 3 * topology().vertex(t, 0));
    double[] b = Vectors.at(positions, 3 * topology().vertex(t, 1));
    double[] c = Vectors.at(positions, 3 * topology().vertex(t, 2));
    double[] n = Vectors.cross(Vectors.subtract(b, a), Vectors.subtract(c, a));
    return Math.sqrt(2 / Math.sqrt(3) * Vectors.norm(n));
  }

  /** The unknowns of the ear at rest; shared. */
  double[] restUnknowns() {
    return unknowns;
  }

  /** A place at a level of the fold line and a distance from it, mm, + towards the rim. */
  SurfacePlace fromFold(double level_percent, double offset_mm) {
    return chart.placeFromFold(chart.aroundAtHeight(level_percent), offset_mm);
  }

  /** A place so far along the fold line from a level, mm (+ downwards), and off it. */
  SurfacePlace alongFold(double level_percent, double along_mm, double offset_mm) {
    return chart.placeFromFold(aroundAlongFold(level_percent, along_mm), offset_mm);
  }

  /** Chart coordinate so far along the fold line from a level, mm, + downwards. */
  double aroundAlongFold(double level_percent, double along_mm) {
    return fold.around(fold.length(chart.aroundAtHeight(level_percent)) + along_mm);
  }

  /** Distance from the fold line of a place on the wall, 0 its foot, 100 the fold line; ≤ 0, mm. */
  double wallOffset_mm(double aroundFold, double wall_percent) {
    return (1 - wall_percent / 100) * chart.foldOffsetAt_mm(aroundFold, Chart.FOOT);
  }

  /** Length along the fold line from its upper end to a level, mm. */
  double foldLength_mm(double level_percent) {
    return fold.length(chart.aroundAtHeight(level_percent));
  }

  /** Length along the fold line to the profile a triangle lies on, mm. */
  double foldLengthOf_mm(int triangle) {
    return fold.length(around[triangle]);
  }

  /** Whether a triangle lies on a profile that crosses the fold line. */
  boolean besideFold(int triangle) {
    return around[triangle] >= Chart.FOLD_START && around[triangle] <= Chart.FOLD_END;
  }

  double around(int triangle) {
    return around[triangle];
  }

  double foldOffset_mm(int triangle) {
    return foldOffset[triangle];
  }

  double rimDistance_mm(int triangle) {
    return chart.rimDistance_mm(triangle);
  }

  /** Length along the rim from its root to a level at the back of the ear, mm. */
  double rimLength_mm(double level_percent) {
    return rim.length(chart.aroundOfRimAtHeight(level_percent));
  }

  /** Length along the rim to the profile that a triangle lies on, mm. */
  double rimLengthOf_mm(int triangle) {
    return rim.length(around[triangle]);
  }

  /** Whether a triangle lies on the helix's side of the ear rather than in front. */
  boolean onHelix(int triangle) {
    return around[triangle] <= 1;
  }

  /** Triangles of a region. */
  List<Integer> triangles(Region region) {
    return auricle.mesh().regions().getOrDefault(region.key(), List.of());
  }

  /** How far a triangle of the cauda lies from its tip, along it, mm. */
  double fromCaudaTip_mm(int triangle) {
    return caudaEnd_mm() - rim.length(around[triangle]);
  }

  private double caudaEnd_mm() {
    return rim.length(Chart.CAUDA_END);
  }

  /**
   * A place at a distance from the tip of the cauda, on its middle line: the same on every mesh.
   */
  SurfacePlace cauda(double fromTip_mm) {
    double at = rim.around(caudaEnd_mm() - fromTip_mm);
    return chart.placeFromFold(at, chart.foldOffsetAt_mm(at, 1) - caudaMiddle_mm());
  }

  private double caudaMiddle_mm() {
    return triangles(Region.CAUDA_HELICIS).stream()
        .mapToDouble(this::rimDistance_mm)
        .average()
        .orElse(0);
  }

  /** A place as a point of the body, off the reference surface along the normal, mm. */
  SurfacePoint point(SurfacePlace place, double offset_mm) {
    return carried(place.spot().triangle(), place.point(offset_mm));
  }

  /** A point in space, x, y, z at rest, mm, that a triangle carries. */
  SurfacePoint carried(int triangle, double[] point) {
    return SurfacePoint.carried(topology(), triangle, unknowns, point);
  }
}
