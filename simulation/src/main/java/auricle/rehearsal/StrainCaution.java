package auricle.rehearsal;

import auricle.assessment.Caution;
import auricle.assessment.CautionKind;
import auricle.assessment.Limit;
import auricle.assessment.Limits;
import auricle.material.UsedRow;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The caution that goes with cartilage that is strained near to where it tears. */
final class StrainCaution {
  private static final String TEARS = "cartilage.failure_strain";

  private StrainCaution() {}

  /**
   * @param rows that the ear's tissue rests on; the strain at which cartilage tears among them
   */
  static Optional<Caution> of(Extreme strain, List<UsedRow> rows) {
    return rows.stream()
        .filter(used -> used.row().slot().equals(TEARS))
        .findFirst()
        .flatMap(used -> of(strain, used));
  }

  private static Optional<Caution> of(Extreme strain, UsedRow tears) {
    Limit share = Limits.shipped().of("tear_strain_share");
    double most = share.value() * tears.value();
    if (strain.value() <= most) {
      return Optional.empty();
    }
    String words =
        String.format(
            Locale.ROOT,
            "The cartilage of the %s, is strained by %.0f %%, %s the %.0f %% at which cartilage tears",
            strain.words(),
            100 * strain.value(),
            strain.value() < tears.value() ? "near" : "more than",
            100 * tears.value());
    String source = share.source() + "; it tears: " + tears.row().source();
    Limit limit = new Limit(TEARS, most, "", source, tears.row().confidence().key());
    return Optional.of(
        new Caution(
            CautionKind.STRAIN_NEAR_TEARING, words, strain.value(), limit, strain.level().key()));
  }
}
