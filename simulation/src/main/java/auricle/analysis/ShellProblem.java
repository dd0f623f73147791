package auricle.analysis;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import auricle.energy.ElasticThread;
import auricle.energy.EnergyTerm;
import auricle.energy.ShellState;
import auricle.energy.ShellTerms;
import auricle.equilibrium.Supports;
import auricle.equilibrium.TotalEnergy;
import auricle.mesh.Directors;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/** A model made ready to be solved: mesh, energies, supports, probes. */
final class ShellProblem {
  private final ShellMesh mesh;
  private final Directors directors;
  private final SectionPlan sections;
  private final RestPlan rest;
  private final SupportPlan supportPlan;
  private final Supports supports;
  private final Map<String, ElasticThread> threads;
  private final List<Contact> contacts;
  private final List<EnergyTerm> terms = new ArrayList<>();
  private final ProbePlan probes;
  private final FieldProbe fields;
  private final MeshSets sets;
  private final double[] start;
  private final Findings findings;

  /**
   * @throws BadInputException with all that is wrong in the model
   */
  ShellProblem(Model model) throws BadInputException {
    findings = new Findings();
    mesh = MeshLoader.load(model.mesh(), findings);
    Optional<ShellMesh> other = Optional.empty();
    if (model.restShape().isPresent()) {
      other =
          Optional.of(matching(MeshLoader.load(model.restShape().get(), findings), mesh, model));
    }
    directors = mesh.directors();
    sets = new MeshSets(mesh, model.sets(), findings);
    sections = new SectionPlan(mesh, model.sections(), sets, findings);
    findings.stopIfErrors();
    rest = new RestPlan(mesh, other, model.restChanges(), sections, sets, findings);
    findings.stopIfErrors();
    supportPlan = new SupportPlan(mesh, directors, model.supports(), sets, findings);
    supports = supportPlan.build();
    LoadPlan loads = loads(model, findings);
    threads = loads.threads();
    contacts = loads.contacts().list();
    terms.addAll(ShellTerms.growing(rest.start(), rest.grown(), directors, sections));
    terms.addAll(supportPlan.springs(sections.stiffest()));
    terms.addAll(loads.terms());
    fields = new FieldProbe(sections, new MaterialDirections(mesh), rest.start());
    ProbeSite site = new ProbeSite(mesh, fields, sets, loads, findings);
    probes = new ProbePlan(model.probes(), site);
    if (!loads.bedded()) {
      RigidMotions motions = new RigidMotions(mesh);
      supportPlan.describeTo(motions);
      motions.check(findings);
    }
    findings.stopIfErrors();
    start = disturbed(model.start());
  }

  private static ShellMesh matching(ShellMesh other, ShellMesh mesh, Model model)
      throws BadInputException {
    int wanted = mesh.topology().triangleCount();
    int found = other.topology().triangleCount();
    if (found != wanted) {
      String at = model.restShape().map(MeshSource::at).orElse("");
      throw new BadInputException(
          Finding.error(at, found + " triangles", wanted + ", as many as the mesh", ""));
    }
    return other;
  }

  private LoadPlan loads(Model model, Findings findings) {
    boolean[] fixed = new boolean[supports.size()];
    for (int i = 0; i < fixed.length; i++) {
      fixed[i] = supports.freeNumber(i) < 0 && !supports.isPrescribed(i);
    }
    boolean linear = model.solve() instanceof SolvePlan.Linear;
    ForcePlan forces = new ForcePlan(mesh, directors, sets, linear, fixed, findings);
    ContactPlan pairs = new ContactPlan(mesh, sections, sets, linear, findings);
    LoadPlan loads = new LoadPlan(mesh, sets, forces, pairs, findings);
    model.loads().forEach(load -> load.addTo(loads));
    return loads;
  }

  /** The unknowns to start from: those of the mesh, free vertices shifted along the normals. */
  private double[] disturbed(Model.Start plan) {
    double[] u = mesh.unknowns();
    if (plan.disturbance_mm() > 0) {
      UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(plan.seed());
      double[] normals = mesh.normals();
      for (int v = 0; v < mesh.vertexCount(); v++) {
        double shift = plan.disturbance_mm() * (2 * random.nextDouble() - 1);
        for (int c = 0; c < 3; c++) {
          boolean free = supports.freeNumber(3 * v + c) >= 0;
          u[3 * v + c] += free ? shift * normals[3 * v + c] : 0;
        }
      }
    }
    return u;
  }

  ShellMesh mesh() {
    return mesh;
  }

  Topology topology() {
    return mesh.topology();
  }

  Directors directors() {
    return directors;
  }

  SectionPlan sections() {
    return sections;
  }

  SupportPlan supportPlan() {
    return supportPlan;
  }

  Supports supports() {
    return supports;
  }

  ElasticThread thread(String name) {
    ElasticThread thread = threads.get(name);
    if (thread == null) {
      throw new IllegalArgumentException("no thread " + name);
    }
    return thread;
  }

  /** Contacts, in the order of the model. */
  List<Contact> contacts() {
    return contacts;
  }

  ProbePlan probes() {
    return probes;
  }

  FieldProbe fields() {
    return fields;
  }

  /** What was found wrong or doubtful so far. */
  List<Finding> findings() {
    return findings.list();
  }

  MeshSets sets() {
    return sets;
  }

  /** The unknowns to start from; a copy. */
  double[] start() {
    return start.clone();
  }

  /** Whether the rest shape changes with the load factor. */
  boolean growing() {
    return rest.grown() != rest.start();
  }

  /** Strain and curvature against the mesh, with the directors as they are. */
  ShellState seen() {
    return new ShellState(rest.start(), directors, sections);
  }

  /** Strain and curvature against the rest shape, with the directors as they are. */
  ShellState state() {
    return new ShellState(rest.start(), rest.grown(), directors, sections);
  }

  /** The whole energy under given supports, at load factor 0. */
  TotalEnergy energy(Supports held) {
    return new TotalEnergy(terms, held, directors, start, mesh.meanEdge());
  }

  /** Size of the problem. */
  AnalysisResult.Size size() {
    return new AnalysisResult.Size(
        mesh.vertexCount(),
        topology().triangleCount(),
        topology().edgeCount(),
        supports.size(),
        supports.freeCount());
  }
}
