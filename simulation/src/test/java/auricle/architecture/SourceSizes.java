package auricle.architecture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Numbers of lines of the source files below a folder, packages' descriptions left out. */
final class SourceSizes {
  private final List<Path> files = new ArrayList<>();
  private final List<Integer> lines = new ArrayList<>();

  SourceSizes(Path folder) throws IOException {
    try (Stream<Path> found = Files.walk(folder)) {
      for (Path file : found.filter(SourceSizes::isSource).sorted().toList()) {
        files.add(file);
        lines.add(Files.readAllLines(file).size());
      }
    }
  }

  private static boolean isSource(Path file) {
    return file.toString().endsWith(".java") && !file.endsWith("package-info.java");
  }

  /** Number of files. */
  int count() {
    return files.size();
  }

  /** The upper median of the numbers of lines. */
  int median() {
    return lines.stream().sorted().toList().get(lines.size() / 2);
  }

  /** Files of more lines than a limit. */
  List<Path> above(int limit) {
    List<Path> above = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      if (lines.get(i) > limit) {
        above.add(files.get(i));
      }
    }
    return above;
  }
}
