package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.energy.DeadLoad;
import auricle.energy.DirectorMoment;
import auricle.energy.EnergyTerm;
import auricle.energy.FollowerPressure;
import auricle.geometry.PlateFrame;
import auricle.geometry.Vectors;
import auricle.mesh.Directors;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.Map;
import java.util.Optional;

/** Forces, moments and pressures of a model as energy terms. */
final class ForcePlan {
  private final Topology topology;
  private final double[] rest;
  private final Directors directors;
  private final MeshSets sets;
  private final boolean linear;
  private final boolean[] fixed;
  private final Findings findings;

  /**
   * @param linear whether a linear solution is asked for: pressure then keeps its directions
   * @param fixed for every unknown, whether a support holds it
   */
  ForcePlan(
      ShellMesh mesh,
      Directors directors,
      MeshSets sets,
      boolean linear,
      boolean[] fixed,
      Findings findings) {
    this.topology = mesh.topology();
    this.rest = mesh.unknowns();
    this.directors = directors;
    this.sets = sets;
    this.linear = linear;
    this.fixed = fixed.clone();
    this.findings = findings;
  }

  private DeadLoad.Builder dead() {
    return new DeadLoad.Builder(topology, rest);
  }

  /** A force on vertices. */
  EnergyTerm point(Load.Point l) {
    int[] vertices = sets.find(l.where()).vertices();
    double[] each =
        Vectors.scale(l.total() ? 1.0 / Math.max(1, vertices.length) : 1, l.force_n().array());
    DeadLoad.Builder builder = dead();
    for (int v : vertices) {
      builder.onVertex(v, each);
    }
    return builder.build("point force");
  }

  /** A force along edges. */
  EnergyTerm line(Load.Line l) {
    int[] edges = sets.findEdges(l.where()).edges();
    return dead().onEdges(edges, l.force_n_per_mm().array()).build("line force");
  }

  /** A force on an area. */
  EnergyTerm surface(Load.Surface l) {
    int[] triangles = sets.findTriangles(l.where()).triangles();
    return dead().onTriangles(triangles, l.force_n_per_mm2().array()).build("surface force");
  }

  /** A moment along edges; a finding and nothing if the shell cannot carry it. */
  Optional<EnergyTerm> moment(Load.EdgeMoment l) {
    int[] edges = sets.findEdges(l.where()).edges();
    double[] axis = sets.unit(l.at() + "/axis", l.axis());
    Map<Integer, Double> moments = DirectorMoment.onEdges(topology, rest, edges, l.moment_n());
    try {
      return Optional.of(new DirectorMoment("edge moment", directors, axis, moments));
    } catch (IllegalArgumentException along) {
      findings.error(
          l.at() + "/axis",
          "the axis points along the surface normal",
          "an axis in the surface",
          "A thin shell carries no moment about its normal.");
      return Optional.empty();
    }
  }

  /** A pressure that follows the surface or, in a linear solution, keeps its directions. */
  EnergyTerm pressure(Load.Pressure l) {
    int[] triangles = sets.findTriangles(l.where()).triangles();
    return linear || !l.follower() ? atRest(l, triangles) : following(l, triangles);
  }

  private EnergyTerm atRest(Load.Pressure l, int[] triangles) {
    DeadLoad.Builder builder = dead();
    for (int t : triangles) {
      double[] normal = new PlateFrame(corner(t, 0), corner(t, 1), corner(t, 2)).normal();
      builder.onTriangles(new int[] {t}, Vectors.scale(l.pressure_mpa(), normal));
    }
    return builder.build("pressure at rest");
  }

  private double[] corner(int triangle, int c) {
    return Vectors.at(rest, 3 * topology.vertex(triangle, c));
  }

  private EnergyTerm following(Load.Pressure l, int[] triangles) {
    FollowerPressure pressure =
        new FollowerPressure(
            "pressure", topology, triangles, rest, l.pressure_mpa(), l.origin().array());
    int loose = pressure.firstLooseEdge(fixed);
    if (loose >= 0) {
      findings.error(
          l.at(),
          "the rim of the loaded surface can sweep volume by itself, at vertices %d and %d"
              .formatted(topology.edgeStart(loose), topology.edgeEnd(loose)),
          "a closed surface, a rim held in all directions, or one in a plane of symmetry through"
              + " origin_mm",
          "Set origin_mm to a point on every plane of symmetry at the rim, or follower: false.");
    }
    return pressure;
  }
}
