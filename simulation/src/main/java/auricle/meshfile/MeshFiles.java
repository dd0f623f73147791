package auricle.meshfile;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import auricle.mesh.MeshImport;
import auricle.mesh.RawMesh;
import auricle.mesh.ShellMesh;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Reads triangle meshes: OBJ, STL, PLY and VTU, told by the ending of the name. Coordinates are mm.
 *
 * <p>A file is never believed further than its own length: nothing is allocated for a count that
 * the file is too short to hold.
 */
public final class MeshFiles {
  /** Files above this size are refused: 256 MiB, some five million triangles. */
  static final long LARGEST_BYTES = 256L << 20;

  private static final byte[] MARK = {(byte) 0xef, (byte) 0xbb, (byte) 0xbf};

  private interface Reader {
    RawMesh read(byte[] bytes, String where, Findings findings) throws BadInputException;
  }

  private static final Map<String, Reader> READERS =
      Map.of(
          "obj",
          ObjReader::read,
          "stl",
          StlReader::read,
          "ply",
          PlyReader::read,
          "vtu",
          VtuReader::read);

  private MeshFiles() {}

  /**
   * Reads and checks a mesh.
   *
   * @param findings gets all that is wrong or doubtful
   * @return empty if there is an error among the findings
   */
  public static Optional<ShellMesh> read(Path file, Findings findings) {
    String where = String.valueOf(file.getFileName());
    Findings own = new Findings();
    try {
      return readRaw(file, where, own)
          .filter(raw -> !own.hasErrors())
          .flatMap(raw -> MeshImport.build(raw, where, own));
    } catch (OutOfMemoryError e) {
      String most = "at most what fits " + (Runtime.getRuntime().maxMemory() >> 20) + " MiB";
      own.error(where, "a mesh that needs more memory than there is", most, "Coarsen the mesh.");
      return Optional.empty();
    } finally {
      findings.addAll(own.list());
    }
  }

  private static Optional<RawMesh> readRaw(Path file, String where, Findings findings) {
    try {
      Reader reader = READERS.get(ending(where));
      if (reader == null) {
        throw bad(
            where,
            "a name that ends in '" + ending(where) + "'",
            "a mesh file: .obj, .stl, .ply or .vtu",
            "Convert the mesh or correct the name.");
      }
      return Optional.of(reader.read(withoutMark(bytes(file, where)), where, findings));
    } catch (BadInputException e) {
      findings.addAll(e.findings());
      return Optional.empty();
    }
  }

  private static String ending(String name) {
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }

  private static byte[] bytes(Path file, String where) throws BadInputException {
    if (!Files.isRegularFile(file)) {
      String found = Files.exists(file) ? "not a file" : "no such file";
      throw bad(where, found, "a mesh file at " + file, "");
    }
    try {
      long size = Files.size(file);
      if (size == 0) {
        throw bad(where, "a file of 0 bytes", "a mesh", "Write the file again.");
      }
      if (size > LARGEST_BYTES) {
        String most = "at most " + LARGEST_BYTES + " bytes";
        throw bad(where, "a file of " + size + " bytes", most, "Coarsen the mesh.");
      }
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw bad(where, "cannot be read (" + e.getMessage() + ")", "a readable file", "");
    }
  }

  /** Without the byte-order mark that some editors put before a text. */
  private static byte[] withoutMark(byte[] bytes) {
    boolean marked =
        bytes.length > MARK.length && Arrays.equals(bytes, 0, MARK.length, MARK, 0, MARK.length);
    return marked ? Arrays.copyOfRange(bytes, MARK.length, bytes.length) : bytes;
  }

  /** One error as an exception. */
  static BadInputException bad(String where, String found, String expected, String remedy) {
    return new BadInputException(Finding.error(where, found, expected, remedy));
  }
}
