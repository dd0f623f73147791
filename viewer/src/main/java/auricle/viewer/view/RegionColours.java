package auricle.viewer.view;

import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.Palette;
import java.util.ArrayList;
import java.util.List;

/** A place in the palette of kinds for each vertex, by the region of a triangle beside it. */
final class RegionColours {
  private RegionColours() {}

  /** Names of the regions in the order of their colours. */
  static List<String> names(EarSurface surface) {
    List<String> names = new ArrayList<>();
    for (int t = 0; t < surface.triangleCount(); t++) {
      if (!names.contains(surface.region(t))) {
        names.add(surface.region(t));
      }
    }
    return names;
  }

  static float[] of(EarSurface surface) {
    List<String> names = names(surface);
    float[] place = new float[surface.vertexCount()];
    for (int t = 0; t < surface.triangleCount(); t++) {
      float at = at(names.indexOf(surface.region(t)));
      for (int k = 0; k < 3; k++) {
        place[surface.triangles()[3 * t + k]] = at;
      }
    }
    return place;
  }

  static float at(int index) {
    return (index % Palette.kinds()) / (Palette.kinds() - 1f);
  }
}
