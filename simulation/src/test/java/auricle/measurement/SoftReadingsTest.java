package auricle.measurement;

import auricle.testing.Check;
import org.junit.jupiter.api.Test;

class SoftReadingsTest {
  private static final String EXACT = "exact in plane geometry";

  @Test
  void theCrestOfARolledHelixIsReadExactly() {
    int n = 41;
    double[] points = new double[3 * n];
    for (int i = 0; i < n; i++) {
      double angle = Math.PI * i / (n - 1);
      points[3 * i] = 15 + 3 * Math.sin(angle);
      points[3 * i + 1] = -20 + 3 * Math.cos(angle);
    }
    double[] line = new Ridge(new SampleBlock(0, 1, n), 0, 1).line(points);
    Check.close(line[0], 18, 0.005, EXACT);
    Check.close(line[1], -20, 1e-9, EXACT);
  }

  @Test
  void aStraightRimIsReadExactlyAtAnyHeight() {
    double[] line = new double[60];
    for (int i = 0; i < 20; i++) {
      double z = 30 - 3.1 * i + 0.2 * (i % 3);
      line[3 * i] = 10 + 0.3 * z;
      line[3 * i + 1] = -20 - 0.1 * z;
      line[3 * i + 2] = z;
    }
    Check.close(HeightFit.at(line, 4.4)[0], 10 + 0.3 * 4.4, 5e-3, EXACT);
    Check.close(HeightFit.at(line, 4.4)[1], -20 - 0.1 * 4.4, 5e-3, EXACT);
  }

  @Test
  void aRoundLineHasTheRadiusOfItsCircle() {
    double[] arc = new double[9];
    for (int i = 0; i < 3; i++) {
      arc[3 * i] = 7 * Math.cos(0.4 * i);
      arc[3 * i + 2] = 7 * Math.sin(0.4 * i);
    }
    Check.within(1e-12, Bend.radius_mm(arc, 0, 3, 6), 7, EXACT);
  }
}
