package auricle.analysis;

import static auricle.modelfile.SmallModels.last;
import static auricle.modelfile.SmallModels.strip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Each way to hold, load and probe a strip, against beam theory. */
class SmallModelsTest {
  private static final String CANTILEVER =
      """
      supports:
        - clamp: {where: start}
      loads:
        - point_force: {where: end, total_n: [0, 0, 0.3]}
      solve: {linear: {}}
      """;

  private static void near(double expected, double found, double relative) {
    assertEquals(expected, found, relative * Math.abs(expected));
  }

  private static String probe(String probe) {
    return strip(CANTILEVER) + "probes:\n  p: " + probe + "\n";
  }

  @Test
  void tipDeflectionIsThatOfABeam() throws Exception {
    near(1.0, last(probe("{displacement: {where: end, direction: z}}"), "p"), 0.004);
  }

  @Test
  void tipTurnsAsABeamDoes() throws Exception {
    near(-Math.toDegrees(0.15), last(probe("{rotation: {where: end, axis: y}}"), "p"), 0.004);
  }

  @Test
  void reactionIsTheLoadTurnedRound() throws Exception {
    near(-0.3, last(probe("{reaction: {where: start, direction: z}}"), "p"), 1e-6);
  }

  @Test
  void momentAndStressAreThoseOfTheMiddleOfTheBeam() throws Exception {
    String middle = "where: {box: {low_mm: [4, 0, 0], high_mm: [6, 1, 0]}}, component: along";
    near(-1.5, last(probe("{section_moment: {" + middle + "}}"), "p"), 0.01);
    near(-900, last(probe("{stress: {" + middle + ", face: top}}"), "p"), 0.01);
    near(900, last(probe("{stress: {" + middle + ", face: bottom}}"), "p"), 0.01);
    near(900, last(probe("{stress: {" + middle.replace("along", "von_mises") + "}}"), "p"), 0.01);
    near(-7.5e-4, last(probe("{strain: {" + middle + ", face: top}}"), "p"), 0.01);
    near(-0.015, last(probe("{curvature: {" + middle + "}}"), "p"), 0.01);
  }

  @Test
  void energyIsHalfTheWorkTakenOff() throws Exception {
    near(-0.15, last(probe("{energy: {}}"), "p"), 0.004);
  }

  @Test
  void aSmallLoadGivesTheSameLinearlyAndNot() throws Exception {
    String text = probe("{displacement: {where: end, direction: z}}").replace("0.3]", "3.0e-4]");
    double linear = last(text, "p");
    near(linear, last(text.replace("linear: {}", "load_steps: {count: 1}"), "p"), 1e-5);
  }

  @Test
  void aPrescribedTipGivesTheForceThatMovesIt() throws Exception {
    String text =
        strip(
            """
            supports:
              - clamp: {where: start}
              - move: {where: end, z_mm: 1.0}
            solve: {linear: {}}
            probes:
              force: {reaction: {where: end, direction: z}}
              up: {displacement: {where: end, direction: z}}
            """);
    near(0.3, last(text, "force"), 0.01);
    near(1.0, last(text, "up"), 1e-9);
  }

  @Test
  void aPrescribedWholeTurnRollsTheStripUp() throws Exception {
    String text =
        strip(
                """
                supports:
                  - clamp: {where: start}
                  - turn: {where: end, axis: -y, angle_deg: 360}
                solve: {load_steps: {count: 2}}
                probes:
                  turn: {rotation: {where: end, axis: -y}}
                  shortening: {displacement: {where: end, direction: -x}}
                """)
            .replace("divisions: [10, 1]", "divisions: [40, 1]");
    near(360, last(text, "turn"), 1e-6);
    near(10, last(text, "shortening"), 0.01);
  }

  @Test
  void anAskewGuideHoldsAcrossItselfAlone() throws Exception {
    // the tip may slide along (1, 0, 1) only: it is pulled along x by 1 N and moves up with it
    String text =
        strip(
            """
            supports:
              - clamp: {where: start}
              - fix: {where: end, directions: [[1, 0, -1], y]}
            loads:
              - point_force: {where: end, total_n: [1, 0, 0]}
            solve: {linear: {}}
            probes:
              x: {displacement: {where: end, direction: x}}
              z: {displacement: {where: end, direction: z}}
              r: {reaction: {where: end, direction: [1, 0, -1]}}
            """);
    // stiffness EA/L along x and 3 EI/L³ along z, both taken by the same motion
    double along = 1 / (1.2e4 + 0.3);
    near(along, last(text, "x"), 0.001);
    near(along, last(text, "z"), 0.001);
    near(-0.3 * along * Math.sqrt(2), last(text, "r"), 0.02);
  }

