package auricle.report;

import auricle.material.MaterialRow;
import auricle.material.MaterialTables;
import auricle.material.Spread;
import java.util.List;

/** Rows of the material tables as JSON. */
public final class MaterialJson {
  private MaterialJson() {}

  /** The tables named, row by row. */
  public static String write(MaterialTables tables, List<String> names) {
    return rows(tables, names.stream().flatMap(n -> tables.rows(n).stream()).toList());
  }

  /** A row and all others of the same slot. */
  public static String write(MaterialTables tables, MaterialRow row) {
    return rows(tables, tables.variants(row.slot()));
  }

  private static String rows(MaterialTables tables, List<MaterialRow> rows) {
    return JsonText.of(
        json -> {
          json.text("format", "auricle-materials/1");
          json.text("use", UseNotice.TEXT);
          json.objects("rows", rows, row -> row(json, tables, row));
        });
  }

  private static void row(JsonText json, MaterialTables tables, MaterialRow row) {
    Spread spread = row.spread();
    json.text("key", row.key());
    json.text("table", row.quantity().table());
    json.number("value", row.value());
    json.text("unit", row.quantity().unit());
    json.text("distribution", spread.distribution().key());
    json.number("sd", spread.deviation());
    json.number("low", spread.low());
    json.number("high", spread.high());
    json.number("percentile_10", row.quantile(0.1));
    json.number("percentile_90", row.quantile(0.9));
    json.text("n", row.count());
    json.text("method", row.method());
    json.text("source", row.source());
    json.text("locator", row.locator());
    json.text("confidence", row.confidence().key());
    json.text("note", row.note());
    json.text("meaning", row.quantity().meaning());
    json.text("used_by", row.quantity().usedBy());
    json.truth("in_place_of_shipped", !tables.shadowed(row.key()).isEmpty());
  }
}
