package auricle.surgery;

import auricle.anatomy.Auricle;
import auricle.anatomy.Region;
import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Findings;
import auricle.energy.EnergyTerm;
import auricle.equilibrium.Sensitivities;
import auricle.equilibrium.Supports;
import auricle.material.Section;
import auricle.material.Tissue;
import auricle.mesh.Topology;
import auricle.mesh.Unknowns;
import auricle.plan.Bolster;
import auricle.plan.Operation;
import auricle.plan.Tie;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.IntFunction;

/**
 * An ear as a mechanical body: its shell, what it stands on, and the operations of a plan, each
 * made ready as mechanics. {@link #apply} makes them, one after the other, each to rest.
 */
public final class EarBody {
  private final Auricle auricle;
  private final Tissue tissue;
  private final EarWall wall;
  private final ShellBody shell;
  private final Map<Operation, Change> changes;
  private final boolean undermined;

  private EarBody(
      Auricle auricle,
      Tissue tissue,
      List<Operation> operations,
      List<BodyThread> others,
      Findings findings) {
    this.auricle = auricle;
    this.tissue = tissue;
    undermined = operations.stream().anyMatch(o -> !(o instanceof Bolster));
    wall = new EarWall(auricle, tissue, undermined);
    Changes maker = new Changes(new EarPlaces(auricle), wall, tissue, findings);
    changes = new LinkedHashMap<>();
    List<BodyThread> threads = new ArrayList<>(others);
    for (Operation operation : operations) {
      Change change = maker.of(operation);
      changes.put(operation, change);
      threads.addAll(change.threads());
    }
    Unknowns unknowns = auricle.mesh().topology().unknowns();
    shell =
        new ShellBody(
            auricle.mesh(),
            sections(),
            this::others,
            threads,
            new Supports.Builder(unknowns.size(), unknowns.director(0)).build());
  }

  private EarBody(EarBody other) {
    auricle = other.auricle;
    tissue = other.tissue;
    wall = other.wall;
    undermined = other.undermined;
    shell = other.shell.copy();
    changes = Map.of();
  }

  /**
   * An ear about to be operated on.
   *
   * <p>The posterior skin is lifted off, and carries nothing, if anything at all is done from
   * behind or through it: by any operation but a bolster.
   *
   * @param operations those that will be done, in order
   * @throws BadInputException if a thread is not in the tables
   */
  public static EarBody of(Auricle auricle, Tissue tissue, List<Operation> operations)
      throws BadInputException {
    Findings findings = new Findings();
    EarBody body = new EarBody(auricle, tissue, operations, List.of(), findings);
    findings.stopIfErrors();
    return body;
  }

  /** What holds it, made anew for each body: contact keeps lists of what is near. */
  private List<EnergyTerm> others() {
    List<EnergyTerm> others =
        new ArrayList<>(new HeadSupport(auricle, wall, tissue.head()).terms());
    others.add(new FoldContact(auricle, wall, tissue.head()).term());
    return others;
  }

  /** An ear to which nothing is done but that something pulls at it. */
  static EarBody untouched(Auricle auricle, Tissue tissue, BodyThread pull) {
    return new EarBody(auricle, tissue, List.of(), List.of(pull), new Findings());
  }

  private BodySections sections() {
    Topology topology = auricle.mesh().topology();
    Section[] sections = new Section[topology.triangleCount()];
    double[] angles = new double[sections.length];
    boolean[] firm = new boolean[sections.length];
    for (int t = 0; t < sections.length; t++) {
      sections[t] = wall.section(t);
      angles[t] = auricle.chart().foldDirection(t);
      firm[t] = auricle.region(t).hasCartilage();
    }
    return new BodySections(sections, angles, firm);
  }

  /**
   * Makes an operation and leads the ear to rest.
   *
   * @param operation one of those that the body was made for, not made yet
   */
  public Settled apply(Operation operation, Solving solving) {
    return of(operation).make(shell, solving);
  }

