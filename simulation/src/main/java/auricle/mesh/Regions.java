package auricle.mesh;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Groups of faces become regions of triangles. */
final class Regions {
  private Regions() {}

  static void add(ShellMesh.Builder builder, RawMesh raw, Triangulation triangles) {
    for (Map.Entry<String, List<Integer>> group : raw.groups().entrySet()) {
      Set<Integer> faces = new HashSet<>(group.getValue());
      List<Integer> members = new ArrayList<>();
      for (int t = 0; t < triangles.count(); t++) {
        if (faces.contains(triangles.face(t))) {
          members.add(t);
        }
      }
      builder.region(group.getKey(), members);
    }
  }
}
