package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.diagnostics.NearestName;
import auricle.geometry.Vectors;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.function.ToDoubleFunction;

/** Turns selectors into the parts of a mesh at rest. What selects nothing is a finding. */
final class MeshSets {
  private static final double COINCIDENT = 1e-6;

  private final ShellMesh mesh;
  private final Map<String, Selector> named = new HashMap<>();
  private final Findings findings;
  private final Deque<String> open = new ArrayDeque<>();
  private final double size;

  MeshSets(ShellMesh mesh, List<NamedSelector> selectors, Findings findings) {
    this.mesh = mesh;
    this.findings = findings;
    this.size = size(mesh);
    selectors.forEach(s -> named.put(s.name(), s.selector()));
  }

  /** Diagonal of the box around a mesh, mm. */
  static double size(ShellMesh mesh) {
    double square = 0;
    for (int c = 0; c < 3; c++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int v = 0; v < mesh.vertexCount(); v++) {
        low = Math.min(low, mesh.position(v, c));
        high = Math.max(high, mesh.position(v, c));
      }
      square += (high - low) * (high - low);
    }
    return Math.sqrt(square);
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
    return MeshSet.ofVertices(topology, accepts(selector));
  }

  private IntPredicate accepts(Selector selector) {
    if (selector instanceof Selector.Plane s) {
      double[] n = unit(s.at() + "/plane/normal", s.normal());
      double tolerance = Double.isNaN(s.tolerance_mm()) ? COINCIDENT * size : s.tolerance_mm();
      return within(x -> Math.abs(Vectors.dot(n, minus(x, s.point()))), 0, tolerance);
    } else if (selector instanceof Selector.Box s) {
      return v ->
          inside(v, 0, s.low().x(), s.high().x())
              && inside(v, 1, s.low().y(), s.high().y())
              && inside(v, 2, s.low().z(), s.high().z());
    } else if (selector instanceof Selector.Ball s) {
      return within(x -> Vectors.norm(minus(x, s.centre())), s.from_mm(), s.to_mm());
    } else if (selector instanceof Selector.Tube s) {
      double[] a = unit(s.at() + "/tube/axis", s.axis());
      return within(
          x -> Vectors.norm(Vectors.cross(a, minus(x, s.point()))), s.from_mm(), s.to_mm());
    } else if (selector instanceof Selector.Nearest s) {
      int nearest = nearest(s.point().array());
      return v -> v == nearest;
    }
    return v -> true;
  }

  private IntPredicate within(ToDoubleFunction<double[]> distance, double from, double to) {
    double slack = COINCIDENT * size;
    return v -> {
      double d = distance.applyAsDouble(at(v));
      return d >= from - slack && d <= to + slack;
    };
  }

  private boolean inside(int vertex, int c, double low, double high) {
    double slack = COINCIDENT * size;
    double x = mesh.position(vertex, c);
    return x >= low - slack && x <= high + slack;
  }

  /** The vertex nearest to a point; those nearer than rounding count as equal, the first wins. */
  int nearest(double[] point) {
    int nearest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double d = Vectors.norm(Vectors.subtract(at(v), point));
      if (d < least - COINCIDENT * COINCIDENT * size) {
        least = d;
        nearest = v;
      }
    }
    return nearest;
  }

  private double[] at(int v) {
    return new double[] {mesh.position(v, 0), mesh.position(v, 1), mesh.position(v, 2)};
  }

  private static double[] minus(double[] x, Triple point) {
    return Vectors.subtract(x, point.array());
  }

  /** A direction as a unit vector; a finding if it has none. */
  double[] unit(String at, Triple direction) {
    if (direction.isZero()) {
      findings.error(at, "a vector of length zero", "a direction", "");
      return new double[] {0, 0, 1};
    }
    return Vectors.unit(direction.array());
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
