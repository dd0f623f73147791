package auricle.analysis;

import java.util.List;

/**
 * Picks vertices, edges and triangles of a mesh at rest. Geometric selectors pick vertices; an edge
 * or a triangle belongs to them if all its vertices do. {@code at} is the place in the model file.
 */
public sealed interface Selector {
  /** Place in the model file that a finding names. */
  String at();

  /** The part of a mesh at rest that it picks; what is wrong with it becomes a finding. */
  MeshSet in(MeshSets sets);

  /** The whole mesh. */
  record Everything(String at) implements Selector {
    @Override
    public MeshSet in(MeshSets sets) {
      return sets.ofVertices(v -> true);
    }
  }

  /** A set of the mesh or of the model, by name. */
  record Named(String at, String name) implements Selector {
    @Override
    public MeshSet in(MeshSets sets) {
      return sets.named(this);
    }
  }

  /**
   * Vertices within a distance of a plane.
   *
   * @param normal any length
   * @param tolerance_mm largest distance; NaN for a millionth of the mesh's size
   */
  record Plane(String at, Triple point, Triple normal, double tolerance_mm) implements Selector {
    @Override
    public MeshSet in(MeshSets sets) {
      return sets.ofVertices(sets.geometry().near(this));
    }
  }

  /** Vertices in a box with sides along the axes, its faces included. */
  record Box(String at, Triple low, Triple high) implements Selector {
    @Override
    public MeshSet in(MeshSets sets) {
      return sets.ofVertices(sets.geometry().inside(this));
    }
  }

  /** Vertices at a distance from a point between two values. */
  record Ball(String at, Triple centre, double from_mm, double to_mm) implements Selector {
    @Override
    public MeshSet in(MeshSets sets) {
      return sets.ofVertices(sets.geometry().between(this));
    }
  }

  /** Vertices at a distance from an axis between two values. */
  record Tube(String at, Triple point, Triple axis, double from_mm, double to_mm)
      implements Selector {
    @Override
    public MeshSet in(MeshSets sets) {
      return sets.ofVertices(sets.geometry().between(this));
    }
  }

  /** The vertex nearest to a point; among equals the one of lowest number. */
  record Nearest(String at, Triple point) implements Selector {
    @Override
    public MeshSet in(MeshSets sets) {
      return sets.ofVertices(sets.geometry().nearest(this));
    }
  }

  /** Every edge with a triangle on one side alone, and its vertices. */
  record Boundary(String at) implements Selector {
    @Override
    public MeshSet in(MeshSets sets) {
      return sets.boundary();
    }
  }

  /** What lies in all of these. */
  record AllOf(String at, List<Selector> parts) implements Selector {
    @Override
    public MeshSet in(MeshSets sets) {
      return parts.stream().map(p -> p.in(sets)).reduce(MeshSet::and).orElseThrow();
    }
  }

  /** What lies in any of these. */
  record AnyOf(String at, List<Selector> parts) implements Selector {
    @Override
    public MeshSet in(MeshSets sets) {
      return parts.stream().map(p -> p.in(sets)).reduce(MeshSet::or).orElseThrow();
    }
  }

  /** What lies in the first and in none of the others. */
  record Without(String at, Selector base, List<Selector> removed) implements Selector {
    @Override
    public MeshSet in(MeshSets sets) {
      return removed.stream().map(r -> r.in(sets)).reduce(base.in(sets), MeshSet::without);
    }
  }
}
