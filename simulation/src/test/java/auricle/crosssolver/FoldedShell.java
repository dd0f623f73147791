package auricle.crosssolver;

import auricle.mesh.Directors;
import auricle.mesh.GridMesher;
import auricle.mesh.GridOptions;
import auricle.mesh.ParametricSurface;
import auricle.mesh.ShellMesh;
import java.util.ArrayList;
import java.util.List;

/**
 * An ear-like shell: a profile that rises from a held floor as the wall of a bowl, bends over a
 * shallow fold and runs out as a scapha, swept 110 deg around the bowl. Invented dimensions in mm.
 */
final class FoldedShell {
  /** Threads are tied to this fraction of the first distance of their bites. */
  static final double SHORTENING = 0.9;

  private static final double SWEEP = Math.toRadians(110);
  private static final double BOWL_RADIUS = 12;
  private static final double WALL = 9;
  private static final double FOLD_RADIUS = 7;
  private static final double FOLD = Math.toRadians(45);
  private static final double SCAPHA = 10;
  private static final double WALL_SLOPE = Math.toRadians(60);

  record Bites(int wall, int scapha) {}

  record Mesh(ShellMesh mesh, List<Bites> bites) {}

  private FoldedShell() {}

  static Mesh mesh(int around, int along) {
    ShellMesh mesh = GridMesher.mesh(surface(), GridOptions.regular(around, along));
    List<Bites> bites = new ArrayList<>();
    int columns = around + 1;
    for (double level : new double[] {0.5}) {
      int i = (int) Math.round(level * around);
      int wall = (int) Math.round(0.28 * along) * columns + i;
      int scapha = (int) Math.round(0.78 * along) * columns + i;
      bites.add(new Bites(wall, scapha));
    }
    return new Mesh(mesh, bites);
  }

  private static ParametricSurface surface() {
    double total = WALL + FOLD_RADIUS * FOLD + SCAPHA;
    return (s, t, p, n) -> {
      double[] q = new double[3];
      profile(total * t, q);
      double a = SWEEP * (s - 0.5);
      p[0] = (BOWL_RADIUS + q[0]) * Math.cos(a);
      p[1] = (BOWL_RADIUS + q[0]) * Math.sin(a);
      p[2] = q[1];
      n[0] = -Math.sin(q[2]) * Math.cos(a);
      n[1] = -Math.sin(q[2]) * Math.sin(a);
      n[2] = Math.cos(q[2]);
    };
  }

  /** Radius beyond the floor, height, slope at an arc length along the profile. */
  private static void profile(double s, double[] q) {
    double onWall = Math.min(s, WALL);
    double onFold = Math.max(0, Math.min(s - WALL, FOLD_RADIUS * FOLD));
    double onScapha = Math.max(0, s - WALL - FOLD_RADIUS * FOLD);
    double turned = onFold / FOLD_RADIUS;
    double end = WALL_SLOPE - turned;
    q[0] =
        onWall * Math.cos(WALL_SLOPE)
            + FOLD_RADIUS * (Math.sin(WALL_SLOPE) - Math.sin(end))
            + onScapha * Math.cos(WALL_SLOPE - FOLD);
    q[1] =
        onWall * Math.sin(WALL_SLOPE)
            + FOLD_RADIUS * (Math.cos(end) - Math.cos(WALL_SLOPE))
            + onScapha * Math.sin(WALL_SLOPE - FOLD);
    q[2] = end;
  }

  /** Change of the angle between wall and scapha at the middle thread, deg. */
  static double foldDegrees(Mesh folded, ShellCase shell) {
    Bites middle = folded.bites().get(0);
    Directors before = folded.mesh().directors();
    return Math.toDegrees(angle(shell.directors(), middle) - angle(before, middle));
  }

  private static double angle(Directors directors, Bites bites) {
    double cos = 0;
    for (int c = 0; c < 3; c++) {
      cos += directors.frame(bites.wall(), 0, c) * directors.frame(bites.scapha(), 0, c);
    }
    return Math.acos(cos);
  }
}
