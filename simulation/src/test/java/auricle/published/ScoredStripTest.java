package auricle.published;

import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.material.Tissue;
import auricle.plan.Scoring;
import auricle.surgery.PartialCut;
import auricle.testing.Check;
import org.junit.jupiter.api.Test;

/**
 * A strip of cartilage in bending, whole, scored and held by a mattress suture, by the shell that
 * ears are made of. Gruber 2005 measured septal strips 0.5 to 1.5 mm thick; how deep and how far
 * apart the cuts were, the lengths of strip and suture and the way of loading are not in the
 * abstract. Here: 1 mm, three-point bending, the suture 8 mm wide as the same source advises.
 */
class ScoredStripTest {
  private static final StripBending STRIP = new StripBending();
  private static final double WHOLE = STRIP.scored(0);

  private static double change(double deflection) {
    return WHOLE / deflection - 1;
  }

  private static void holds(String key, double value) {
    PublishedRow row = PublishedRow.of(key);
    assertTrue(row.holds(value), row.words(value));
  }

  @Test
  void theWholeStripBendsAsABeam() {
    Check.within(0.02, WHOLE, StripBending.beam(), "P L³ / 48 E I, closed form");
  }

  @Test
  void usualScoringSoftensTheStripAsScoringUntilFlatDoes() {
    Scoring usual = Scoring.usual("cuts");
    PartialCut cut = new PartialCut(usual.depth_fraction(), 1, usual.spacing_mm());
    holds("scored_modulus_change", change(STRIP.scored(cut.compliance())));
  }

  @Test
  void cutsToHalfTheThicknessThreeThicknessesApartDoSoToo() {
    holds("scored_modulus_change", change(STRIP.scored(new PartialCut(0.5, 1, 3).compliance())));
  }

  @Test
  void aMattressSutureStiffensTheStrip() {
    double thread = Tissue.standard().thread("polyester_4_0").orElseThrow().axialStiffness_n();
    // bites 4 mm apart across the strip
    holds("sutured_modulus_change", change(STRIP.sutured(8, 4, thread)));
  }
}
