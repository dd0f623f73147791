package auricle.anatomy;

import java.util.Locale;

/** Columns of the plan form, by which profiles change around the bowl. */
enum Form {
  FOOT_U,
  FOOT_V,
  OUT_DEG,
  IN_DEG,
  REACH_MM,
  CREST_MM,
  DEPTH_MM,
  LEAN_DEG,
  FOLD_DEG,
  ROUND,
  FOSSA_MM,
  RISE_DEG,
  EDGE_DEG,
  FLAT_MM,
  SAG_DEG,
  HELIX_MM,
  CURL_DEG,
  UPPER,
  MIDDLE,
  LOWER,
  LOBULE;

  String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Growth over one whole turn: headings come back with 360 deg more. */
  double growth() {
    return this == OUT_DEG || this == IN_DEG ? 360 : 0;
  }
}
