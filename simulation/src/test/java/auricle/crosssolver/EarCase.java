package auricle.crosssolver;

import auricle.anatomy.Auricle;
import auricle.anatomy.Chart;
import auricle.anatomy.MeshLevel;
import auricle.anatomy.ShapeParameters;
import auricle.anatomy.SurfaceSpot;
import auricle.geometry.Vectors;
import auricle.measurement.EarMeasurer;
import auricle.measurement.Measures;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;

/**
 * The normal adult ear told to both solvers: the mesh of the anatomy, one homogeneous isotropic
 * layer throughout, floor and roots bedded on springs that are alike in all directions. Left out of
 * both: layers, differences between regions, and the head as an obstacle.
 */
final class EarCase {
  private static final double THICKNESS = 1.2;
  private static final double MODULUS = 1.5;
  private static final double POISSON = 0.4;
  private static final double BEDDING = 0.005;
  private static final double THREAD = 1;

  /**
   * Radius of the disc over which a bite is spread: the sheet's thickness, since what a load does
   * nearer by a shell does not know (Saint-Venant), and the ear is to be compared, not the bite.
   */
  private static final double BITE = THICKNESS;

  private static final int RINGS = 2;

  private static final double SAME = 1e-6;
  private static final Auricle PLANNING =
      Auricle.of(ShapeParameters.normalAdult(), MeshLevel.PLANNING);

  private final Auricle auricle;
  private final ShellCase shell;

  EarCase(MeshLevel level) {
    auricle = Auricle.of(ShapeParameters.normalAdult(), level);
    shell = new ShellCase(auricle.mesh(), THICKNESS, MODULUS, POISSON);
    shell.bed(auricle.mesh().vertexSet(Auricle.ATTACHED).orElseThrow(), BEDDING);
  }

  ShellMesh mesh() {
    return auricle.mesh();
  }

  ShellCase shell() {
    return shell;
  }

  /** What is measured on the ear with its vertices at places, mm. */
  Measures measures(double[] places) {
    return new EarMeasurer(auricle).measure(places);
  }

  /** A dead force on the rim at a level, N, towards the head. */
  void press(double level_percent, double force) {
    Chart chart = PLANNING.chart();
    double around = chart.aroundOfRimAtHeight(level_percent);
    int rim = nearest(chart.spot(around, chart.acrossOfRim(around)));
    shell.force(rim, WedgeModel.Face.MIDDLE, -force, 0, 0);
  }

  /**
   * A thread behind the fold at a level, from the wall of the bowl to the scapha, so far from it
   * each, mm, with bites spread over discs: a spring of a stiffness, N/mm, that wants to be shorter
   * by a length, mm.
   */
  void tie(double level_percent, double wall_mm, double scapha_mm, double shortening) {
    double around = auricle.chart().aroundAtHeight(level_percent);
    shell.tie(bite(around, -wall_mm), bite(around, scapha_mm), THREAD, shortening);
  }

  private SpreadBite bite(double around, double offset_mm) {
    Chart chart = auricle.chart();
    return new SpreadBite(
        chart.disc(chart.placeFromFold(around, offset_mm), BITE, RINGS),
        WedgeModel.Face.UNDER,
        -THICKNESS / 2);
  }

  /** The vertex of the planning mesh nearest to a spot on it, which all finer meshes have too. */
  private int nearest(SurfaceSpot spot) {
    int most = 0;
    for (int corner = 1; corner < 3; corner++) {
      most = spot.weight(corner) > spot.weight(most) ? corner : most;
    }
    double[] place =
        Vectors.at(PLANNING.mesh().positions(), 3 * topology().vertex(spot.triangle(), most));
    for (int v = 0; v < mesh().vertexCount(); v++) {
      double[] there = Vectors.at(mesh().positions(), 3 * v);
      if (Vectors.norm(Vectors.subtract(there, place)) < SAME) {
        return v;
      }
    }
    throw new IllegalStateException("no vertex of this mesh is where the planning mesh has one");
  }

  private static Topology topology() {
    return PLANNING.mesh().topology();
  }
}
