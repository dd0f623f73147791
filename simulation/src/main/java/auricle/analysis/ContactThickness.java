package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.BitSet;
import java.util.stream.IntStream;

/** How far the faces of a shell stand from its mesh, as contact needs it. */
final class ContactThickness {
  private static final double SAME = 1e-9;

  private final Topology topology;
  private final SectionPlan sections;
  private final Findings findings;
  private final double[] half;

  ContactThickness(ShellMesh mesh, SectionPlan sections, Findings findings) {
    this.topology = mesh.topology();
    this.sections = sections;
    this.findings = findings;
    this.half = new NodalShares(mesh).halfThickness(sections);
  }

  /** Half the thickness at vertices, mm. */
  double[] half(int[] vertices) {
    return IntStream.of(vertices).mapToDouble(v -> half[v]).toArray();
  }

  /** Half the one thickness at vertices, mm; a finding if there are several. */
  double same(String at, int[] vertices) {
    refuseOffset(at, vertices);
    double least = IntStream.of(vertices).mapToDouble(v -> half[v]).min().orElse(0);
    double greatest = IntStream.of(vertices).mapToDouble(v -> half[v]).max().orElse(0);
    if (greatest - least > SAME * greatest) {
      findings.error(
          at,
          "thicknesses from %s to %s mm in one contact".formatted(2 * least, 2 * greatest),
          "one thickness",
          "Give each part of one thickness a contact of its own.");
    }
    return greatest;
  }

  /** A finding if the middle of the section lies beside the mesh somewhere. */
  void refuseOffset(String at, int[] vertices) {
    BitSet in = new BitSet();
    IntStream.of(vertices).forEach(in::set);
    boolean shifted =
        IntStream.range(0, topology.triangleCount())
            .filter(t -> sections.offset(t) != 0)
            .anyMatch(t -> IntStream.range(0, 3).anyMatch(c -> in.get(topology.vertex(t, c))));
    if (shifted) {
      findings.error(
          at,
          "contact of a section with an offset_mm",
          "a mesh in the middle of the section",
          "Contact keeps both faces at half a thickness from the mesh.");
    }
  }
}
