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
 * Goes once through analysing a model and rehearsing a scenario, so that the virtual machine can
 * write an archive of the classes that this takes ({@code -XX:ArchiveClassesAtExit}); the script
 * {@code simulation/auricle} does so at its first run.
 */
public final class ClassArchive {
  private static final String MODEL = "/auricle/verification/cantilever_end_shear.yaml";
  private static final String SCENARIO = "/auricle/cli/one_suture.yaml";

  private ClassArchive() {}

  /**
   * Runs both in a folder that is taken away again.
   *
   * @throws IOException if there is no room for temporary files
   */
  public static void main(String[] arguments) throws IOException {
    System.setProperty("java.awt.headless", "true");
    Path folder = Files.createTempDirectory("auricle");
    try {
      run("analyse", copy(MODEL, folder.resolve("model.yaml")), folder.resolve("model"));
      run("rehearse", copy(SCENARIO, folder.resolve("ear.yaml")), folder.resolve("ear"), "--tied");
    } finally {
      delete(folder);
    }
    System.exit(ExitCode.DONE);
  }

  private static void run(String command, Path file, Path out, String... more) {
    String[] arguments = new String[4 + more.length];
    arguments[0] = command;
    arguments[1] = file.toString();
    arguments[2] = "--out";
    arguments[3] = out.toString();
    System.arraycopy(more, 0, arguments, 4, more.length);
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    Main.run(nowhere, nowhere, arguments);
  }

  private static Path copy(String resource, Path to) throws IOException {
    try (InputStream in = ClassArchive.class.getResourceAsStream(resource)) {
      Files.copy(Objects.requireNonNull(in, resource), to);
    }
    return to;
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