  private Change of(Operation operation) {
    Change change = changes.get(operation);
    if (change == null) {
      throw new IllegalArgumentException("the body was not made for '" + operation.name() + "'");
    }
    return change;
  }

  /**
   * Goes on where another body for the same ear stood after the same operations.
   *
   * @param done operations that had been made, in order
   * @param state of that body after the last of them
   */
  public Settled resume(List<Operation> done, RestState state, Solving solving) {
    for (Operation operation : done) {
      of(operation).alter(shell);
    }
    return shell.resume(state, solving);
  }

  /** The present state at rest. */
  public RestState save() {
    return shell.save();
  }

  /**
   * Derivative of the energy by every unknown, N and N·mm, if this body's operations had been done
   * and it stood exactly where another does: what differs is the doses alone. This body is used up
   * by it.
   *
   * @param other made for as many operations of the same kinds, all of them done
   */
  public double[] forcesInPlaceOf(EarBody other) {
    changes.values().forEach(change -> change.alter(shell));
    shell.restore(other.save());
    pairs(other, (here, there) -> here.tieAs(there, shell.unknowns()));
    return shell.forces();
  }

  /**
   * Leads this ear, to which nothing has been done yet, to rest from where another of the same
   * shape stands: for following doses while they are turned. What differs is the doses alone.
   *
   * @param other made for as many operations of the same kinds and names, all of them done
   * @param first operation that differs
   * @param states where the ear came to rest after each operation, by its index, under doses like
   *     these; -1 for before the first
   */
  public Settled turnFrom(
      EarBody other, int first, IntFunction<RestState> states, Solving solving) {
    List<Change> here = List.copyOf(changes.values());
    List<Change> there = List.copyOf(other.changes.values());
    return new DoseTurn(shell, here, other.shell, there, solving).follow(first, states);
  }

  private void pairs(EarBody other, BiConsumer<Change, Change> with) {
    Iterator<Change> others = other.changes.values().iterator();
    changes.values().forEach(change -> with.accept(change, others.next()));
  }

  /** Puts a state back from which nothing but ties have been changed. */
  public void restore(RestState state) {
    shell.restore(state);
  }

  /** A body of its own in the same state; nothing more can be done to it but what time does. */
  public EarBody copy() {
    return new EarBody(this);
  }

  /** The ear at rest, before any operation. */
  public Auricle auricle() {
    return auricle;
  }

  /** What it is made of. */
  public Tissue tissue() {
    return tissue;
  }

  /** Its layers. */
  public EarWall wall() {
    return wall;
  }

  /** The shell in its present state. */
  public ShellBody shell() {
    return shell;
  }

  /** All threads of the plan, tied or not. */
  public List<BodyThread> threads() {
    return shell.threads();
  }

  /** Threads that an operation put in. */
  public List<BodyThread> threads(Operation operation) {
    Change change = changes.get(operation);
    return change == null ? List.of() : change.threads();
  }

  /**
   * Ties the thread of an operation that has been done and was tied to a gap to another gap, from
   * the present state.
   *
   * @param index of the operation
   */
  public Settled turn(int index, Tie.Gap to, Solving solving) {
    Change change = List.copyOf(changes.values()).get(index);
    if (!(change instanceof LoopTie loop)) {
      throw new IllegalArgumentException("operation " + index + " ties no thread");
    }
    return loop.turn(shell, to, solving);
  }

  /** Present unknowns; shared, not to be changed. */
  public double[] unknowns() {
    return shell.unknowns();
  }

  /** Whether the posterior skin of a triangle has been lifted off. */
  public boolean undermined(int triangle) {
    Region region = auricle.region(triangle);
    return undermined && region.hasCartilage();
  }

  /** How the present state answers to small changes. */
  public Sensitivities sensitivities() {
    return shell.sensitivities();
  }
}
