package auricle.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LaminateTest {
  private static Laminate laminate(Ply... plies) {
    return new Laminate(
        new SectionChoice("", new Selector.Everything(""), List.of(plies), 0, Optional.empty()));
  }

  private static Ply ply(double thickness, double modulus, double free) {
    return new Ply(thickness, modulus, modulus, 0, modulus / 2, 0, free, 0);
  }

  @Test
  void aBilayerTakesTheCurvatureOfTheClosedForm() {
    double kappa = laminate(ply(0.5, 2, -0.001), ply(0.5, 2, 0.001)).free(3);
    assertEquals(1.5 * 0.002, kappa, 1e-12);
    // layers of thickness ratio m and modulus ratio n: Timoshenko 1925, eq. 4
    double m = 0.5;
    double n = 5;
    double upper = m / (1 + m);
    double mismatch = 1e-3;
    double form =
        6
            * mismatch
            * (1 + m)
            * (1 + m)
            / (3 * (1 + m) * (1 + m) + (1 + m * n) * (m * m + 1 / (m * n)));
    double found = laminate(ply(1 - upper, 1, 0), ply(upper, n, mismatch)).free(3);
    assertEquals(form, found, 1e-9 * form);
  }

  @Test
  void aLaminateLeftToItselfCarriesNoForce() {
    Laminate laminate = laminate(ply(0.5, 2, -0.001), ply(0.25, 7, 0.001), ply(0.25, 3, 0));
    double[] none = new double[6];
    double top = laminate.stress(Probe.Face.TOP, none, 1)[0];
    double bottom = laminate.stress(Probe.Face.BOTTOM, none, 1)[0];
    assertEquals(true, Math.abs(top) > 1e-5 && Math.abs(bottom) > 1e-5);
    assertEquals(0, laminate.stress(Probe.Face.TOP, none, 0)[0], 0);
  }

  @Test
  void stressInBendingIsThatOfABeam() {
    Laminate sheet = laminate(ply(0.2, 1000, 0));
    double[] bent = {0, 0, 0, 0.01, 0, 0};
    assertEquals(1, sheet.stress(Probe.Face.TOP, bent, 1)[0], 1e-12);
    assertEquals(-1, sheet.stress(Probe.Face.BOTTOM, bent, 1)[0], 1e-12);
    assertEquals(0, sheet.stress(Probe.Face.MIDDLE, bent, 1)[0], 1e-12);
  }

  @Test
  void aTensorKeepsItsInvariantsWhenTurned() {
    Plane tensor = new Plane(3, -1, 2);
    Plane turned = tensor.turned(0.7);
    for (Probe.Component c :
        List.of(Probe.Component.MAJOR, Probe.Component.MINOR, Probe.Component.VON_MISES)) {
      assertEquals(tensor.component(c), turned.component(c), 1e-12);
    }
    assertEquals(-1, tensor.turned(Math.PI / 2).xx(), 1e-12);
    assertEquals(3, new Plane(1, 1, 2).turned(Math.PI / 4).xx(), 1e-12);
  }
}
