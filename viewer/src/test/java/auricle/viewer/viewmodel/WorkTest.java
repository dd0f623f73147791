package auricle.viewer.viewmodel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.EarMeasurements;
import auricle.plan.EarCase;
import auricle.plan.FoldSuture;
import auricle.plan.Plan;
import auricle.plan.Target;
import auricle.plan.TissueChoice;
import auricle.rehearsal.RehearsalWatcher;
import auricle.scenario.Scenario;
import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.Spot;
import auricle.viewer.task.EarMap.OnTriangle;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.task.Rehearsed.Reach;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The view models on a stand-in solver, without a toolkit. */
class WorkTest {
  private final Desk desk = new Desk(document());
  private final PlanSteps steps = new PlanSteps(desk);

  private static Document document() {
    Plan plan = Plan.of(Kind.SCORING.usual("scoring"), Kind.FOLD_SUTURE.usual("upper suture"));
    return Document.of(
        Scenario.of(
            "test",
            new EarCase(
                EarMeasurements.normalAdult(), TissueChoice.standard(), plan, Target.usual())));
  }

  @Test
  void theFirstSutureIsWorkedOn() {
    assertEquals("upper suture", steps.operation().orElseThrow().name());
  }

  @Test
  void aTurnedControlIsUndoneAsOneChange() {
    for (int i = 1; i <= 20; i++) {
      steps.turn("tension_n", 0.3 + 0.01 * i);
    }
    steps.endTurn();
    steps.turn("tension_n", 0.9);
    assertEquals(0.9, tension());
    desk.undo();
    assertEquals(0.5, tension(), 1e-12);
    desk.undo();
    assertEquals(0.3, tension());
    assertFalse(desk.canUndo().get());
    desk.redo();
    assertEquals(0.5, tension(), 1e-12);
  }

  private double tension() {
    return steps.operation().orElseThrow().dose("tension_n").value();
  }

  @Test
  void aDoseIsHeldWithinItsBounds() {
    steps.turn("tension_n", 1000);
    assertEquals(steps.operation().orElseThrow().dose("tension_n").high(), tension());
  }

  /** Reports far more than anyone can read, and waits before its last words. */
  private static final class Talkative extends StandInRehearser {
    static final int ROUNDS = 5000;

    @Override
    public Optional<Rehearsed> atOnce(
        EarCase ear, RehearsalWatcher watcher, Consumer<Rehearsed> foreseen) {
      for (int i = 0; i < ROUNDS; i++) {
        watcher.progress("round " + i, 0.5);
      }
      try {
        Thread.sleep(400);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
      watcher.progress("the last round", 0.5);
      return super.atOnce(ear, watcher, foreseen);
    }
  }

  /** Keeps the words. */
  private record Heard(List<String> said) implements Pass.Screen {
    @Override
    public void show(Rehearsed result, boolean more) {}

    @Override
    public void foresee(Optional<Rehearsed> end) {}

    @Override
    public void tell(EarCase ear, Work work) {
      said.add(work.words());
    }
  }

  @Test
  void progressIsToldSeldomerThanTheSolverReportsIt() {
    List<String> said = Collections.synchronizedList(new ArrayList<>());
    EarCase ear = desk.document().get().ear();
    Pass pass = new Pass(new Talkative(), ear, Optional.empty(), new Heard(said));
    pass.run(Optional.empty(), () -> false);
    long rounds = said.stream().filter(w -> w.contains("round ")).count();
    assertTrue(rounds < Talkative.ROUNDS / 10, rounds + " times");
    assertTrue(said.stream().anyMatch(w -> w.contains("the last round")), said.toString());
  }

  @Test
  void aThousandChangesCanAllBeUndone() {
    for (int i = 0; i < 1000; i++) {
      steps.turn("tension_n", 0.3 + 0.001 * (i + 1));
      steps.endTurn();
    }
    int undone = 0;
    while (desk.canUndo().get()) {
      desk.undo();
      undone++;
    }
    assertEquals(1000, undone);
    assertEquals(0.3, tension());
  }

