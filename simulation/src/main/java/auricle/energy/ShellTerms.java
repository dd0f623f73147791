package auricle.energy;

import auricle.material.SectionField;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import java.util.ArrayList;
import java.util.List;

/** The elastic energy of a shell, W = ½ ∫ [E:A:E + 2 E:B:K + K:D:K] dA, as a list of terms. */
public final class ShellTerms {
  private ShellTerms() {}

  /** Membrane, bending and, where a section needs it, their coupling. */
  public static List<EnergyTerm> of(RestShape rest, Directors directors, SectionField sections) {
    List<EnergyTerm> terms = new ArrayList<>();
    terms.add(new EdgeMembrane(rest, directors, sections));
    terms.add(new PlateBending(rest, directors, sections));
    StretchBendCoupling coupling = new StretchBendCoupling(rest, directors, sections);
    if (!coupling.isEmpty()) {
      terms.add(coupling);
    }
    return terms;
  }
}
