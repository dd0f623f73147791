package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.diagnostics.NearestName;
import auricle.geometry.Vectors;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;

/** The probes of a model, ready to be evaluated. */
final class ProbePlan {
  private final List<Probe> probes;
  private final ShellMesh mesh;
  private final FieldProbe fields;
  private final Map<String, Contact> contacts;
  private final Map<Probe, int[]> places = new HashMap<>();
  private final Map<Probe, int[]> ends = new HashMap<>();

  ProbePlan(
      List<Probe> probes,
      ShellMesh mesh,
      FieldProbe fields,
      MeshSets sets,
      LoadPlan loads,
      Findings findings) {
    this.probes = List.copyOf(probes);
    this.mesh = mesh;
    this.fields = fields;
    contacts =
        loads.contacts().stream()
            .filter(c -> !c.name().isEmpty())
            .collect(Collectors.toMap(Contact::name, c -> c, (first, second) -> first));
    probes.forEach(p -> place(p, sets, loads.threads().keySet(), findings));
  }

  private void place(Probe probe, MeshSets sets, Set<String> threads, Findings findings) {
    if (probe instanceof Probe.Displacement p) {
      places.put(p, sets.find(p.where()).vertices());
      p.direction().ifPresent(d -> sets.unit(p.at() + "/direction", d));
    } else if (probe instanceof Probe.Rotation p) {
      places.put(p, sets.find(p.where()).vertices());
      sets.unit(p.at() + "/axis", p.axis());
    } else if (probe instanceof Probe.Reaction p) {
      places.put(p, sets.find(p.where()).vertices());
      sets.unit(p.at() + "/direction", p.direction());
    } else if (probe instanceof Probe.Distance p) {
      places.put(p, sets.find(p.from()).vertices());
      ends.put(p, sets.find(p.to()).vertices());
    } else if (probe instanceof Probe.Field p) {
      places.put(p, triangles(sets.find(p.where())));
    } else if (probe instanceof Probe.Tension p) {
      known("thread", p.thread(), p.at(), threads, findings);
    } else if (probe instanceof Probe.ContactForce p) {
      known("contact", p.contact(), p.at(), contacts.keySet(), findings);
      p.direction().ifPresent(d -> sets.unit(p.at() + "/direction", d));
    } else if (probe instanceof Probe.ContactGap p) {
      known("contact", p.contact(), p.at(), contacts.keySet(), findings);
    }
  }

  private static void known(
      String kind, String name, String at, Set<String> names, Findings findings) {
    if (!names.contains(name)) {
      findings.error(
          at + "/" + kind,
          "no " + kind + " '" + name + "'",
          "the name of a " + kind + " among the loads",
          NearestName.hint(name, names));
    }
  }

  private Contact contact(String name) {
    Contact contact = contacts.get(name);
    if (contact == null) {
      throw new IllegalArgumentException("no contact " + name);
    }
    return contact;
  }

  /** The triangles of a set; where it holds none, those that touch its vertices. */
  private int[] triangles(MeshSet set) {
    int[] inside = set.triangles();
    if (inside.length > 0) {
      return inside;
    }
    Set<Integer> in = new HashSet<>(Arrays.stream(set.vertices()).boxed().toList());
    Topology topology = mesh.topology();
    return java.util.stream.IntStream.range(0, topology.triangleCount())
        .filter(
            t ->
                in.contains(topology.vertex(t, 0))
                    || in.contains(topology.vertex(t, 1))
                    || in.contains(topology.vertex(t, 2)))
        .toArray();
  }

  /** Rotation probes, whose turns must be followed from state to state. */
  List<Probe.Rotation> rotations() {
    List<Probe.Rotation> rotations = new ArrayList<>();
    for (Probe probe : probes) {
      if (probe instanceof Probe.Rotation rotation) {
        rotations.add(rotation);
      }
    }
    return rotations;
  }

  /** Vertices or triangles of a probe. */
  int[] places(Probe probe) {
    return places.getOrDefault(probe, new int[0]).clone();
  }

  /** All probes at a state, in the order of the model. */
  List<Double> evaluate(ShellView view) {
    return probes.stream().map(p -> value(p, view)).toList();
  }

  /** As many times no number as there are probes. */
  List<Double> evaluateNothing() {
    return probes.stream().map(p -> Double.NaN).toList();
  }

  private double value(Probe probe, ShellView view) {
    if (probe instanceof Probe.Displacement p) {
      return over(p, p.over(), v -> along(p.direction(), displacement(view, v)), v -> 1);
    } else if (probe instanceof Probe.Rotation p) {
      return over(p, p.over(), v -> Math.toDegrees(view.turned(p.name(), v)), v -> 1);
    } else if (probe instanceof Probe.Reaction p) {
      return over(
          p, Probe.Over.SUM, v -> along(Optional.of(p.direction()), reaction(view, v)), v -> 1);
    } else if (probe instanceof Probe.Distance p) {
      return Vectors.norm(Vectors.subtract(middle(view, ends(p)), middle(view, places(p))));
    } else if (probe instanceof Probe.Field p) {
      return over(p, p.over(), t -> fields.value(p, t, view), fields::area);
    } else if (probe instanceof Probe.Tension p) {
      return view.tension(p.thread());
    } else if (probe instanceof Probe.ContactForce p) {
      return along(p.direction(), contact(p.contact()).force(view.unknowns()));
    } else if (probe instanceof Probe.ContactGap p) {
      return contact(p.contact()).gap(view.unknowns());
    } else if (probe instanceof Probe.LoadFactor) {
      return view.loadFactor();
    }
    return view.energy();
  }

  private int[] ends(Probe probe) {
    return ends.getOrDefault(probe, new int[0]);
  }

  private double over(
      Probe probe, Probe.Over over, IntToDoubleFunction value, IntToDoubleFunction weight) {
    double sum = 0;
    double weights = 0;
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    for (int place : places(probe)) {
      double v = value.applyAsDouble(place);
      double w = weight.applyAsDouble(place);
      sum += over == Probe.Over.SUM ? v : w * v;
      weights += w;
      least = Math.min(least, v);
      greatest = Math.max(greatest, v);
    }
    return switch (over) {
      case MEAN -> sum / weights;
      case LEAST -> least;
      case GREATEST -> greatest;
      case SUM -> sum;
    };
  }

  private static double along(Optional<Triple> direction, double[] v) {
    return direction
        .map(d -> Vectors.dot(Vectors.unit(d.array()), v))
        .orElseGet(() -> Vectors.norm(v));
  }

  private static double[] displacement(ShellView view, int v) {
    return new double[] {view.displacement(v, 0), view.displacement(v, 1), view.displacement(v, 2)};
  }

  private static double[] reaction(ShellView view, int v) {
    return new double[] {view.reaction(v, 0), view.reaction(v, 1), view.reaction(v, 2)};
  }

  private double[] middle(ShellView view, int[] vertices) {
    double[] middle = new double[3];
    for (int v : vertices) {
      for (int c = 0; c < 3; c++) {
        middle[c] += (mesh.position(v, c) + view.displacement(v, c)) / vertices.length;
      }
    }
    return middle;
  }
}
