package auricle.report.picture;

import auricle.anatomy.Level;
import auricle.anatomy.Side;
import auricle.measurement.Evenness;
import auricle.measurement.Figure;
import auricle.measurement.HelicalShow;
import auricle.measurement.Measures;
import auricle.plan.Target;
import auricle.rehearsal.DeformedEar;
import auricle.rehearsal.Position;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * An ear folded from paper, for pictures: profiles swept around a bowl. Its form is invented; its
 * distances are read off it, so that drawings can be checked against numbers.
 */
public final class PaperEar {
  private static final int AROUND = 60;
  private static final int ACROSS = 24;
  private final double foldAngle_deg;
  private final float[] points = new float[3 * (AROUND + 1) * (ACROSS + 1)];
  private final float[] normals = new float[points.length];

  private PaperEar(double foldAngle_deg) {
    this.foldAngle_deg = foldAngle_deg;
    for (int i = 0; i <= AROUND; i++) {
      for (int j = 0; j <= ACROSS; j++) {
        put(i, j);
      }
    }
    for (int i = 0; i <= AROUND; i++) {
      for (int j = 0; j <= ACROSS; j++) {
        normal(i, j);
      }
    }
  }

  /** An ear before and after a fold. */
  public static EarStory story(Side side, String failure) {
    Caption caption =
        new Caption(
            side == Side.RIGHT ? "Right ear, an invented open fold" : "Left ear, invented",
            failure,
            "auricle 0.1.0, planning mesh, 1,525 vertices, standard adult tissue");
    return new EarStory(caption, side, moment(140), moment(100), Target.usual());
  }

  /** An ear folded to an angle. */
  public static Moment moment(double foldAngle_deg) {
    DeformedEar shape = new PaperEar(foldAngle_deg).shape();
    return new Moment(shape, measures(shape, foldAngle_deg));
  }

  private static int vertex(int i, int j) {
    return 3 * (i * (ACROSS + 1) + j);
  }

  private void put(int i, int j) {
    double turn = Math.toRadians(45 + 245.0 * i / AROUND);
    double along = 27.0 * j / ACROSS;
    double[] place = profile(along, 1 - 0.25 * Math.max(0, -Math.sin(turn)));
    int v = vertex(i, j);
    points[v] = (float) place[1];
    points[v + 1] = (float) (place[0] * Math.cos(turn));
    points[v + 2] = (float) (1.7 * place[0] * Math.sin(turn));
  }

  /** Radius and lateral distance at a length along the profile. */
  private double[] profile(double along, double size) {
    double[] ends = {5, 14, 23, 27};
    double fold = Math.toRadians(80 - (180 - foldAngle_deg));
    double[] slopes = {0, Math.toRadians(80), fold, fold - Math.toRadians(110)};
    double r = 2;
    double x = 1;
    double from = 0;
    for (int k = 0; k < ends.length; k++) {
      double part = Math.max(0, Math.min(along, ends[k]) - from);
      r += size * part * Math.cos(slopes[k]);
      x += size * part * Math.sin(slopes[k]);
      from = ends[k];
    }
    return new double[] {r, x};
  }

  /** Over some vertices to either side: paper has creases, which an ear at rest has not. */
  private void normal(int i, int j) {
    int a = vertex(Math.max(i - 1, 0), j);
    int b = vertex(Math.min(i + 1, AROUND), j);
    int c = vertex(i, Math.max(j - 4, 0));
    int d = vertex(i, Math.min(j + 4, ACROSS));
    double[] u = new double[3];
    double[] w = new double[3];
    for (int k = 0; k < 3; k++) {
      u[k] = points[b + k] - points[a + k];
      w[k] = points[d + k] - points[c + k];
    }
    double[] n = {w[1] * u[2] - w[2] * u[1], w[2] * u[0] - w[0] * u[2], w[0] * u[1] - w[1] * u[0]};
    double length = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
    for (int k = 0; k < 3; k++) {
      normals[vertex(i, j) + k] = (float) (n[k] / length);
    }
  }

  private DeformedEar shape() {
    int[] triangles = new int[6 * AROUND * ACROSS];
    int at = 0;
    for (int i = 0; i < AROUND; i++) {
      for (int j = 0; j < ACROSS; j++) {
        int a = vertex(i, j) / 3;
        int b = vertex(i + 1, j) / 3;
        for (int v : new int[] {a, b + 1, b, a, a + 1, b + 1}) {
          triangles[at++] = v;
        }
      }
    }
    int n = points.length / 3;
    float[] thickness = new float[n];
    java.util.Arrays.fill(thickness, 1.2f);
    float[][] fields = new float[DeformedEar.Field.values().length][n];
    Map<String, List<Position>> lines = Map.of("rim", line(ACROSS - 3), "antihelix", line(13));
    return new DeformedEar(points, normals, thickness, triangles, fields, lines);
  }

  private List<Position> line(int j) {
    List<Position> line = new ArrayList<>();
    for (int i = 0; i <= AROUND; i++) {
      int v = vertex(i, j);
      line.add(new Position(points[v], points[v + 1], points[v + 2]));
    }
    return line;
  }

  private static Measures measures(DeformedEar shape, double fold) {
    DoubleUnaryOperator far = percent -> far(shape, percent);
    List<HelicalShow> shows = new ArrayList<>();
    for (int p = 20; p <= 95; p += 5) {
      shows.add(new HelicalShow(p, (fold - 103) / 12 + 4 * Math.sin(p / 20.0)));
    }
    return new Measures(
        far.applyAsDouble(Level.UPPER.heightPercent()),
        far.applyAsDouble(Level.MIDDLE.heightPercent()),
        far.applyAsDouble(Level.LOWER.heightPercent()),
        far.applyAsDouble(Level.LOBULE.heightPercent()),
        fold,
        fold + 4,
        fold / 3,
        12.5,
        3,
        -1,
        fold < 120 ? 9.4 : 0,
        14,
        shows,
        new Evenness(6, 80, 0),
        new Evenness(3, 70, 0),
        62,
        34);
  }

  private static double far(DeformedEar shape, double percent) {
    return EarCut.at(shape, EarCut.height_mm(shape, percent)).stream()
        .flatMap(List::stream)
        .filter(p -> p.anterior_mm() < 0)
        .max(Comparator.comparingDouble(EarCut.Place::lateral_mm))
        .map(EarCut.Place::lateral_mm)
        .orElse(Double.NaN);
  }

  /** Steps of an invented plan. */
  static List<StepRow> steps() {
    List<StepRow> rows = new ArrayList<>();
    String[] names = {
      "before",
      "posterior scoring",
      "upper fold suture",
      "middle fold suture",
      "lower fold suture",
      "bowl strip with a name that is far too long for its column",
      "lobule suture"
    };
    for (int i = 0; i < names.length; i++) {
      rows.add(new StepRow(names[i], moment(140 - 7 * i).measures(), i != 5));
    }
    return rows;
  }

  /** An invented course with a band. */
  static List<CoursePoint> course() {
    List<CoursePoint> points = new ArrayList<>();
    double[] days = {0, 1, 7, 30, 91, 182, 365};
    for (double d : days) {
      Measures m = moment(100 + 8 * (1 - Math.exp(-d / 40))).measures();
      Map<Figure, CoursePoint.Spread> spread = new EnumMap<>(Figure.class);
      for (Figure f : Figure.values()) {
        double wide = 0.04 * f.of(m) * Math.min(1, d / 90);
        spread.put(f, new CoursePoint.Spread(f.of(m) - wide, f.of(m) + 1.5 * wide));
      }
      points.add(new CoursePoint(d, m, spread));
    }
    return points;
  }
}
