package auricle.rehearsal;

import auricle.anatomy.Auricle;
import auricle.anatomy.Curve;
import auricle.measurement.EarMeasurer;
import auricle.measurement.SightLine;
import auricle.mesh.Topology;
import auricle.surgery.EarBody;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/** Reads shapes with their fields off states of a body. */
final class ShapeReader {
  private final EarBody body;
  private final EarMeasurer measurer;
  private final Auricle auricle;

  ShapeReader(EarBody body, EarMeasurer measurer) {
    this.body = body;
    this.measurer = measurer;
    auricle = body.auricle();
  }

  /**
   * The shape.
   *
   * @param u all unknowns, in the frames that the directors have now
   * @param strains of this state
   * @param earlier unknowns of the state before this step
   */
  DeformedEar read(double[] u, WallStrains strains, double[] earlier) {
    float[][] fields = {
      atVertices(strains::strain),
      atVertices(strains::settled),
      atVertices(strains::stress_mpa),
      distance(auricle.mesh().positions(), u),
      distance(earlier, u)
    };
    float[] thickness = atVertices(t -> body.wall().layers(t).whole_mm());
    int[] triangles = auricle.mesh().topology().triangles();
    return new DeformedEar(points(u), normals(u), thickness, triangles, fields, lines(u));
  }

  /** The shape with the wall and the fields of another. */
  DeformedEar moved(double[] u, DeformedEar before) {
    return before.at(points(u), normals(u), lines(u));
  }

  private float[] points(double[] u) {
    float[] points = new float[3 * auricle.mesh().vertexCount()];
    for (int i = 0; i < points.length; i++) {
      points[i] = (float) u[i];
    }
    return points;
  }

  private float[] normals(double[] u) {
    float[] normals = new float[3 * auricle.mesh().vertexCount()];
    double[] d = new double[3];
    for (int v = 0; 3 * v < normals.length; v++) {
      body.shell().directors().value(v, u, d, 0);
      for (int a = 0; a < 3; a++) {
        normals[3 * v + a] = (float) d[a];
      }
    }
    return normals;
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
      float value = (float) field.applyAsDouble(t);
      for (int i = 0; i < 3; i++) {
        sum[topology.vertex(t, i)] += value;
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

  private static Position position(SightLine.End end) {
    return new Position(end.lateral_mm(), end.anterior_mm(), end.superior_mm());
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
