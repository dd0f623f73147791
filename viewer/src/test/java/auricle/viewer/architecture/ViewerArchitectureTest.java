package auricle.viewer.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** The viewer draws what the simulation computes: which of its packages may use which. */
class ViewerArchitectureTest {
  private static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("auricle.viewer");

  @Test
  void theClassesWereFound() {
    assertTrue(MAIN.size() > 10, "classes: " + MAIN.size());
  }

  @Test
  void thereIsNoMechanicsInTheViewer() {
    noClasses()
        .that()
        .resideInAPackage("auricle.viewer..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "auricle.numerics..", "auricle.mesh..", "auricle.energy..", "auricle.equilibrium..")
        .because("the viewer holds no mechanics")
        .check(MAIN);
  }

  @Test
  void appUsesViewUsesViewmodelUsesTheRest() {
    layeredArchitecture()
        .consideringOnlyDependenciesInAnyPackage("auricle.viewer..")
        .withOptionalLayers(true)
        .layer("app")
        .definedBy("auricle.viewer.app..")
        .layer("view")
        .definedBy("auricle.viewer.view..")
        .layer("viewmodel")
        .definedBy("auricle.viewer.viewmodel..")
        .layer("task")
        .definedBy("auricle.viewer.task..")
        .layer("lesson")
        .definedBy("auricle.viewer.lesson..")
        .layer("store")
        .definedBy("auricle.viewer.store..")
        .layer("scene")
        .definedBy("auricle.viewer.scene..")
        .whereLayer("app")
        .mayNotBeAccessedByAnyLayer()
        .whereLayer("view")
        .mayOnlyBeAccessedByLayers("app")
        .whereLayer("viewmodel")
        .mayOnlyBeAccessedByLayers("view", "app")
        .whereLayer("task")
        .mayOnlyBeAccessedByLayers("view", "viewmodel", "app")
        .check(MAIN);
  }

  @Test
  void thereAreNoCycles() {
    slices().matching("auricle.viewer.(*)..").should().beFreeOfCycles().check(MAIN);
  }

  @Test
  void viewModelsNeedNoToolkit() {
    noClasses()
        .that()
        .resideInAnyPackage(
            "auricle.viewer.viewmodel..",
            "auricle.viewer.task..",
            "auricle.viewer.lesson..",
            "auricle.viewer.store..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "javafx.scene..", "javafx.stage..", "javafx.application..", "javafx.animation..")
        .because("they are tested without one")
        .check(MAIN);
  }

  @Test
  void nothingIsPrinted() {
    noClasses().should(ACCESS_STANDARD_STREAMS).check(MAIN);
  }
}
