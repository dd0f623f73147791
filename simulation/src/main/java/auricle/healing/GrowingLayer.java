package auricle.healing;

import auricle.energy.EnergyTerm;
import auricle.energy.ScaledTerm;
import auricle.energy.ShellTerms;
import auricle.material.SectionField;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import java.util.ArrayList;
import java.util.List;

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
 * an elastic layer again, as in {@link RelaxingShell}. What has formed does not relax.
 */
public final class GrowingLayer implements TimePart {
  private final ScarGrowth growth;
  private final Directors directors;
  private final RestShape mean;
  private final RestShape mixed;
  private final RestShape present;
  private final List<ScaledTerm> terms = new ArrayList<>();
  private double formed;
  private StepWeights weights = new StepWeights(0, 0);

  /**
   * @param shape shape at time 0; its triangles alone get the layer
   * @param sections stiffness P of its triangles
   * @param growth how it comes
   */
  public GrowingLayer(
      RestShape shape, Directors directors, SectionField sections, ScarGrowth growth) {
    this.growth = growth;
    this.directors = directors;
    mean = shape.copy();
    mixed = shape.copy();
    present = shape.copy();
    for (EnergyTerm term : ShellTerms.of(mixed, directors, sections)) {
      ScaledTerm scaled = new ScaledTerm(term);
      scaled.scale(0, 0);
      terms.add(scaled);
    }
  }

  @Override
  public List<ScaledTerm> terms() {
    return terms;
  }

  /** Share α of the layer that is there. */
  public double formed() {
    return formed;
  }

  @Override
  public void aim(double from_s, double to_s) {
    weights =
        StepWeights.of(growth::rate, from_s, to_s, growth.scale_s())
            .summingTo(growth.share(to_s) - growth.share(from_s));
    double share = formed + weights.start();
    if (share > 0) {
      mixed.scale(0);
      mixed.add(formed / share, mean);
      mixed.add(weights.start() / share, present);
    }
    for (ScaledTerm term : terms) {
      term.scale(share, share);
    }
  }

  @Override
  public void arrive(double[] u) {
    RestShape next = RestShape.of(mean.topology(), u, directors);
    double share = formed + weights.start() + weights.end();
    if (share > 0) {
      mean.scale(formed / share);
      mean.add(weights.start() / share, present);
      mean.add(weights.end() / share, next);
    }
    formed = share;
    weights = new StepWeights(0, 0);
    present.scale(0);
    present.add(1, next);
  }
}
