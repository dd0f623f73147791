package auricle.mesh;

/**
 * The shape in which nothing is strained, triangle by triangle: the squared arc lengths of its
 * three edges (the rest metric) and the tilts of its three corner directors against its edges (the
 * rest curvature). Neighbouring triangles need not agree: a rest shape need not fit into space.
 *
 * <p>Corner i and edge k are numbered as in {@link Topology}. The arc of an edge from i to j is
 * that of the cubic through both ends at right angles to the end directors, to second order in the
 * tilts: s² = e·e + (2 p² − p r + 2 r²) / 15 with p = d_i·e, r = d_j·e.
 */
public final class RestShape {
  private final Topology topology;
  private final double[] arcSquared;
  private final double[] tilt;
  private int revision;

  private RestShape(Topology topology, double[] arcSquared, double[] tilt) {
    this.topology = topology;
    this.arcSquared = arcSquared;
    this.tilt = tilt;
  }

  /**
   * The rest shape of a configuration.
   *
   * @param topology the mesh
   * @param u unknowns; the coordinates are read, and the tilts through {@code directors}
   * @param directors directors, one a vertex
   */
  public static RestShape of(Topology topology, double[] u, Directors directors) {
    int n = topology.triangleCount();
    RestShape shape = new RestShape(topology, new double[3 * n], new double[9 * n]);
    double[] d = new double[9];
    double[] e = new double[9];
    for (int t = 0; t < n; t++) {
      shape.measure(t, u, directors, d, e);
    }
    return shape;
  }

