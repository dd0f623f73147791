package auricle.material;

import java.util.List;

/**
 * A thread: a material in a size.
 *
 * @param key material and size, such as {@code polyester_4_0}
 * @param material generic name
 * @param size of the standard, with _ for the hyphen
 * @param diameter_mm mm
 * @param modulus_mpa Young's modulus, MPa
 * @param knotPull_n least knot-pull strength of the standard, N
 * @param strengthLeft share of the strength left by day
 * @param rows what all this rests on
 */
public record ThreadRow(
    String key,
    String material,
    String size,
    double diameter_mm,
    double modulus_mpa,
    double knotPull_n,
    StrengthLeft strengthLeft,
    List<UsedRow> rows) {

  /** Keeps a copy of the rows. */
  public ThreadRow {
    rows = List.copyOf(rows);
  }

  /** Axial stiffness EA = E π d²/4, N a unit of strain. */
  public double axialStiffness_n() {
    return modulus_mpa * Math.PI * diameter_mm * diameter_mm / 4;
  }

  /** Knot-pull strength that is left after so many days, N. */
  public double knotPull_n(double days) {
    return knotPull_n * strengthLeft.at(days);
  }
}
