package auricle.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;

/** Each package uses those before it in the list, and every class is in a package of the list. */
final class PackageOrder extends ArchCondition<JavaClass> {
  private final String root;
  private final List<String> order;

  PackageOrder(String root, List<String> order) {
    super("use only packages before its own");
    this.root = root;
    this.order = order;
  }

  ArchRule rule() {
    return classes().should(this);
  }

  @Override
  public void check(JavaClass type, ConditionEvents events) {
    int place = place(type);
    if (place < 0) {
      events.add(
          SimpleConditionEvent.violated(type, type.getName() + " is in no package of the order"));
    }
    for (Dependency d : type.getDirectDependenciesFromSelf()) {
      if (place(d.getTargetClass()) > place) {
        events.add(SimpleConditionEvent.violated(type, d.getDescription()));
      }
    }
  }

  /** Place of a class's package in the order; -1 if it has none. */
  private int place(JavaClass type) {
    String name = type.getPackageName();
    if (!name.startsWith(root + ".")) {
      return -1;
    }
    return order.indexOf(name.substring(root.length() + 1).split("\\.", 2)[0]);
  }
}
