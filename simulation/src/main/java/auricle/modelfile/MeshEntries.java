package auricle.modelfile;

import auricle.analysis.MeshSource;
import java.util.List;
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
      return new MeshSource.File(entry.at() + "/file", resolve.apply(entry.text("file")));
    }
    return new MeshSource.Generated(
        entry.only().at(), shape(kind, entry.only()), grid(entry.only()));
  }

  private static MeshSource.Grid grid(Entry e) {
    MeshSource.Pattern pattern =
        switch (e.text("pattern", "alternating")) {
          case "one_way" -> MeshSource.Pattern.ONE_WAY;
          case "crossed" -> MeshSource.Pattern.CROSSED;
          default -> MeshSource.Pattern.ALTERNATING;
        };
    List<Double> cells = e.numbers("divisions");
    return new MeshSource.Grid(
        cells.get(0).intValue(),
        cells.get(1).intValue(),
        pattern,
        e.number("jitter", 0),
        e.integer("seed", 1));
  }

  private static MeshSource.Shape shape(String kind, Entry e) {
    return switch (kind) {
      case "strip" ->
          new MeshSource.Strip(
              e.number("length_mm"), e.number("width_mm"), e.number("twist_deg", 0));
      case "plate" ->
          new MeshSource.Plate(
              e.number("length_mm"), e.number("width_mm"), e.number("angle_deg", 90));
      case "quadrilateral" ->
          new MeshSource.Quadrilateral(e.items("corners_mm").stream().map(Entry::triple).toList());
      case "cylinder" ->
          new MeshSource.Cylinder(e.number("radius_mm"), e.number("length_mm"), turn(e));
      case "hemisphere" ->
          new MeshSource.Sphere(e.number("radius_mm"), e.number("hole_deg", 0), 90, turn(e));
      case "sphere" ->
          new MeshSource.Sphere(
              e.number("radius_mm"), e.number("polar_from_deg"), e.number("polar_to_deg"), turn(e));
      case "annulus" ->
          new MeshSource.Annulus(e.number("inner_radius_mm"), e.number("outer_radius_mm"), turn(e));
      case "disc" -> new MeshSource.Disc(e.number("radius_mm"));
      case "cone" ->
          new MeshSource.Cone(
              e.number("lower_radius_mm"),
              e.number("upper_radius_mm"),
              e.number("height_mm"),
              turn(e));
      case "profile" ->
          new MeshSource.Profile(
              e.items("pieces").stream().map(MeshEntries::piece).toList(), e.number("width_mm"));
      default -> throw new IllegalStateException("no reader for " + e.at());
    };
  }

  private static MeshSource.Turn turn(Entry e) {
    return new MeshSource.Turn(e.number("from_deg", 0), e.number("to_deg", 360), e.flag("slit"));
  }

  private static MeshSource.Piece piece(Entry e) {
    if (e.has("line_mm")) {
      return new MeshSource.Piece(e.number("line_mm"), 0);
    }
    double turn = e.only().number("angle_deg");
    double length = e.only().number("radius_mm") * Math.abs(Math.toRadians(turn));
    return new MeshSource.Piece(length, turn);
  }
}
