package auricle.modelfile;

import auricle.analysis.MeshSource;
import auricle.analysis.Triple;
import auricle.mesh.Around;
import auricle.mesh.GridOptions;
import auricle.mesh.ParametricSurface;
import auricle.mesh.Profile;
import auricle.mesh.Surfaces;
import auricle.yamlfile.Entry;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** Mesh files and generators of a model file. */
final class MeshEntries {
  private MeshEntries() {}

  /**
   * @param resolve makes a path of the model file one that can be opened
   */
  static MeshSource source(Entry entry, UnaryOperator<String> resolve) {
    String kind = entry.onlyKey();
    if (kind.equals("file")) {
      return file(entry.get("file"), resolve);
    }
    Entry shape = entry.only();
    List<Double> grading = shape.has("grading") ? shape.numbers("grading") : List.of(1.0, 1.0);
    return new MeshSource.Generated(
        shape.at(), surface(kind, shape), grading.get(0), grading.get(1), grid(shape));
  }

  private static MeshSource file(Entry e, UnaryOperator<String> resolve) {
    String path = e.node().isString() ? e.node().asString() : e.text("path");
    return new MeshSource.File(
        e.at(), resolve.apply(path), e.number("scale", 1), e.integer("refinements", 0));
  }

  private static GridOptions grid(Entry e) {
    String pattern = e.text("pattern", "alternating").toUpperCase(Locale.ROOT);
    List<Double> cells = e.numbers("divisions");
    return new GridOptions(
        cells.get(0).intValue(),
        cells.get(1).intValue(),
        GridOptions.Pattern.valueOf(pattern),
        e.number("jitter", 0),
        e.integer("seed", 1));
  }

  private static ParametricSurface surface(String kind, Entry e) {
    return switch (kind) {
      case "strip" ->
          Surfaces.twistedStrip(
              e.number("length_mm"), e.number("width_mm"), angle(e, "twist_deg", 0));
      case "plate" ->
          Surfaces.parallelogram(
              e.number("length_mm"), e.number("width_mm"), angle(e, "angle_deg", 90));
      case "quadrilateral" -> Surfaces.bilinear(corners(e));
      case "cylinder" -> Surfaces.cylinder(e.number("radius_mm"), e.number("length_mm"), around(e));
      case "hemisphere" ->
          Surfaces.sphere(e.number("radius_mm"), Math.PI / 2, angle(e, "hole_deg", 0), around(e));
      case "sphere" ->
          Surfaces.sphere(
              e.number("radius_mm"),
              angle(e, "polar_to_deg", 90),
              angle(e, "polar_from_deg", 0),
              around(e));
      case "annulus" ->
          Surfaces.annulus(e.number("inner_radius_mm"), e.number("outer_radius_mm"), around(e));
      case "disc" -> Surfaces.annulus(0, e.number("radius_mm"), around(e));
      case "cone" ->
          Surfaces.cone(
              e.number("lower_radius_mm"),
              e.number("upper_radius_mm"),
              e.number("height_mm"),
              around(e));
      case "profile" ->
          new Profile(
              e.items("pieces").stream().map(MeshEntries::piece).toList(), e.number("width_mm"));
      default -> throw new IllegalStateException("no reader for " + e.at());
    };
  }

  private static Around around(Entry e) {
    return new Around(angle(e, "from_deg", 0), angle(e, "to_deg", 360), e.flag("slit"));
  }

  private static double angle(Entry e, String key, double otherwise_deg) {
    return Math.toRadians(e.number(key, otherwise_deg));
  }

  private static double[] corners(Entry e) {
    return e.items("corners_mm").stream()
        .map(Triples::triple)
        .map(Triple::array)
        .flatMapToDouble(java.util.Arrays::stream)
        .toArray();
  }

  private static Profile.Piece piece(Entry e) {
    if (e.has("line_mm")) {
      return new Profile.Piece(e.number("line_mm"), 0);
    }
    double turn = angle(e.only(), "angle_deg", 0);
    return new Profile.Piece(e.only().number("radius_mm") * Math.abs(turn), turn);
  }
}
