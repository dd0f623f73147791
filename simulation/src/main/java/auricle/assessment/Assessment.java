package auricle.assessment;

import java.util.ArrayList;
import java.util.List;

/**
 * What there is to say about one ear.
 *
 * @param faults what is at fault before the plan, from the upper third downwards
 * @param balance each measurement with a target, level by level
 * @param cautions what to beware of after the plan
 */
public record Assessment(List<Fault> faults, List<Balance> balance, List<Caution> cautions) {
  /** Keeps copies. */
  public Assessment {
    faults = List.copyOf(faults);
    balance = List.copyOf(balance);
    cautions = List.copyOf(cautions);
  }

  /** The same with what the two ears against each other give to beware of. */
  public Assessment with(List<SideDifference> sides) {
    List<Caution> all = new ArrayList<>(cautions);
    sides.forEach(side -> side.caution().ifPresent(all::add));
    return new Assessment(faults, balance, all);
  }

  /** Whether every measurement with a target is where it is wanted. */
  public boolean balanced() {
    return balance.stream().allMatch(Balance::met);
  }

  /** Whether a caution of a kind was given. */
  public boolean warnsOf(CautionKind kind) {
    return cautions.stream().anyMatch(caution -> caution.kind() == kind);
  }
}
