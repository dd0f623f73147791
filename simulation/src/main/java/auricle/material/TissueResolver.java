package auricle.material;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Findings;
import auricle.diagnostics.NearestName;
import auricle.material.UsedRow.Origin;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/** Finds the one number of every slot for an ear's choices. */
final class TissueResolver {
  private final MaterialTables tables;
  private final TissueKeys keys;
  private final Findings findings = new Findings();
  private final Map<String, UsedRow> bySlot = new TreeMap<>();

  TissueResolver(MaterialTables tables, TissueKeys keys) {
    this.tables = tables;
    this.keys = keys;
  }

  /**
   * The numbers.
   *
   * @throws BadInputException with every choice that cannot be met; places are JSON pointers below
   *     the tissue
   */
  TissueValues values() throws BadInputException {
    for (MaterialRow row : tables.rows()) {
      if (row.variant().isEmpty()) {
        bySlot.put(row.slot(), new UsedRow(row, row.value(), Origin.TABLE));
      }
    }
    inOrder(keys.rows()).forEach(this::choose);
    inOrder(keys.overrides()).forEach(this::override);
    keys.cartilageThickness_mm().ifPresent(this::measured);
    if (!(keys.age_years() >= 0 && keys.age_years() <= 130)) {
      findings.error("/age_years", "" + keys.age_years(), "an age from 0 to 130 years", "");
    }
    findings.stopIfErrors();
    return new TissueValues(bySlot);
  }

  /** Slots of the whole ear first, so that those of a region go before them. */
  private List<String> inOrder(Map<String, ?> chosen) {
    return chosen.keySet().stream().sorted((a, b) -> Integer.compare(parts(a), parts(b))).toList();
  }

  private static int parts(String slot) {
    return slot.split("\\.", -1).length;
  }

  private void choose(String slot) {
    String named = keys.rows().getOrDefault(slot, "");
    String variant = named.substring(named.indexOf('@') + 1);
    Optional<MaterialRow> row = tables.row(variant.isEmpty() ? slot : slot + "@" + variant);
    if (named.equals(slot) || named.equals("standard")) {
      row = tables.row(slot);
    }
    if (row.isEmpty()) {
      List<String> known =
          tables.variants(slot).stream()
              .map(MaterialRow::variant)
              .filter(v -> !v.isEmpty())
              .toList();
      findings.error(
          "/rows/" + slot,
          "'" + named + "'",
          known.isEmpty() ? "a slot that has variants" : "one of " + String.join(", ", known),
          tables.variants(slot).isEmpty()
              ? tables.quantities().hint(slot)
              : NearestName.hint(variant, known));
      return;
    }
    bySlot.put(slot, new UsedRow(row.get(), row.get().value(), Origin.TABLE));
    regionsOf(slot).forEach(region -> follow(region, variantOf(region, variant)));
  }

  private Optional<MaterialRow> variantOf(String slot, String variant) {
    return tables.row(slot + "@" + variant);
  }

  private void follow(String region, Optional<MaterialRow> row) {
    bySlot.remove(region);
    row.ifPresent(r -> bySlot.put(region, new UsedRow(r, r.value(), Origin.TABLE)));
  }

  /** Slots of regions under a slot of the whole ear that have rows. */
  private List<String> regionsOf(String slot) {
    return tables.quantities().regionSlots(slot).stream()
        .filter(s -> !tables.variants(s).isEmpty())
        .toList();
  }

  private void override(String slot) {
    double value = keys.overrides().getOrDefault(slot, Double.NaN);
    Optional<Quantity> quantity = tables.quantities().of(slot);
    String where = "/overrides/" + slot;
    if (quantity.isEmpty()) {
      findings.error(
          where, "'" + slot + "'", "a key of the tables", tables.quantities().hint(slot));
      return;
    }
    Quantity q = quantity.get();
    if (!q.allows(value)) {
      findings.error(
          where,
          value + " " + q.unit(),
          "a number from %s to %s %s".formatted(q.lowest(), q.highest(), q.unit()),
          "Is it in another unit?");
      return;
    }
    regionsOf(slot).forEach(bySlot::remove);
    bySlot.put(slot, new UsedRow(given(slot, q), value, Origin.OVERRIDE));
  }

  /** The row in whose place a number is given, or one that says that there is none. */
  private MaterialRow given(String slot, Quantity q) {
    UsedRow used = bySlot.get(slot);
    if (used != null) {
      return used.row();
    }
    return new MaterialRow(
        slot,
        q,
        Double.NaN,
        Spread.NONE,
        "",
        "",
        "given for this ear",
        "none",
        Confidence.ASSUMED,
        "",
        "");
  }

  /** A measured thickness stands for the whole ear, unless a number was given in its place. */
  private void measured(double thickness_mm) {
    UsedRow used = Objects.requireNonNull(bySlot.get(Tissue.THICKNESS));
    Quantity q = used.row().quantity();
    if (used.origin() != Origin.OVERRIDE) {
      bySlot.put(Tissue.THICKNESS, new UsedRow(used.row(), thickness_mm, Origin.OVERRIDE));
    }
    if (!q.allows(thickness_mm)) {
      findings.error(
          "/cartilage_thickness_mm",
          thickness_mm + " mm",
          "a number from %s to %s mm".formatted(q.lowest(), q.highest()),
          "It is the cartilage alone, without skin.");
    }
  }
}
