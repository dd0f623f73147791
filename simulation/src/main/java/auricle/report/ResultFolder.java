package auricle.report;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * A folder of results that appears whole or not at all: files are written to a hidden folder beside
 * it and moved at {@link #commit}. Closed without that, nothing is left. Files of an earlier run
 * stay as they are until then; what is not ours is never touched.
 */
public final class ResultFolder implements AutoCloseable {
  private final Path target;
  private final Path staging;
  private boolean committed;

  /**
   * Makes the hidden folder.
   *
   * @param target where the results will be
   * @throws IOException if it cannot be made, or the target is a file
   */
  public ResultFolder(Path target) throws IOException {
    this.target = target.toAbsolutePath().normalize();
    if (Files.exists(this.target) && !Files.isDirectory(this.target)) {
      throw new IOException(target + " is a file, not a folder");
    }
    Path parent = this.target.getParent();
    Path beside = parent == null ? this.target : parent;
    Files.createDirectories(beside);
    // not a temporary directory of the library, which nobody but its owner could read afterwards
    String unique = ProcessHandle.current().pid() + "-" + System.nanoTime();
    this.staging =
        Files.createDirectory(beside.resolve("." + this.target.getFileName() + "-" + unique));
  }

  /** What to tell of a folder that cannot be made or written to. */
  public static BadInputException unwritable(Path target, IOException e) {
    return new BadInputException(
        Finding.error(
            target.toString(),
            "results cannot be written there: " + e.getMessage(),
            "a folder that can be made or written to",
            ""));
  }

  /** Where a file or folder is to be written until the commit; its folders are made. */
  public Path place(String name) throws IOException {
    Path place = staging.resolve(name);
    Path folder = place.getParent();
    Files.createDirectories(folder == null ? staging : folder);
    return place;
  }

  /** Writes a text file in UTF-8. */
  public void write(String name, String text) throws IOException {
    Files.write(place(name), text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Moves everything to the target: the whole folder if there is none yet, else entry by entry.
   *
   * @throws IOException if it cannot be moved
   */
  public void commit() throws IOException {
    if (!Files.exists(target)) {
      Files.move(staging, target, StandardCopyOption.ATOMIC_MOVE);
    } else {
      for (Path entry : entries(staging)) {
        replace(entry, target.resolve(staging.relativize(entry)));
      }
    }
    committed = true;
  }

  /**
   * The same, and removes what an earlier run left in the target and this one did not write again.
   *
   * @param ours whether a name in the target is one that such runs write
   */
  public void commit(Predicate<String> ours) throws IOException {
    Set<String> written = new HashSet<>();
    entries(staging).forEach(entry -> written.add(String.valueOf(entry.getFileName())));
    commit();
    for (Path entry : entries(target)) {
      String name = String.valueOf(entry.getFileName());
      if (ours.test(name) && !written.contains(name)) {
        Files.move(entry, staging.resolve("old-" + name), StandardCopyOption.ATOMIC_MOVE);
      }
    }
  }

  /** A folder cannot be moved over one that is not empty: the old one steps aside first. */
  private void replace(Path from, Path to) throws IOException {
    if (Files.isDirectory(to)) {
      Path old = staging.resolve("old-" + to.getFileName());
      Files.move(to, old, StandardCopyOption.ATOMIC_MOVE);
    }
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  private static List<Path> entries(Path folder) throws IOException {
    List<Path> entries = new ArrayList<>();
    try (var stream = Files.newDirectoryStream(folder)) {
      stream.forEach(entries::add);
    }
    entries.sort(null);
    return entries;
  }

  /** Whether the results are in place. */
  public boolean committed() {
    return committed;
  }

  /** Removes the hidden folder and what is left in it. */
  @Override
  public void close() throws IOException {
    try {
      Files.walkFileTree(staging, new Remover());
    } catch (NoSuchFileException gone) {
      // moved to the target as a whole
    }
  }

  private static final class Remover extends SimpleFileVisitor<Path> {
    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
      Files.deleteIfExists(file);
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult postVisitDirectory(
        Path folder, @org.jspecify.annotations.Nullable IOException e) throws IOException {
      Files.deleteIfExists(folder);
      return FileVisitResult.CONTINUE;
    }
  }
}
