package auricle.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Goes once through the short commands, so that the virtual machine can write an archive of the
 * classes that they take ({@code -XX:ArchiveClassesAtExit}); the script {@code simulation/auricle}
 * does so at its first run.
 */
public final class ClassArchive {
  private static final String MODEL = "/auricle/verification/cantilever_end_shear.yaml";
  private static final String SCENARIO = "/auricle/cli/one_suture.yaml";

  private ClassArchive() {}

  /**
   * Runs them in a folder that is taken away again.
   *
   * @throws IOException if there is no room for temporary files
   */
  public static void main(String[] arguments) throws IOException {
    System.setProperty("java.awt.headless", "true");
    Path folder = Files.createTempDirectory("auricle");
    try {
      run("analyse", copy(MODEL, folder.resolve("model.yaml")), "--out", folder + "/out");
      run("check", copy(SCENARIO, folder.resolve("ear.yaml")));
      run("materials");
    } finally {
      delete(folder);
    }
    System.exit(ExitCode.DONE);
  }

  private static void run(String... arguments) {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    Main.run(nowhere, nowhere, arguments);
  }

  private static String copy(String resource, Path to) throws IOException {
    try (InputStream in = ClassArchive.class.getResourceAsStream(resource)) {
      Files.copy(Objects.requireNonNull(in, resource), to);
    }
    return to.toString();
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> within = Files.walk(folder)) {
      List<Path> all = within.sorted(Comparator.reverseOrder()).toList();
      for (Path path : all) {
        Files.delete(path);
      }
    }
  }
}