  @Test
  void aFoundationCarriesAnEvenLoad() throws Exception {
    String text =
        strip(
            """
            loads:
              - foundation: {where: all, normal_mpa_per_mm: 0.5, tangential_mpa_per_mm: 0.1}
              - surface_force: {where: all, force_n_per_mm2: [0, 0, -0.01]}
            solve: {linear: {}}
            probes:
              down: {displacement: {where: all, direction: -z}}
            """);
    near(0.02, last(text, "down"), 1e-6);
  }

  @Test
  void aThreadPulledAtATensionBendsTheStrip() throws Exception {
    String text =
        strip(
            """
            supports:
              - clamp: {where: start}
            loads:
              - thread:
                  name: a
                  points: [{anchor_mm: [10, 0.5, 10]}, {shell: {place_mm: [10, 0.5, 0]}}]
                  stiffness_n: 100
                  tie: {tension_n: 3.0e-3}
            solve: {load_steps: {count: 1}}
            probes:
              up: {displacement: {where: end, direction: z}}
              pull: {tension: {thread: a}}
            """);
    near(0.003, last(text, "pull"), 1e-9);
    near(0.01, last(text, "up"), 0.01);
  }

  @Test
  void aPlaneStopsTheTip() throws Exception {
    String text =
        strip(
            """
            supports:
              - clamp: {where: start}
            loads:
              - point_force: {where: end, total_n: [0, 0, -0.3]}
              - plane_contact:
                  {where: all, point_mm: [0, 0, -0.25], normal: z, gap_mm: 0.02, pressure_mpa: 0.2}
            solve: {load_steps: {count: 2}}
            probes:
              lowest: {displacement: {where: end, direction: z, over: least}}
            """);
    double lowest = last(text, "lowest");
    assertTrue(lowest > -0.2 && lowest < -0.17, "half a thickness and the cushion: " + lowest);
  }

  @Test
  void aPressureAtRestActsAlongTheNormal() throws Exception {
    String text =
        strip(
            """
            supports:
              - clamp: {where: start}
            loads:
              - pressure: {where: all, pressure_mpa: 0.008}
            solve: {linear: {}}
            probes:
              up: {displacement: {where: end, direction: z}}
              length: {distance: {from: start, to: end}}
            """);
    near(0.1, last(text, "up"), 0.005);
    near(10, last(text, "length"), 0.001);
  }

  @Test
  void aLaminateOfEqualPliesIsASheet() throws Exception {
    String plies =
        "section: {plies: [{thickness_mm: 0.05, young_mpa: 1.2e6, poisson: 0}, {thickness_mm: 0.05,"
            + " e1_mpa: 1.2e6, e2_mpa: 1.2e6, nu12: 0, g12_mpa: 6e5, angle_deg: 30}],"
            + " material_axis: {around: {point_mm: [5, 5, 0], axis: z}}}";
    String sheet = "section: {thickness_mm: 0.1, young_mpa: 1.2e6, poisson: 0}";
    String text = probe("{displacement: {where: end, direction: z}}");
    near(last(text, "p"), last(text.replace(sheet, plies), "p"), 1e-6);
  }

  @Test
  void growthMakesItLongerWithoutStress() throws Exception {
    String text =
        strip(
            """
            rest_changes:
              - {where: all, axis: {along: x}, stretch_along: 1.02, curvature_along_per_mm: 0.01}
            supports:
              - clamp: {where: {nearest_mm: [0, 0, 0]}}
              - fix: {where: start, directions: [x]}
            solve: {load_steps: {count: 1}}
            probes:
              force: {section_force: {where: all, component: along}}
              strain: {strain: {where: all, component: along, face: middle}}
              bend: {curvature: {where: all, component: along}}
            """);
    assertEquals(0, last(text, "force"), 1e-4);
    near(0.0202, last(text, "strain"), 0.001);
    near(0.01 * 1.02 * 1.02, last(text, "bend"), 0.003);
  }

  private static final String GUIDED =
      """
      supports:
        - clamp: {where: start}
      loads:
        - point_force: {where: end, total_n: [0, 0, 0.3]}
      probes:
        up: {displacement: {where: end_low, direction: z}}
        load: {load_factor: {}}
      """;

  @Test
  void theLoadFollowsWhereADisplacementIsGiven() throws Exception {
    String text =
        strip(GUIDED)
            + "solve: {displacement_steps: {where: end_low, direction: z, values_mm: [0.1, 1.0]}}\n";
    near(1.0, last(text, "up"), 1e-6);
    near(1.0, last(text, "load"), 0.02);
  }

  @Test
  void aPathTellsEveryStateToItsEnd() throws Exception {
    String path = strip(GUIDED) + "solve: {path: {last_factor: 2, largest_step_mm: 0.5}}\n";
    AnalysisResult result = auricle.modelfile.SmallModels.run(path);
    assertTrue(result.converged() && result.steps().size() > 3, result::outcome);
    near(2, last(path, "load"), 1e-9);
    String until =
        strip(GUIDED) + "solve: {path: {until: {where: end_low, direction: z, value_mm: 1}}}\n";
    near(1.0, last(until, "load"), 0.02);
  }
}
