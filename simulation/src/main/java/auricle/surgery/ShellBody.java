package auricle.surgery;

import auricle.energy.EnergyTerm;
import auricle.equilibrium.Sensitivities;
import auricle.equilibrium.Supports;
import auricle.equilibrium.TotalEnergy;
import auricle.mesh.Directors;
import auricle.mesh.ShellMesh;
import auricle.numerics.Linearisation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

/**
 * A sheet of tissue that is operated on: rest shape and sections that change, threads that are tied
 * one after the other, and what it rests on. It always keeps the state in which it was last at
 * rest.
 *
 * <p>A change is made in two halves: it is announced to the {@link AlteredSheet}, and {@link
 * #settle} then leads the sheet there over the load factor 0 … 1. All threads of a plan are there
 * from the start, pulling at nothing, so that the sparse pattern is made once.
 */
public final class ShellBody {
  /** A thread longer than its way by more than this share does nothing at all. */
  private static final double SLACK = 2e-3;

  /** Share of a tension to which a thread is adjusted, and in how many corrections at most. */
  private static final double ADJUSTED = 1e-3;

  private static final int MOST_ADJUSTED = 6;

  private final ShellMesh mesh;
  private final Directors directors;
  private final AlteredSheet sheet;
  private final Supplier<List<EnergyTerm>> holding;
  private final List<EnergyTerm> others;
  private List<BodyThread> threads;
  private final List<RenewableTerm> pulls = new ArrayList<>();
  private final TotalEnergy energy;
  private final RestFinder finder;

  /**
   * @param mesh at rest
   * @param sections of its triangles, without coupling; kept and changed here
   * @param holding makes what holds the sheet: attachments, contact
   * @param threads all that will ever pull
   * @param supports of the unknowns
   */
  ShellBody(
      ShellMesh mesh,
      BodySections sections,
      Supplier<List<EnergyTerm>> holding,
      List<BodyThread> threads,
      Supports supports) {
    this.mesh = mesh;
    this.holding = holding;
    others = List.copyOf(holding.get());
    this.threads = List.copyOf(threads);
    directors = mesh.directors();
    sheet = new AlteredSheet(mesh, directors, sections);
    List<EnergyTerm> terms = new ArrayList<>(sheet.terms());
    terms.addAll(others);
    threads.forEach(thread -> pulls.add(new RenewableTerm(thread.thread())));
    terms.addAll(pulls);
    energy = new TotalEnergy(terms, supports, directors, mesh.unknowns(), mesh.meanEdge());
    finder = new RestFinder(energy);
  }

  /** A body of its own in the same state. */
  ShellBody copy() {
    ShellBody copy =
        new ShellBody(
            mesh,
            sheet.sections().copy(),
            holding,
            threads.stream().map(BodyThread::copy).toList(),
            energy.supports());
    copy.sheet.become(sheet.sections(), sheet.target());
    copy.sheet.putInForce();
    copy.energy.restore(energy.save());
    return copy;
  }

  /** The state at rest, to go on from later. */
  RestState save() {
    return new RestState(energy.save(), threads);
  }

  /** Puts back place and ties. */
  void restore(RestState state) {
    state.tie(threads);
    energy.restore(state.energy());
    finder.forget();
  }

  /**
   * Goes on from a state of another body on the same mesh in which the same has been done: takes
   * over its place and the laws of the threads that it has too.
   */
  Settled resume(RestState state, Solving solving) {
    restore(state);
    return settleAtOnce(solving);
  }

  /** Takes over the order in which another body's equations were solved; may not fit this one's. */
  void learnFrom(ShellBody other) {
    finder.memory().learnFrom(other.finder.memory());
  }

  /**
   * Takes back all alterations and puts other threads in, without moving: for making changes of the
   * same kinds again.
   *
   * @param others as many as before, through any points
   */
  void anew(List<BodyThread> others) {
    sheet.unalter();
    exchange(others);
  }

  private void exchange(List<BodyThread> others) {
    threads = List.copyOf(others);
    for (int i = 0; i < threads.size(); i++) {
      pulls.get(i).renew(threads.get(i).thread());
    }
    finder.forget();
  }

  /**
   * Puts the body where it stood, in the rest shape that was in force there; {@link #settle} then
   * leads it to its own.
   */
  void standAt(Standing standing) {
    sheet.leadFrom(standing.target());
    restore(standing.state());
  }

