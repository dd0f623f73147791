package auricle.viewer.task;

import auricle.anatomy.Auricle;
import auricle.anatomy.Curve;
import auricle.rehearsal.DeformedEar;
import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.Normals;
import auricle.viewer.scene.Spot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Shapes of the simulation as surfaces to draw. */
final class Surfaces {
  private final List<String> regions = new ArrayList<>();

  Surfaces(Auricle auricle, DeformedEar first) {
    for (int t = 0; t < first.triangleCount(); t++) {
      regions.add(auricle.region(t).key());
    }
  }

  EarSurface of(DeformedEar ear) {
    Map<String, float[]> fields = new HashMap<>();
    for (DeformedEar.Field field : DeformedEar.Field.values()) {
      fields.put(field.key(), ear.field(field));
    }
    return new EarSurface(
        ear.points(), ear.normals(), ear.thickness(), ear.triangles(), regions, fields);
  }

  /**
   * The shape at a time after the operation, from its coordinates alone; strain and stress are not
   * known then, the distances are.
   *
   * @param coordinates x, y, z of each vertex first, mm
   * @param before the ear before the operation
   * @param tied the ear at its end
   */
  EarSurface of(double[] coordinates, EarSurface before, EarSurface tied) {
    float[] points = new float[3 * before.vertexCount()];
    for (int i = 0; i < points.length; i++) {
      points[i] = (float) coordinates[i];
    }
    float[] normals = Normals.of(points, before.triangles());
    Map<String, float[]> fields =
        Map.of(
            DeformedEar.Field.DISPLACEMENT.key(), distance(points, before.points()),
            DeformedEar.Field.STEP_CHANGE.key(), distance(points, tied.points()));
    return new EarSurface(points, normals, before.thickness(), before.triangles(), regions, fields);
  }

  private static float[] distance(float[] a, float[] b) {
    float[] d = new float[a.length / 3];
    for (int v = 0; v < d.length; v++) {
      double x = a[3 * v] - b[3 * v];
      double y = a[3 * v + 1] - b[3 * v + 1];
      double z = a[3 * v + 2] - b[3 * v + 2];
      d[v] = (float) Math.sqrt(x * x + y * y + z * z);
    }
    return d;
  }

  /** Landmark lines on a surface, by the points of triangles that they run through. */
  static Map<String, List<Spot>> lines(Auricle auricle, EarSurface surface) {
    return Map.of(
        "rim", line(auricle.chart().rim(), surface),
        "fold", line(auricle.chart().foldLine(), surface));
  }

  private static List<Spot> line(Curve curve, EarSurface surface) {
    return curve.spots().stream()
        .map(s -> surface.place(s.triangle(), s.weight1(), s.weight2()))
        .toList();
  }

  static Map<String, List<Spot>> lines(DeformedEar ear) {
    Map<String, List<Spot>> lines = new HashMap<>();
    for (String name : ear.lineNames()) {
      lines.put(
          name,
          ear.line(name).stream()
              .map(p -> new Spot(p.lateral_mm(), p.anterior_mm(), p.superior_mm()))
              .toList());
    }
    return lines;
  }
}
