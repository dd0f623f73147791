package auricle.plan;

import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The operations in the order in which they are done. Edits give a new plan.
 *
 * @param operations in order; those not enabled are left out when the plan is run
 */
public record Plan(List<Operation> operations) {

  /**
   * @param operations in order
   */
  public Plan {
    operations = List.copyOf(operations);
  }

  /** A plan of these operations. */
  public static Plan of(Operation... operations) {
    return new Plan(List.of(operations));
  }

  /** The operations that are done, in order. */
  public List<Operation> enabled() {
    return operations.stream().filter(Operation::enabled).toList();
  }

  /** The operations of one kind that are done, in order. */
  public <T extends Operation> List<T> enabled(Class<T> kind) {
    return operations.stream()
        .filter(Operation::enabled)
        .filter(kind::isInstance)
        .map(kind::cast)
        .toList();
  }

  /** The operation of a name. */
  public Optional<Operation> find(String name) {
    return operations.stream().filter(o -> o.name().equals(name)).findFirst();
  }

  /** With one more at the end. */
  public Plan add(Operation operation) {
    return add(operations.size(), operation);
  }

  /** With one more at a place, counted from 0. */
  public Plan add(int place, Operation operation) {
    List<Operation> list = new ArrayList<>(operations);
    list.add(place, operation);
    return new Plan(list);
  }

  /** Without the one at a place. */
  public Plan remove(int place) {
    List<Operation> list = new ArrayList<>(operations);
    list.remove(place);
    return new Plan(list);
  }

  /** With the one at a place moved to another place, counted without it. */
  public Plan move(int from, int to) {
    List<Operation> list = new ArrayList<>(operations);
    list.add(to, list.remove(from));
    return new Plan(list);
  }

  /** With another in the place of one. */
  public Plan replace(int place, Operation operation) {
    List<Operation> list = new ArrayList<>(operations);
    list.set(place, operation);
    return new Plan(list);
  }

  /** With the one at a place done or left out. */
  public Plan enable(int place, boolean enabled) {
    return replace(place, operations.get(place).withEnabled(enabled));
  }

  /** With one dose of the one at a place changed. */
  public Plan withDose(int place, String key, double value) {
    return replace(place, operations.get(place).withDose(key, value));
  }

  /** A name that no operation of the plan has yet: the words given, with a number if need be. */
  public String freeName(String words) {
    String name = words;
    for (int i = 2; find(name).isPresent(); i++) {
      name = words + " " + i;
    }
    return name;
  }

  /**
   * Everything that is wrong with its operations, each taken by itself and their names together.
   *
   * @param at JSON pointer of the list of operations
   */
  public List<Finding> findings(String at) {
    Findings findings = new Findings();
    Set<String> names = new HashSet<>();
    for (int i = 0; i < operations.size(); i++) {
      Operation operation = operations.get(i);
      String place = pointer(at, i);
      findings.addAll(operation.findings(place));
      if (!names.add(operation.name())) {
        findings.error(
            place + "/name",
            "the name '" + operation.name() + "' a second time",
            "every name once in a plan",
            "Tables and expectations tell the steps by their names.");
      }
    }
    return findings.list();
  }

  /** JSON pointer of the keys of the operation at a place. */
  String pointer(String at, int place) {
    return at + "/" + place + "/" + operations.get(place).kind();
  }
}
