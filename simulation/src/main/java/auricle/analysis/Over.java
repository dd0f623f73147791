package auricle.analysis;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** How one number is made of several. */
public enum Over {
  /** Mean, weighted by area for fields. */
  MEAN {
    @Override
    double of(int[] places, IntToDoubleFunction value, IntToDoubleFunction weight) {
      double sum = 0;
      double weights = 0;
      for (int place : places) {
        sum += weight.applyAsDouble(place) * value.applyAsDouble(place);
        weights += weight.applyAsDouble(place);
      }
      return sum / weights;
    }
  },
  /** Least. */
  LEAST {
    @Override
    double of(int[] places, IntToDoubleFunction value, IntToDoubleFunction weight) {
      return IntStream.of(places).mapToDouble(value).reduce(Double.POSITIVE_INFINITY, Math::min);
    }
  },
  /** Greatest. */
  GREATEST {
    @Override
    double of(int[] places, IntToDoubleFunction value, IntToDoubleFunction weight) {
      return IntStream.of(places).mapToDouble(value).reduce(Double.NEGATIVE_INFINITY, Math::max);
    }
  },
  /** Sum. */
  SUM {
    @Override
    double of(int[] places, IntToDoubleFunction value, IntToDoubleFunction weight) {
      return IntStream.of(places).mapToDouble(value).reduce(0, Double::sum);
    }
  };

  /** One number of those at some places. */
  abstract double of(int[] places, IntToDoubleFunction value, IntToDoubleFunction weight);

  /** One number of those at some places, all of one weight. */
  double of(int[] places, IntToDoubleFunction value) {
    return of(places, value, place -> 1);
  }
}
