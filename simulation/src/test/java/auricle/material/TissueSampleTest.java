package auricle.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.testing.Check;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

class TissueSampleTest {
  private static final int DRAWS = 4000;
  private static final double SCALE =
      MaterialTables.shipped().row("section.stiffness_scale").orElseThrow().value();

  private final Tissue tissue = Tissue.standard();

  private static UniformRandomProvider random() {
    return RandomSource.XO_RO_SHI_RO_128_PP.create(20261125L);
  }

  private SummaryStatistics drawn(ToDoubleFunction<Tissue> number) {
    UniformRandomProvider random = random();
    SummaryStatistics statistics = new SummaryStatistics();
    for (int i = 0; i < DRAWS; i++) {
      statistics.addValue(number.applyAsDouble(tissue.sample(random)));
    }
    return statistics;
  }

  private static MaterialRow row(String key) {
    return MaterialTables.shipped().row(key).orElseThrow();
  }

  @Test
  void aUniformRowHasTheMomentsOfItsRange() {
    Spread range = row("cartilage.poisson").spread();
    SummaryStatistics s = drawn(Tissue::poisson);
    double width = range.high() - range.low();
    String source = "moments of the uniform distribution";
    Check.close(s.getMean(), (range.low() + range.high()) / 2, 0.004, source);
    Check.within(0.03, s.getStandardDeviation(), width / Math.sqrt(12), source);
    assertTrue(s.getMin() >= range.low() && s.getMax() <= range.high());
  }

  @Test
  void aTriangularRowHasTheMomentsOfItsThreeNumbers() {
    MaterialRow row = row("cartilage.modulus_mpa");
    double a = row.spread().low();
    double b = row.spread().high();
    double c = row.value();
    SummaryStatistics s = drawn(t -> t.layers("helix").core().modulus_mpa() / SCALE);
    String source = "moments of the triangular distribution";
    Check.within(0.01, s.getMean(), (a + b + c) / 3, source);
    double variance = (a * a + b * b + c * c - a * b - a * c - b * c) / 18;
    Check.within(0.03, s.getStandardDeviation(), Math.sqrt(variance), source);
  }

  /** Mean and variance of a normal distribution cut off at both ends, in closed form. */
  @Test
  void aNormalRowIsCutOffAtItsEnds() {
    MaterialRow row = row("cartilage.thickness_mm");
    Spread spread = row.spread();
    NormalDistribution unit = new NormalDistribution();
    double a = (spread.low() - row.value()) / spread.deviation();
    double b = (spread.high() - row.value()) / spread.deviation();
    double z = unit.cumulativeProbability(b) - unit.cumulativeProbability(a);
    double shift = (unit.density(a) - unit.density(b)) / z;
    double variance = 1 + (a * unit.density(a) - b * unit.density(b)) / z - shift * shift;
    SummaryStatistics s = drawn(t -> t.cartilage_mm("floor"));
    String source = "moments of the truncated normal distribution";
    Check.within(0.01, s.getMean(), row.value() + shift * spread.deviation(), source);
    Check.within(0.03, s.getStandardDeviation(), spread.deviation() * Math.sqrt(variance), source);
    assertTrue(s.getMin() >= spread.low() && s.getMax() <= spread.high());
  }

  @Test
  void aLogNormalSpreadHasItsMeanAndDeviation() {
    Spread spread = new Spread(Distribution.LOGNORMAL, 0.5, Double.NaN, Double.NaN);
    UniformRandomProvider random = random();
    SummaryStatistics s = new SummaryStatistics();
    for (int i = 0; i < 40_000; i++) {
      s.addValue(spread.quantile(2, random.nextDouble(), 0, Double.MAX_VALUE));
    }
    Check.within(0.01, s.getMean(), 2, "mean of the log-normal distribution");
    Check.within(0.03, s.getStandardDeviation(), 0.5, "its standard deviation");
  }

  @Test
  void theSameSeedGivesTheSameTissue() {
    UniformRandomProvider one = random();
    UniformRandomProvider other = random();
    for (int i = 0; i < 3; i++) {
      assertEquals(tissue.sample(one).rows(), tissue.sample(other).rows());
    }
    assertNotEquals(tissue.sample(one).rows(), tissue.sample(one).rows());
  }

  @Test
  void whereAnEarIsThickItIsThickThroughout() {
    UniformRandomProvider random = random();
    for (int i = 0; i < 50; i++) {
      Tissue drawn = tissue.sample(random);
      boolean thick = drawn.cartilage_mm("floor") > tissue.cartilage_mm("floor");
      assertEquals(thick, drawn.cartilage_mm("scapha") > tissue.cartilage_mm("scapha"));
    }
  }

  @Test
  void givenNumbersAndMeasuredThicknessStay() throws Exception {
    TissueKeys keys =
        TissueKeys.standard(35)
            .withThickness(1.1)
            .withOverride("section.stiffness_scale", 1)
            .withOverride("cartilage.modulus_mpa", 2.5);
    Tissue drawn = Tissue.of(MaterialTables.shipped(), keys).sample(random());
    assertEquals(2.5, drawn.layers("floor").core().modulus_mpa());
    Check.within(1e-12, drawn.cartilage_mm("floor"), 1.1, "as measured");
  }
}
