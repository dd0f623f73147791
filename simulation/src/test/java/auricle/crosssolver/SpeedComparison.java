package auricle.crosssolver;

import auricle.mesh.Around;
import auricle.mesh.ParametricSurface;
import auricle.mesh.Surfaces;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Whole-process time against CalculiX at equal accuracy, side by side in one run: start of the Java
 * virtual machine included, one thread each, medians of three. Ours is started by the script {@code
 * simulation/auricle} with its archive of classes, which an untimed run makes first. Run from the
 * root of the project, after packaging:
 *
 * <pre>
 * java -cp simulation/target/test-classes:simulation/target/auricle.jar auricle.crosssolver.SpeedComparison
 * </pre>
 */
public final class SpeedComparison {
  private static final int RUNS = 3;
  private static final String SCRIPT = Path.of("simulation/auricle").toAbsolutePath().toString();
  private final Path folder;

  private SpeedComparison(Path folder) {
    this.folder = folder;
  }

  /** Prints the table. */
  public static void main(String[] arguments) throws Exception {
    SpeedComparison comparison = new SpeedComparison(Files.createTempDirectory("speed"));
    System.out.printf(
        "%-12s %12s %10s %10s %12s %10s %10s %7s%n",
        "case", "reference", "ccx", "error %", "ccx s", "ours", "error %", "ours s, ratio");
    comparison.seconds(List.of(SCRIPT, "--version"));
    comparison.cantilever();
    comparison.hemisphere();
    comparison.annulus();
    comparison.roof();
  }

  private void cantilever() throws Exception {
    BrickModel m = new BrickModel(Surfaces.parallelogram(10, 1, Math.PI / 2), 16, 2, 0.1);
    clamp(m);
    m.lineForce(m.columns(), 3, 4);
    int tip = m.number(m.columns(), 0, 1);
    compare(
        "cantilever",
        m.input(1.2e6, 0, "0.1,1.,1e-6,1.", "", tip),
        2,
        6.6996,
        strip(
                "strip: {length_mm: 10, width_mm: 1, divisions: [24, 2]}",
                "0.1, young_mpa: 1.2e6, poisson: 0")
            + "supports:\n  - clamp: {where: start}\nloads:\n"
            + "  - line_force: {where: end, force_n_per_mm: [0, 0, 4]}\n"
            + ending("end_low", "z"));
  }

  private static void clamp(BrickModel m) {
    for (int d = 1; d <= 3; d++) {
      m.fix(i -> i == 0, j -> true, d);
    }
  }

  private void hemisphere() throws Exception {
    Around quarter = new Around(0, Math.PI / 2, false);
    ParametricSurface s = Surfaces.sphere(10, Math.PI / 2, Math.toRadians(18), quarter);
    BrickModel m = new BrickModel(s, 16, 16, 0.04);
    m.fix(i -> i == 0, j -> true, 2);
    m.fix(i -> i == m.columns(), j -> true, 1);
    m.fixPoint(0, 0, 3);
    m.force(0, 0, 1, 200);
    m.force(m.columns(), 0, 2, -200);
    int inward = m.number(m.columns(), 0, 1);
    compare(
        "hemisphere",
        m.input(6.825e7, 0.3, "0.1,1.,1e-6,1.", "", inward),
        1,
        -8.178,
        strip(
                "hemisphere: {radius_mm: 10, hole_deg: 18, from_deg: 0, to_deg: 90, divisions: [24, 24]}",
                "0.04, young_mpa: 6.825e7, poisson: 0.3")
            + "supports:\n  - symmetry: {where: start, normal: y}\n"
            + "  - symmetry: {where: end, normal: x}\n  - fix: {where: start_low, directions: [z]}\n"
            + "loads:\n  - point_force: {where: start_low, each_n: [200, 0, 0]}\n"
            + "  - point_force: {where: end_low, each_n: [0, -200, 0]}\n"
            + ending("end_low", "y"));
  }

  private void annulus() throws Exception {
    // the ring turned so that its normal points up when the first direction runs around
    ParametricSurface s = Surfaces.annulus(6, 10, new Around(0, 2 * Math.PI, true));
    ParametricSurface up = (a, t, p, n) -> s.at(a, 1 - t, p, n);
    BrickModel m = new BrickModel(up, 30, 6, 0.03);
    clamp(m);
    m.lineForce(m.columns(), 3, 3.2);
    int outer = m.number(m.columns(), 0, 1);
    compare(
        "annulus",
        m.input(21e6, 0, "0.1,1.,1e-6,1.", "", outer),
        2,
        17.528,
        strip(
                "annulus: {inner_radius_mm: 6, outer_radius_mm: 10, slit: true, divisions: [80, 10], pattern: one_way}",
                "0.03, young_mpa: 21.0e6, poisson: 0")
            + "supports:\n  - clamp: {where: start}\nloads:\n"
            + "  - line_force: {where: end, force_n_per_mm: [0, 0, 0.8]}\n"
            + ending("end_high", "z"));
  }

