package auricle.healing;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.healing.Bands.Band;
import auricle.measurement.NamedValue;
import auricle.numerics.Workers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;

/**
 * Runs samples side by side and gathers their bands. Every sample is independent of the others and
 * they are gathered by number, so the bands are the same to the last bit for any number of threads.
 */
public final class TissueBands {
  /** Makes one sample: an ear of its own tissue, followed over time. */
  @FunctionalInterface
  public interface Sample {
    /**
     * @param number of the sample, from 0
     * @throws Exception whatever keeps it from being made; it counts as failed, with its message
     */
    Timeline follow(int number) throws Exception;
  }

  private TissueBands() {}

  /**
   * The bands.
   *
   * @param samples how many, at least 1
   * @param seed only told on
   * @param threads how many at a time
   * @param sample makes one; called by several threads
   * @param done told of the number of samples that are done, on the calling thread, rising
   * @return empty if it was interrupted, or a sample was cancelled
   */
  public static Optional<Bands> of(
      int samples, long seed, int threads, Sample sample, IntConsumer done) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Timeline>> running = new ArrayList<>();
      for (int i = 0; i < samples; i++) {
        int number = i;
        Callable<Timeline> task =
            threads == 1
                ? () -> sample.follow(number)
                : () -> Workers.ALONE.within(() -> sample.follow(number));
        running.add(pool.submit(task));
      }
      return gather(running, seed, done);
    } finally {
      pool.shutdownNow();
    }
  }

  private static Optional<Bands> gather(
      List<Future<Timeline>> running, long seed, IntConsumer done) {
    List<Timeline> good = new ArrayList<>();
    List<String> failures = new ArrayList<>();
    for (int i = 0; i < running.size(); i++) {
      try {
        Timeline line = running.get(i).get();
        if (line.cancelled()) {
          return Optional.empty();
        }
        if (line.converged()) {
          good.add(line);
        } else {
          failures.add("sample " + i + ": " + line.words());
        }
      } catch (ExecutionException e) {
        failures.add("sample " + i + ": " + words(Objects.requireNonNullElse(e.getCause(), e)));
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return Optional.empty();
      }
      done.accept(i + 1);
    }
    return Optional.of(new Bands(running.size(), seed, failures, bands(good)));
  }

  /**
   * What kept a sample from being made: its tissue, in the words of the findings, or the program.
   */
  private static String words(Throwable cause) {
    if (cause instanceof BadInputException bad) {
      return bad.findings().stream().map(Finding::line).collect(Collectors.joining("; "));
    }
    String message = Objects.requireNonNullElse(cause.getMessage(), "nothing more is known");
    return "an error of the program, not of the tissue: " + message;
  }

  private static List<Band> bands(List<Timeline> good) {
    List<Band> bands = new ArrayList<>();
    int moments = good.isEmpty() ? 0 : good.get(0).moments().size();
    for (int m = 0; m < moments; m++) {
      Map<String, List<Double>> values = new TreeMap<>();
      for (Timeline line : good) {
        collect(line.moments().get(m), values);
      }
      double days = good.get(0).moments().get(m).days();
      values.forEach((key, all) -> bands.add(band(days, key, all)));
    }
    return bands;
  }

  private static void collect(MomentResult moment, Map<String, List<Double>> values) {
    for (NamedValue figure : moment.measures().figures()) {
      values.computeIfAbsent(figure.key(), k -> new ArrayList<>()).add(figure.value());
    }
    moment
        .loss()
        .forEach(
            (level, loss) ->
                values
                    .computeIfAbsent(
                        "loss_" + level.name().toLowerCase(Locale.ROOT), k -> new ArrayList<>())
                    .add(loss));
  }

  private static Band band(double days, String key, List<Double> all) {
    double[] sorted = all.stream().mapToDouble(Double::doubleValue).toArray();
    Arrays.sort(sorted);
    return new Band(
        days,
        key,
        quantile(sorted, Bands.TAIL),
        quantile(sorted, 0.5),
        quantile(sorted, 1 - Bands.TAIL));
  }

  /** Straight between the neighbours in rank. */
  private static double quantile(double[] sorted, double share) {
    double place = share * (sorted.length - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }
}
