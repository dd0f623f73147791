package auricle.viewer.scene;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/** A bowl with a wall, a fold and a rim, for tests of drawing; invented, no ear of anybody. */
public final class StandInEar {
  private static final int AROUND = 40;
  private static final int ACROSS = 14;
  private static final double[] RADIUS = {3, 7, 9.5, 11, 13, 17, 21, 23.5, 22};
  private static final double[] HEIGHT = {0, 0.4, 5, 11, 14, 13.5, 15, 18, 19.5};

  private StandInEar() {}

  /** The surface, its outer part moved sideways by a share of its height. */
  public static EarSurface of(double setBack) {
    int n = (AROUND + 1) * (ACROSS + 1);
    float[] points = new float[3 * n];
    for (int i = 0; i <= AROUND; i++) {
      for (int j = 0; j <= ACROSS; j++) {
        put(points, i, j, setBack);
      }
    }
    int[] triangles = triangles();
    float[] thickness = new float[n];
    java.util.Arrays.fill(thickness, 1.6f);
    List<String> regions = new ArrayList<>(Collections.nCopies(triangles.length / 3, "scapha"));
    float[] strain = new float[n];
    for (int v = 0; v < n; v++) {
      strain[v] = points[3 * v] / 100;
    }
    return new EarSurface(
        points,
        normals(points, triangles),
        thickness,
        triangles,
        regions,
        Map.of("strain", strain));
  }

  private static void put(float[] points, int i, int j, double setBack) {
    double angle = Math.toRadians(70 + 250.0 * i / AROUND);
    double s = (RADIUS.length - 1.0) * j / ACROSS;
    int k = Math.min((int) s, RADIUS.length - 2);
    double r = RADIUS[k] + (s - k) * (RADIUS[k + 1] - RADIUS[k]);
    double x = HEIGHT[k] + (s - k) * (HEIGHT[k + 1] - HEIGHT[k]);
    int at = 3 * (i * (ACROSS + 1) + j);
    points[at] = (float) (x * (1 - setBack));
    points[at + 1] = (float) (r * Math.cos(angle));
    points[at + 2] = (float) (1.35 * r * Math.sin(angle));
  }

  private static int[] triangles() {
    int[] t = new int[AROUND * ACROSS * 6];
    int next = 0;
    for (int i = 0; i < AROUND; i++) {
      for (int j = 0; j < ACROSS; j++) {
        int a = i * (ACROSS + 1) + j;
        int b = a + 1;
        int c = a + ACROSS + 1;
        for (int v : new int[] {a, b, c + 1, a, c + 1, c}) {
          t[next++] = v;
        }
      }
    }
    return t;
  }

  private static float[] normals(float[] p, int[] t) {
    float[] n = new float[p.length];
    for (int i = 0; i < t.length; i += 3) {
      float[] e = new float[6];
      for (int c = 0; c < 3; c++) {
        e[c] = p[3 * t[i + 1] + c] - p[3 * t[i] + c];
        e[3 + c] = p[3 * t[i + 2] + c] - p[3 * t[i] + c];
      }
      for (int k = 0; k < 3; k++) {
        n[3 * t[i + k]] += e[1] * e[5] - e[2] * e[4];
        n[3 * t[i + k] + 1] += e[2] * e[3] - e[0] * e[5];
        n[3 * t[i + k] + 2] += e[0] * e[4] - e[1] * e[3];
      }
    }
    for (int v = 0; v < n.length / 3; v++) {
      Vectors.normalise(n, v);
    }
    return n;
  }
}
