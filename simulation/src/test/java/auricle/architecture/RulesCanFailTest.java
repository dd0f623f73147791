package auricle.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule of the house, on classes made to break it. */
class RulesCanFailTest {
  private static final String ROOT = "auricle.architecture.fixture";
  private static final JavaClasses BROKEN = new ClassFileImporter().importPackages(ROOT);

  static Stream<Arguments> rules() {
    return HouseRules.all(ROOT).entrySet().stream()
        .map(r -> Arguments.of(r.getKey(), r.getValue()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rules")
  void isBroken(String name, ArchRule rule) {
    assertTrue(rule.evaluate(BROKEN).hasViolation());
  }

  @Test
  void aPackageOutsideTheOrderIsTold() {
    ArchRule order = new PackageOrder(ROOT, HouseRules.ORDER).rule();
    String report = order.evaluate(BROKEN).getFailureReport().toString();
    assertTrue(report.contains("Oddment is in no package of the order"), report);
    assertTrue(report.contains("LooksAhead"), report);
  }

  @Test
  void fieldsThatChangeAreCounted() {
    assertTrue(StateRules.finalShare(BROKEN) < 0.9);
  }

  @Test
  void longFilesAreCounted(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("Long.java"), "// a line\n".repeat(501));
    Files.writeString(folder.resolve("Short.java"), "// a line\n".repeat(500));
    Files.writeString(folder.resolve("package-info.java"), "// a line\n");
    SourceSizes sizes = new SourceSizes(folder);
    assertEquals(2, sizes.count());
    assertEquals(501, sizes.median());
    assertEquals(1, sizes.above(500).size());
  }

  @Test
  void longMethodsAndMissingDescriptionsAreTold(@TempDir Path folder) throws IOException {
    String body = "{\n" + "    count++;\n".repeat(19) + "  }\n";
    String head = "/** A type. */\npublic class Long {\n  int count;\n";
    String described = "  /** Described. */\n  public void shorter() {}\n";
    Files.writeString(
        folder.resolve("Long.java"), head + described + "  public void longer() " + body + "}\n");
    Files.writeString(folder.resolve("Bare.java"), "interface Bare {\n  void hidden();\n}\n");
    SourceMethods methods = new SourceMethods(folder, 20);
    assertEquals(2, methods.count());
    assertEquals(0.5, methods.shareUpTo(20));
    assertEquals(List.of("Long.java:6 longer: 21 lines"), methods.tooLong());
    assertEquals(List.of("Bare.java:1 Bare", "Long.java:6 longer"), methods.undescribed());
  }
}
