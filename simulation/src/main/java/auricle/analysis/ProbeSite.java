package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.diagnostics.NearestName;
import auricle.geometry.Vectors;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What probes find on a mesh; what they ask for and is not there becomes a finding. */
final class ProbeSite {
  private final ShellMesh mesh;
  private final FieldProbe fields;
  private final MeshSets sets;
  private final Set<String> threads;
  private final Map<String, Contact> contacts;
  private final Findings findings;
  private final List<FollowedTurn> turns = new ArrayList<>();

  ProbeSite(ShellMesh mesh, FieldProbe fields, MeshSets sets, LoadPlan loads, Findings findings) {
    this.mesh = mesh;
    this.fields = fields;
    this.sets = sets;
    this.findings = findings;
    threads = loads.threads().keySet();
    contacts =
        loads.contacts().list().stream()
            .filter(c -> !c.name().isEmpty())
            .collect(Collectors.toMap(Contact::name, c -> c, (first, second) -> first));
  }

  /** Vertices of a selection. */
  int[] vertices(Selector where) {
    return sets.find(where).vertices();
  }

  /** Triangles of a selection; where it holds none, those that touch its vertices. */
  int[] triangles(Selector where) {
    MeshSet set = sets.find(where);
    if (set.triangles().length > 0) {
      return set.triangles();
    }
    Set<Integer> in = new HashSet<>(Arrays.stream(set.vertices()).boxed().toList());
    Topology topology = mesh.topology();
    return IntStream.range(0, topology.triangleCount())
        .filter(t -> IntStream.range(0, 3).anyMatch(c -> in.contains(topology.vertex(t, c))))
        .toArray();
  }

  /** A direction as a unit vector. */
  double[] unit(String at, Triple direction) {
    return sets.unit(at, direction);
  }

  /** Asks for the turns of directors about a unit vector to be followed from state to state. */
  void follow(String probe, int[] vertices, double[] axis) {
    turns.add(new FollowedTurn(probe, vertices, axis));
  }

  /** The turns to be followed. */
  List<FollowedTurn> turns() {
    return turns;
  }

  /** Strain, stress and section forces. */
  FieldProbe fields() {
    return fields;
  }

  /** Asks for a thread. */
  void checkThread(String at, String name) {
    known("thread", name, at, threads);
  }

  /** The contact of a name; nothing, and a finding, if there is none. */
  Optional<Contact> contact(String at, String name) {
    known("contact", name, at, contacts.keySet());
    return Optional.ofNullable(contacts.get(name));
  }

  private void known(String kind, String name, String at, Set<String> names) {
    if (!names.contains(name)) {
      findings.error(
          at + "/" + kind,
          "no " + kind + " '" + name + "'",
          "the name of a " + kind + " among the loads",
          NearestName.hint(name, names));
    }
  }

  /** Part of a vector along a direction; its length where there is none. */
  static double along(Optional<Triple> direction, double[] v) {
    return direction
        .map(d -> Vectors.dot(Vectors.unit(d.array()), v))
        .orElseGet(() -> Vectors.norm(v));
  }

  /** Displacement of a vertex, mm. */
  static double[] displacement(ShellView view, int v) {
    return new double[] {view.displacement(v, 0), view.displacement(v, 1), view.displacement(v, 2)};
  }

  /** What supports exert on a vertex, N. */
  static double[] reaction(ShellView view, int v) {
    return new double[] {view.reaction(v, 0), view.reaction(v, 1), view.reaction(v, 2)};
  }

  /** Mean place of vertices, mm. */
  double[] middle(ShellView view, int[] vertices) {
    double[] middle = new double[3];
    for (int v : vertices) {
      for (int c = 0; c < 3; c++) {
        middle[c] += (mesh.position(v, c) + view.displacement(v, c)) / vertices.length;
      }
    }
    return middle;
  }
}
