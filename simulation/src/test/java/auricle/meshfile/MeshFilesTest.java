package auricle.meshfile;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import auricle.mesh.ShellMesh;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class MeshFilesTest {
  @TempDir Path folder;

  static Stream<String> names() {
    return MeshBytes.all().keySet().stream();
  }

  private Optional<ShellMesh> read(String name, byte[] bytes, Findings findings) {
    try {
      return MeshFiles.read(Files.write(folder.resolve(name), bytes), findings);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private String fault(String name, String text) {
    Findings findings = new Findings();
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    assertTrue(read(name, bytes, findings).isEmpty());
    assertEquals(1, findings.list().size(), findings.list()::toString);
    return findings.list().get(0).line();
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyFormatGivesTheSameMesh(String name) {
    Findings findings = new Findings();
    ShellMesh mesh = read(name, MeshBytes.of(name), findings).orElseThrow();
    assertEquals(List.of(), findings.list());
    assertEquals(9, mesh.vertexCount());
    double[] corners = new double[72];
    double[] expected = new double[72];
    for (int k = 0; k < 72; k++) {
      corners[k] = mesh.position(mesh.topology().triangles()[k / 3], k % 3);
      expected[k] = MeshBytes.X[3 * MeshBytes.T[k / 3] + k % 3];
    }
    assertArrayEquals(expected, corners, 0);
  }

  @Test
  void groupsOfAnObjFileBecomeRegions() {
    ShellMesh mesh = read("mesh.obj", MeshBytes.of("mesh.obj"), new Findings()).orElseThrow();
    assertEquals(Set.of("left", "low", "high"), mesh.regions().keySet());
    assertEquals(List.of(4, 5, 6, 7), mesh.regions().get("high"));
  }

  @ParameterizedTest
  @MethodSource("names")
  void aFileCutOffAnywhereIsAFindingOrStillWhole(String name) {
    byte[] bytes = MeshBytes.of(name);
    for (int size = 0; size < bytes.length; size += 13) {
      Findings findings = new Findings();
      Optional<ShellMesh> mesh = read(name, Arrays.copyOf(bytes, size), findings);
      assertEquals(mesh.isEmpty(), findings.hasErrors(), name + " cut to " + size);
      assertReadable(findings, name + " cut to " + size);
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void damagedBytesNeverThrow(String name) {
    byte[] bytes = MeshBytes.of(name);
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(11);
    for (int trial = 0; trial < 100; trial++) {
      byte[] damaged = bytes.clone();
      for (int k = 0; k < 1 + trial % 4; k++) {
        damaged[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
      Findings findings = new Findings();
      Optional<ShellMesh> mesh = read(name, damaged, findings);
      assertEquals(mesh.isEmpty(), findings.hasErrors(), name + " trial " + trial);
      assertReadable(findings, name + " trial " + trial);
    }
  }

  private static void assertReadable(Findings findings, String context) {
    for (Finding f : findings.list()) {
      assertTrue(f.line().length() < 500, context + ": " + f.line());
      assertFalse(f.line().matches("(?s).*[\\x00-\\x1f].*"), context + ": " + f.line());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "mesh.obj | v 0 0 zero | mesh.obj, line 1: 'v 0 0 zero'; expected three numbers",
        "mesh.obj | v 1 2 3;f 1 b 2 | mesh.obj, line 2: 'b'; expected the number of a vertex",
        "mesh.obj | v 0 0 0;v 1 0 0;v 0 1 0;f 1 2 9 | face 1 names vertex 9; expected vertex numbers from 1 to 3",
        "mesh.obj | v 0 0 0;v 1 0 0;v 0 1 NaN;f 1 2 3 | vertex 3 at (0.0, 1.0, NaN)",
        "mesh.obj | v 0 0 0;v 1 0 0;v 0 1 0 | 3 vertices and 0 faces; expected a surface",
        "mesh.obj | curv 0 1 2 | 'curv 0 1 2'; expected a line of a polygon mesh",
        "mesh.obj | v 0 0 0;v 1 0 0;v 1 1 0;v 0 1 0;v 0 .5 0;f 1 2 3 4 5 | face 1 has 5; expected three or four",
        "a.stl | junk | 5 bytes, not beginning with 'solid'",
        "a.stl | solid;facet | an end after 0 facets; expected 'endsolid'",
        "a.stl | solid;vertex 1 2 x;vertex 1 2 3;vertex 1 1 1;endfacet;endsolid | line 2: 'vertex 1 2 x'",
        "a.ply | play | a.ply, line 1: no 'ply' in the first line",
        "a.ply | ply;format ascii 1.0;element vertex 2000000000;property float x;property float y;property float z;element face 1;property list uchar int vertex_indices;end_header;0 0 0 | 2000000000 elements 'vertex' in the header, but only",
        "a.ply | ply;format ascii 1.0;element vertex 1;property float x;property float y;property float z;end_header;0 0 0 | no element 'face'",
        "a.ply | ply;format ascii 1.0;element vertex 1;property float x;end_header;0 | no element 'face'",
        "a.ply | ply;format ascii 1.0;element vertex 1;property float x;element face 0;property list uchar int vertex_indices;end_header;0 | element 'vertex' without a number 'y'",
        "a.vtu | <VTKFile type='PolyData'></VTKFile> | type=\"PolyData\">; expected <VTKFile type=\"UnstructuredGrid\">",
        "a.vtu | <VTKFile | not well-formed XML",
        "a.vtu | <!DOCTYPE a [<!ENTITY b SYSTEM 'file:///etc/hostname'>]><VTKFile type='UnstructuredGrid'>&b;</VTKFile> | XML",
        "mesh.step | x | a name that ends in 'step'; expected a mesh file",
        "README | x | expected a mesh file",
      })
  void faultsAreToldInOneSentence(String name, String lines, String message) {
    String told = fault(name, lines.replace(";", "\n") + "\n");
    assertTrue(told.contains(message), told);
  }

  @Test
  void anEmptyFileIsToldByItsSize() {
    assertTrue(fault("a.vtu", "").contains("a file of 0 bytes"));
  }

  @Test
  void aMissingFileAndAFolderAreTold() {
    Findings findings = new Findings();
    MeshFiles.read(folder.resolve("none.stl"), findings);
    MeshFiles.read(folder, findings);
    assertTrue(findings.list().get(0).line().contains("no such file"));
    assertEquals(2, findings.list().size());
  }

  @Test
  void aHeaderThatClaimsGigabytesIsMeasuredAgainstTheFile() {
    byte[] stl = MeshBytes.binaryStl();
    Arrays.fill(stl, 80, 84, (byte) 0x7f);
    Findings findings = new Findings();
    assertTrue(read("a.stl", stl, findings).isEmpty());
    String line = findings.list().get(0).line();
    assertTrue(line.contains("2139062143 facets in the header, but 484 bytes"), line);

    byte[] vtu = MeshBytes.vtu(MeshBytes.Form.APPENDED_RAW);
    int data = new String(vtu, StandardCharsets.ISO_8859_1).indexOf("\n _") + 2;
    Arrays.fill(vtu, data + 1, data + 5, (byte) 0x7f);
    Findings second = new Findings();
    assertTrue(read("a.vtu", vtu, second).isEmpty());
    line = second.list().get(0).line();
    assertTrue(line.contains("array 'Points' that claims 2139062143 bytes"), line);
  }

  @Test
  void aByteOrderMarkBeforeATextIsPassedOver() {
    String obj = "\ufeffv 0 0 0\nv 1 0 0\nv 0 1 0\nf 1 2 3\n";
    assertTrue(read("a.obj", obj.getBytes(StandardCharsets.UTF_8), new Findings()).isPresent());
    String vtu = "\ufeff" + new String(MeshBytes.vtu(MeshBytes.Form.WORDS), StandardCharsets.UTF_8);
    assertTrue(read("a.vtu", vtu.getBytes(StandardCharsets.UTF_8), new Findings()).isPresent());
  }

  /** A block's sizes stand before it: 15 MiB of zeros would be a file of 15 kB. */
  @Test
  void aPackedArrayThatClaimsMoreThanThePieceNeedsIsNotUnpacked() {
    String vtu = new String(MeshBytes.vtu(MeshBytes.Form.WORDS), StandardCharsets.UTF_8);
    ByteBuffer sizes = ByteBuffer.allocate(16).order(ByteOrder.BIG_ENDIAN);
    sizes.putInt(1).putInt(15 << 20).putInt(0).putInt(4);
    byte[] notZlib = {1, 2, 3, 4};
    String packed =
        Base64.getEncoder().encodeToString(sizes.array())
            + Base64.getEncoder().encodeToString(notZlib);
    String bomb =
        vtu.replaceFirst("<VTKFile ", "<VTKFile compressor=\"vtkZLibDataCompressor\" ")
            .replaceFirst(
                "(?s)(<Points>\\s*<DataArray[^>]*)format=\"ascii\"([^>]*)>[^<]*<",
                "$1format=\"binary\"$2>" + packed + "<");
    String told = fault("a.vtu", bomb);
    assertTrue(told.contains("array 'Points' that unpacks to 15728640 bytes"), told);
  }

  @Test
  void solidCellsAreRefusedAndLinesLeftOut() {
    String vtu = new String(MeshBytes.vtu(MeshBytes.Form.WORDS), StandardCharsets.US_ASCII);
    String solid = fault("a.vtu", vtu.replace("5 5 5 5 5 5 5 5", "5 5 5 22 5 5 5 5"));
    assertTrue(solid.contains("cell 3 of type 22 (quadratic triangle)"), solid);
    Findings findings = new Findings();
    String line = vtu.replace("5 5 5 5 5 5 5 5", "5 5 5 5 5 5 5 4");
    assertTrue(read("b.vtu", line.getBytes(StandardCharsets.US_ASCII), findings).isPresent());
    assertTrue(findings.list().get(0).line().contains("1 vertex or line cells left out"));
  }

  @Test
  void allBadLinesAreToldAtOnce() {
    Findings findings = new Findings();
    byte[] bytes = "v a 0 0\nv 1 b 0\nv 0 1 c\nf 1 2 3\n".getBytes(StandardCharsets.US_ASCII);
    assertTrue(read("a.obj", bytes, findings).isEmpty());
    assertEquals(3, findings.list().size());
  }
}
