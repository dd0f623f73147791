package auricle.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.MethodCallTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.lang.ArchRule;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The rules between packages, for the packages below a root, so that they can be tried on classes
 * that break them.
 */
final class HouseRules {
  /** The packages as data flows; each uses those before it alone. */
  static final List<String> ORDER =
      List.of(
          "geometry",
          "diagnostics",
          "yamlfile",
          "numerics",
          "material",
          "mesh",
          "meshfile",
          "anatomy",
          "plan",
          "energy",
          "equilibrium",
          "measurement",
          "fitting",
          "surgery",
          "healing",
          "assessment",
          "rehearsal",
          "analysis",
          "modelfile",
          "scenario",
          "report",
          "verification",
          "cli");

  /** The home of each library: its package, and the packages of ours that may use it. */
  private static final Map<String, List<String>> HOMES =
      Map.of(
          "org.ejml..", List.of("numerics"),
          "tools.jackson..", List.of("yamlfile", "modelfile", "scenario", "report"),
          "com.networknt..", List.of("yamlfile"),
          "org.apache.batik..", List.of("report"),
          "org.apache.fontbox..", List.of("report"),
          "picocli..", List.of("cli"),
          "org.locationtech.jts..", List.of("mesh"),
          "org.apache.commons.csv..", List.of("material", "report"));

  private HouseRules() {}

  /** All rules below a root package, by what they say. */
  static Map<String, ArchRule> all(String root) {
    Map<String, ArchRule> rules = new LinkedHashMap<>();
    rules.put("order", new PackageOrder(root, ORDER).rule());
    rules.put("no cycles", slices().matching(root + ".(*)..").should().beFreeOfCycles());
    HOMES.forEach((library, homes) -> rules.put("home of " + library, home(root, library, homes)));
    rules.put("no standard output", noStandardOutput(root));
    rules.put("no printed stack trace", noPrintedStackTrace());
    rules.put("terms apart", termsApart(root + ".energy.EnergyTerm"));
    rules.putAll(StateRules.all());
    return rules;
  }

  private static ArchRule home(String root, String library, List<String> homes) {
    String[] allowed = homes.stream().map(h -> root + "." + h + "..").toArray(String[]::new);
    return noClasses()
        .that()
        .resideOutsideOfPackages(allowed)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .because("each library has one home");
  }

  private static ArchRule noStandardOutput(String root) {
    return noClasses()
        .that()
        .resideOutsideOfPackage(root + ".cli..")
        .should(ACCESS_STANDARD_STREAMS)
        .because("the command line alone prints");
  }

  private static ArchRule noPrintedStackTrace() {
    return noClasses()
        .should()
        .callMethodWhere(
            DescribedPredicate.describe("it prints a stack trace", HouseRules::printsStackTrace))
        .because("a user is told what is wrong in words");
  }

  private static boolean printsStackTrace(JavaMethodCall call) {
    MethodCallTarget target = call.getTarget();
    return target.getName().equals("printStackTrace")
        && target.getOwner().isAssignableTo(Throwable.class)
        && target.getRawParameterTypes().isEmpty();
  }

  /** No energy term, nor a class within one, uses another term. */
  private static ArchRule termsApart(String termType) {
    return noClasses()
        .that(new TermOf(termType))
        .should(new UseAnotherTerm(new TermOf(termType)))
        .because("terms are added and removed one by one");
  }

  /** Classes whose outermost class implements the term interface. */
  private static final class TermOf extends DescribedPredicate<JavaClass> {
    private final String termType;

    TermOf(String termType) {
      super("are energy terms");
      this.termType = termType;
    }

    @Override
    public boolean test(JavaClass type) {
      JavaClass outer = UseAnotherTerm.outermost(type);
      return !outer.isInterface() && outer.isAssignableTo(termType);
    }
  }
}
