package auricle.energy;

import auricle.material.Section;
import auricle.material.SectionField;
import auricle.mesh.PlateShape;
import auricle.mesh.RestShape;
import auricle.mesh.Topology;
import auricle.mesh.Unknowns;
import java.util.ArrayList;
import java.util.List;

/**
 * The constants of one edge domain: a third of each triangle at an edge. Two triangles share a
 * domain where the section field joins them, as a rule where they have the same section; at a free
 * edge, or where the section jumps (a groove, a seam), strain must be free to jump and each
 * triangle has a domain of its own.
 *
 * <p>Local vertices: 0 start, 1 end, 2 opposite on the first side[, 3 opposite on the second].
 * Local edges: 0-1, 1-2, 2-0[, 0-3, 3-1]; strain = C q − Ē with q the squared arc lengths.
 */
final class EdgeDomain {
  /** Start and end vertex of local edge k. */
  static final int[] EDGE_START = {0, 1, 2, 0, 3};

  static final int[] EDGE_END = {1, 2, 0, 3, 1};

  private final int[] stencil;
  private final int[] vertices;
  private final double[] strainOfArcs;
  private final double[] restStrain = new double[3];
  private final RestShape start;
  private final RestShape grown;
  private final double[] stiffness;
  private final double[] pull = new double[3];
  private double stored;
  private final List<Side> sides = new ArrayList<>();
  private double area;

  /** Strain by squared arc of edge j of side s: entry 9 s + 3 a + j for component a. */
  private final double[] strainOfRestArcs;

  /** One triangle of a domain: its number, and its constants for the curvature. */
  record Side(int triangle, PlateShape plate, List<Integer> corners, double share, double axis) {}

  private EdgeDomain(
      int edge,
      int[] triangles,
      RestShape start,
      RestShape rest,
      Unknowns unknowns,
      SectionField s) {
    Topology topology = rest.topology();
    this.start = start;
    this.grown = rest;
    this.strainOfRestArcs = new double[9 * triangles.length];
    this.vertices = new int[2 + triangles.length];
    vertices[0] = topology.edgeStart(edge);
    vertices[1] = topology.edgeEnd(edge);
    for (int side = 0; side < triangles.length; side++) {
      int opposite = EdgePlaces.corner(topology, triangles[side], edge);
      vertices[2 + side] = topology.vertex(triangles[side], opposite);
      area += rest.plate(triangles[side]).area() / 3;
    }
    this.stencil = stencil(unknowns);
    this.strainOfArcs = new double[3 * edgeCount()];
    for (int side = 0; side < triangles.length; side++) {
      addSide(edge, side, triangles[side], rest);
    }
    stiffness = stiffness(s);
    grow(1);
  }

  /**
   * All domains of a mesh, in the order of its edges.
   *
   * @param start rest shape at load factor 0
   * @param rest rest shape at load factor 1; gives all constants
   */
  static List<EdgeDomain> all(
      RestShape start, RestShape rest, Unknowns unknowns, SectionField sections) {
    Topology topology = rest.topology();
    List<EdgeDomain> domains = new ArrayList<>();
    for (int edge = 0; edge < topology.edgeCount(); edge++) {
      int left = topology.leftTriangle(edge);
      int right = topology.rightTriangle(edge);
      boolean both = left >= 0 && right >= 0;
      if (both && sections.joined(left, right)) {
        domains.add(new EdgeDomain(edge, new int[] {left, right}, start, rest, unknowns, sections));
        continue;
      }
      if (left >= 0) {
        domains.add(new EdgeDomain(edge, new int[] {left}, start, rest, unknowns, sections));
      }
      if (right >= 0) {
        domains.add(new EdgeDomain(edge, new int[] {right}, start, rest, unknowns, sections));
      }
    }
    return domains;
  }

  private int[] stencil(Unknowns unknowns) {
    int n = vertices.length;
    int[] places = new int[5 * n];
    for (int i = 0; i < n; i++) {
      for (int c = 0; c < 3; c++) {
        places[3 * i + c] = unknowns.vertex(vertices[i]) + c;
      }
      places[3 * n + 2 * i] = unknowns.director(vertices[i]);
      places[3 * n + 2 * i + 1] = unknowns.director(vertices[i]) + 1;
    }
    return places;
  }

