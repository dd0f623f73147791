package auricle.rehearsal;

import auricle.anatomy.Auricle;
import auricle.anatomy.Curve;
import auricle.energy.MaterialPoint;
import auricle.material.ThreadRow;
import auricle.measurement.EarMeasurer;
import auricle.measurement.SightLine;
import auricle.mesh.Topology;
import auricle.surgery.BodyThread;
import auricle.surgery.EarBody;
import auricle.surgery.Purpose;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/** Reads threads, extremes and shape off a body in its present state. */
final class EarView {
  private static final double UPPER_THIRD = 200 / 3.0;
  private static final double LOWER_THIRD = 100 / 3.0;

  private final EarBody body;
  private final EarMeasurer measurer;
  private final Auricle auricle;
  private final WallStrains strains;

  EarView(EarBody body, EarMeasurer measurer) {
    this.measurer = measurer;
    this.body = body;
    auricle = body.auricle();
    strains = new WallStrains(body);
  }

  /** Threads that have been tied, slack ones too. */
  List<ThreadState> threads() {
    return body.threads().stream()
        .filter(t -> t.restLength_mm().isPresent())
        .map(this::thread)
        .toList();
  }

  private ThreadState thread(BodyThread t) {
    double[] u = body.unknowns();
    double tension = t.thread().tension(u);
    double knot = t.row().map(ThreadRow::knotPull_n).orElse(Double.POSITIVE_INFINITY);
    List<Position> points = new ArrayList<>();
    for (MaterialPoint p : t.points()) {
      points.add(position(p.position(u)));
    }
    return new ThreadState(
        t.name(),
        t.purpose() == Purpose.SUTURE,
        tension,
        knot,
        t.tearThrough_n(),
        tension < ThreadState.SLACK_N,
        t.thread().length(u),
        t.closed(),
        points);
  }

  private static Position position(double[] x) {
    return new Position(x[0], x[1], x[2]);
  }

  private static Position position(SightLine.End end) {
    return new Position(end.lateral_mm(), end.anterior_mm(), end.superior_mm());
  }

  Extremes extremes() {
    return new Extremes(extreme(strains::strain), extreme(strains::stress_mpa));
  }

  private Extreme extreme(IntToDoubleFunction field) {
    Topology topology = auricle.mesh().topology();
    int at = -1;
    double most = -1;
    for (int t = 0; t < topology.triangleCount(); t++) {
      if (auricle.region(t).hasCartilage() && field.applyAsDouble(t) > most) {
        most = field.applyAsDouble(t);
        at = t;
      }
    }
    double height = auricle.chart().heightPercent(at);
    String region = auricle.region(at).key();
    return new Extreme(
        most, at, region, height, centre(at), region.replace('_', ' ') + ", " + third(height));
  }

  private static String third(double heightPercent) {
    return heightPercent > UPPER_THIRD
        ? "upper third"
        : heightPercent > LOWER_THIRD ? "middle third" : "lower third";
  }

  private Position centre(int triangle) {
    double[] c = new double[3];
    for (int i = 0; i < 3; i++) {
      int v = 3 * auricle.mesh().topology().vertex(triangle, i);
      for (int a = 0; a < 3; a++) {
        c[a] += body.unknowns()[v + a] / 3;
      }
    }
    return position(c);
  }

  /**
   * The shape.
   *
   * @param earlier unknowns of the state before this step
   */
  DeformedEar shape(double[] earlier) {
    int n = auricle.mesh().vertexCount();
    double[] u = body.unknowns();
    float[] points = new float[3 * n];
    float[] normals = new float[3 * n];
    double[] d = new double[3];
    for (int v = 0; v < n; v++) {
      body.shell().directors().value(v, u, d, 0);
      for (int a = 0; a < 3; a++) {
        points[3 * v + a] = (float) u[3 * v + a];
        normals[3 * v + a] = (float) d[a];
      }
    }
    float[][] fields = {
      atVertices(strains::strain),
      atVertices(strains::stress_mpa),
      distance(auricle.mesh().positions(), u),
      distance(earlier, u)
    };
    float[] thickness = atVertices(t -> body.wall().layers(t).whole_mm());
    int[] triangles = auricle.mesh().topology().triangles();
    return new DeformedEar(points, normals, thickness, triangles, fields, lines(u));
  }

  private static float[] distance(double[] from, double[] to) {
    float[] distance = new float[from.length / 3];
    for (int v = 0; v < distance.length; v++) {
      double square = 0;
      for (int a = 0; a < 3; a++) {
        double d = to[3 * v + a] - from[3 * v + a];
        square += d * d;
      }
      distance[v] = (float) Math.sqrt(square);
    }
    return distance;
  }

  /** Mean over the triangles at each vertex. */
  private float[] atVertices(IntToDoubleFunction field) {
    Topology topology = auricle.mesh().topology();
    float[] sum = new float[auricle.mesh().vertexCount()];
    int[] count = new int[sum.length];
    for (int t = 0; t < topology.triangleCount(); t++) {
      for (int i = 0; i < 3; i++) {
        sum[topology.vertex(t, i)] += (float) field.applyAsDouble(t);
        count[topology.vertex(t, i)]++;
      }
    }
    for (int v = 0; v < sum.length; v++) {
      sum[v] /= Math.max(1, count[v]);
    }
    return sum;
  }

  private Map<String, List<Position>> lines(double[] u) {
    Map<String, List<Position>> lines = new LinkedHashMap<>();
    lines.put("rim", line(auricle.chart().rim(), u));
    lines.put("fold", line(auricle.chart().foldLine(), u));
    lines.put("antihelix", line(auricle.chart().antihelixCrest(), u));
    lines.put("bowl_edge", line(auricle.chart().bowlEdge(), u));
    lines.put("free_edge", line(auricle.chart().freeEdge(), u));
    for (SightLine sight : measurer.sightLines(u)) {
      lines.put(sight.name(), List.of(position(sight.from()), position(sight.to())));
    }
    return lines;
  }

  private List<Position> line(Curve curve, double[] u) {
    double[] p = curve.points(auricle.mesh().topology(), u);
    List<Position> line = new ArrayList<>();
    for (int i = 0; i < p.length; i += 3) {
      line.add(new Position(p[i], p[i + 1], p[i + 2]));
    }
    return line;
  }
}