  private void roof() throws Exception {
    Around sector = new Around(Math.PI / 2 - 0.1, Math.PI / 2, false);
    BrickModel m = new BrickModel(Surfaces.cylinder(2540, 254, sector), 6, 6, 12.7);
    m.hinge(i -> i == 0, j -> true);
    m.fix(i -> i == m.columns(), j -> true, 1);
    m.fix(i -> true, j -> j == m.rows(), 3);
    int top = m.number(m.columns(), m.rows(), 1);
    compare(
        "roof",
        m.input(3102.75, 0.3, "0.02,1.,1e-6,0.05", top + ",2,2,-29.374\n", top),
        1,
        -29.374,
        strip(
                "cylinder: {radius_mm: 2540, length_mm: 254, from_deg: 84.27042204869176, to_deg: 90, divisions: [10, 10]}",
                "12.7, young_mpa: 3102.75, poisson: 0.3")
            + "supports:\n  - symmetry: {where: end, normal: x}\n"
            + "  - symmetry: {where: side_high, normal: z}\n"
            + "  - fix: {where: start, directions: [x, y, z]}\n"
            + "loads:\n  - point_force: {where: end_high, each_n: [0, -750, 0]}\n"
            + "solve:\n  displacement_steps: {where: end_high, direction: -y, values_mm: "
            + "[3, 6, 9, 12, 15, 18, 21, 24, 27, 29.374]}\n"
            + "probes:\n  watched: {displacement: {where: end_high, direction: y}}\n");
  }

  private static String strip(String mesh, String section) {
    return "format: auricle-model/1\nmesh:\n  "
        + mesh
        + "\nsection: {thickness_mm: "
        + section
        + "}\n";
  }

  private static String ending(String where, String direction) {
    return "solve:\n  load_steps: {count: 4}\nprobes:\n  watched: {displacement: {where: "
        + where
        + ", direction: "
        + direction
        + "}}\n";
  }

  private void compare(String name, String input, int component, double reference, String model)
      throws Exception {
    Path inp = folder.resolve(name + ".inp");
    Path yaml = folder.resolve(name + ".yaml");
    Files.writeString(inp, input);
    Files.writeString(yaml, model);
    double[] theirs = new double[RUNS];
    double[] ours = new double[RUNS];
    for (int r = 0; r < RUNS; r++) {
      theirs[r] = seconds(List.of("ccx", "-i", name));
      ours[r] =
          seconds(
              List.of(
                  SCRIPT,
                  "analyse",
                  yaml.toString(),
                  "--out",
                  folder.resolve(name + r).toString(),
                  "--no-fields",
                  "-q"));
    }
    double ccx = lastValue(Files.readAllLines(folder.resolve(name + ".dat")), component);
    double own = lastProbe(folder.resolve(name + (RUNS - 1)).resolve("probes.csv"));
    System.out.printf(
        Locale.ROOT,
        "%-12s %12.5g %10.5g %10.3f %12.2f %10.5g %10.3f %7.2f %6.2f%n",
        name,
        reference,
        ccx,
        100 * (ccx / reference - 1),
        median(theirs),
        own,
        100 * (own / reference - 1),
        median(ours),
        median(theirs) / median(ours));
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private double seconds(List<String> command) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
    builder.environment().put("OMP_NUM_THREADS", "1");
    builder.environment().put("JDK_JAVA_OPTIONS", "-Dauricle.threads=1");
    builder.redirectErrorStream(true).redirectOutput(folder.resolve("log").toFile());
    long start = System.nanoTime();
    Process process = builder.start();
    int code = process.waitFor();
    if (code != 0) {
      System.out.println(
          command
              + " ended with "
              + code
              + ": "
              + Files.readString(folder.resolve("log")).lines().reduce("", (a, b) -> b));
    }
    return (System.nanoTime() - start) / 1e9;
  }

  private static double lastValue(List<String> lines, int component) {
    double value = Double.NaN;
    for (String line : lines) {
      String[] words = line.trim().split("\\s+");
      if (words.length == 4 && Character.isDigit(words[0].charAt(0))) {
        value = Double.parseDouble(words[component + 1]);
      }
    }
    return value;
  }

  private static double lastProbe(Path csv) throws IOException {
    if (!Files.exists(csv)) {
      return Double.NaN;
    }
    List<String> lines = Files.readAllLines(csv).stream().filter(l -> !l.startsWith("#")).toList();
    String[] cells = lines.get(lines.size() - 1).split(",");
    return Double.parseDouble(cells[cells.length - 1]);
  }
}
