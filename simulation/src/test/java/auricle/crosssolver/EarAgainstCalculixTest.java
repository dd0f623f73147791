package auricle.crosssolver;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import auricle.anatomy.MeshLevel;
import auricle.measurement.Measures;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The ear itself against CalculiX: how far the helix goes at the four levels, read from both
 * deformed ears in the same way, within 3 %. Both have the same section, springs and threads
 * ({@link EarCase}) and each the mesh that it needs: ours the sheet in triangles, four times finer
 * each level, theirs the body of the planning mesh in bricks ({@link BrickSplit}).
 */
class EarAgainstCalculixTest {
  private static final double ALLOWED = 0.03;

  @TempDir Path folder;

  @BeforeAll
  static void solverIsThere() {
    // on a build server its absence is a failure, elsewhere these tests are left out
    assumeTrue(CalculixRun.installed() || System.getenv("CI") != null, "ccx is not installed");
  }

  @Test
  @Tag("slow")
  void theIntactEarUnderALoadOnItsRim() throws Exception {
    EarCase ours = new EarCase(MeshLevel.REFERENCE);
    EarCase theirs = new EarCase(MeshLevel.PLANNING);
    for (EarCase ear : new EarCase[] {ours, theirs}) {
      ear.press(50, 1e-3);
    }
    compare("rim load", ours, theirs, false);
  }

  /** Compares the four levels. */
  private void compare(String name, EarCase ours, EarCase theirs, boolean large) throws Exception {
    double[] moved = ours.shell().solve();
    double[] there = theirs.mesh().positions().clone();
    double[] u = CalculixRun.bricks(theirs.shell().wedges(), large, folder);
    for (int i = 0; i < u.length; i++) {
      there[i] += u[i];
    }
    double[] a = change(ours, moved);
    double[] b = change(theirs, there);
    String words = name + ": ours " + Arrays.toString(a) + ", theirs " + Arrays.toString(b);
    System.err.println(words);
    for (int level = 0; level < a.length; level++) {
      assertTrue(Math.abs(a[level] - b[level]) <= ALLOWED * Math.abs(b[level]), words);
    }
  }

  private static double[] change(EarCase ear, double[] places) {
    Measures before = ear.measures(ear.mesh().positions());
    Measures after = ear.measures(places);
    return new double[] {
      after.helixMastoidUpper_mm() - before.helixMastoidUpper_mm(),
      after.helixMastoidMiddle_mm() - before.helixMastoidMiddle_mm(),
      after.helixMastoidLower_mm() - before.helixMastoidLower_mm(),
      after.lobuleMastoid_mm() - before.lobuleMastoid_mm()
    };
  }
}
