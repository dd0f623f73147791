package auricle.surgery;

import auricle.anatomy.Auricle;
import auricle.energy.BarrierLaw;
import auricle.energy.ContactSettings;
import auricle.energy.ContactSurface;
import auricle.energy.EnergyTerm;
import auricle.energy.SurfaceContact;
import auricle.material.HeadTissue;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What an ear touches of itself: the back of the scapha meets the back of the bowl where a fold
 * closes, cauda and lobule meet what lies behind them. Every vertex is kept off every part of the
 * sheet that is not next to it at rest: the gap is closed where the two reference surfaces are as
 * far apart as two backs that touch, and the cushion is the one that stands for touching skin
 * everywhere (rows {@code contact.gap_mm} and {@code contact.pressure_mpa}, assumed). Each of two
 * places that touch counts with half of its area.
 *
 * <p>Left out: that the sheet is not of one thickness, and that two fronts touch at another
 * distance.
 */
final class FoldContact {
  private final ShellMesh mesh;
  private final EarWall wall;
  private final HeadTissue head;

  FoldContact(Auricle auricle, EarWall wall, HeadTissue head) {
    mesh = auricle.mesh();
    this.wall = wall;
    this.head = head;
  }

  /** A term of its own for every body: it keeps lists of what is near. */
  EnergyTerm term() {
    int[] all = IntStream.range(0, mesh.vertexCount()).toArray();
    double[] half = Arrays.stream(HeadSupport.vertexAreas(mesh)).map(a -> a / 2).toArray();
    BarrierLaw law = new BarrierLaw(head.contactGap_mm(), head.contactPressure_mpa());
    return new SurfaceContact(
        "ear against itself",
        all,
        half,
        ContactSurface.moving(triangles()),
        mesh.unknowns(),
        ContactSettings.usual(law, thickness_mm()));
  }

  private int[] triangles() {
    Topology topology = mesh.topology();
    return IntStream.range(0, 3 * topology.triangleCount())
        .map(i -> topology.vertex(i / 3, i % 3))
        .toArray();
  }

  /** Distance of the reference surfaces of two backs that touch, mean over the ear, mm. */
  private double thickness_mm() {
    int count = mesh.topology().triangleCount();
    return IntStream.range(0, count)
        .mapToDouble(t -> -2 * wall.posteriorFace_mm(t))
        .average()
        .orElse(0);
  }
}