  private void addSide(int edge, int side, int triangle, RestShape rest) {
    Topology topology = rest.topology();
    PlateShape plate = rest.plate(triangle);
    int k = EdgePlaces.corner(topology, triangle, edge);
    double share = plate.area() / 3 / area;
    int sign = topology.edgeSign(triangle, k);
    double axis = Math.atan2(sign * plate.edgeY(k), sign * plate.edgeX(k));
    double[] m = StrainAxes.turned(StrainAxes.ofLengths(plate), Math.cos(axis), Math.sin(axis));
    int[] local = EdgePlaces.localEdges(side, sign, k);
    for (int a = 0; a < 3; a++) {
      for (int j = 0; j < 3; j++) {
        double c = 0.5 * share * m[3 * a + j];
        strainOfArcs[edgeCount() * a + local[j]] += c;
        strainOfRestArcs[9 * side + 3 * a + j] = c;
      }
    }
    List<Integer> corners = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      corners.add(localVertex(topology.vertex(triangle, i)));
    }
    sides.add(new Side(triangle, plate, corners, share, axis));
  }

  /**
   * [[A, B], [B, D]] times area of what is there of a field on this domain, in axes of the edge.
   */
  double[] stiffness(SectionField sections) {
    double[] sum = new double[36];
    for (Side side : sides) {
      if (sections.covers(side.triangle())) {
        Section section = sections.section(side.triangle());
        double[] s = section.turned(sections.angle(side.triangle()) - side.axis());
        for (int i = 0; i < 36; i++) {
          sum[i] += side.plate().area() / 3 * s[i];
        }
      }
    }
    return sum;
  }

  private int localVertex(int vertex) {
    int i = 0;
    while (vertices[i] != vertex) {
      i++;
    }
    return i;
  }

  /** Sets the rest strain to that at a load factor, by the rest shapes as they are now. */
  void grow(double loadFactor) {
    restStrain(start, grown, loadFactor, restStrain);
  }

  /** Overwrites three numbers with the strain that rest arcs between two shapes would give. */
  void restStrain(RestShape from, RestShape to, double loadFactor, double[] out) {
    for (int a = 0; a < 3; a++) {
      out[a] = 0;
      for (int s = 0; s < sides.size(); s++) {
        int triangle = sides.get(s).triangle();
        for (int j = 0; j < 3; j++) {
          double arc = from.arcSquared(triangle, j);
          arc += loadFactor * (to.arcSquared(triangle, j) - arc);
          out[a] += strainOfRestArcs[9 * s + 3 * a + j] * arc;
        }
      }
    }
  }

  /** Takes the sum of several layers for its membrane stiffness; strain counts from rest. */
  void carry(FormSum layers) {
    for (int a = 0; a < 3; a++) {
      System.arraycopy(layers.form(), 3 * a, stiffness, 6 * a, 3);
      pull[a] = layers.pull()[a];
    }
    stored = layers.constant();
  }

  /** Component a of the stress times area that layers have at the domain's own rest, negative. */
  double pull(int a) {
    return pull[a];
  }

  /** Energy that layers have at the domain's own rest, mJ. */
  double stored() {
    return stored;
  }

  int[] stencil() {
    return stencil;
  }

  /** Vertices of the domain: 3 or 4. */
  int vertexCount() {
    return vertices.length;
  }

  /** The mesh vertex of a local one. */
  int vertex(int i) {
    return vertices[i];
  }

  /** Edges of the domain: 3 or 5. */
  int edgeCount() {
    return 2 * vertices.length - 3;
  }

  /** Entry of C: strain component a by squared arc of local edge k. */
  double strainOfArc(int a, int k) {
    return strainOfArcs[edgeCount() * a + k];
  }

  /** Component a of the strain that the rest arcs would give. */
  double restStrain(int a) {
    return restStrain[a];
  }

  /** Entry of [[A, B], [B, D]] times the domain's area, in axes of the edge. */
  double stiffness(int row, int column) {
    return stiffness[6 * row + column];
  }

  /** Area of the domain, mm². */
  double area() {
    return area;
  }

  /** The one or two triangles. */
  List<Side> sides() {
    return sides;
  }
}
