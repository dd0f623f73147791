package auricle.numerics;

import auricle.numerics.GridMatrix.Coupling;
import auricle.numerics.GridMatrix.Numbering;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Prints our times of numeric factorisation beside those of CHOLMOD (supernodal, better of AMD and
 * METIS) on the same matrices in one run. Both sides take turns and count CPU time of one thread.
 *
 * <p>Run by src/test/cholmod/compare.sh; the argument is the folder with the compiled C program.
 */
public final class FactorisationComparison {
  private static final int ROUNDS = 3;
  private static final String HEADER =
      "unknowns coupling        nnz(L) ours   CHOLMOD | ms first  best median solve"
          + " | CHOLMOD best median solve | ratio best median";

  private final Path folder;
  private boolean blasNamed;

  private FactorisationComparison(Path folder) {
    this.folder = folder;
  }

  /** Runs all cases. */
  public static void main(String[] args) throws IOException, InterruptedException {
    FactorisationComparison comparison = new FactorisationComparison(Path.of(args[0]));
    System.out.println(HEADER);
    int[][] grids = {{20, 30}, {40, 60}, {80, 120}};
    for (Coupling coupling : Coupling.values()) {
      for (int[] grid : grids) {
        comparison.run(grid[0], grid[1], coupling, Numbering.THREE_TOGETHER);
      }
    }
    for (int[] grid : new int[][] {{20, 30}, {30, 40}, {40, 60}, {60, 80}}) {
      comparison.run(grid[0], grid[1], Coupling.HINGE, Numbering.THREE_THEN_TWO);
    }
  }

  private void run(int nodesX, int nodesY, Coupling coupling, Numbering numbering)
      throws IOException, InterruptedException {
    SymmetricMatrix matrix = GridMatrix.definite(nodesX, nodesY, coupling, numbering, 7);
    Path file = write(matrix);
    int n = matrix.pattern().size();
    int repetitions = Math.max(8, 200_000 / n);
    SymmetricSolver solver = SymmetricSolvers.create(matrix.pattern());
    double first = time(() -> alone(solver, matrix));
    for (int k = 0; k < repetitions; k++) {
      alone(solver, matrix);
    }
    List<Double> ours = new ArrayList<>();
    List<Double> solves = new ArrayList<>();
    Reference best = Reference.NONE;
    for (int round = 0; round < ROUNDS; round++) {
      best = best.orBetter(reference(file, repetitions));
      double[] b = new double[n];
      for (int k = 0; k < repetitions; k++) {
        ours.add(time(() -> alone(solver, matrix)));
        solves.add(time(() -> solver.solve(b, b)));
      }
    }
    Collections.sort(ours);
    Collections.sort(solves);
    double median = ours.get(ours.size() / 2);
    System.out.printf(
        Locale.ROOT,
        "%8d %-5s x%d %12d %12.0f | %8.2f %6.2f %6.2f %5.2f | %12.2f %6.2f %5.2f | %6.2f %6.2f%n",
        n,
        coupling,
        n / (nodesX * nodesY),
        FillReducingOrdering.best(new UnknownGroups(matrix.pattern()).graph()).fill(),
        best.fill,
        first,
        ours.get(0),
        median,
        solves.get(0),
        best.best,
        best.median,
        best.solve,
        ours.get(0) / best.best,
        median / best.median);
  }

  private Path write(SymmetricMatrix matrix) throws IOException {
    SymmetricPattern pattern = matrix.pattern();
    Path file = folder.resolve("matrix.mtx");
    try (PrintWriter out =
        new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.US_ASCII))) {
      out.println("%%MatrixMarket matrix coordinate real symmetric");
      out.println(pattern.size() + " " + pattern.size() + " " + pattern.entryCount());
      for (int j = 0; j < pattern.size(); j++) {
        for (int p = pattern.columnStart()[j]; p < pattern.columnStart()[j + 1]; p++) {
          out.println((pattern.rowIndex()[p] + 1) + " " + (j + 1) + " " + matrix.values()[p]);
        }
      }
    }
    return file;
  }

  private Reference reference(Path file, int repetitions) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                folder.resolve("factor_times").toAbsolutePath().toString(),
                file.toString(),
                Integer.toString(repetitions))
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
    if (process.waitFor() != 0) {
      throw new UncheckedIOException(new IOException("factor_times failed"));
    }
    if (!blasNamed) {
      blasNamed = true;
      System.out.println("CHOLMOD with " + output.lines().findFirst().orElse("no output"));
    }
    return output.lines().skip(1).map(Reference::parse).reduce(Reference.NONE, Reference::orBetter);
  }

  private static void alone(SymmetricSolver solver, SymmetricMatrix matrix) {
    try {
      Workers.ALONE.within(() -> solver.factorize(matrix));
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private static double time(Runnable action) {
    long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    action.run();
    return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) * 1e-6;
  }

  private record Reference(double fill, double best, double median, double solve) {
    static final Reference NONE = new Reference(0, Double.MAX_VALUE, Double.MAX_VALUE, 0);

    static Reference parse(String line) {
      String[] word = line.split(" ", -1);
      return new Reference(
          Double.parseDouble(word[1]),
          Double.parseDouble(word[3]),
          Double.parseDouble(word[4]),
          Double.parseDouble(word[5]));
    }

    Reference orBetter(Reference other) {
      return other.best < best ? other : this;
    }
  }
}
