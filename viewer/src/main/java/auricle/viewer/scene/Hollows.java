package auricle.viewer.scene;

/**
 * How hollow a surface is at each vertex, for shading: skin in hollows is darker because less light
 * gets there. 0.5 is flat, below is hollow seen against the normals, above is a ridge.
 */
final class Hollows {
  private static final int SMOOTHINGS = 2;
  private static final double REACH_MM = 9;

  private Hollows() {}

  /** Hollowness at each vertex. */
  static float[] of(EarSurface surface) {
    float[] bend = new float[surface.vertexCount()];
    float[] weight = new float[bend.length];
    float[] p = surface.points();
    float[] n = surface.normals();
    int[] t = surface.triangles();
    for (int i = 0; i < t.length; i++) {
      int a = t[i];
      int b = t[i / 3 * 3 + (i + 1) % 3];
      addBend(p, n, a, b, bend, weight);
      addBend(p, n, b, a, bend, weight);
    }
    for (int v = 0; v < bend.length; v++) {
      double curvature = weight[v] > 0 ? 2 * bend[v] / weight[v] : 0;
      bend[v] = (float) (0.5 + Math.atan(curvature * REACH_MM) / Math.PI);
    }
    for (int k = 0; k < SMOOTHINGS; k++) {
      bend = smoothed(bend, t);
    }
    return bend;
  }

  /** Height of a over the neighbour b along the normal at a; over squared length a curvature. */
  private static void addBend(float[] p, float[] n, int a, int b, float[] bend, float[] weight) {
    float dx = p[3 * a] - p[3 * b];
    float dy = p[3 * a + 1] - p[3 * b + 1];
    float dz = p[3 * a + 2] - p[3 * b + 2];
    bend[a] += dx * n[3 * a] + dy * n[3 * a + 1] + dz * n[3 * a + 2];
    weight[a] += dx * dx + dy * dy + dz * dz;
  }

  private static float[] smoothed(float[] values, int[] t) {
    float[] sum = new float[values.length];
    float[] count = new float[values.length];
    for (int i = 0; i < t.length; i++) {
      int b = t[i / 3 * 3 + (i + 1) % 3];
      sum[t[i]] += values[b];
      count[t[i]]++;
      sum[b] += values[t[i]];
      count[b]++;
    }
    float[] out = new float[values.length];
    for (int v = 0; v < out.length; v++) {
      out[v] = count[v] > 0 ? 0.5f * values[v] + 0.5f * sum[v] / count[v] : values[v];
    }
    return out;
  }
}
