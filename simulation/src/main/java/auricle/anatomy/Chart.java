package auricle.anatomy;

import auricle.geometry.Vectors;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;

/**
 * Surface coordinates and landmark curves in the rest shape.
 *
 * <p>Around: 0 at the root of the helix, over the top and back, 1 at the end of the lobule; beyond
 * 1, up to {@link PlanForm#PERIOD}, the front with the border of the lobule, notch, tragus and the
 * anterior notch. Across: 0 at the middle of the floor, {@link #FOOT} at the foot of the bowl's
 * wall, {@link #FOLD} on the fold line, {@link #SCAPHA_END} where the helix begins, 1 at the free
 * edge. The fold line is the crest of the antihelix, continued upwards by the superior crus and
 * downwards by the antitragus.
 */
public final class Chart {
  /** Across at the foot of the bowl's wall. */
  public static final double FOOT = Section.FOOT;

  /** Across on the fold line. */
  public static final double FOLD = Section.FOLD;

  /** Across where the helix begins. */
  public static final double SCAPHA_END = Section.SCAPHA_END;

  /** Around at the upper end of the fold line, where the superior crus runs out under the helix. */
  public static final double FOLD_START = 0.2;

  /** Around at its lower end, at the antitragus. */
  public static final double FOLD_END = 0.95;

  /** Around at the tip of the cauda helicis, where its cartilage ends. */
  public static final double CAUDA_END = RegionMap.CAUDA_END;

  private static final int POINTS = 160;
  private final AuricleSurface surface;
  private final ChartMap map;
  private final ShellMesh mesh;
  private final Late<Heights> heights;
  private final Late<VertexLengths> lengths;
  private final Late<double[]> foldDirections = new Late<>(this::foldDirections);
  private final Late<Curve> foldLine =
      new Late<>(() -> curve("fold line", FOLD_START, FOLD_END, a -> FOLD));
  private final Late<Curve> rim = new Late<>(() -> curve("rim", 0, 1, this::acrossOfRim));
  private final Late<Curve> freeEdge =
      new Late<>(() -> curve("free edge", 0, PlanForm.PERIOD, a -> 1));
  private final Late<Curve> bowlEdge =
      new Late<>(() -> curve("bowl edge", 0, 1, this::acrossOfBowlEdge));

  Chart(AuricleSurface surface, ChartMap map, ShellMesh mesh) {
    this.surface = surface;
    this.map = map;
    this.mesh = mesh;
    this.heights = new Late<>(() -> new Heights(surface));
    this.lengths = new Late<>(() -> new VertexLengths(surface, map.vertices()));
  }

  /** Around of a vertex. */
  public double around(int vertex) {
    return map.around(vertex);
  }

  /** Across of a vertex. */
  public double across(int vertex) {
    return map.across(vertex);
  }

  /** The spot at a place; across is held within 0 … 1, around goes round. */
  public SurfaceSpot spot(double around, double across) {
    return map.spot(around, across);
  }

  /**
   * Around where the fold line has a height; nearest end of the fold line beyond its heights.
   *
   * @param heightPercent share of the ear's height, 0 … 100
   */
  public double aroundAtHeight(double heightPercent) {
    return heights.get().aroundOfFold(heightPercent);
  }

  /** Around where the helix at the back has a height: where a horizontal cut meets the rim. */
  public double aroundOfRimAtHeight(double heightPercent) {
    return heights.get().aroundOfRim(heightPercent);
  }

  /** Lowest point of the lobule, z, mm. */
  public double lowest_mm() {
    return heights.get().lowest();
  }

  /** Top of the helix, z, mm. */
  public double highest_mm() {
    return heights.get().highest();
  }

  /**
   * The spot at an arc length along the profile from the fold line; held at the foot of the wall
   * and at the free edge.
   *
   * @param offset_mm positive towards the rim, negative towards the bowl
   */
  public SurfaceSpot fromFold(double around, double offset_mm) {
    return spot(around, new ProfileLengths(surface.section(around)).acrossAt(offset_mm));
  }

  /** The place on the smooth surface; across is held within 0 … 1. */
  public SurfacePlace place(double around, double across) {
    double held = Math.min(1, Math.max(0, across));
    return new SurfacePlace(surface, around, held, spot(around, held));
  }

  /** The place on the smooth surface where {@link #fromFold} has its spot. */
  public SurfacePlace placeFromFold(double around, double offset_mm) {
    return place(around, new ProfileLengths(surface.section(around)).acrossAt(offset_mm));
  }

