package auricle.analysis;

/**
 * Numbers given at every vertex or triangle, for drawing.
 *
 * <p>Values stand place by place, {@code components} each.
 */
public final class FieldData {
  private final String name;
  private final int components;
  private final double[] values;

  /**
   * @param name name with the unit as its suffix
   * @param components numbers at each place
   * @param values all numbers; not copied
   * @throws IllegalArgumentException if the numbers do not make whole places
   */
  public FieldData(String name, int components, double[] values) {
    if (components < 1 || values.length % components != 0) {
      throw new IllegalArgumentException(
          name + ": " + values.length + " numbers do not make places of " + components);
    }
    this.name = name;
    this.components = components;
    this.values = values;
  }

  /** Name with the unit as its suffix. */
  public String name() {
    return name;
  }

  /** Numbers at each place. */
  public int components() {
    return components;
  }

  /** Number of places. */
  public int places() {
    return values.length / components;
  }

  /** Component c at a place. */
  public double value(int place, int c) {
    return values[components * place + c];
  }
}