  private void measure(int t, double[] u, Directors directors, double[] d, double[] e) {
    Unknowns unknowns = directors.unknowns();
    for (int i = 0; i < 3; i++) {
      directors.value(topology.vertex(t, i), u, d, 3 * i);
      int from = unknowns.vertex(topology.vertex(t, (i + 1) % 3));
      int to = unknowns.vertex(topology.vertex(t, (i + 2) % 3));
      for (int c = 0; c < 3; c++) {
        e[3 * i + c] = u[to + c] - u[from + c];
      }
    }
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k < 3; k++) {
        tilt[9 * t + 3 * i + k] = dot(d, 3 * i, e, 3 * k);
      }
    }
    for (int k = 0; k < 3; k++) {
      double p = tilt[9 * t + 3 * ((k + 1) % 3) + k];
      double r = tilt[9 * t + 3 * ((k + 2) % 3) + k];
      arcSquared[3 * t + k] = dot(e, 3 * k, e, 3 * k) + (2 * p * p - p * r + 2 * r * r) / 15;
    }
  }

  private static double dot(double[] a, int i, double[] b, int j) {
    return a[i] * b[j] + a[i + 1] * b[j + 1] + a[i + 2] * b[j + 2];
  }

  /** A copy that can be changed by itself. */
  public RestShape copy() {
    return new RestShape(topology, arcSquared.clone(), tilt.clone());
  }

  /** Takes over all lengths and tilts of another rest shape of the same mesh. */
  public void become(RestShape other) {
    revision++;
    System.arraycopy(other.arcSquared, 0, arcSquared, 0, arcSquared.length);
    System.arraycopy(other.tilt, 0, tilt, 0, tilt.length);
  }

  /**
   * Multiplies all arcs squared and tilts by a number: a step of a weighted sum of shapes, which is
   * a shape again where the weights come to 1.
   */
  public void scale(double factor) {
    revision++;
    for (int i = 0; i < arcSquared.length; i++) {
      arcSquared[i] *= factor;
    }
    for (int i = 0; i < tilt.length; i++) {
      tilt[i] *= factor;
    }
  }

  /**
   * Adds another shape times a weight, see {@link #scale}. Metric and curvature of the sum are the
   * weighted sums of those of the shapes.
   *
   * @throws IllegalArgumentException if the number of triangles differs
   */
  public void add(double weight, RestShape other) {
    if (other.arcSquared.length != arcSquared.length) {
      throw new IllegalArgumentException(
          arcSquared.length / 3 + " and " + other.arcSquared.length / 3 + " triangles in one sum");
    }
    revision++;
    for (int i = 0; i < arcSquared.length; i++) {
      arcSquared[i] += weight * other.arcSquared[i];
    }
    for (int i = 0; i < tilt.length; i++) {
      tilt[i] += weight * other.tilt[i];
    }
  }

  /**
   * The same triangles, joined in another way: a sector as rest shape of a full ring, say.
   *
   * @param other as many triangles, their corners in the same order
   * @throws IllegalArgumentException if the number of triangles differs
   */
  public RestShape on(Topology other) {
    if (other.triangleCount() != topology.triangleCount()) {
      throw new IllegalArgumentException(
          topology.triangleCount() + " triangles cannot rest as " + other.triangleCount());
    }
    return new RestShape(other, arcSquared.clone(), tilt.clone());
  }

  /** Goes up by every change: whoever has read a shape knows by it whether to read it again. */
  public int revision() {
    return revision;
  }

  /** The mesh. */
  public Topology topology() {
    return topology;
  }

  /** Squared rest arc length of edge k of a triangle, mm². */
  public double arcSquared(int triangle, int k) {
    return arcSquared[3 * triangle + k];
  }

  /** Rest value of d_i·e_k: corner director i against edge vector k of a triangle, mm. */
  public double tilt(int triangle, int i, int k) {
    return tilt[9 * triangle + 3 * i + k];
  }

  /** Whether the rest lengths of a triangle's edges make a triangle of some area. */
  public boolean closes(int triangle) {
    double a = Math.sqrt(arcSquared[3 * triangle]);
    double b = Math.sqrt(arcSquared[3 * triangle + 1]);
    double c = Math.sqrt(arcSquared[3 * triangle + 2]);
    double least = 1e-12 * (a + b + c);
    return a + b - c > least && b + c - a > least && c + a - b > least;
  }

  /** The flattened triangle in its own plane. */
  public PlateShape plate(int triangle) {
    return PlateShape.of(arcSquared, 3 * triangle);
  }

  /**
   * Adds a free in-plane strain to a triangle: its metric becomes a + 2 ε.
   *
   * @param xx strain along the triangle's own axis (edge 0)
   * @param yy strain across it
   * @param xy tensor shear strain
   */
  public void addStrain(int triangle, double xx, double yy, double xy) {
    revision++;
    PlateShape plate = plate(triangle);
    for (int k = 0; k < 3; k++) {
      double x = plate.edgeX(k);
      double y = plate.edgeY(k);
      arcSquared[3 * triangle + k] += 2 * (xx * x * x + yy * y * y + 2 * xy * x * y);
    }
  }

  /**
   * Adds a free curvature to a triangle (positive: convex towards the normal, as a sphere is with
   * outward normals), in the triangle's own axes. The corner tilts are those of the quadratic
   * surface through the three corners.
   *
   * @param xx curvature along edge 0, 1/mm
   * @param yy curvature across it, 1/mm
   * @param xy twist, 1/mm
   */
  public void addCurvature(int triangle, double xx, double yy, double xy) {
    revision++;
    PlateShape plate = plate(triangle);
    double[] change = plate.tiltsOfCurvature(xx, yy, xy);
    for (int i = 0; i < 9; i++) {
      tilt[9 * triangle + i] += change[i];
    }
  }

  /**
   * Stretches a triangle by the symmetric U = I + ε in its own plane and lets it keep its
   * curvature: what stays of tissue that is partly taken out bends as before.
   *
   * @param xx stretch along the triangle's own axis (edge 0), less 1; above -1
   * @param yy the same across it
   * @param xy symmetric shear part
   */
  public void stretch(int triangle, double xx, double yy, double xy) {
    revision++;
    PlateShape plate = plate(triangle);
    double[] curvature = curvature(triangle);
    for (int k = 0; k < 3; k++) {
      double x = (1 + xx) * plate.edgeX(k) + xy * plate.edgeY(k);
      double y = xy * plate.edgeX(k) + (1 + yy) * plate.edgeY(k);
      double bend = bend(curvature, x, y) - bend(curvature, plate.edgeX(k), plate.edgeY(k));
      arcSquared[3 * triangle + k] += x * x + y * y - square(plate, k);
      tilt[9 * triangle + 3 * ((k + 2) % 3) + k] += bend / 2;
      tilt[9 * triangle + 3 * ((k + 1) % 3) + k] -= bend / 2;
    }
    for (int i = 0; i < 3; i++) {
      int row = 9 * triangle + 3 * i;
      tilt[row + i] = -tilt[row + (i + 1) % 3] - tilt[row + (i + 2) % 3];
    }
  }

  private static double square(PlateShape plate, int k) {
    return plate.edgeX(k) * plate.edgeX(k) + plate.edgeY(k) * plate.edgeY(k);
  }

  private static double bend(double[] b, double x, double y) {
    return b[0] * x * x + b[1] * y * y + 2 * b[2] * x * y;
  }

  /**
   * The quadratic surface that the tilts of a triangle make: b(e, e) of an edge is the tilt at its
   * end less that at its start.
   *
   * @return curvature along edge 0, across it, and twist, 1/mm
   */
  public double[] curvature(int triangle) {
    PlateShape plate = plate(triangle);
    double[] along = new double[3];
    for (int k = 0; k < 3; k++) {
      along[k] = tilt(triangle, (k + 2) % 3, k) - tilt(triangle, (k + 1) % 3, k);
    }
    double x0 = plate.edgeX(0);
    double xx = along[0] / (x0 * x0);
    // edges 1 and 2 have one height: their sum and difference give the other two
    double y = plate.edgeY(1);
    double first = along[1] - xx * plate.edgeX(1) * plate.edgeX(1);
    double second = along[2] - xx * plate.edgeX(2) * plate.edgeX(2);
    double xy = (first - second) / (2 * y * (plate.edgeX(1) + plate.edgeX(2)));
    double yy = (first - 2 * xy * plate.edgeX(1) * y) / (y * y);
    return new double[] {xx, yy, xy};
  }
}
