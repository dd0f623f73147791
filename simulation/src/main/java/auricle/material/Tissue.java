package auricle.material;

import auricle.diagnostics.BadInputException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * The tissue of one ear: every number that the model reads, found from the tables, the age, a
 * measured thickness and what was given for this ear. Immutable.
 *
 * <p>Regions are named as anatomy names them ({@code antihelix}). Moduli are those at once, before
 * anything relaxes; {@link #relaxation} says what is lost of them.
 *
 * <p>Thickness of cartilage: as given for this ear; else the region's row times measured thickness
 * over {@value #THICKNESS} if one was measured, else times the factor of the age (Khan and Parab
 * 2015, tragus).
 */
public final class Tissue {
  /** Slot of the thickness that a measured one is compared with. */
  static final String THICKNESS = "cartilage.thickness_mm";

  private static final String SCALE = "section.stiffness_scale";

  private final TissueKeys keys;
  private final TissueValues values;

  private Tissue(TissueKeys keys, TissueValues values) {
    this.keys = keys;
    this.values = values;
  }

  /**
   * The tissue of an ear.
   *
   * @throws BadInputException with every choice that cannot be met; places are JSON pointers below
   *     the ear's tissue
   */
  public static Tissue of(MaterialTables tables, TissueKeys keys) throws BadInputException {
    return new Tissue(keys, new TissueResolver(tables, keys).values());
  }

  /** Standard tissue of an adult, from the tables that come with the program. */
  public static Tissue standard() {
    try {
      return of(MaterialTables.shipped(), TissueKeys.standard(35));
    } catch (BadInputException e) {
      throw new IllegalStateException(e.getMessage(), e);
    }
  }

  /** Whether a region has cartilage. */
  public boolean hasCartilage(String region) {
    return !values.has("soft." + region + ".thickness_mm");
  }

  /** The layers of a region, whole. */
  public TissueLayers layers(String region) {
    double poisson = values.get("cartilage.poisson");
    TissueLayer none = TissueLayer.NONE;
    if (!hasCartilage(region)) {
      String soft = "soft." + region;
      return new TissueLayers(none, none, layer(soft), none, none, poisson);
    }
    TissueLayer perichondrium = layer("perichondrium");
    TissueLayer core = new TissueLayer(scale() * modulus_mpa(region), cartilage_mm(region));
    return new TissueLayers(
        layer("skin.posterior"),
        perichondrium,
        core,
        perichondrium,
        layer("skin.anterior"),
        poisson);
  }

  private TissueLayer layer(String name) {
    return new TissueLayer(
        scale() * values.get(name + ".modulus_mpa"), values.get(name + ".thickness_mm"));
  }

  private double scale() {
    return values.get(SCALE);
  }

  private double modulus_mpa(String region) {
    UsedRow used = values.usedInRegion("cartilage.", region, "modulus_mpa");
    boolean child = keys.age_years() < 15 && used.origin() != UsedRow.Origin.OVERRIDE;
    return used.value() * (child ? values.get("age.stiffness_factor") : 1);
  }

  /** Stiffness of a region with its posterior skin adherent, about its neutral surface. */
  public Section section(String region) {
    return layers(region).section();
  }

  /** Stiffness of a region with its posterior skin lifted off, about its neutral surface. */
  public Section underminedSection(String region) {
    return layers(region).undermined().section();
  }

  /** Thickness of the sheet that is cut and bitten into, cartilage with perichondrium, mm. */
  public double thickness_mm(String region) {
    return layers(region).sheet_mm();
  }

  /** Thickness of the cartilage alone, mm. */
  public double cartilage_mm(String region) {
    UsedRow used = values.usedInRegion("cartilage.", region, "thickness_mm");
    boolean given = used.origin() == UsedRow.Origin.OVERRIDE;
    return used.value() * (given ? 1 : thicknessScale());
  }

  private double thicknessScale() {
    double standard = values.used(THICKNESS).row().value();
    OptionalDouble measured = keys.cartilageThickness_mm();
    return measured.isPresent() ? measured.getAsDouble() / standard : ageFactor();
  }

  private double ageFactor() {
    double age = keys.age_years();
    return values.get(
        age < 15
            ? "age.thickness_factor_under_15"
            : age <= 30 ? "age.thickness_factor_15_to_30" : "age.thickness_factor_over_30");
  }

  /** Poisson's ratio of all layers. */
  public double poisson() {
    return values.get("cartilage.poisson");
  }

  /** Relaxation of cartilage; fractions of the instant stiffness. */
  public Prony relaxation() {
    return new Prony(
        values.names("relaxation.{term}.fraction").stream()
            .filter(t -> values.has("relaxation." + t + ".time_s"))
            .filter(t -> values.get("relaxation." + t + ".fraction") > 0)
            .map(t -> "relaxation." + t)
            .map(t -> new Prony.Term(values.get(t + ".fraction"), values.get(t + ".time_s")))
            .toList());
  }

  /** Interlocked stress of cartilage. */
  public SurfaceStress surfaceStress() {
    return new SurfaceStress(
        values.get("surface_stress.layer_share"), values.get("surface_stress.shortening"));
  }

  /**
   * Tissue around a bite.
   *
   * @param size of the thread, such as {@code 4_0}; sizes without a row of their own take the
   *     common one
   */
  public BiteTissue bite(String size) {
    return new BiteTissue(
        values.inRegion("bite.", size, "tear_through_n"),
        values.get("bite.migration_mm_per_day_n"),
        values.get("bite.knot_slack_mm"),
        values.get("bite.knot_seating_days"),
        values.get("bite.working_share"));
  }

  /** How the ear heals. */
  public HealingTissue healing() {
    return new HealingTissue(
        values.get("healing.adhering_days"),
        values.get("healing.scar_modulus_mpa"),
        values.get("healing.scar_thickness_mm"),
        values.get("healing.skin_strip_tension_n_per_mm"),
        values.get("healing.skin_strip_fraction"),
        values.get("healing.skin_strip_days"),
        values.get("healing.remodelling_days"));
  }

  /** A sutured seam of cartilage. */
  public SeamTissue seam() {
    return new SeamTissue(values.get("seam.bending_share"), values.get("seam.width_mm"));
  }

  /** What the ear stands on and leans against. */
  public HeadTissue head() {
    return new HeadTissue(
        values.get("attachment.normal_mpa_per_mm"),
        values.get("attachment.tangential_mpa_per_mm"),
        values.get("contact.gap_mm"),
        values.get("contact.pressure_mpa"));
  }

  /** Force over displacement at the rim in vivo, N/mm: what a press at the bedside is held to. */
  public UsedRow rimStiffness() {
    return values.used(PressFit.HELD_TO);
  }

  /** A thread by its key, such as {@code polyester_4_0}. */
  public Optional<ThreadRow> thread(String key) {
    return new Threads(values).of(key);
  }

  /** Keys of all threads. */
  public List<String> threadKeys() {
    return new Threads(values).keys();
  }

  /**
   * Every row of the tables that this tissue rests on, with the number used; those of threads are
   * in their {@link ThreadRow}.
   */
  public List<UsedRow> rows() {
    return values.all().stream()
        .filter(u -> !u.row().quantity().table().equals("threads"))
        .filter(u -> !u.row().quantity().usedBy().startsWith("nothing"))
        .toList();
  }

  /** The same tissue with all layers so much stiffer, on top of the scale it has. */
  public Tissue scaled(double factor) {
    return new Tissue(keys, values.with(SCALE, factor * scale()));
  }

  /**
   * Tissue drawn from the spread of the rows. Rows of one kind spread together: where the ear is
   * thick in one region, it is thick in all. Numbers given for this ear, and a measured thickness,
   * stay.
   *
   * @param random gives the same tissue for the same state
   */
  public Tissue sample(UniformRandomProvider random) {
    return new Tissue(keys, TissueSample.of(values, random));
  }
}
