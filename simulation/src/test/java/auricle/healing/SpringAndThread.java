package auricle.healing;

import auricle.energy.ElasticAttachment;
import auricle.energy.ElasticThread;
import auricle.energy.EnergyTerm;
import auricle.energy.FixedPoint;
import auricle.energy.VertexPoint;
import auricle.equilibrium.Supports;
import auricle.equilibrium.TotalEnergy;
import auricle.mesh.Directors;
import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.List;

/** A point on a spring along x, drawn by a thread to a fixed point 10 mm away: one unknown. */
final class SpringAndThread {
  static final double SPAN = 10;

  private final double spring;
  private final Directors directors =
      new Directors(
          new Topology(3, new int[] {0, 1, 2}).unknowns(),
          new double[] {0, 0, 1, 0, 0, 1, 0, 0, 1});
  private final double[] start = new double[directors.unknowns().size()];
  final ElasticThread thread;

  /**
   * @param spring N/mm
   * @param axialStiffness_N of the thread
   * @param tiedLength_mm length of the thread in the loop, below 10
   */
  SpringAndThread(double spring, double axialStiffness_N, double tiedLength_mm) {
    this.spring = spring;
    thread =
        new ElasticThread(
            "thread",
            List.of(new VertexPoint(0), new FixedPoint(SPAN, 0, 0)),
            false,
            axialStiffness_N);
    thread.tieToLength(tiedLength_mm);
  }

  TimeSteps steps(TimeStepSettings settings, TimePart... parts) {
    List<EnergyTerm> terms = new ArrayList<>();
    terms.add(
        ElasticAttachment.isotropic("spring", new int[] {0}, new double[] {1}, start, spring));
    for (TimePart part : parts) {
      terms.addAll(part.terms());
    }
    Supports.Builder supports = new Supports.Builder(start.length, 9);
    for (int i = 1; i < start.length; i++) {
      supports.fix(i);
    }
    TotalEnergy energy = new TotalEnergy(terms, supports.build(), directors, start, 1);
    energy.setLoadFactor(1);
    return new TimeSteps(energy, directors, List.of(parts), 0, settings, TimeMonitor.NONE);
  }
}
