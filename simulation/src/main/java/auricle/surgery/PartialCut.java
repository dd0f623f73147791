package auricle.surgery;

/**
 * A cut into a sheet, from one face to a part of its thickness.
 *
 * <p><b>Compliance.</b> An edge crack of depth a in a strip of depth b under bending lets its two
 * sides turn by θ = (4σ/E′) V(x), σ = 6M/b² a unit of width, x = a/b (Tada, Paris and Irwin, The
 * Stress Analysis of Cracks Handbook, edge-cracked strip in bending; formula recalled, and checked
 * against the energy integral of the stress intensity). Smeared over the spacing s of the cuts, the
 * bending stiffness across them falls to D / (1 + 2 V b/s).
 *
 * <p><b>Turn.</b> The faces of cartilage are in tension and its core in compression, in balance: a
 * sheet whose skins of thickness r b want to shorten by e. Where one face is taken away to the
 * depth x b, what is left curves away from the cut by
 *
 * <pre>
 *   κ₀ b / e = 6 [r (1 − x − r) − ⟨r − x⟩ (1 − r)] / (1 − x)³
 * </pre>
 *
 * <p>(at x = r the three-layer sheet with one skin cut). A narrow cut does so over the length ℓ = 2
 * V b / ((1 − x)⁻³ − 1), on which a sheet thinned to (1 − x) b would be as compliant as the cut is:
 * about four depths for a shallow cut, one for half the thickness. Smeared, the rest curvature
 * turns by κ₀ ℓ/s, and never by more than κ₀.
 *
 * @param depth x = a/b, 0 ≤ x ≤ {@value #DEEPEST}
 * @param thickness_mm b
 * @param spacing_mm s
 */
public record PartialCut(double depth, double thickness_mm, double spacing_mm) {
  /** Deepest cut that the handbook's formula was checked for. */
  public static final double DEEPEST = 0.7;

  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public PartialCut {
    if (!(depth >= 0 && depth <= DEEPEST && thickness_mm > 0 && spacing_mm > 0)) {
      throw new IllegalArgumentException(
          "a cut of depth %s in %s mm every %s mm; expected a depth of 0 … %s and positive lengths"
              .formatted(depth, thickness_mm, spacing_mm, DEEPEST));
    }
  }

  /** V(x), no unit. */
  double rotation() {
    double x = depth;
    double polynomial = 5.93 + x * (-19.69 + x * (37.14 + x * (-35.84 + x * 13.12)));
    double ratio = x / (1 - x);
    return ratio * ratio * polynomial;
  }

  /** c = 2 V b/s: the compliance that the cuts add, as a share of that of the sheet. */
  public double compliance() {
    return 2 * rotation() * thickness_mm / spacing_mm;
  }

  /** Share of the curvature that the cuts take, c / (1 + c). */
  double shareOfCuts() {
    return compliance() / (1 + compliance());
  }

  /**
   * Curvature away from the cut that the release of the faces' tension leaves, smeared, 1/mm.
   *
   * @param skinShare r, thickness of a tense face layer as a share of the whole, below ½
   * @param shortening e, the strain by which it would shorten if it were free
   */
  public double turn(double skinShare, double shortening) {
    if (depth == 0) {
      return 0;
    }
    double left = 1 - depth;
    double length = 2 * rotation() * thickness_mm / (1 / (left * left * left) - 1);
    return fullTurn(skinShare, shortening) * Math.min(1, length / spacing_mm);
  }

  /** κ₀, 1/mm: where the face is taken away throughout. */
  public double fullTurn(double skinShare, double shortening) {
    double r = skinShare;
    double left = 1 - depth;
    double intact = Math.max(0, r - depth);
    double moment = r * (left - r) - intact * (1 - r);
    return 6 * moment / (left * left * left) * shortening / thickness_mm;
  }

  /**
   * Change of curvature at which the cuts are shut, towards their side, 1/mm: the mouths of width
   * w, a depth a from their roots, close at an angle w/a each, and the sheet between them bends
   * along.
   *
   * @param kerf_mm w, width of a cut at its mouth
   */
  public double shutAt(double kerf_mm) {
    double angle = kerf_mm / (depth * thickness_mm);
    return angle / spacing_mm / shareOfCuts();
  }
}
