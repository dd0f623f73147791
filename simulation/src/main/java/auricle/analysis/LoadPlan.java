package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.energy.DeadLoad;
import auricle.energy.DirectorMoment;
import auricle.energy.ElasticAttachment;
import auricle.energy.ElasticThread;
import auricle.energy.EnergyTerm;
import auricle.energy.FollowerPressure;
import auricle.geometry.PlateFrame;
import auricle.geometry.Vectors;
import auricle.mesh.Directors;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Loads of a model as energy terms. */
final class LoadPlan {
  private final ShellMesh mesh;
  private final Topology topology;
  private final double[] rest;
  private final Directors directors;
  private final MeshSets sets;
  private final boolean linear;
  private final boolean[] fixed;
  private final Findings findings;
  private final List<EnergyTerm> terms = new ArrayList<>();
  private final Map<String, ElasticThread> threads = new LinkedHashMap<>();
  private final NodalShares shares;
  private final ContactPlan contacts;
  private boolean bedded;

  /**
   * @param linear whether a linear solution is asked for: pressure then keeps its directions
   * @param fixed for every unknown, whether a support holds it
   */
  LoadPlan(
      ShellMesh mesh,
      Directors directors,
      SectionPlan sections,
      MeshSets sets,
      boolean linear,
      boolean[] fixed,
      Findings findings) {
    this.mesh = mesh;
    this.topology = mesh.topology();
    this.rest = mesh.unknowns();
    this.shares = new NodalShares(mesh);
    this.contacts = new ContactPlan(mesh, sections, sets, linear, findings);
    this.directors = directors;
    this.sets = sets;
    this.linear = linear;
    this.fixed = fixed.clone();
    this.findings = findings;
  }

  /** Adds the terms of a load. */
  void add(Load load) {
    if (load instanceof Load.Point l) {
      point(l);
    } else if (load instanceof Load.Line l) {
      int[] edges = sets.findEdges(l.where()).edges();
      put(dead().onEdges(edges, l.force_n_per_mm().array()).build("line force"), l.constant());
    } else if (load instanceof Load.EdgeMoment l) {
      moment(l);
    } else if (load instanceof Load.Surface l) {
      int[] triangles = sets.findTriangles(l.where()).triangles();
      double[] force = l.force_n_per_mm2().array();
      put(dead().onTriangles(triangles, force).build("surface force"), l.constant());
    } else if (load instanceof Load.Pressure l) {
      pressure(l);
    } else if (load instanceof Load.TiedThread l) {
      thread(l);
    } else if (load instanceof Load.Contact l) {
      contacts.add(l);
    } else if (load instanceof Load.Foundation l) {
      foundation(l);
    }
  }

  private DeadLoad.Builder dead() {
    return new DeadLoad.Builder(topology, rest);
  }

  private void put(EnergyTerm term, boolean constant) {
    terms.add(constant ? new ConstantTerm(term) : term);
  }

  private void point(Load.Point l) {
    int[] vertices = sets.find(l.where()).vertices();
    double[] each =
        Vectors.scale(l.total() ? 1.0 / Math.max(1, vertices.length) : 1, l.force_n().array());
    DeadLoad.Builder builder = dead();
    for (int v : vertices) {
      builder.onVertex(v, each);
    }
    put(builder.build("point force"), l.constant());
  }

  private void moment(Load.EdgeMoment l) {
    int[] edges = sets.findEdges(l.where()).edges();
    double[] axis = sets.unit(l.at() + "/axis", l.axis());
    Map<Integer, Double> moments = DirectorMoment.onEdges(topology, rest, edges, l.moment_n());
    try {
      put(new DirectorMoment("edge moment", directors, axis, moments), l.constant());
    } catch (IllegalArgumentException along) {
      findings.error(
          l.at() + "/axis",
          "the axis points along the surface normal",
          "an axis in the surface",
          "A thin shell carries no moment about its normal.");
    }
  }

  private void pressure(Load.Pressure l) {
    int[] triangles = sets.findTriangles(l.where()).triangles();
    if (linear || !l.follower()) {
      DeadLoad.Builder builder = dead();
      for (int t : triangles) {
        double[] normal = new PlateFrame(corner(t, 0), corner(t, 1), corner(t, 2)).normal();
        builder.onTriangles(new int[] {t}, Vectors.scale(l.pressure_mpa(), normal));
      }
      put(builder.build("pressure at rest"), l.constant());
      return;
    }
    FollowerPressure pressure =
        new FollowerPressure(
            "pressure", topology, triangles, rest, l.pressure_mpa(), l.origin().array());
    int loose = pressure.firstLooseEdge(fixed);
    if (loose >= 0) {
      findings.error(
          l.at(),
          "the rim of the loaded surface can sweep volume by itself, at vertices %d and %d"
              .formatted(topology.edgeStart(loose), topology.edgeEnd(loose)),
          "a closed surface, a rim held in all directions, or one in a plane of symmetry through"
              + " origin_mm",
          "Set origin_mm to a point on every plane of symmetry at the rim, or follower: false.");
    }
    put(pressure, l.constant());
  }

  private double[] corner(int triangle, int c) {
    return Vectors.at(rest, 3 * topology.vertex(triangle, c));
  }

  private void thread(Load.TiedThread l) {
    ElasticThread thread = new ThreadPlan(mesh, findings).thread(l, threads.keySet());
    threads.put(l.name(), thread);
    terms.add(thread);
  }

  private void foundation(Load.Foundation l) {
    MeshSet set = sets.findTriangles(l.where());
    double[] areas = shares.areas(set.triangles());
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
            rest,
            l.normal_mpa_per_mm(),
            l.tangential_mpa_per_mm()));
  }

  /** The terms: contacts last, else in the order of the model. */
  List<EnergyTerm> terms() {
    List<EnergyTerm> all = new ArrayList<>(terms);
    contacts.list().forEach(c -> all.addAll(c.terms()));
    return all;
  }

  /** Contacts, in the order of the model. */
  List<Contact> contacts() {
    return contacts.list();
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
