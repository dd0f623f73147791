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
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.IntFunction;

/**
 * An ear as a mechanical body: its shell, what it stands on, and the operations of a plan, each
 * made ready as mechanics. {@link #apply} makes them, one after the other, each to rest.
 */
public final class EarBody {
  private final Auricle auricle;
  private final Tissue tissue;
  private final EarPlaces places;
  private final EarWall wall;
  private final ShellBody shell;
  private PlannedChanges changes;
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
    places = new EarPlaces(auricle);
    changes = new PlannedChanges(operations, maker(findings)::of);
    List<BodyThread> threads = new ArrayList<>(others);
    threads.addAll(changes.threads());
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
    places = other.places;
    wall = other.wall;
    undermined = other.undermined;
    shell = other.shell.copy();
    changes = PlannedChanges.NONE;
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

  private Changes maker(Findings findings) {
    return new Changes(places, wall, tissue, findings);
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
    return changes.of(operation).make(shell, solving);
  }

  /**
   * Goes on where another body for the same ear stood after the same operations.
   *
   * @param other that body, wherever it stands now
   * @param done operations that had been made, in order
   * @param state of it after the last of them
   */
  public Settled resume(EarBody other, List<Operation> done, RestState state, Solving solving) {
    shell.learnFrom(other.shell);
    for (Operation operation : done) {
      changes.of(operation).alter(shell.sheet());
    }
    return shell.resume(state, solving);
  }

  /** The present state at rest. */
  public RestState save() {
    return shell.save();
  }

  /**
   * Derivative of the energy by every unknown, N and N·mm, if all operations had been done by other
   * doses and the ear stood exactly where it does.
   *
   * @param now as many operations of the same kinds, names and threads
   * @throws BadInputException if a thread is not in the tables
   */
  public double[] forcesUnder(List<Operation> now) throws BadInputException {
    PlannedChanges other = by(now);
    Standing standing = standing();
    try {
      shell.anew(other.threads());
      other.inOrder().forEach(change -> change.alter(shell.sheet()));
      shell.restore(standing.state());
      Iterator<Change> there = changes.inOrder().iterator();
      other.inOrder().forEach(change -> change.tieAs(there.next(), shell.unknowns()));
      return shell.forces();
    } finally {
      shell.become(standing);
    }
  }

  /** The operations that it was made for, with the doses that were turned to. */
  public List<Operation> operations() {
    return changes.operations();
  }

  /**
   * Leads this ear, all operations done, from where it stands to rest under other doses: for
   * following them while they are turned. Where no rest is found, it stays as it was.
   *
   * @param now as many operations of the same kinds, names and threads, not all by the same doses
   * @param states where the ear came to rest after each operation, by its index, under doses like
   *     these; -1 for before the first
   * @throws BadInputException if a thread is not in the tables
   */
  public Settled turn(List<Operation> now, IntFunction<RestState> states, Solving solving)
      throws BadInputException {
    PlannedChanges other = by(now);
    Standing before = standing();
    changes = other;
    Settled settled = new DoseTurn(shell, other.inOrder(), before, solving).follow(states);
    if (!settled.converged()) {
      become(before);
    }
    return settled;
  }

  private PlannedChanges by(List<Operation> now) throws BadInputException {
    Findings findings = new Findings();
    PlannedChanges other = changes.by(now, maker(findings)::of);
    findings.stopIfErrors();
    return other;
  }

  /** Where it stands, with the doses that led there. */
  public Standing standing() {
    return new Standing(
        changes,
        shell.sheet().target().copy(),
        shell.sheet().sections().copy(),
        shell.threads(),
        shell.save());
  }

  /** Puts it back where it stood, and the doses that led there. */
  public void become(Standing standing) {
    changes = standing.changes();
    shell.become(standing);
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
