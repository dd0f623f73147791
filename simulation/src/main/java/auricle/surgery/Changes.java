package auricle.surgery;

import auricle.anatomy.Chart;
import auricle.anatomy.SurfacePlace;
import auricle.diagnostics.Findings;
import auricle.energy.FixedPoint;
import auricle.energy.MaterialPoint;
import auricle.material.ThreadRow;
import auricle.material.Tissue;
import auricle.plan.Bite;
import auricle.plan.Bolster;
import auricle.plan.BowlStrip;
import auricle.plan.CaudaExcision;
import auricle.plan.ConchaMastoidSuture;
import auricle.plan.FoldSuture;
import auricle.plan.FullThicknessIncision;
import auricle.plan.LobuleSuture;
import auricle.plan.Operation;
import auricle.plan.RimShaving;
import auricle.plan.RimWedge;
import auricle.plan.Scoring;
import auricle.plan.SkinStrip;
import auricle.plan.Tie;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Makes the mechanics of each operation of a plan on one ear. */
final class Changes {
  private static final double BOLSTER_STIFFNESS_N = 100;
  private static final double BOLSTER_HALF_LENGTH_MM = 4;

  private final EarPlaces places;
  private final EarWall wall;
  private final Bites bites;
  private final Tissue tissue;
  private final Findings findings;
  private final Map<Class<? extends Operation>, Function<Operation, Change>> makers =
      new LinkedHashMap<>();

  Changes(EarPlaces places, EarWall wall, Tissue tissue, Findings findings) {
    this.places = places;
    this.wall = wall;
    bites = new Bites(places, wall);
    this.tissue = tissue;
    this.findings = findings;
    maker(FoldSuture.class, this::foldSuture);
    maker(ConchaMastoidSuture.class, this::mastoidSuture);
    maker(LobuleSuture.class, this::lobuleSuture);
    maker(Bolster.class, this::bolster);
    maker(Scoring.class, o -> new ScoredBand(o, places, wall, tissue.surfaceStress()));
    maker(FullThicknessIncision.class, o -> new OpenedLine(o, places));
    maker(BowlStrip.class, o -> new ClosedStrip(o, places, tissue.seam()));
    maker(RimWedge.class, o -> new ClosedWedge(o, places));
    maker(RimShaving.class, o -> new ThinnedRim(o, places, wall));
    maker(CaudaExcision.class, o -> new TakenCauda(o, places, wall));
    maker(
        SkinStrip.class,
        o -> new ClosedSkin(o, places, bites, tissue.healing().skinStripTension_n_per_mm()));
  }

  private <T extends Operation> void maker(Class<T> kind, Function<T, Change> make) {
    makers.put(kind, operation -> make.apply(kind.cast(operation)));
  }

  /** The mechanics of an operation. */
  Change of(Operation operation) {
    Function<Operation, Change> maker = makers.get(operation.getClass());
    if (maker == null) {
      throw new IllegalStateException("no mechanics for " + operation.kind());
    }
    return maker.apply(operation);
  }

  private Change foldSuture(FoldSuture o) {
    BodyThread thread =
        suture(
            o.name(),
            o.thread(),
            List.of(
                at(o.scaphaUpper()),
                at(o.scaphaLower()),
                at(o.conchaLower()),
                at(o.conchaUpper())));
    return new LoopTie(
        thread, o.tie(), (gap, u) -> thread.distance(0, 1, u) + thread.distance(2, 3, u) + 2 * gap);
  }

  private SurfacePlace at(Bite bite) {
    return places.fromFold(bite.level_percent(), bite.fromFold_mm());
  }

  private SurfacePlace onWall(double level_percent, double wall_percent, double along_mm) {
    double around = places.aroundAlongFold(level_percent, along_mm);
    return places.chart().placeFromFold(around, places.wallOffset_mm(around, wall_percent));
  }

  private Change mastoidSuture(ConchaMastoidSuture o) {
    Chart chart = places.chart();
    double height =
        chart.lowest_mm()
            + o.mastoidLevel_percent() / 100 * (chart.highest_mm() - chart.lowest_mm());
    BodyThread thread =
        suture(
            o.name(),
            o.thread(),
            List.of(
                onWall(o.level_percent(), o.wall_percent(), -o.span_mm() / 2),
                onWall(o.level_percent(), o.wall_percent(), o.span_mm() / 2)),
            new FixedPoint(0, -o.mastoidPosterior_mm(), height));
    return new LoopTie(thread, o.tie(), (gap, u) -> thread.distance(0, 1, u) + 2 * gap);
  }

  private Change lobuleSuture(LobuleSuture o) {
    List<SurfacePlace> ends =
        List.of(
            places.cauda(o.caudaFromTip_mm()),
            onWall(o.bowlLevel_percent(), o.bowlWall_percent(), 0));
    return new LoopTie(suture(o.name(), o.thread(), ends), o.tie(), (gap, u) -> 2 * gap);
  }

  private Change bolster(Bolster o) {
    List<MaterialPoint> points =
        List.of(
            held(o, -BOLSTER_HALF_LENGTH_MM, Bolster.REACH_MM),
            held(o, BOLSTER_HALF_LENGTH_MM, Bolster.REACH_MM),
            held(o, BOLSTER_HALF_LENGTH_MM, -Bolster.REACH_MM),
            held(o, -BOLSTER_HALF_LENGTH_MM, -Bolster.REACH_MM));
    BodyThread thread =
        BodyThread.pulling(o.name(), Purpose.BOLSTER, points, true, BOLSTER_STIFFNESS_N);
    return new LoopTie(
        thread,
        new Tie.Gap(o.gap_mm()),
        (gap, u) -> thread.distance(0, 1, u) + thread.distance(2, 3, u) + 2 * gap);
  }

  private MaterialPoint held(Bolster o, double along_mm, double offset_mm) {
    return bites.at(places.alongFold(o.level_percent(), along_mm, offset_mm), 0);
  }

  private BodyThread suture(
      String name, String key, List<SurfacePlace> bitten, MaterialPoint... others) {
    Optional<ThreadRow> row = tissue.thread(key);
    double diameter = row.map(ThreadRow::diameter_mm).orElse(0.0);
    List<MaterialPoint> points = new ArrayList<>();
    bitten.forEach(place -> points.add(bites.at(place, diameter)));
    points.addAll(List.of(others));
    if (row.isEmpty()) {
      findings.error(
          name + "/thread",
          "'" + key + "'",
          "one of " + String.join(", ", tissue.threadKeys()),
          "Threads are rows of the material tables.");
      return BodyThread.pulling(name, Purpose.SUTURE, points, true, 1);
    }
    double tear = tissue.bite(row.get().size()).tearThrough_n();
    return BodyThread.suture(name, points, row.get(), tear);
  }
}
