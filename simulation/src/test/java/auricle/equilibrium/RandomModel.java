package auricle.equilibrium;

import org.apache.commons.rng.UniformRandomProvider;

/**
 * A small model of random making, sensible or not, and whether it is solved by load steps or along
 * its path.
 */
abstract class RandomModel {
  final UniformRandomProvider random;

  RandomModel(UniformRandomProvider random) {
    this.random = random;
  }

  /** A new total energy of the same model, at its start. */
  abstract TotalEnergy energy();

  final boolean chance(double probability) {
    return random.nextDouble() < probability;
  }

  final double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** 10 to a power between two. */
  final double power(double low, double high) {
    return Math.pow(10, between(low, high));
  }

  /** A force of either sign; now and then no number. */
  final double force(double low, double high) {
    if (chance(0.005)) {
      return chance(0.5) ? Double.NaN : Double.POSITIVE_INFINITY;
    }
    return (chance(0.5) ? 1 : -1) * power(low, high);
  }
}
