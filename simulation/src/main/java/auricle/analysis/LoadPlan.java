package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.energy.ElasticAttachment;
import auricle.energy.ElasticThread;
import auricle.energy.EnergyTerm;
import auricle.mesh.ShellMesh;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Loads of a model as energy terms. */
final class LoadPlan {
  private final ShellMesh mesh;
  private final MeshSets sets;
  private final Findings findings;
  private final List<EnergyTerm> terms = new ArrayList<>();
  private final Map<String, ElasticThread> threads = new LinkedHashMap<>();
  private final ForcePlan forces;
  private final ContactPlan contacts;
  private boolean bedded;

  LoadPlan(
      ShellMesh mesh, MeshSets sets, ForcePlan forces, ContactPlan contacts, Findings findings) {
    this.mesh = mesh;
    this.sets = sets;
    this.forces = forces;
    this.contacts = contacts;
    this.findings = findings;
  }

  /** Loads that are forces. */
  ForcePlan forces() {
    return forces;
  }

  /** Contacts. */
  ContactPlan contacts() {
    return contacts;
  }

  /**
   * Adds a term.
   *
   * @param constant whether it is there in full from the beginning
   */
  void put(EnergyTerm term, boolean constant) {
    terms.add(constant ? new ConstantTerm(term) : term);
  }

  /** Ties a thread. */
  void thread(Load.TiedThread l) {
    ElasticThread thread = new ThreadPlan(mesh, findings).thread(l, threads.keySet());
    threads.put(l.name(), thread);
    terms.add(thread);
  }

  /** Beds the shell. */
  void foundation(Load.Foundation l) {
    MeshSet set = sets.findTriangles(l.where());
    double[] areas = new NodalShares(mesh).areas(set.triangles());
    int[] vertices = set.vertices();
    double[] normals = mesh.normals();
    double[] area = new double[vertices.length];
    double[] normal = new double[3 * vertices.length];
    for (int i = 0; i < vertices.length; i++) {
      area[i] = areas[vertices[i]];
      System.arraycopy(normals, 3 * vertices[i], normal, 3 * i, 3);
    }
    bedded |= l.normal_mpa_per_mm() > 0 && l.tangential_mpa_per_mm() > 0;
    terms.add(
        new ElasticAttachment(
            "foundation",
            vertices,
            area,
            normal,
            mesh.unknowns(),
            l.normal_mpa_per_mm(),
            l.tangential_mpa_per_mm()));
  }

  /** The terms: contacts last, else in the order of the model. */
  List<EnergyTerm> terms() {
    List<EnergyTerm> all = new ArrayList<>(terms);
    contacts.list().forEach(c -> all.addAll(c.terms()));
    return all;
  }

  /** Threads by name. */
  Map<String, ElasticThread> threads() {
    return threads;
  }

  /** Whether a foundation holds the shell against every motion. */
  boolean bedded() {
    return bedded;
  }
}
