package auricle.testing;

import auricle.diagnostics.BadInputException;
import auricle.plan.EarCase;
import auricle.scenario.ScenarioReader;
import java.nio.file.Path;

/** The ears of the scenarios that are shipped. */
public final class ShippedEar {
  private ShippedEar() {}

  /**
   * The first ear of one, with its plan.
   *
   * @param scenario name of its file, without the ending
   */
  public static EarCase of(String scenario) throws BadInputException {
    Path file = Path.of("..", "scenarios", scenario + ".yaml");
    return ScenarioReader.shipped().read(file).scenario().ears().get(0).ear();
  }
}