  /**
   * Places spread evenly over a disc on the smooth surface: one in the middle, and rings of six,
   * twelve and so on; held at the foot of the wall and at the free edge.
   *
   * @param middle the middle of the disc, beyond the foot of the wall
   * @param radius_mm of the disc
   * @param rings how many rings; each place stands for the same area
   */
  public List<SurfacePlace> disc(SurfacePlace middle, double radius_mm, int rings) {
    AuricleSurface.Slice slice = surface.slice(middle.around());
    double[] out = Vectors.unit(slice.section().direction(middle.across()));
    double[] side = Vectors.cross(slice.normal(middle.across()), out);
    double[] along = slice.alongAround(middle.across());
    List<SurfacePlace> places = new ArrayList<>(List.of(middle));
    double from = foldOffsetAt_mm(middle.around(), middle.across());
    double step = radius_mm / (rings + 0.5);
    for (int r = 1; r <= rings; r++) {
      for (int k = 0; k < 6 * r; k++) {
        double angle = Math.PI * k / (3 * r);
        double around = r * step * Math.sin(angle) / Vectors.dot(along, side);
        double offset = r * step * Math.cos(angle) - around * Vectors.dot(along, out);
        places.add(placeFromFold(middle.around() + around, from + offset));
      }
    }
    return places;
  }

  /** Arc length along the profile from the fold line to a place; positive towards the rim, mm. */
  public double foldOffsetAt_mm(double around, double across) {
    return new ProfileLengths(surface.section(around)).offset(across);
  }

  /** Arc length along the profile from the fold line to a triangle's centroid, mm. */
  public double foldOffset_mm(int triangle) {
    return mean(triangle, lengths.get()::offset);
  }

  /** Around of a triangle's centroid. */
  public double aroundOf(int triangle) {
    return map.centroid(triangle)[0];
  }

  /** Height of a triangle's centroid, percent of the ear's height. */
  public double heightPercent(int triangle) {
    return heights.get().percent(mean(triangle, v -> mesh.position(v, 2)));
  }

  /** Arc length along the profile from the free edge to a triangle's centroid, mm, at least 0. */
  public double rimDistance_mm(int triangle) {
    return mean(triangle, lengths.get()::toEdge);
  }

  private double mean(int triangle, IntToDoubleFunction atVertex) {
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      sum += atVertex.applyAsDouble(mesh.topology().vertex(triangle, i)) / 3;
    }
    return sum;
  }

  /**
   * Direction of the lines along the fold in a triangle: the angle from its edge 0 (corner 1 to
   * corner 2) to them, towards greater around, anticlockwise about the normal, rad.
   */
  public double foldDirection(int triangle) {
    return foldDirections.get()[triangle];
  }

  private double[] foldDirections() {
    double[] angles = new double[mesh.topology().triangleCount()];
    for (int t = 0; t < angles.length; t++) {
      double[] place = map.centroid(t);
      double[] along = surface.slice(place[0]).alongAround(place[1]);
      angles[t] = TriangleDirection.angle(mesh, t, along);
    }
    return angles;
  }

  /** The fold line from the superior crus over the antihelix to the antitragus. */
  public Curve foldLine() {
    return foldLine.get();
  }

  /** The crest of the antihelix: the fold line. */
  public Curve antihelixCrest() {
    return foldLine();
  }

  /** The rim ({@link #acrossOfRim}) from the root of the helix to the end of the lobule. */
  public Curve rim() {
    return rim.get();
  }

  /**
   * Across of the rim at rest: the most lateral line of the rolled helix, which runs out into the
   * edge at its root and on the lobule.
   */
  public double acrossOfRim(double around) {
    return Heights.rim(surface.section(around));
  }

  /** The free edge, all the way round the front. */
  public Curve freeEdge() {
    return freeEdge.get();
  }

  /** The edge of the bowl: inferior crus, then the antihelix below the branching. */
  public Curve bowlEdge() {
    return bowlEdge.get();
  }

  private double acrossOfBowlEdge(double around) {
    Section section = surface.section(around);
    EarProfile p = section.profile();
    boolean none = p.edgeEnd() <= p.edgeStart();
    return none ? FOLD : section.acrossAt((p.edgeStart() + p.edgeEnd()) / 2);
  }

  private Curve curve(String name, double from, double to, DoubleUnaryOperator across) {
    List<SurfaceSpot> spots = new ArrayList<>();
    List<Double> around = new ArrayList<>();
    for (int i = 0; i <= POINTS; i++) {
      double a = from + (to - from) * i / POINTS;
      around.add(a);
      spots.add(spot(a, across.applyAsDouble(a)));
    }
    return new Curve(name, spots, around);
  }

  /** The mesh's topology, for positions of spots. */
  public Topology topology() {
    return mesh.topology();
  }
}
