package auricle.plan;

import java.util.List;

/**
 * Cartilage of the cauda helicis taken away, from its tip upwards.
 *
 * @param name of the step
 * @param enabled whether it is done
 * @param length_mm taken away, mm from the tip
 */
public record CaudaExcision(String name, boolean enabled, double length_mm) implements Operation {

  /** Kind, as files name it. */
  public static final String KIND = "cauda_excision";

  private static final DoseRange LENGTH =
      new DoseRange("length_mm", "length taken away", "mm", 0.5, 15, 0.5, "the cauda ends there");

  /** The last 5 mm; our own choice. */
  public static CaudaExcision usual(String name) {
    return new CaudaExcision(name, true, 5);
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public String words() {
    return "cauda excision";
  }

  @Override
  public List<Dose> doses() {
    return List.of(LENGTH.at(length_mm));
  }

  @Override
  public CaudaExcision with(String newName, boolean isEnabled, DoseValues d) {
    return new CaudaExcision(newName, isEnabled, d.get(LENGTH));
  }
}
