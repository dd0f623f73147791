package auricle.modelfile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Where a model file stands, and the files beside it that it names. */
public interface ModelFolder {
  /**
   * The text of a file (UTF-8).
   *
   * @param name relative to the folder
   * @throws IOException if it cannot be read
   */
  String text(String name) throws IOException;

  /** A name as a path that mesh readers can open. */
  String path(String name);

  /** A folder on disk. */
  static ModelFolder of(Path folder) {
    return new ModelFolder() {
      @Override
      public String text(String name) throws IOException {
        try {
          return Files.readString(folder.resolve(name));
        } catch (InvalidPathException e) {
          throw new IOException("not a name of a file", e);
        }
      }

      @Override
      public String path(String name) {
        try {
          return folder.resolve(name).normalize().toString();
        } catch (InvalidPathException e) {
          return name; // whoever opens it says so
        }
      }
    };
  }

  /** A folder among the program's own resources, such as {@code /auricle/verification/}. */
  static ModelFolder ofResources(String folder) {
    return new ModelFolder() {
      @Override
      public String text(String name) throws IOException {
        try (InputStream in = ModelFolder.class.getResourceAsStream(folder + name)) {
          if (in == null) {
            throw new IOException("no resource " + folder + name);
          }
          return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
      }

      @Override
      public String path(String name) {
        return folder + name;
      }
    };
  }
}
