package auricle.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.AbstractCollection;
import java.util.AbstractMap;
import java.util.Collection;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;

/** The rules about state: what may change, what may be shared, what may be null. */
final class StateRules {
  private StateRules() {}

  /** The rules by what they say. */
  static Map<String, ArchRule> all() {
    return Map.of(
        "no arrays in records", noArraysInRecords(),
        "final statics", fields().that().areStatic().should().beFinal().allowEmptyShould(true),
        "no mutable statics", noMutableStatics(),
        "null-marked packages", classes().should(new BeInANullMarkedPackage()));
  }

  private static ArchRule noArraysInRecords() {
    return noFields()
        .that()
        .areDeclaredInClassesThat(DescribedPredicate.describe("are records", JavaClass::isRecord))
        .and()
        .areNotStatic()
        .should()
        .haveRawType(DescribedPredicate.describe("an array", JavaClass::isArray))
        .because("equality and immutability of a record end at an array")
        .allowEmptyShould(true);
  }

  private static ArchRule noMutableStatics() {
    return noFields()
        .that()
        .areStatic()
        .should()
        .haveRawType(DescribedPredicate.describe("a mutable container", StateRules::isMutable))
        .orShould(new BeAnArrayThatOtherPackagesSee())
        .allowEmptyShould(true);
  }

  /** Workspaces of a thread are allowed: nothing in them outlives a call. */
  private static boolean isMutable(JavaClass type) {
    return type.isAssignableTo(AbstractCollection.class)
        || type.isAssignableTo(AbstractMap.class)
        || type.isAssignableTo(StringBuilder.class)
        || type.getPackageName().equals("java.util.concurrent.atomic");
  }

  /**
   * Share of the instance fields that are final; 1 if there are none. Not counted: fields of the
   * compiler, and options that the command line's library fills in.
   */
  static double finalShare(Collection<JavaClass> types) {
    long all = types.stream().flatMap(StateRules::ownFields).count();
    long constant =
        types.stream().flatMap(StateRules::ownFields).filter(StateRules::isFinal).count();
    return all == 0 ? 1 : (double) constant / all;
  }

  private static Stream<JavaField> ownFields(JavaClass type) {
    return type.getFields().stream()
        .filter(f -> !f.getModifiers().contains(JavaModifier.STATIC))
        .filter(f -> !f.getModifiers().contains(JavaModifier.SYNTHETIC))
        .filter(
            f ->
                f.getAnnotations().stream()
                    .noneMatch(a -> a.getRawType().getPackageName().startsWith("picocli")));
  }

  private static boolean isFinal(JavaField field) {
    return field.getModifiers().contains(JavaModifier.FINAL);
  }

  private static final class BeAnArrayThatOtherPackagesSee extends ArchCondition<JavaField> {
    BeAnArrayThatOtherPackagesSee() {
      super("be an array that other packages see");
    }

    @Override
    public void check(JavaField field, ConditionEvents events) {
      if (field.getRawType().isArray()
          && (field.getModifiers().contains(JavaModifier.PUBLIC)
              || field.getModifiers().contains(JavaModifier.PROTECTED))) {
        events.add(SimpleConditionEvent.satisfied(field, field.getDescription()));
      }
    }
  }

  private static final class BeInANullMarkedPackage extends ArchCondition<JavaClass> {
    BeInANullMarkedPackage() {
      super("be in a package that is @NullMarked");
    }

    @Override
    public void check(JavaClass type, ConditionEvents events) {
      if (!type.getPackage().isAnnotatedWith(NullMarked.class)) {
        events.add(
            SimpleConditionEvent.violated(
                type, type.getName() + ": its package is not @NullMarked"));
      }
    }
  }
}
