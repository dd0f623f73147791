package auricle.healing;

import auricle.energy.ShellLayer;
import auricle.material.Prony;
import auricle.material.SectionField;
import auricle.mesh.RestShape;
import java.util.ArrayList;
import java.util.List;

/**
 * A layer all of whose stiffness, membrane, bending and coupling, relaxes by one Prony series.
 *
 * <p>With shape x (squared arcs and tilts, in which strain and curvature are linear), elastic rest
 * shape r and branch shapes qᵢ,
 *
 * <pre>
 *   force = C [g∞ (x − r) + Σ gᵢ (x − qᵢ)],   q̇ᵢ = (x − qᵢ)/τᵢ,   qᵢ(0) = r.
 * </pre>
 *
 * <p>Living cartilage that is held bent grows into the bend: its rest shape drifts, ṙ = (x − r)/τ,
 * so that what carries in the long run is one more branch, with fraction g∞ and the time τ of
 * remodelling, and a bend that was held long enough stays. Infinite τ: r stays, a solid.
 *
 * <p>Over a step of length h in which x goes linearly from x₀ to x₁, with ε = exp(−h/τᵢ) and φ = (1
 * − ε) τᵢ/h, exactly
 *
 * <pre>
 *   qᵢ₁ = ε qᵢ₀ + (φ − ε) x₀ + (1 − φ) x₁,
 *   force = s C (x₁ − m),   s = g∞ + Σ gᵢ φ,   s m = g∞ r + Σ gᵢ [ε qᵢ₀ + (φ − ε) x₀]:
 * </pre>
 *
 * the forces of an elastic shell with scaled section and a rest shape m that is a mean of shapes,
 * with weights ≥ 0 that come to 1. A step is therefore one minimisation of a shell's energy
 * (Taylor, Pister and Goudreau 1970, Int J Numer Methods Eng 2:45-59, for the recurrence; Simo and
 * Hughes 1998, Computational Inelasticity, section 10.3). φ → 0 for long steps: what has relaxed
 * carries nothing, without oscillation.
 */
final class RelaxingLayer implements SheetLayer {
  private final List<Prony.Term> branches = new ArrayList<>();
  private final double lasting;
  private final RestShape rest;
  private final ShellLayer elastic;
  private final List<RestShape> shapes = new ArrayList<>();
  private double step_s;

  /**
   * @param rest rest shape r; it has had no other shape before
   * @param sections instant stiffness C
   * @param prony how it relaxes
   * @param remodelling_s time τ in which it grows into a shape, s; infinite: never
   */
  RelaxingLayer(RestShape rest, SectionField sections, Prony prony, double remodelling_s) {
    this.rest = rest;
    elastic = new ShellLayer(rest.copy(), sections);
    branches.addAll(prony.terms());
    boolean grows = remodelling_s < Double.POSITIVE_INFINITY;
    if (grows) {
      branches.add(new Prony.Term(prony.remaining(), remodelling_s));
    }
    lasting = grows ? 0 : prony.remaining();
    branches.forEach(term -> shapes.add(rest.copy()));
  }

  @Override
  public ShellLayer elastic() {
    return elastic;
  }

  /**
   * The shape in which the layer would be free of stress at this instant: g∞ r + Σ gᵢ qᵢ; a copy.
   * What it carries now is its instant stiffness times the strain from there; the rest of the
   * strain has been relaxed and grown into.
   */
  RestShape unstressed() {
    RestShape shape = rest.copy();
    shape.scale(lasting);
    for (int i = 0; i < branches.size(); i++) {
      shape.add(branches.get(i).fraction(), shapes.get(i));
    }
    return shape;
  }

  @Override
  public void aim(double from_s, double to_s, RestShape present) {
    step_s = to_s - from_s;
    double share = lasting;
    RestShape mixed = elastic.rest();
    mixed.scale(0);
    mixed.add(share, rest);
    for (int i = 0; i < branches.size(); i++) {
      Prony.Term term = branches.get(i);
      double left = term.left(step_s);
      double mean = term.mean(step_s);
      share += term.fraction() * mean;
      mixed.add(term.fraction() * left, shapes.get(i));
      mixed.add(term.fraction() * (mean - left), present);
    }
    mixed.scale(1 / share);
    elastic.share(share);
  }

  @Override
  public void arrive(RestShape present, RestShape next) {
    for (int i = 0; i < branches.size(); i++) {
      Prony.Term term = branches.get(i);
      double left = term.left(step_s);
      double mean = term.mean(step_s);
      RestShape branch = shapes.get(i);
      branch.scale(left);
      branch.add(mean - left, present);
      branch.add(1 - mean, next);
    }
  }
}
