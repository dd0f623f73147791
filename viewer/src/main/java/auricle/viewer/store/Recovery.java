package auricle.viewer.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A copy of unsaved work beside the settings, so that nothing is lost when the program ends without
 * being asked to. The first line is a comment with the file it belongs to.
 */
public final class Recovery {
  private static final String HEAD = "# unsaved changes to: ";

  /** More viewers than this at once share the last place. */
  private static final int MOST_VIEWERS = 9;

  private final Path file;

  /** Held as long as the program runs; the system lets it go however the program ends. */
  private final Optional<FileLock> hold;

  /**
   * What was left behind.
   *
   * @param belongsTo file that was being worked on; empty if it had none
   * @param text of the scenario
   */
  public record Left(Optional<Path> belongsTo, String text) {}

  /** The copy kept in a folder, by the only viewer there is. */
  public Recovery(Path folder) {
    this(place(folder, 1), Optional.empty());
  }

  private Recovery(Path file, Optional<FileLock> hold) {
    this.file = file;
    this.hold = hold;
  }

  /**
   * A place for a copy that no other running viewer keeps its own in: one with a copy that was left
   * behind, if there is any.
   */
  public static Recovery claim(Path folder) {
    Optional<Recovery> empty = Optional.empty();
    for (int i = 1; i <= MOST_VIEWERS; i++) {
      Path place = place(folder, i);
      if (empty.isEmpty() || Files.exists(place)) {
        Optional<Recovery> free = hold(place).map(h -> new Recovery(place, Optional.of(h)));
        if (free.isPresent() && Files.exists(place)) {
          empty.ifPresent(Recovery::letGo);
          return free.orElseThrow();
        }
        empty = empty.or(() -> free);
      }
    }
    return empty.orElseGet(() -> new Recovery(folder));
  }

  private static Path place(Path folder, int number) {
    return folder.resolve(number == 1 ? "unsaved.yaml" : "unsaved-" + number + ".yaml");
  }

  private static Optional<FileLock> hold(Path place) {
    FileChannel channel = null;
    try {
      Files.createDirectories(place.toAbsolutePath().getParent());
      Path beside = place.resolveSibling(place.getFileName() + ".lock");
      channel = FileChannel.open(beside, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      FileLock lock = channel.tryLock();
      if (lock != null) {
        AtomicFile.sweep(place);
        return Optional.of(lock);
      }
      channel.close();
    } catch (IOException | OverlappingFileLockException e) {
      close(channel);
    }
    return Optional.empty();
  }

  private static void close(@Nullable FileChannel channel) {
    try {
      if (channel != null) {
        channel.close();
      }
    } catch (IOException e) {
      // a place that cannot be held is not used
    }
  }

  /** Lets another viewer have the place; what is kept there stays. */
  public void letGo() {
    hold.ifPresent(h -> close(h.channel()));
  }

  /**
   * Keeps a copy.
   *
   * @throws IOException if it cannot be written
   */
  public void keep(Optional<Path> belongsTo, String text) throws IOException {
    Files.createDirectories(file.toAbsolutePath().getParent());
    AtomicFile.write(file, HEAD + belongsTo.map(Path::toString).orElse("") + "\n" + text);
  }

  /** What an earlier run left behind, if anything. */
  public Optional<Left> left() {
    try {
      String all = Files.readString(file);
      int end = all.indexOf('\n');
      if (!all.startsWith(HEAD) || end < 0) {
        return Optional.empty();
      }
      String name = all.substring(HEAD.length(), end);
      Optional<Path> path = name.isEmpty() ? Optional.empty() : Optional.of(Path.of(name));
      return Optional.of(new Left(path, all.substring(end + 1)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /**
   * Puts a copy that cannot be read where it is neither found again nor written over.
   *
   * @return where it is now
   * @throws IOException if it cannot be moved
   */
  public Path setAside() throws IOException {
    Path aside = file.resolveSibling("unreadable-" + System.currentTimeMillis() + ".yaml");
    return Files.move(file, aside);
  }

  /** Forgets the copy: the work is in a file, or not wanted. */
  public void forget() {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      file.toFile().deleteOnExit();
    }
  }
}
