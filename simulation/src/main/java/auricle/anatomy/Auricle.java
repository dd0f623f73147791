package auricle.anatomy;

import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The rest shape of an auricle with its anatomy. Immutable.
 *
 * <p>The mesh has the vertex sets {@code attached} (joined to the head: floor of the bowl, foot of
 * the tragus, root of the helix, front border of the lobule) and {@code rim} (the whole free edge,
 * which is the mesh's one boundary), and a region of triangles for each {@link Region} that occurs,
 * by its key. Normals point to the visible face.
 */
public final class Auricle {
  /** Vertex set of what is joined to the head. */
  public static final String ATTACHED = "attached";

  /** Vertex set of the free edge. */
  public static final String RIM = "rim";

  private final ShapeParameters shape;
  private final MeshLevel level;
  private final List<Region> regions;
  private final ShellMesh mesh;
  private final Chart chart;

  private Auricle(ShapeParameters shape, MeshLevel level) {
    this.shape = shape;
    this.level = level;
    AuricleSurface surface = new AuricleSurface(shape);
    MeshPlan plan = MeshPlan.of(level);
    MeshVertices vertices = plan.vertices(surface);
    Topology topology = plan.topology();
    ChartMap map = new ChartMap(vertices, topology);
    this.regions = regions(surface, map, topology);
    this.mesh = build(vertices, topology);
    this.chart = new Chart(surface, map, mesh);
  }

  /**
   * The auricle of a shape.
   *
   * @param shape values of the shape knobs
   * @param level how finely the smooth surface is sampled
   */
  public static Auricle of(ShapeParameters shape, MeshLevel level) {
    return new Auricle(shape, level);
  }

  private static List<Region> regions(AuricleSurface surface, ChartMap map, Topology topology) {
    List<Region> regions = new ArrayList<>();
    Map<Double, Section> sections = new HashMap<>();
    for (int t = 0; t < topology.triangleCount(); t++) {
      double[] place = map.middle(t);
      Section section = sections.computeIfAbsent(place[0], surface::section);
      regions.add(RegionMap.at(section, place[1]));
    }
    return List.copyOf(regions);
  }

  private ShellMesh build(MeshVertices vertices, Topology topology) {
    ShellMesh.Builder builder =
        ShellMesh.builder(vertices.positions(), vertices.normals(), topology);
    List<Integer> attached = new ArrayList<>();
    List<Integer> rim = new ArrayList<>();
    for (int v = 0; v < vertices.count(); v++) {
      if (Bedding.holds(vertices.around(v), vertices.across(v))) {
        attached.add(v);
      }
      if (vertices.across(v) == 1) {
        rim.add(v);
      }
    }
    builder.vertexSet(ATTACHED, attached).vertexSet(RIM, rim);
    Map<Region, List<Integer>> members = new EnumMap<>(Region.class);
    for (int t = 0; t < regions.size(); t++) {
      members.computeIfAbsent(regions.get(t), r -> new ArrayList<>()).add(t);
    }
    members.forEach((region, triangles) -> builder.region(region.key(), triangles));
    return builder.build();
  }

  /** The mid-surface as a shell mesh. */
  public ShellMesh mesh() {
    return mesh;
  }

  /** The region of a triangle. */
  public Region region(int triangle) {
    return regions.get(triangle);
  }

  /** Surface coordinates and landmarks. */
  public Chart chart() {
    return chart;
  }

  /** The shape parameters. */
  public ShapeParameters shape() {
    return shape;
  }

  /** How finely the surface is sampled. */
  public MeshLevel level() {
    return level;
  }
}
