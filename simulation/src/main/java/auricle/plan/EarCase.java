package auricle.plan;

import auricle.anatomy.EarMeasurements;
import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import java.util.List;

/**
 * One ear to be rehearsed.
 *
 * @param ear as it was measured
 * @param tissue what it is made of
 * @param plan what is done to it
 * @param target what is aimed at
 */
public record EarCase(EarMeasurements ear, TissueChoice tissue, Plan plan, Target target) {

  /** The same ear with another plan. */
  public EarCase withPlan(Plan other) {
    return new EarCase(ear, tissue, other, target);
  }

  /** The same with another target. */
  public EarCase withTarget(Target other) {
    return new EarCase(ear, tissue, plan, other);
  }

  /** The same of another tissue. */
  public EarCase withTissue(TissueChoice other) {
    return new EarCase(ear, other, plan, target);
  }

  /** The same plan on another ear. */
  public EarCase withEar(EarMeasurements other) {
    return new EarCase(other, tissue, plan, target);
  }

  /**
   * Everything that is wrong with measurements, tissue, plan and target, and what the trade would
   * say to the plan as a whole. Whether the measurements can hold together is told by what fits an
   * ear to them.
   *
   * @param at JSON pointer of the ear, below which {@code /ear}, {@code /plan}, {@code /target} and
   *     {@code /press_test} stand
   */
  public List<Finding> findings(String at) {
    Findings findings = new Findings();
    for (EarMeasure measure : EarMeasure.values()) {
      Dose dose = measure.of(ear);
      if (!dose.allowed()) {
        findings.add(OperationCheck.outside(at + "/ear/" + dose.key(), dose));
      }
    }
    tissue.press().ifPresent(p -> findings.addAll(p.findings(at + "/press_test")));
    findings.addAll(plan.findings(at + "/plan"));
    findings.addAll(new PlanSense(plan, ear.cartilageThickness_mm(), at + "/plan").findings());
    findings.addAll(target.findings(at + "/target"));
    return findings.list();
  }
}
