package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.diagnostics.NearestName;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

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
    MeshSet set = resolve(selector);
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

  private MeshSet resolve(Selector selector) {
    Topology topology = mesh.topology();
    if (selector instanceof Selector.Named s) {
      return named(s);
    } else if (selector instanceof Selector.Boundary) {
      return MeshSet.ofEdges(topology, topology::isBoundary);
    } else if (selector instanceof Selector.AllOf s) {
      return s.parts().stream().map(this::resolve).reduce(MeshSet::and).orElseThrow();
    } else if (selector instanceof Selector.AnyOf s) {
      return s.parts().stream().map(this::resolve).reduce(MeshSet::or).orElseThrow();
    } else if (selector instanceof Selector.Without s) {
      return s.removed().stream().map(this::resolve).reduce(resolve(s.base()), MeshSet::without);
    }
    return MeshSet.ofVertices(topology, geometry.accepts(selector));
  }

  /** A direction as a unit vector; a finding if it has none. */
  double[] unit(String at, Triple direction) {
    return geometry.unit(at, direction);
  }

  private MeshSet named(Selector.Named s) {
    Selector own = named.get(s.name());
    List<Integer> vertices = mesh.vertexSets().get(s.name());
    List<Integer> region = mesh.regions().get(s.name());
    if (own != null) {
      return opened(s, own);
    } else if (vertices != null) {
      Set<Integer> in = Set.copyOf(vertices);
      return MeshSet.ofVertices(mesh.topology(), in::contains);
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
    return MeshSet.ofVertices(mesh.topology(), v -> false);
  }

  private MeshSet opened(Selector.Named s, Selector own) {
    if (open.contains(s.name())) {
      findings.error(s.at(), "set '" + s.name() + "' is made of itself", "other sets", "");
      return MeshSet.ofVertices(mesh.topology(), v -> false);
    }
    open.push(s.name());
    MeshSet set = resolve(own);
    open.pop();
    return set;
  }
}
