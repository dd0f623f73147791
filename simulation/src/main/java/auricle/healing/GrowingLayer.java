package auricle.healing;

import auricle.energy.ShellLayer;
import auricle.material.SectionField;
import auricle.mesh.RestShape;

/**
 * A layer of tissue that forms little by little, each bit free of stress in the shape x that the
 * body has when it forms: scar, skin that sticks again, cuts that fill.
 *
 * <pre>
 *   force = P ∫ (x(t) − x(s)) dα(s) = α P (x − m),   α m = ∫ x dα
 * </pre>
 *
 * <p>P is the stiffness when all of it is there, α its share, m the mean of the shapes. Over a step
 * in which x goes linearly, with a = ∫ α̇ (1 − θ) dt and b = ∫ α̇ θ dt, exactly
 *
 * <pre>
 *   α₁ m₁ = α₀ m₀ + a x₀ + b x₁,   force = (α₀ + a) P (x₁ − (α₀ m₀ + a x₀)/(α₀ + a)):
 * </pre>
 *
 * an elastic layer again, as in {@link RelaxingLayer}. What has formed does not relax.
 */
final class GrowingLayer implements SheetLayer {
  private final ScarGrowth growth;
  private final RestShape mean;
  private final ShellLayer elastic;
  private double formed;
  private StepWeights weights = new StepWeights(0, 0);

  /**
   * @param shape of the sheet at time 0
   * @param sections stiffness P of the triangles that get the layer
   * @param growth how it comes
   */
  GrowingLayer(RestShape shape, SectionField sections, ScarGrowth growth) {
    this.growth = growth;
    mean = shape.copy();
    elastic = new ShellLayer(shape.copy(), sections);
    elastic.share(0);
  }

  @Override
  public ShellLayer elastic() {
    return elastic;
  }

  /** Share α of the layer that is there. */
  double formed() {
    return formed;
  }

  @Override
  public void aim(double from_s, double to_s, RestShape present) {
    RestShape mixed = elastic.rest();
    weights =
        StepWeights.of(growth::rate, from_s, to_s, growth.scale_s())
            .summingTo(growth.share(to_s) - growth.share(from_s));
    double share = formed + weights.start();
    if (share > 0) {
      mixed.scale(0);
      mixed.add(formed / share, mean);
      mixed.add(weights.start() / share, present);
    }
    elastic.share(share);
  }

  @Override
  public void arrive(RestShape present, RestShape next) {
    double share = formed + weights.start() + weights.end();
    if (share > 0) {
      mean.scale(formed / share);
      mean.add(weights.start() / share, present);
      mean.add(weights.end() / share, next);
    }
    formed = share;
    weights = new StepWeights(0, 0);
  }
}
