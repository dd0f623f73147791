package auricle.architecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;

/** Satisfied for each dependency of a class on an energy term that is not its own. */
final class UseAnotherTerm extends ArchCondition<JavaClass> {
  private final DescribedPredicate<JavaClass> term;

  UseAnotherTerm(DescribedPredicate<JavaClass> term) {
    super("use another energy term");
    this.term = term;
  }

  @Override
  public void check(JavaClass type, ConditionEvents events) {
    for (Dependency d : type.getDirectDependenciesFromSelf()) {
      JavaClass target = d.getTargetClass();
      if (term.test(target) && !outermost(target).equals(outermost(type))) {
        events.add(SimpleConditionEvent.satisfied(type, d.getDescription()));
      }
    }
  }

  static JavaClass outermost(JavaClass type) {
    JavaClass outer = type;
    while (outer.getEnclosingClass().isPresent()) {
      outer = outer.getEnclosingClass().get();
    }
    return outer;
  }
}
