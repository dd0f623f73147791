package auricle.analysis;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A shell model: what it is made of, what holds it, what acts on it, how it is solved and what is
 * asked. Places named {@code at} are JSON pointers into the model file.
 *
 * @param title in a few words
 * @param mesh the shape it starts from
 * @param sets named sets beside those of the mesh
 * @param sections sections, later ones overruling earlier ones
 * @param restShape the stress-free shape, where it is not the mesh
 * @param restChanges changes of the stress-free shape with the load factor
 * @param start where the solver starts
 * @param supports what holds it
 * @param loads what acts on it
 * @param solve how the equilibrium is followed
 * @param probes what is asked, in order
 * @param expectations values to check
 */
public record Model(
    String title,
    MeshSource mesh,
    List<NamedSelector> sets,
    List<SectionChoice> sections,
    Optional<MeshSource> restShape,
    List<RestChange> restChanges,
    Start start,
    List<Support> supports,
    List<Load> loads,
    SolvePlan solve,
    List<Probe> probes,
    List<Expectation> expectations) {

  /** Mesh files beside that of the mesh itself: of the rest shape and of surfaces to touch. */
  public List<MeshSource.File> otherMeshFiles() {
    Stream<MeshSource> touched =
        loads.stream()
            .filter(Load.SurfaceContact.class::isInstance)
            .map(l -> ((Load.SurfaceContact) l).partner())
            .filter(Load.Partner.Fixed.class::isInstance)
            .map(p -> ((Load.Partner.Fixed) p).mesh());
    return Stream.concat(restShape.stream(), touched)
        .filter(MeshSource.File.class::isInstance)
        .map(MeshSource.File.class::cast)
        .toList();
  }

  /**
   * A random disturbance of the starting positions along the normals.
   *
   * @param disturbance_mm its largest size
   * @param seed of the random numbers
   */
  public record Start(double disturbance_mm, long seed) {}
}
