package auricle.equilibrium;

import java.util.Arrays;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;

/**
 * Unknowns that are not free: held where they were, or moved as the load factor λ goes.
 *
 * <p>A prescribed coordinate is start + s(λ) mm, with s(0) = 0 unless the start lies off the
 * schedule. A prescribed tilt of a director turns it by s(λ) rad from the start, in steps about the
 * frame vectors it has at the time; one tilt prescribed and the other held turns about a fixed
 * axis, through any angle.
 */
public final class Supports {
  private final int size;
  private final int firstTilt;
  private final int[] prescribed;
  private final DoubleUnaryOperator[] schedules;
  private final int[] freeOf;
  private final int[] free;

  /** Collects supports. */
  public static final class Builder {
    private final int size;
    private final int firstTilt;
    private final boolean[] held;
    private final TreeMap<Integer, DoubleUnaryOperator> schedules = new TreeMap<>();

    /**
     * @param size number of all unknowns
     * @param firstTilt index of the first tilt; unknowns before it are coordinates
     */
    public Builder(int size, int firstTilt) {
      this.size = size;
      this.firstTilt = firstTilt;
      this.held = new boolean[size];
    }

    /** Holds an unknown where it is at the start. */
    public Builder fix(int unknown) {
      held[unknown] = true;
      return this;
    }

    /** Moves an unknown by λ times the amount (mm or rad). */
    public Builder prescribe(int unknown, double amount) {
      return prescribe(unknown, lambda -> lambda * amount);
    }

    /** Moves an unknown by s(λ) (mm or rad) from its start; the last word on an unknown counts. */
    public Builder prescribe(int unknown, DoubleUnaryOperator schedule) {
      held[unknown] = true;
      schedules.put(unknown, schedule);
      return this;
    }

    /** The supports. */
    public Supports build() {
      return new Supports(this);
    }
  }

  private Supports(Builder builder) {
    size = builder.size;
    firstTilt = builder.firstTilt;
    prescribed = builder.schedules.keySet().stream().mapToInt(i -> i).toArray();
    schedules = builder.schedules.values().toArray(DoubleUnaryOperator[]::new);
    freeOf = new int[size];
    int count = 0;
    for (int i = 0; i < size; i++) {
      freeOf[i] = builder.held[i] ? -1 : count++;
    }
    free = new int[count];
    for (int i = 0; i < size; i++) {
      if (freeOf[i] >= 0) {
        free[freeOf[i]] = i;
      }
    }
  }

  /** Number of all unknowns. */
  public int size() {
    return size;
  }

  /** Number of free unknowns. */
  public int freeCount() {
    return free.length;
  }

  /** Unknown that free number k stands for. */
  public int unknown(int k) {
    return free[k];
  }

  /** Free number of an unknown, or -1 if it is supported. */
  public int freeNumber(int unknown) {
    return freeOf[unknown];
  }

  /** Index of the first tilt: unknowns before it are coordinates, mm. */
  public int firstTilt() {
    return firstTilt;
  }

  /** Whether an unknown moves as λ goes. */
  public boolean isPrescribed(int unknown) {
    return Arrays.binarySearch(prescribed, unknown) >= 0;
  }

  /** x = the free ones of all unknowns. */
  void gather(double[] all, double[] x) {
    for (int k = 0; k < free.length; k++) {
      x[k] = all[free[k]];
    }
  }

  /** Writes the free unknowns into all; the others stay. */
  public void scatter(double[] x, double[] all) {
    for (int k = 0; k < free.length; k++) {
      all[free[k]] = x[k];
    }
  }

  /** Moves the prescribed unknowns in u from where they belong at one λ to where at another. */
  void move(double from, double to, double[] u) {
    for (int k = 0; k < prescribed.length; k++) {
      double change = schedules[k].applyAsDouble(to) - schedules[k].applyAsDouble(from);
      int i = prescribed[k];
      u[i] = i < firstTilt ? u[i] + change : Math.tan(Math.atan(u[i]) + change);
    }
  }
}