  @Test
  void stepsAreAddedMovedLeftOutAndRemoved() {
    steps.add(Kind.BOWL_STRIP);
    assertEquals(List.of("scoring", "upper suture", "Bowl strip"), names());
    steps.move(-1);
    assertEquals(List.of("scoring", "Bowl strip", "upper suture"), names());
    steps.enable(0, false);
    assertEquals(2, steps.plan().get().enabled().size());
    steps.remove();
    assertEquals(List.of("scoring", "upper suture"), names());
    steps.add(Kind.FOLD_SUTURE);
    steps.add(Kind.FOLD_SUTURE);
    assertTrue(names().containsAll(List.of("Fold suture", "Fold suture 2")));
  }

  private List<String> names() {
    return steps.plan().get().operations().stream().map(o -> o.name()).toList();
  }

  @Test
  void whatIsWrongWithAStepIsSaidInASentence() {
    steps.turn(List.of("scapha_upper_from_fold_mm"), List.of(-2.0), "");
    List<String> findings = steps.findings(1);
    assertTrue(findings.stream().anyMatch(f -> f.contains("both sides of the fold line")));
  }

  @Test
  void everyKindOfStepIsValidAsItIsAdded() {
    for (Kind kind : Kind.values()) {
      var errors = kind.usual("step").findings("").stream().filter(f -> f.isError()).toList();
      assertEquals(List.of(), errors, kind.label());
    }
  }

  @Test
  void theLatestChangeIsWhatIsShownAndTheYearFollows() throws InterruptedException {
    try (Solving solving = new Solving(desk, new StandInRehearser(), Runnable::run)) {
      Showing showing = new Showing(solving.result(), solving.foreseen());
      for (int i = 0; i < 50; i++) {
        steps.turn("tension_n", 0.3 + 0.01 * i);
      }
      assertTrue(solving.settle(20_000));
      assertEquals(Work.State.AT_REST, solving.work().get().state());
      Rehearsed r = solving.result().get().orElseThrow();
      assertEquals(desk.document().get().ear(), r.ear());
      assertEquals("upper suture", showing.moment().get().orElseThrow().label());
      showing.show(r.course().size() - 1);
      assertEquals("12 months", showing.moment().get().orElseThrow().label());
      steps.add(Kind.SKIN_STRIP);
      assertTrue(solving.settle(20_000));
      assertEquals("12 months", showing.moment().get().orElseThrow().label());
    }
  }