  /** Puts the body back as it stood. */
  void become(Standing standing) {
    sheet.become(standing.sections(), standing.target());
    exchange(standing.threads());
    sheet.putInForce();
    restore(standing.state());
  }

  /** Derivative of the energy by every unknown with all that was altered in force. */
  double[] forces() {
    sheet.putInForce();
    energy.setLoadFactor(1);
    finder.forget();
    double[] x = energy.free();
    energy.begin(x);
    energy.gradient(x, new double[x.length]);
    return energy.forces().clone();
  }

  /** The mesh at rest, before any operation. */
  public ShellMesh mesh() {
    return mesh;
  }

  /** Directors with the frames of the present state. */
  public Directors directors() {
    return directors;
  }

  /** What operations alter of it. */
  AlteredSheet sheet() {
    return sheet;
  }

  /** Rest shape and sections with every cut as it stands now; copies. */
  public ShutShell shut() {
    return sheet.shut(unknowns());
  }

  /** What holds the sheet. */
  public List<EnergyTerm> others() {
    return others;
  }

  /** All threads, tied or not. */
  public List<BodyThread> threads() {
    return threads;
  }

  /** The whole energy at the present state. */
  public TotalEnergy energy() {
    return energy;
  }

  /** All unknowns at the present state; shared, not to be changed. */
  public double[] unknowns() {
    return energy.unknowns();
  }

  /**
   * Leads the sheet to rest under what was changed. On failure it is left at the last state at rest
   * on the way, with the change in force.
   */
  Settled settle(Solving solving) {
    sheet.lead();
    Settled settled = finder.find(new Growth(energy), solving);
    sheet.arrive();
    return settled;
  }

  /** The same where the sheet is at rest already, or next to it. */
  Settled settleAtOnce(Solving solving) {
    sheet.arrive();
    sheet.altered();
    return settle(solving);
  }

  /**
   * Leads the sheet to rest after little changes of what was altered and of the lengths of threads.
   *
   * @return none where that is not near; the sheet is where it was, all changes in force
   */
  Optional<Settled> settleNearby(Solving solving) {
    sheet.putInForce();
    energy.setLoadFactor(1);
    return finder.findNearby(solving);
  }

  /** Ties a thread to a rest length, mm, and leads the sheet to rest. */
  Settled tie(BodyThread thread, double restLength_mm, Solving solving) {
    sheet.lead();
    double length = thread.thread().length(unknowns());
    if (thread.slack(unknowns()) && restLength_mm > (1 + SLACK) * length) {
      thread.thread().tieToLength(restLength_mm);
      Optional<Settled> resting = finder.resting(solving);
      if (resting.isPresent()) {
        return resting.get();
      }
    }
    double from = thread.restLength_mm().map(rest -> Math.min(rest, length)).orElse(length);
    return finder.find(ThreadTie.toLength(energy, finder, thread, from, restLength_mm), solving);
  }

  /**
   * Pulls a thread to a tension, N, leads the sheet to rest and knots the thread there.
   *
   * @param shut length of thread, mm, at which its bites meet, by the unknowns
   */
  Settled pull(
      BodyThread thread, double tension_n, ToDoubleFunction<double[]> shut, Solving solving) {
    sheet.lead();
    return new Pulling(energy, finder, thread, solving).to(tension_n, shut);
  }

  /**
   * Brings a thread that is tied to the length with which it pulls at a tension, N. Quicker than
   * {@link #pull} where it pulls at about that already.
   *
   * @return as after the last correction; empty if it needs more than a few
   */
  Optional<Settled> adjust(BodyThread thread, double tension_n, Solving solving) {
    Settled settled = settleAtOnce(solving);
    for (int i = 0; i < MOST_ADJUSTED && settled.converged(); i++) {
      double now = thread.thread().tension(unknowns());
      if (Math.abs(now - tension_n) <= ADJUSTED * tension_n) {
        return Optional.of(settled);
      }
      double length = new Tightening(energy, finder.point(), thread).lengthFor(tension_n);
      if (!(length > 0)) {
        return Optional.empty(); // so far from that tension that none of the thread would be left
      }
      settled = tie(thread, length, solving).after(settled);
    }
    return Optional.empty();
  }

  /** How the present state answers to small changes. */
  Sensitivities sensitivities() {
    Linearisation own = new Linearisation(energy);
    own.learnFrom(finder.memory());
    return new Sensitivities(energy, own);
  }
}
