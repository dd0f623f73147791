package auricle.material;

import auricle.material.UsedRow.Origin;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** The one number of every slot, for one ear. */
final class TissueValues {
  private final SortedMap<String, UsedRow> bySlot;

  TissueValues(Map<String, UsedRow> bySlot) {
    this.bySlot = new TreeMap<>(bySlot);
  }

  /** Whether there is a row of a slot. */
  boolean has(String slot) {
    return bySlot.containsKey(slot);
  }

  /**
   * The number of a slot, in its unit.
   *
   * @throws IllegalArgumentException if there is no such row
   */
  double get(String slot) {
    return used(slot).value();
  }

  /** The row of a slot with the number used. */
  UsedRow used(String slot) {
    UsedRow used = bySlot.get(slot);
    if (used == null) {
      throw new IllegalArgumentException("no material row " + slot);
    }
    return used;
  }

  /** The number of a region: its own, or that of the whole ear. */
  double inRegion(String before, String region, String after) {
    return usedInRegion(before, region, after).value();
  }

  /** The row of a region: its own, or that of the whole ear. */
  UsedRow usedInRegion(String before, String region, String after) {
    String own = before + region + "." + after;
    return used(has(own) ? own : before + after);
  }

  /** All rows in the order of their slots. */
  List<UsedRow> all() {
    return List.copyOf(bySlot.values());
  }

  /** Names in the place in braces of a quantity, in order. */
  List<String> names(String quantityKey) {
    return bySlot.values().stream()
        .map(UsedRow::row)
        .filter(r -> r.quantity().key().equals(quantityKey))
        .map(MaterialRow::name)
        .toList();
  }

  /** The same with every number of a table that spreads replaced; given numbers stay. */
  TissueValues drawn(ToDoubleFunction<MaterialRow> draw) {
    SortedMap<String, UsedRow> drawn = new TreeMap<>(bySlot);
    drawn.replaceAll(
        (slot, used) ->
            used.origin() == Origin.TABLE && used.row().spread().varies()
                ? new UsedRow(used.row(), draw.applyAsDouble(used.row()), Origin.SAMPLE)
                : used);
    return new TissueValues(drawn);
  }

  /** The same with another number in one slot. */
  TissueValues with(String slot, double value) {
    SortedMap<String, UsedRow> changed = new TreeMap<>(bySlot);
    changed.put(slot, new UsedRow(used(slot).row(), value, Origin.OVERRIDE));
    return new TissueValues(changed);
  }
}
