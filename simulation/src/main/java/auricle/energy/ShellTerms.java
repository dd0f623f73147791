package auricle.energy;

import auricle.material.SectionField;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The elastic energy of a shell, W = ½ ∫ [E:A:E + 2 E:B:K + K:D:K] dA, as a list of terms. */
public final class ShellTerms {
  private ShellTerms() {}

  /**
   * Membrane, bending and, where a section needs it, their coupling, with a rest shape that stays.
   */
  public static List<EnergyTerm> of(RestShape rest, Directors directors, SectionField sections) {
    return growing(rest, rest, directors, sections);
  }

  /**
   * The same with a rest shape that changes with the load factor: tissue that grows, shrinks, is
   * bent or released. The terms read both shapes anew whenever they are given the load factor, so
   * that a shape of its owner's may change in between; areas and stiffness stay those that the
   * grown shape had when the terms were made.
   *
   * @param start rest shape at load factor 0
   * @param grown rest shape at load factor 1; in between, metric and curvature change linearly
   */
  public static List<EnergyTerm> growing(
      RestShape start, RestShape grown, Directors directors, SectionField sections) {
    List<EnergyTerm> terms = new ArrayList<>();
    terms.add(new EdgeMembrane(start, grown, directors, sections));
    terms.add(new PlateBending(start, grown, directors, sections));
    if (coupled(grown, sections)) {
      terms.add(new StretchBendCoupling(start, grown, directors, sections));
    }
    return terms;
  }

  /**
   * Membrane and bending of a sheet of several elastic layers, with strains and curvatures
   * evaluated once for all of them. What a layer has of {@link #coupling} comes on top.
   *
   * @param layers at least one; the first covers all, and gives areas, all constants and where
   *     strain may jump
   */
  public static List<EnergyTerm> layered(List<ShellLayer> layers, Directors directors) {
    return List.of(new EdgeMembrane(layers, directors), new PlateBending(layers, directors));
  }

  /** The coupling of stretching and bending in all of a layer, if it has any. */
  public static Optional<EnergyTerm> coupling(ShellLayer layer, Directors directors) {
    RestShape rest = layer.rest();
    return coupled(rest, layer.sections())
        ? Optional.of(new StretchBendCoupling(rest, rest, directors, layer.sections()))
        : Optional.empty();
  }

  private static boolean coupled(RestShape rest, SectionField sections) {
    return IntStream.range(0, rest.topology().triangleCount())
        .anyMatch(t -> sections.covers(t) && sections.section(t).coupled());
  }
}
