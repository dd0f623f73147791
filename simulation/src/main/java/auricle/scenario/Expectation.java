package auricle.scenario;

import java.util.Optional;

/**
 * One number that should come out, and what it should be.
 *
 * @param kind what number is meant
 * @param subject key of a measurement, or name of the step that ties the thread
 * @param from where a change begins
 * @param to when: of a change, where it ends
 * @param over key of another measurement, if the ratio to it is meant; else empty
 * @param range least and greatest value, if given
 * @param sign direction, if given
 * @param byAtLeast least magnitude that counts for the sign or the comparison of sides, in the unit
 * @param otherSide more or less than in the other ear, if given
 * @param because why it is expected
 */
public record Expectation(
    Kind kind,
    String subject,
    Moment from,
    Moment to,
    String over,
    Optional<Bounds> range,
    Optional<Sign> sign,
    double byAtLeast,
    Optional<OtherSide> otherSide,
    String because) {

  /** What number is meant. */
  public enum Kind {
    /** A measurement at a moment. */
    FIGURE("figure"),
    /** Its change between two moments. */
    CHANGE("change_of"),
    /** The share of the correction that is lost by a time, %. */
    LOSS("loss_of"),
    /** The tension of a thread, N. */
    TENSION("tension_of");

    private final String key;

    Kind(String key) {
      this.key = key;
    }

    /** Name in files. */
    public String key() {
      return key;
    }
  }

  /** Direction of a change, or sign of a value. */
  public enum Sign {
    /** Upwards, above zero. */
    RISES,
    /** Downwards, below zero. */
    FALLS
  }

  /** Comparison with the other ear. */
  public enum OtherSide {
    /** More than in the other ear. */
    MORE,
    /** Less than in the other ear. */
    LESS
  }

  /**
   * Least and greatest value, ends included.
   *
   * @param low least value
   * @param high greatest value
   */
  public record Bounds(double low, double high) {}
}
