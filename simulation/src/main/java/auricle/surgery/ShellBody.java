package auricle.surgery;

import auricle.energy.EnergyTerm;
import auricle.energy.ShellState;
import auricle.energy.ShellTerms;
import auricle.equilibrium.LoadPath;
import auricle.equilibrium.LoadSteps;
import auricle.equilibrium.Sensitivities;
import auricle.equilibrium.StepMonitor;
import auricle.equilibrium.Supports;
import auricle.equilibrium.TotalEnergy;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import auricle.numerics.Linearisation;
import auricle.numerics.NewtonIteration;
import auricle.numerics.NewtonMinimiser;
import auricle.numerics.NewtonResult;
import auricle.numerics.NewtonSettings;
import java.util.ArrayList;
import java.util.List;

/**
 * A sheet of tissue that is operated on: rest shape and sections that change, threads that are tied
 * one after the other, and what it rests on. It always keeps the state in which it was last at
 * rest.
 *
 * <p>A change is made in two halves: it is announced to {@link #target} and {@link #sections}, and
 * {@link #settle} then leads the sheet there over the load factor 0 … 1. All threads of a plan are
 * there from the start, pulling at nothing, so that the sparse pattern is made once.
 */
public final class ShellBody {
  /** Iterations after which a single step is given up for load steps. */
  private static final int QUICK = 25;

  private final ShellMesh mesh;
  private final Directors directors;
  private final BodySections sections;
  private final RestShape rest;
  private final RestShape target;
  private final List<EnergyTerm> others;
  private final List<BodyThread> threads;
  private final List<RenewableTerm> shell = new ArrayList<>();
  private final TotalEnergy energy;
  private final NewtonMinimiser minimiser;
  private boolean changed;

  /** Whether the solver holds the factor of the present state. */
  private boolean factored;

  /** Whether the terms still lead from an earlier rest shape to the present one. */
  private boolean growing;

  /**
   * @param mesh at rest
   * @param sections of its triangles, without coupling; kept and changed here
   * @param others what holds the sheet: attachments, contact
   * @param threads all that will ever pull
   * @param supports of the unknowns
   */
  ShellBody(
      ShellMesh mesh,
      BodySections sections,
      List<EnergyTerm> others,
      List<BodyThread> threads,
      Supports supports) {
    this.mesh = mesh;
    this.sections = sections;
    this.others = List.copyOf(others);
    this.threads = List.copyOf(threads);
    directors = mesh.directors();
    rest = RestShape.of(mesh.topology(), mesh.unknowns(), directors);
    target = rest.copy();
    ShellTerms.of(rest, directors, sections).forEach(term -> shell.add(new RenewableTerm(term)));
    List<EnergyTerm> terms = new ArrayList<>(shell);
    terms.addAll(others);
    threads.forEach(thread -> terms.add(thread.thread()));
    energy = new TotalEnergy(terms, supports, directors, mesh.unknowns(), edgeLength(mesh));
    minimiser = new NewtonMinimiser(energy);
  }

  /** A body of its own in the same state. */
  ShellBody copy() {
    ShellBody copy =
        new ShellBody(
            mesh,
            sections.copy(),
            others,
            threads.stream().map(BodyThread::copy).toList(),
            energy.supports());
    copy.rest.become(target);
    copy.target.become(target);
    copy.renew();
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
    factored = false;
  }

  /**
   * Goes on from a state of another body on the same mesh in which the same has been done: takes
   * over its place and the laws of the threads that it has too.
   */
  Settled resume(RestState state, Solving solving) {
    restore(state);
    return settleAtOnce(solving);
  }

  /** Derivative of the energy by every unknown with all that was altered in force. */
  double[] forces() {
    rest.become(target);
    renew();
    energy.setLoadFactor(1);
    minimiser.point().evaluate(energy.free());
    factored = false;
    return energy.forces().clone();
  }

  /** Mean length of an edge, mm: what a tilt of one radian moves. */
  static double edgeLength(ShellMesh mesh) {
    Topology t = mesh.topology();
    double sum = 0;
    for (int e = 0; e < t.edgeCount(); e++) {
      double square = 0;
      for (int c = 0; c < 3; c++) {
        double d = mesh.position(t.edgeEnd(e), c) - mesh.position(t.edgeStart(e), c);
        square += d * d;
      }
      sum += Math.sqrt(square);
    }
    return sum / t.edgeCount();
  }

  /** The mesh at rest, before any operation. */
  public ShellMesh mesh() {
    return mesh;
  }

  /** Directors with the frames of the present state. */
  public Directors directors() {
    return directors;
  }

  /** Present sections. */
  public BodySections sections() {
    return sections;
  }

  /** The rest shape in force. */
  public RestShape rest() {
    return rest;
  }

  /** The rest shape to go to; a change alters it and calls {@link #changed}. */
  RestShape target() {
    return target;
  }

  /** To be called after sections or the target have been altered. */
  void changed() {
    changed = true;
  }

  /**
   * Bends the rest shape of a triangle across the fold by a curvature, 1/mm, positive where it
   * becomes more convex to the front.
   */
  void bend(int triangle, double curvature) {
    sections.bend(target, triangle, curvature);
  }

  /** Shrinks the rest shape of a triangle across the fold by a share of its length. */
  void shrinkAcross(int triangle, double share) {
    shrink(triangle, share, sections.angle(triangle) + Math.PI / 2);
  }

  /** Shrinks the rest shape of a triangle along the fold by a share of its length. */
  void shrinkAlong(int triangle, double share) {
    shrink(triangle, share, sections.angle(triangle));
  }

