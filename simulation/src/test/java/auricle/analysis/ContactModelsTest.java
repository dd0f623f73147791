package auricle.analysis;

import static auricle.modelfile.SmallModels.last;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.BadInputException;
import auricle.modelfile.SmallModels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Contact as model files ask for it; each kind against another that must give the same. */
class ContactModelsTest {
  private static final String PRESSED =
      SmallModels.strip(
          """
          supports:
            - clamp: {where: start}
          loads:
            - surface_force: {where: all, force_n_per_mm2: [0, 0, -0.4]}
            - CONTACT
          solve: {load_steps: {count: 4}}
          probes:
            tip: {displacement: {where: end, direction: z}}
            push: {contact_force: {contact: floor, direction: z}}
            gap: {contact_gap: {contact: floor}}
            held: {reaction: {where: start, direction: z}}
          """);

  private static final String LAW = "gap_mm: 0.02, pressure_mpa: 1";

  private static final String PLANE =
      "plane_contact: {name: floor, where: all, point_mm: [0, 0, -1], normal: z, " + LAW + "}";

  private static final String SURFACE =
      """
      surface_contact: {name: floor, where: all, fixed_surface: {plate: {length_mm: 40, width_mm: 20, divisions: [7, 3]}}, shift_mm: [-9, -7, -1], """
          + LAW
          + "}";

  private static String pressed(String contact) {
    return PRESSED.replace("CONTACT", contact);
  }

  @Test
  void aFlatRigidSurfaceActsAsThePlaneItLiesIn() throws Exception {
    for (String probe : new String[] {"tip", "push", "gap", "held"}) {
      double plane = last(pressed(PLANE), probe);
      assertEquals(plane, last(pressed(SURFACE), probe), 1e-6 * Math.abs(plane), probe);
    }
  }

  @Test
  void contactAndSupportsCarryTheLoad() throws Exception {
    String text = pressed(SURFACE);
    assertEquals(4.0, last(text, "push") + last(text, "held"), 1e-6);
    assertTrue(last(text, "push") > 1, "the floor carries a good part");
    assertTrue(last(text, "gap") > 0, "and is not entered");
  }

  @Test
  void whatIsFarAwayHasNoGapAndNoForce() throws Exception {
    String text = pressed(SURFACE.replace("-7, -1]", "-7, -30]"));
    assertTrue(Double.isNaN(last(text, "gap")));
    assertEquals(0, last(text, "push"));
  }

  private static final String RING =
      """
      format: auricle-model/1
      title: ring pressed flat
      mesh: {cylinder: {radius_mm: 5, length_mm: 1, AROUND}}
      section: {thickness_mm: 0.1, young_mpa: 1.2e6, poisson: 0}
      sets:
        top: {plane: {point_mm: [0, 5, 0], normal: y}}
        upper: {box: {low_mm: [-6, 0.001, -1], high_mm: [6, 6, 2]}}
      supports:
        - fix: {where: {plane: {point_mm: [0, 0, 0], normal: x}}, directions: [x]}
        - fix: {where: side_low, directions: [z]}
        SUPPORTS
      loads:
        - point_force: {where: top, total_n: [0, -60, 0]}
        - CONTACT
      solve: {load_steps: {count: 6}}
      probes:
        down: {displacement: {where: top, direction: y}}
        push: {contact_force: {contact: inside, direction: y}}
      """;

  /** A ring between two forces touches itself where half a ring touches the plane of symmetry. */
  @Test
  void aRingThatTouchesItselfActsAsHalfARingOnThePlaneOfSymmetry() throws Exception {
    String half =
        RING.replace("AROUND", "from_deg: 0, to_deg: 180, divisions: [32, 1]")
            .replace(
                "SUPPORTS",
                "- symmetry: {where: start, normal: y}\n  - symmetry: {where: end, normal: y}")
            .replace(
                "CONTACT",
                "plane_contact: {name: inside, where: upper, point_mm: [0, 0, 0], normal: y, gap_mm: 0.05, pressure_mpa: 50}");
    String whole =
        RING.replace("AROUND", "divisions: [64, 1]")
            .replace(
                "SUPPORTS",
                "- fix: {where: {plane: {point_mm: [0, 0, 0], normal: y}}, directions: [y]}")
            .replace(
                "  - CONTACT",
                "  - point_force: {where: {plane: {point_mm: [0, -5, 0], normal: y}}, total_n: [0, 60, 0]}\n  - CONTACT")
            .replace(
                "CONTACT",
                "surface_contact: {name: inside, where: upper, shell: {box: {low_mm: [-6, -6, -1], high_mm: [6, -0.001, 2]}}, gap_mm: 0.1, pressure_mpa: 50}");
    String itself =
        whole.replaceAll("where: upper, shell: .*]}}, gap", "where: all, shell: all, gap");
    assertTrue(last(half, "push") > 20, "it touches");
    assertEquals(last(half, "down"), last(whole, "down"), 1e-4 * 5);
    assertEquals(last(half, "push"), last(whole, "push"), 1e-3 * 60);
    assertEquals(last(half, "down"), last(itself, "down"), 1e-4 * 5);
    assertEquals(0, last(itself, "push"), 1e-6 * 60, "what it does to itself has no resultant");
  }

  private static final String PARTS =
      "where: {box: {low_mm: [-1, -1, -1], high_mm: [4.5, 2, 1]}}, shell: OTHER, " + LAW + "}";

  /** What is asked for, where it is told, and the words that must be told. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "shift_mm: [-9, -7, -1]|shift_mm: [-9, -7, -0.04]|loads[1].surface_contact|begin closer",
        "shift_mm: [-9, -7, -1]|shell: all|loads[1].surface_contact|shell beside fixed_surface",
        "divisions: [7, 3]|divisions: [7, 0]|fixed_surface.plate.divisions[1]|at least 1",
        "contact: floor, dir|contact: flor, dir|probes.push.contact_force.contact|'floor'",
        "load_steps: {count: 4}|linear: {}|loads[1].surface_contact|knows no contact",
        "poisson: 0}|poisson: 0, offset_mm: 0.1}|surface_contact.where|offset_mm",
        "poisson: 0}|poisson: 0}\\nother_sections: [{where: {box: {low_mm: [5, 0, 0], high_mm: [9, 1, 0]}}, thickness_mm: 0.2, young_mpa: 1, poisson: 0}]|surface_contact.where|thicknesses from 0.1 to 0.2",
      })
  void whatCannotBeAContactIsTold(String good, String bad, String where, String word) {
    String text = pressed(SURFACE);
    assertTrue(text.contains(good), good);
    assertTold(text.replace(good, bad.replace("\\n", "\n")), where, word);
  }

  @Test
  void partsThatOverlapOrNoPartAtAllAreTold() {
    String parts = pressed("surface_contact: {name: floor, " + PARTS);
    String other = "{box: {low_mm: [2.5, -1, -1], high_mm: [11, 2, 1]}}";
    assertTold(parts.replace("OTHER", other), "surface_contact.shell", "share triangles");
    assertTold(
        parts.replace("shell: OTHER, ", ""), "surface_contact", "neither shell nor fixed_surface");
    String twice = PLANE + "\n  - " + PLANE;
    assertTold(pressed(twice), "loads[2].plane_contact.name", "second contact 'floor'");
  }

  private static void assertTold(String text, String where, String word) {
    BadInputException bad = assertThrows(BadInputException.class, () -> SmallModels.run(text));
    assertTrue(bad.findings().get(0).line().contains(where), bad::toString);
    assertTrue(bad.findings().get(0).line().contains(word), bad::toString);
  }
}
