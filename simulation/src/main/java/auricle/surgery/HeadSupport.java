package auricle.surgery;

import auricle.anatomy.Auricle;
import auricle.energy.BarrierLaw;
import auricle.energy.ElasticAttachment;
import auricle.energy.EnergyTerm;
import auricle.energy.ObstacleContact;
import auricle.energy.PlaneObstacle;
import auricle.material.HeadTissue;
import auricle.mesh.RestShape;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What an ear stands on and leans against: the floor and the roots bedded elastically on the head,
 * so that the whole ear can turn about its base, and the head's surface, the plane of no lateral
 * distance, which keeps out all that is free of it at rest.
 */
final class HeadSupport {
  private final EarWall wall;
  private final HeadTissue head;
  private final ShellMesh mesh;
  private final double[] areas;

  HeadSupport(Auricle auricle, EarWall wall, HeadTissue head) {
    this.wall = wall;
    this.head = head;
    mesh = auricle.mesh();
    areas = vertexAreas(mesh);
  }

  /** A third of the area of the triangles at each vertex, mm². */
  static double[] vertexAreas(ShellMesh mesh) {
    Topology topology = mesh.topology();
    double[] areas = new double[mesh.vertexCount()];
    RestShape rest = RestShape.of(topology, mesh.unknowns(), mesh.directors());
    for (int t = 0; t < topology.triangleCount(); t++) {
      for (int i = 0; i < 3; i++) {
        areas[topology.vertex(t, i)] += rest.plate(t).area() / 3;
      }
    }
    return areas;
  }

  /** Bedding and contact. */
  List<EnergyTerm> terms() {
    return List.of(bedding(), contact());
  }

  private EnergyTerm bedding() {
    int[] vertices = attached().stream().mapToInt(v -> v).toArray();
    double[] bedded = BeddedAreas.of(mesh, attached());
    double[] normals = new double[3 * vertices.length];
    double[] all = mesh.normals();
    for (int i = 0; i < vertices.length; i++) {
      System.arraycopy(all, 3 * vertices[i], normals, 3 * i, 3);
    }
    return new ElasticAttachment(
        "bedding on the head",
        vertices,
        Arrays.stream(vertices).mapToDouble(v -> bedded[v]).toArray(),
        normals,
        mesh.unknowns(),
        head.normal_mpa_per_mm(),
        head.tangential_mpa_per_mm());
  }

  private List<Integer> attached() {
    return mesh.vertexSet(Auricle.ATTACHED).orElseThrow();
  }

  private double[] areas(int[] vertices) {
    return Arrays.stream(vertices).mapToDouble(v -> areas[v]).toArray();
  }

  private EnergyTerm contact() {
    double[] half = halfThickness();
    List<Integer> attached = attached();
    List<Integer> free = new ArrayList<>();
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double gap = mesh.position(v, 0) - half[v];
      if (gap > head.contactGap_mm() && !attached.contains(v)) {
        free.add(v);
      }
    }
    int[] vertices = free.stream().mapToInt(v -> v).toArray();
    return new ObstacleContact(
        "head",
        new PlaneObstacle(new double[3], new double[] {1, 0, 0}),
        new BarrierLaw(head.contactGap_mm(), head.contactPressure_mpa()),
        vertices,
        areas(vertices),
        Arrays.stream(vertices).mapToDouble(v -> half[v]).toArray());
  }

  /** Distance of the posterior face from the reference surface at each vertex, mm. */
  private double[] halfThickness() {
    Topology topology = mesh.topology();
    double[] half = new double[mesh.vertexCount()];
    for (int t = 0; t < topology.triangleCount(); t++) {
      for (int i = 0; i < 3; i++) {
        int v = topology.vertex(t, i);
        half[v] = Math.max(half[v], -wall.posteriorFace_mm(t));
      }
    }
    return half;
  }
}
