package auricle.healing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.Auricle;
import auricle.anatomy.MeshLevel;
import auricle.anatomy.ShapeParameters;
import auricle.equilibrium.NaturalFrequency;
import auricle.equilibrium.TotalEnergy;
import auricle.material.Prony;
import auricle.material.Tissue;
import auricle.mesh.RestShape;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import auricle.surgery.EarBody;
import auricle.testing.Check;
import auricle.verification.ReferenceTable;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class NaturalFrequencyTest {
  /** Shares a mass evenly over the surface and lumps it on the vertices, g. */
  private static double[] lumped(ShellMesh mesh, double total_g) {
    Topology topology = mesh.topology();
    RestShape rest = RestShape.of(topology, mesh.unknowns(), mesh.directors());
    double[] mass = new double[topology.unknowns().size()];
    for (int t = 0; t < topology.triangleCount(); t++) {
      for (int i = 0; i < 9; i++) {
        mass[topology.unknowns().vertex(topology.vertex(t, i / 3)) + i % 3] +=
            rest.plate(t).area() / 3;
      }
    }
    double sum = Arrays.stream(mass).sum() / 3;
    return Arrays.stream(mass).map(m -> m * total_g / sum).toArray();
  }

  @Test
  void aCantileverVibratesAsBeamTheorySays() {
    ViscousStrip strip = new ViscousStrip(Prony.NONE, TimeStepSettings.USUAL);
    TotalEnergy energy = strip.under(List.of());
    double mass = 0.2;
    double found = NaturalFrequency.lowest_hz(energy, lumped(strip.mesh(), mass));
    double lambda = firstRoot();
    double stiffness = ViscousStrip.BEND_STIFFNESS / Math.pow(ViscousStrip.LENGTH, 3);
    double expected = lambda * lambda * Math.sqrt(stiffness / mass * 1e6) / (2 * Math.PI);
    Check.within(0.02, found, expected, "Euler-Bernoulli beam, cos λ cosh λ = −1");
  }

  private static double firstRoot() {
    double low = 1;
    double high = 3;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      boolean below = Math.cos(middle) * Math.cosh(middle) > -1;
      low = below ? middle : low;
      high = below ? high : middle;
    }
    return low;
  }

  /** Published check: 13-27 Hz in vivo, within 40 % of the range, for an ear of 5 to 8 g. */
  @Test
  void theEarVibratesAtTheFrequencyMeasuredInVivo() throws Exception {
    Auricle auricle = Auricle.of(ShapeParameters.normalAdult(), MeshLevel.PLANNING);
    EarBody body = EarBody.of(auricle, Tissue.standard(), List.of());
    ReferenceTable table = ReferenceTable.read("ear_natural_frequency.csv");
    for (int row = 0; row < table.rows(); row++) {
      double mass = table.column("mass_g")[row];
      double found =
          NaturalFrequency.lowest_hz(body.shell().energy(), lumped(auricle.mesh(), mass));
      double low = table.column("lowest_hz")[row] * (1 - table.column("accepted_share")[row]);
      double high = table.column("highest_hz")[row] * (1 + table.column("accepted_share")[row]);
      assertTrue(found > low && found < high, mass + " g vibrate at " + found + " Hz");
    }
  }
}
