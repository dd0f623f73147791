package auricle.healing;

import auricle.energy.EnergyTerm;
import auricle.energy.ThreadLaw;
import auricle.equilibrium.TotalEnergy;
import auricle.material.BiteTissue;
import auricle.material.HealingTissue;
import auricle.material.ThreadRow;
import auricle.material.Tissue;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import auricle.mesh.Topology;
import auricle.plan.Bolster;
import auricle.plan.Operation;
import auricle.plan.Tie;
import auricle.plan.TiedOperation;
import auricle.surgery.BodyThread;
import auricle.surgery.EarBody;
import auricle.surgery.Purpose;
import auricle.surgery.ShutShell;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An operated ear taken apart into what changes with time and what does not. */
final class EarParts {
  private final EarBody body;
  private final ScarGrowth growth;
  private final RelaxingLayer wall;
  private final List<TimePart> parts = new ArrayList<>();
  private final List<SlippingThread> threads = new ArrayList<>();
  private final List<String> lost = new ArrayList<>();

  /**
   * @param body at rest after the plan
   * @param plan the operations done
   */
  EarParts(EarBody body, List<Operation> plan) {
    this.body = body;
    Tissue tissue = body.tissue();
    growth = new ScarGrowth(tissue.healing().adhering_days());
    ShutShell shut = body.shell().shut();
    double remodelling_s = tissue.healing().remodelling_days() * Durations.DAY_S;
    wall = new RelaxingLayer(shut.rest(), shut.sections(), tissue.relaxation(), remodelling_s);
    parts.add(sheet(shut.rest().topology()));
    plan.forEach(this::addLost);
    tied(Purpose.SUTURE).values().forEach(loops -> loops.forEach(this::addThread));
    tied(Purpose.SKIN).values().forEach(springs -> parts.add(fading(springs, tissue.healing())));
    tied(Purpose.BOLSTER).forEach((name, holds) -> parts.add(bolster(name, holds, plan)));
  }

  private void addLost(Operation operation) {
    if (operation instanceof TiedOperation tied && tied.tie() instanceof Tie.Tension tie) {
      body.threads().stream()
          .filter(thread -> thread.name().equals(operation.name()))
          .forEach(thread -> thread.givesWay(tie.tension_n()).ifPresent(lost::add));
    }
  }

  /** The wall, and scar where its skin was lifted off. */
  private Sheet sheet(Topology topology) {
    Directors directors = body.shell().directors();
    RestShape shape = RestShape.of(topology, body.unknowns(), directors);
    List<SheetLayer> layers = new ArrayList<>();
    layers.add(wall);
    HealedWall scar = new HealedWall(body);
    if (!scar.isEmpty()) {
      layers.add(new GrowingLayer(shape, scar, growth));
    }
    return new Sheet(shape, directors, layers);
  }

  /** What is tied for a purpose, by the operation that it belongs to. */
  private Map<String, List<BodyThread>> tied(Purpose purpose) {
    Map<String, List<BodyThread>> tied = new LinkedHashMap<>();
    for (BodyThread thread : body.threads()) {
      if (thread.purpose() == purpose && thread.thread().law() instanceof ThreadLaw.Elastic) {
        tied.computeIfAbsent(thread.name(), name -> new ArrayList<>()).add(thread);
      }
    }
    return tied;
  }

  private void addThread(BodyThread tied) {
    ThreadRow row = tied.row().orElseThrow();
    BiteTissue bite = body.tissue().bite(row.size());
    ThreadStrength strength =
        new ThreadStrength(row.knotPull_n(), row.strengthLeft()::at, tied.tearThrough_n());
    Migration migration =
        new Migration(bite.migration_mm_per_day_n(), bite.knotSlack_mm(), bite.knotSeating_days());
    SlippingThread part =
        new SlippingThread(tied.name(), tied.thread(), strength, migration, growth);
    threads.add(part);
    parts.add(part);
  }

  private static FadingPull fading(List<BodyThread> springs, HealingTissue healing) {
    return new FadingPull(
        springs.stream().map(BodyThread::thread).toList(),
        healing.skinStripFraction(),
        healing.skinStrip_days());
  }

  private static TakenOff bolster(String name, List<BodyThread> holds, List<Operation> plan) {
    double days =
        plan.stream()
            .filter(operation -> operation.name().equals(name))
            .filter(Bolster.class::isInstance)
            .mapToDouble(operation -> ((Bolster) operation).days())
            .findFirst()
            .orElseThrow();
    return new TakenOff(name, holds.stream().map(BodyThread::thread).toList(), days);
  }

  /** The wall without the scar on it. */
  RelaxingLayer wall() {
    return wall;
  }

  /** All that changes. */
  List<TimePart> parts() {
    return parts;
  }

  /** Threads that let go as they were tied, in words. */
  List<String> lost() {
    return lost;
  }

  /** The sutures among it. */
  List<SlippingThread> threads() {
    return threads;
  }

  /** The sum of all energies, at load factor 1 and the body's present state. */
  TotalEnergy energy() {
    List<EnergyTerm> terms = new ArrayList<>(body.shell().others());
    parts.forEach(part -> terms.addAll(part.terms()));
    TotalEnergy before = body.shell().energy();
    double tiltLength = before.unit(before.size() - 1);
    TotalEnergy energy =
        new TotalEnergy(
            terms, before.supports(), body.shell().directors(), before.unknowns(), tiltLength);
    energy.setLoadFactor(1);
    return energy;
  }
}
