package auricle.viewer.task;

import auricle.anatomy.Auricle;
import auricle.rehearsal.DeformedEar;
import auricle.viewer.scene.EarSurface;
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

  /** Landmark lines of a shape by name. */
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
