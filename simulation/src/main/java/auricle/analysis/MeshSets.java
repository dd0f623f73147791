package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.diagnostics.NearestName;
import auricle.mesh.ShellMesh;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;

/** Turns selectors into the parts of a mesh at rest. What selects nothing is a finding. */
final class MeshSets {
  private final ShellMesh mesh;
  private final Map<String, Selector> named = new HashMap<>();
  private final Findings findings;
  private final Deque<String> open = new ArrayDeque<>();
  private final GeometricSelectors geometry;

  MeshSets(ShellMesh mesh, List<NamedSelector> selectors, Findings findings) {
    this.mesh = mesh;
    this.findings = findings;
    this.geometry = new GeometricSelectors(mesh, findings);
    selectors.forEach(s -> named.put(s.name(), s.selector()));
  }

  /** The part of the mesh; a finding if it has no vertex. */
  MeshSet find(Selector selector) {
    int before = findings.list().size();
    MeshSet set = selector.in(this);
    if (set.isEmpty() && findings.list().size() == before) {
      Selector empty = selector;
      if (selector instanceof Selector.Named s && named.containsKey(s.name())) {
        empty = named.getOrDefault(s.name(), selector);
      }
      findings.error(
          empty.at(),
          "nothing of the mesh is selected",
          "at least one vertex",
          "Look at the coordinates and tolerances of the selector.");
    }
    return set;
  }

  /** The part of the mesh with at least one edge; else a finding. */
  MeshSet findEdges(Selector selector) {
    MeshSet set = find(selector);
    if (!set.isEmpty() && set.edges().length == 0) {
      findings.error(selector.at(), "the selected vertices hold no edge", "a line of edges", "");
    }
    return set;
  }

  /** The part of the mesh with at least one triangle; else a finding. */
  MeshSet findTriangles(Selector selector) {
    MeshSet set = find(selector);
    if (!set.isEmpty() && set.triangles().length == 0) {
      findings.error(
          selector.at(),
          "no triangle lies in the selection with all its corners",
          "at least one triangle",
          "");
    }
    return set;
  }

  /** Selectors that look at where vertices are. */
  GeometricSelectors geometry() {
    return geometry;
  }

  /** The vertices that are accepted, with the edges and triangles between them. */
  MeshSet ofVertices(IntPredicate accepted) {
    return MeshSet.ofVertices(mesh.topology(), accepted);
  }

  /** Every edge with a triangle on one side alone. */
  MeshSet boundary() {
    return MeshSet.ofEdges(mesh.topology(), mesh.topology()::isBoundary);
  }

  /** A direction as a unit vector; a finding if it has none. */
  double[] unit(String at, Triple direction) {
    return geometry.unit(at, direction);
  }

  /** The part of a name, of the model before that of the mesh; a finding if there is none. */
  MeshSet named(Selector.Named s) {
    Selector own = named.get(s.name());
    List<Integer> vertices = mesh.vertexSets().get(s.name());
    List<Integer> region = mesh.regions().get(s.name());
    if (own != null) {
      return opened(s, own);
    } else if (vertices != null) {
      Set<Integer> in = Set.copyOf(vertices);
      return ofVertices(in::contains);
    } else if (region != null) {
      Set<Integer> in = Set.copyOf(region);
      return MeshSet.ofTriangles(mesh.topology(), in::contains);
    }
    Set<String> known = new TreeSet<>(named.keySet());
    known.addAll(mesh.vertexSets().keySet());
    known.addAll(mesh.regions().keySet());
    known.add("all");
    findings.error(
        s.at(), "no set '" + s.name() + "'", "a known set", NearestName.hint(s.name(), known));
    return ofVertices(v -> false);
  }

  private MeshSet opened(Selector.Named s, Selector own) {
    if (open.contains(s.name())) {
      findings.error(s.at(), "set '" + s.name() + "' is made of itself", "other sets", "");
      return ofVertices(v -> false);
    }
    open.push(s.name());
    MeshSet set = own.in(this);
    open.pop();
    return set;
  }
}