  @Test
  void aTurnIsShownAtItsEndFirstThenAtEveryStepThenOverTheYear() throws InterruptedException {
    List<String> seen = new ArrayList<>();
    try (Solving solving = new Solving(desk, new StandInRehearser(), Runnable::run)) {
      assertTrue(solving.settle(20_000));
      solving.result().addListener((o, was, now) -> seen.add(now.orElseThrow().reach().name()));
      solving.work().addListener((o, was, now) -> seen.add(now.words()));
      steps.turn("tension_n", 0.9);
      assertTrue(solving.settle(20_000));
    }
    assertEquals(
        List.of(
            "Working out the plan; the picture is of the one before: working out the ear …",
            "END",
            "Tied, at rest; working out the steps between …",
            "STEPS",
            "Tied, at rest; working out the year …",
            "YEAR",
            "At rest: every force is balanced"),
        seen);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void whatIsForeseenIsDrawnAndSaidNotToBeAtRest(boolean found) throws InterruptedException {
    List<String> seen = new ArrayList<>();
    try (Solving solving = new Solving(desk, new Farsighted(found), Runnable::run)) {
      assertTrue(solving.settle(20_000));
      Showing showing = new Showing(solving.result(), solving.foreseen());
      showing
          .seen()
          .addListener((o, was, now) -> seen.add(now.orElseThrow().result().reach().name()));
      solving.work().addListener((o, was, now) -> seen.add(now.words()));
      steps.turn("tension_n", 0.9);
      assertTrue(solving.settle(20_000));
      assertTrue(solving.foreseen().get().isEmpty());
    }
    assertEquals("FORESEEN", seen.get(1));
    assertEquals("Foreseen, not at rest; figures are older …", seen.get(2));
    assertEquals(
        found ? "END" : "YEAR", seen.get(3), "the ear before the turn, if no rest is found");
    assertEquals("At rest: every force is balanced", seen.get(seen.size() - 1));
  }

  @Test
  void whatIsForeseenOfTheEndIsNotDrawnInPlaceOfAnotherMoment() throws InterruptedException {
    List<Moment> drawn = new ArrayList<>();
    try (Solving solving = new Solving(desk, new Farsighted(true), Runnable::run)) {
      assertTrue(solving.settle(20_000));
      Showing showing = new Showing(solving.result(), solving.foreseen());
      showing.show(0);
      showing.seen().addListener((o, was, now) -> drawn.add(now.orElseThrow().moment()));
      steps.turn("tension_n", 0.9);
      assertTrue(solving.settle(20_000));
    }
    assertFalse(drawn.isEmpty());
    assertTrue(drawn.stream().allMatch(m -> m.label().equals("before")), drawn.toString());
  }

  @Test
  void aStepLeftOutIsShownStepByStepAndSaidToBeOnTheWay() throws InterruptedException {
    List<String> seen = new ArrayList<>();
    steps.add(Kind.FOLD_SUTURE);
    try (Solving solving = new Solving(desk, new StandInRehearser(), Runnable::run)) {
      Showing showing = new Showing(solving.result(), solving.foreseen());
      assertTrue(solving.settle(20_000));
      showing.moment().addListener((o, was, now) -> seen.add(now.orElseThrow().label()));
      solving.work().addListener((o, was, now) -> seen.add(now.words()));
      steps.enable(0, false);
      assertTrue(solving.settle(20_000));
    }
    String doing = "Working out the plan; the picture is of the one before: working out the ear …";
    assertEquals(
        List.of(
            doing,
            "upper suture",
            "1 of 2 steps at rest, as far as “upper suture”; working out the rest …",
            "Fold suture"),
        seen.subList(0, 4));
    assertEquals("At rest: every force is balanced", seen.get(seen.size() - 1));
  }

  @Test
  void stepsBetweenAreNotSaidToBeOfAPlanWhoseEndAloneWasFollowed() throws InterruptedException {
    List<Boolean> current = new ArrayList<>();
    try (Solving solving = new Solving(desk, new StandInRehearser(), Runnable::run)) {
      assertTrue(solving.settle(20_000));
      solving
          .result()
          .addListener(
              (o, was, now) ->
                  now.filter(r -> r.reach() == Reach.END)
                      .ifPresent(r -> r.steps().forEach(m -> current.add(r.current(m)))));
      steps.turn("tension_n", 0.9);
      assertTrue(solving.settle(20_000));
    }
    assertEquals(List.of(true, false, true), current);
  }

  @Test
  void reactionsAreWorkedOutWhenAskedForAndGoneWithTheNextChange() throws InterruptedException {
    try (Solving solving = new Solving(desk, new StandInRehearser(), Runnable::run)) {
      Reactions reactions = new Reactions(solving);
      assertTrue(solving.settle(20_000));
      assertTrue(reactions.shown().get().list().isEmpty());
      reactions.work();
      assertTrue(solving.settle(20_000));
      Reactions.Shown shown = reactions.shown().get();
      assertTrue(shown.list().stream().allMatch(r -> r.operation().equals("upper suture")));
      assertTrue(shown.idle().stream().allMatch(w -> w.startsWith("scoring: ")));
      assertEquals(Reach.YEAR, solving.result().get().orElseThrow().reach());
      steps.turn("tension_n", 0.9);
      assertTrue(solving.settle(20_000));
      assertTrue(reactions.shown().get().list().isEmpty());
    }
  }

  @Test
  void theSpreadIsWorkedOutWhenAskedFor() throws InterruptedException {
    try (Solving solving = new Solving(desk, new StandInRehearser(), Runnable::run)) {
      assertTrue(solving.settle(20_000));
      assertTrue(solving.result().get().orElseThrow().bands().isEmpty());
      List<String> words = new ArrayList<>();
      solving.work().addListener((o, was, now) -> words.add(now.words()));
      solving.ask(new Solving.Extra.Spread(20));
      assertTrue(solving.settle(20_000));
      assertFalse(solving.result().get().orElseThrow().bands().isEmpty());
      assertTrue(words.stream().anyMatch(w -> w.contains("tissue sample 1 of 20")));
      assertEquals(Work.State.AT_REST, solving.work().get().state());
    }
  }

  @Test
  void whatIsNotAtRestIsNeverSaidToBe() throws InterruptedException {
    StandInRehearser stubborn = new StandInRehearser();
    stubborn.converges(false);
    try (Solving solving = new Solving(desk, stubborn, Runnable::run)) {
      assertTrue(solving.settle(20_000));
      assertEquals(Work.State.NOT_AT_REST, solving.work().get().state());
      assertFalse(solving.work().get().reasons().isEmpty());
    }
  }

  @Test
  void aBiteLetGoOnItsOwnPlaceStaysThere() throws InterruptedException {
    try (Solving solving = new Solving(desk, new StandInRehearser(), Runnable::run)) {
      assertTrue(solving.settle(20_000));
      Rehearsed r = solving.result().get().orElseThrow();
      EarSurface rest = r.before().surface();
      Handle handle = Marks.handles(steps.plan().get(), 1).get(0);
      OnTriangle wanted = r.map().besideFold(60, 3);
      Spot goal = rest.place(wanted.triangle(), wanted.w1(), wanted.w2());
      Handle moved =
          new Drag(r.map(), rest, handle).to(wanted.triangle(), wanted.w1(), wanted.w2());
      OnTriangle found = moved.place(r.map());
      assertTrue(rest.place(found.triangle(), found.w1(), found.w2()).distance(goal) < 0.1);
    }
  }

  @Test
  void theBalanceSaysHowFarOutsideTheTargetALevelIs() throws InterruptedException {
    FoldSuture loose = (FoldSuture) steps.operation().orElseThrow();
    assertEquals("upper suture", loose.name());
    try (Solving solving = new Solving(desk, new StandInRehearser(), Runnable::run)) {
      assertTrue(solving.settle(20_000));
      Rehearsed r = solving.result().get().orElseThrow();
      BalanceRow upper = Balance.rows(r, r.before()).get(0);
      assertEquals("+8.0", upper.verdict());
      assertFalse(upper.met());
      assertEquals(2, ChangeTable.rows(r).size());
    }
  }

  @Test
  void endsOfLegendsAreRoundNumbers() {
    assertEquals(15, FieldScale.roundUp(12.3), 1e-12);
    assertEquals(0.03, FieldScale.roundUp(0.0299), 1e-12);
    assertEquals(1, FieldScale.roundUp(0));
  }

  @Test
  void theScaleOfAFieldIsFoundOnceForAResult() {
    StandInRehearser rehearser = new StandInRehearser();
    EarCase ear = document().ear();
    Rehearsed one = rehearser.tied(ear, RehearsalWatcher.SILENT, p -> {}).orElseThrow();
    Rehearsed other = rehearser.tied(ear, RehearsalWatcher.SILENT, p -> {}).orElseThrow();
    FieldScales scales = new FieldScales();
    FieldScale strain = scales.of(one, Paint.STRAIN);
    assertEquals(FieldScale.of(one, Paint.STRAIN), strain);
    scales.of(one, Paint.STRESS);
    assertSame(strain, scales.of(one, Paint.STRAIN));
    assertNotSame(strain, scales.of(other, Paint.STRAIN));
  }
}