  private void shrink(int triangle, double share, double angle) {
    double x = Math.cos(angle);
    double y = Math.sin(angle);
    target.stretch(triangle, -share * x * x, -share * y * y, -share * x * y);
  }

  /** Rest shape and sections with every cut that is shut now as good as uncut; copies. */
  public ShutShell shut() {
    ShellState state = new ShellState(rest, directors, sections);
    state.evaluate(unknowns());
    ShutShell shut = new ShutShell(rest.copy(), sections.copy());
    shut.sections().settleCuts(state, shut.rest());
    return shut;
  }

  /** Strain and curvature against the rest shape at the present state, where cuts are shut. */
  public ShellState state(ShutShell shut) {
    ShellState state = new ShellState(shut.rest(), directors, shut.sections());
    state.evaluate(unknowns());
    return state;
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
   * Leads the sheet to rest under what was changed: in one step where that leads through stable
   * shapes, else over load factors 0 … 1. On failure it is left at the last state at rest on the
   * way, with the change in force.
   */
  Settled settle(Solving solving) {
    if (changed || growing) {
      renew();
    }
    Settled settled = quickly(new double[energy.size()], () -> {}, () -> {}, solving);
    rest.become(target);
    return settled;
  }

  /** The same where the sheet is at rest already, or next to it. */
  private Settled settleAtOnce(Solving solving) {
    rest.become(target);
    changed = true;
    return settle(solving);
  }

  private Settled settleGradually(Solving solving) {
    energy.setLoadFactor(0);
    Counting counting = new Counting(solving.monitor());
    LoadPath path = new LoadSteps(energy, minimiser, solving.settings(), counting).run(1);
    Settled settled = Settled.of(path, counting.count());
    factored = settled.converged();
    return settled;
  }

  /**
   * Ties a thread to a rest length, mm, and leads the sheet to rest: in one step where that leads
   * through stable shapes, else over load steps.
   */
  Settled tie(BodyThread thread, double restLength_mm, Solving solving) {
    double[] motion = tightening().toLength(thread, restLength_mm);
    double from = thread.restLength_mm().orElseGet(() -> thread.thread().length(unknowns()));
    Settled settled =
        quickly(
            motion,
            () -> thread.thread().tieToLength(restLength_mm),
            () -> {
              finishGrowing();
              thread.thread().tighten(from, restLength_mm);
            },
            solving);
    thread.thread().tieToLength(restLength_mm);
    return settled;
  }

  /** Pulls a thread to a tension, N, leads the sheet to rest and knots the thread there. */
  Settled pull(BodyThread thread, double tension_n, Solving solving) {
    double[] motion = tightening().toTension(thread, tension_n);
    Runnable pull = () -> thread.thread().pull(tension_n);
    Runnable gradually =
        () -> {
          finishGrowing();
          pull.run();
        };
    Settled settled = quickly(motion, pull, gradually, solving);
    thread.thread().knot(unknowns());
    factored = false;
    return settled;
  }

  /** Lets the rest shape stay where a load factor of 1 has led it. */
  private void finishGrowing() {
    if (growing) {
      renew();
    }
  }

  /** With the factor of the present state, made if the solver does not hold it. */
  private Tightening tightening() {
    Linearisation point = minimiser.point();
    if (!factored) {
      energy.setLoadFactor(1);
      point.evaluate(energy.free());
      point.factorize(false);
    }
    return new Tightening(energy, point);
  }

  /**
   * @param motion where the sheet is expected to go
   * @param atOnce puts the thread's last law in force
   * @param gradually puts a law in force that reaches it at load factor 1
   */
  private Settled quickly(double[] motion, Runnable atOnce, Runnable gradually, Solving solving) {
    double[] saved = energy.save();
    factored = false;
    atOnce.run();
    energy.setLoadFactor(1);
    double[] x = energy.free();
    double t = Math.min(1, energy.largestStep(x, motion));
    for (int k = 0; k < x.length; k++) {
      x[k] += t * motion[k];
    }
    NewtonSettings newton = solving.settings().newton().withIterations(QUICK);
    Counting counting = new Counting(solving.monitor());
    NewtonResult result =
        minimiser.minimise(
            x, newton, n -> n.negativePivots() == 0 && counting.proceed(energy.loadFactor(), n));
    Settled first = Settled.of(result);
    if (counting.cancelled() || (result.converged() && !result.metNegativeCurvature())) {
      factored = result.converged();
      return first;
    }
    energy.restore(saved);
    gradually.run();
    return settleGradually(solving).after(first);
  }

  private void renew() {
    List<EnergyTerm> terms = ShellTerms.growing(rest.copy(), target.copy(), directors, sections);
    for (int i = 0; i < terms.size(); i++) {
      shell.get(i).renew(terms.get(i));
    }
    growing = changed;
    changed = false;
  }

  /** How the present state answers to small changes. */
  Sensitivities sensitivities() {
    return new Sensitivities(energy, minimiser.point());
  }

  /** Counts the iterations of all attempts. */
  private static final class Counting implements StepMonitor {
    private final StepMonitor monitor;
    private int count;
    private boolean cancelled;

    Counting(StepMonitor monitor) {
      this.monitor = monitor;
    }

    int count() {
      return count;
    }

    boolean cancelled() {
      return cancelled;
    }

    @Override
    public boolean proceed(double loadFactor, NewtonIteration iteration) {
      count++;
      cancelled |= !monitor.proceed(loadFactor, iteration);
      return !cancelled;
    }
  }
}
