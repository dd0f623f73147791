package auricle.crosssolver;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.IntUnaryOperator;

/**
 * Runs the independent solver on an input file and reads the displacements of the last increment.
 */
final class CalculixRun {
  private CalculixRun() {}

  static boolean installed() {
    return Files.isExecutable(Path.of("/usr/bin/ccx"));
  }

  /**
   * Displacements of the middle nodes, three a vertex.
   *
   * @throws IllegalStateException if the solver did not reach the full load
   */
  static double[] displacements(WedgeModel model, Path folder, double firstIncrement)
      throws IOException, InterruptedException {
    run(model.input(firstIncrement), folder);
    return read(folder.resolve("shell.dat"), model.vertexCount(), node -> (node - 2) / 3);
  }

  /** The same with bricks: see {@link WedgeModel#bricks}. */
  static double[] bricks(WedgeModel model, boolean large, Path folder)
      throws IOException, InterruptedException {
    run(model.bricks(large), folder);
    return read(folder.resolve("shell.dat"), model.vertexCount(), node -> node - 1);
  }

  private static void run(String input, Path folder) throws IOException, InterruptedException {
    Files.writeString(folder.resolve("shell.inp"), input);
    ProcessBuilder builder = new ProcessBuilder("ccx", "-i", "shell").directory(folder.toFile());
    builder.environment().put("OMP_NUM_THREADS", "1");
    builder.redirectErrorStream(true).redirectOutput(folder.resolve("log").toFile());
    Process process = builder.start();
    if (!process.waitFor(10, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new IllegalStateException("the independent solver took longer than ten minutes");
    }
    if (process.exitValue() != 0) {
      List<String> log = Files.readAllLines(folder.resolve("log"));
      throw new IllegalStateException(
          "the independent solver failed: " + log.subList(Math.max(0, log.size() - 8), log.size()));
    }
  }

  private static double[] read(Path file, int vertexCount, IntUnaryOperator vertexOf)
      throws IOException {
    double[] u = new double[3 * vertexCount];
    boolean full = false;
    for (String line : Files.readAllLines(file)) {
      String[] words = line.trim().split("\\s+");
      if (line.contains("displacements")) {
        full = Math.abs(Double.parseDouble(words[words.length - 1]) - 1) < 1e-9;
      } else if (words.length == 4) {
        int vertex = vertexOf.applyAsInt(Integer.parseInt(words[0]));
        for (int c = 0; c < 3; c++) {
          u[3 * vertex + c] = Double.parseDouble(words[c + 1]);
        }
      }
    }
    if (!full) {
      throw new IllegalStateException("the independent solver did not reach the full load");
    }
    return u;
  }
}
