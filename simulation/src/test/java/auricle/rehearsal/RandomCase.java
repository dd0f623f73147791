package auricle.rehearsal;

import auricle.anatomy.Auricle;
import auricle.anatomy.EarMeasurements;
import auricle.anatomy.MeshLevel;
import auricle.anatomy.ShapeKnob;
import auricle.anatomy.ShapeParameters;
import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.material.MaterialTables;
import auricle.plan.Bolster;
import auricle.plan.BowlStrip;
import auricle.plan.CaudaExcision;
import auricle.plan.ConchaMastoidSuture;
import auricle.plan.EarCase;
import auricle.plan.Face;
import auricle.plan.FoldSuture;
import auricle.plan.FullThicknessIncision;
import auricle.plan.LobuleSuture;
import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.plan.RimShaving;
import auricle.plan.RimWedge;
import auricle.plan.Scoring;
import auricle.plan.SkinStrip;
import auricle.plan.Target;
import auricle.plan.Tie;
import auricle.plan.TissueChoice;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * An ear of random shape and a random plan of one to six operations of all kinds, with doses from
 * mild to drastic. The same seed gives the same case.
 */
final class RandomCase {
  /** Share of the bounds of every knob of the shape, about its normal value. */
  private static final double SHAPE_SHARE = 0.5;

  private final UniformRandomProvider random;

  private RandomCase(long seed) {
    random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
  }

  /** A run of the case of a seed, ready to go. */
  static RehearsalRun of(long seed, RehearsalWatcher watcher) throws BadInputException {
    RandomCase made = new RandomCase(seed);
    Auricle auricle = Auricle.of(made.shape(), MeshLevel.PLANNING);
    EarCase ear = made.ear();
    List<Finding> errors = ear.plan().findings("").stream().filter(Finding::isError).toList();
    if (!errors.isEmpty()) {
      throw new BadInputException(errors);
    }
    return new RehearsalRun(
        ear, auricle, EarTissue.of(ear, auricle, MaterialTables.shipped()), watcher);
  }

  /** The case of a seed, without its shape: for the usual ear. */
  static EarCase withUsualShape(long seed) {
    RandomCase made = new RandomCase(seed);
    made.shape(); // the plan is that of the run with its own shape
    return made.ear();
  }

  private ShapeParameters shape() {
    Map<ShapeKnob, Double> values = new EnumMap<>(ShapeKnob.class);
    for (ShapeKnob knob : ShapeKnob.values()) {
      double end = random.nextBoolean() ? knob.high() : knob.low();
      double share = SHAPE_SHARE * random.nextDouble();
      values.put(knob, knob.normal() + share * (end - knob.normal()));
    }
    return new ShapeParameters(values);
  }

  private EarCase ear() {
    List<Operation> operations = new ArrayList<>();
    int count = 1 + random.nextInt(6);
    for (int i = 0; i < count; i++) {
      operations.add(operation("step " + (i + 1)));
    }
    EarMeasurements measured =
        random.nextBoolean() ? EarMeasurements.normalAdult() : EarMeasurements.normalChild();
    return new EarCase(measured, TissueChoice.standard(), new Plan(operations), Target.usual());
  }

  private double in(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private Tie tie(double low_mm, double high_mm) {
    return random.nextInt(4) == 0 ? new Tie.Tension(in(0.05, 1)) : new Tie.Gap(in(low_mm, high_mm));
  }

  private Operation operation(String name) {
    double low = in(20, 60);
    double high = low + in(10, 30);
    return switch (random.nextInt(14)) {
      case 0, 1, 2, 3 -> foldSuture(name);
      case 4, 5 -> scoring(name, low, high);
      case 6 ->
          new ConchaMastoidSuture(
              name,
              true,
              in(40, 60),
              in(30, 70),
              in(3, 10),
              in(10, 20),
              in(40, 60),
              tie(8, 20),
              "polyester_4_0");
      case 7 ->
          new LobuleSuture(
              name, true, in(0, 6), in(28, 42), in(20, 60), tie(6, 16), "polyester_4_0");
      case 8 -> new BowlStrip(name, true, low, high, in(30, 70), in(1, 7), in(0, 1));
      case 9 -> new SkinStrip(name, true, low, high, in(3, 18));
      case 10 -> new RimWedge(name, true, in(55, 90), in(1, 8), in(4, 14));
      case 11 -> new RimShaving(name, true, in(55, 90), in(5, 40), in(0.1, 0.7));
      case 12 ->
          random.nextBoolean()
              ? new Bolster(name, true, in(50, 80), in(2, 9), in(3, 14))
              : new CaudaExcision(name, true, in(1, 10));
      default -> new FullThicknessIncision(name, true, low, high, in(-3, 3));
    };
  }

  private Operation foldSuture(String name) {
    return FoldSuture.square(
        name, in(45, 84), in(4, 9), -in(4, 9), in(4, 10), tie(3, 14), "polyester_4_0");
  }

  private Operation scoring(String name, double low, double high) {
    Face face = random.nextBoolean() ? Face.POSTERIOR : Face.ANTERIOR;
    return new Scoring(
        name, true, face, in(0.2, 0.65), in(1, 4), low, high, in(-2, 2), in(3, 12), in(0, 0.3));
  }
}
