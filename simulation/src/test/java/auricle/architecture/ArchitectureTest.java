package auricle.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules of the house, on the code itself. */
class ArchitectureTest {
  private static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("auricle");

  private static final Path SOURCES = Path.of("src/main/java");

  static Stream<Arguments> rules() {
    return HouseRules.all("auricle").entrySet().stream()
        .map(r -> Arguments.of(r.getKey(), r.getValue()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rules")
  void holds(String name, ArchRule rule) {
    rule.check(MAIN);
  }

  @Test
  void theClassesWereFound() throws IOException {
    assertTrue(MAIN.size() >= new SourceSizes(SOURCES).count(), "classes: " + MAIN.size());
  }

  @Test
  void nineTenthsOfTheInstanceFieldsAreFinal() {
    double share = StateRules.finalShare(MAIN);
    assertTrue(share >= 0.9, "final: " + share);
  }

  @Test
  void filesAreShort() throws IOException {
    SourceSizes sizes = new SourceSizes(SOURCES);
    assertTrue(sizes.median() <= 120, "median of the lines of a file: " + sizes.median());
    assertEquals(List.of(), sizes.above(500));
  }

  @Test
  void methodsAreShort() throws IOException {
    SourceMethods methods = new SourceMethods(SOURCES, 120);
    assertTrue(methods.shareUpTo(20) >= 0.9, "up to 20 lines: " + methods.shareUpTo(20));
    assertEquals(List.of(), methods.tooLong());
  }

  @Test
  void typesAndPublicMethodsAreDescribed() throws IOException {
    assertEquals(List.of(), new SourceMethods(SOURCES, 120).undescribed());
  }
}
