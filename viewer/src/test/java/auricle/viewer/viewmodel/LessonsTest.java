package auricle.viewer.viewmodel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.EarMeasurements;
import auricle.plan.EarCase;
import auricle.plan.Plan;
import auricle.plan.Target;
import auricle.plan.TissueChoice;
import auricle.scenario.Scenario;
import auricle.scenario.ScenarioReader;
import auricle.scenario.ScenarioWriter;
import auricle.viewer.store.Recovery;
import auricle.viewer.store.Settings;
import auricle.viewer.task.Rehearsed;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When a lesson begins and when it ends, without a toolkit. */
class LessonsTest {
  private static final Scenario PLAIN =
      Scenario.of(
          "an ear left alone",
          new EarCase(
              EarMeasurements.normalAdult(), TissueChoice.standard(), Plan.of(), Target.usual()));

  private final Showing showing = new Showing(none(), none());

  private static Files files(Path folder) {
    return new Files(
        new Desk(Document.of(PLAIN)),
        new Settings(folder),
        new Recovery(folder),
        ScenarioReader.shipped());
  }

  private Lessons begun(Files files) {
    Lessons lessons = new Lessons(files, showing, v -> {});
    lessons.begin("coupling");
    assertTrue(lessons.at().get().isPresent(), () -> "told: " + files.messages());
    showing.paint().set(Paint.STRAIN);
    return lessons;
  }

  private static ReadOnlyObjectWrapper<Optional<Rehearsed>> none() {
    return new ReadOnlyObjectWrapper<>(Optional.empty());
  }

  @Test
  void anotherScenarioEndsTheLessonAndItsColours(@TempDir Path folder) {
    Files files = files(folder);
    Lessons lessons = begun(files);
    assertTrue(files.openText("plain", ScenarioWriter.text(PLAIN)));
    assertFalse(lessons.at().get().isPresent());
    assertEquals(Paint.SKIN, showing.paint().get());
  }

  @Test
  void aScenarioThatCannotBeReadLeavesTheLessonAlone(@TempDir Path folder) {
    Files files = files(folder);
    Lessons lessons = begun(files);
    assertFalse(files.openText("broken", "format: auricle-scenario/1\nplan: 3\n"));
    assertTrue(lessons.at().get().isPresent());
    assertEquals(Paint.STRAIN, showing.paint().get());
  }

  @Test
  void anotherLessonTakesThePlaceOfTheFirst(@TempDir Path folder) {
    Lessons lessons = begun(files(folder));
    String first = lessons.at().get().orElseThrow().lesson().title();
    lessons.begin("lobule");
    assertNotEquals(first, lessons.at().get().orElseThrow().lesson().title());
  }

  @Test
  void aNewResultWithinAPageLeavesTheViewToTheUser(@TempDir Path folder) throws Exception {
    Desk desk = new Desk(Document.of(PLAIN));
    Files files =
        new Files(desk, new Settings(folder), new Recovery(folder), ScenarioReader.shipped());
    try (Solving solving = new Solving(desk, new StandInRehearser(), Runnable::run)) {
      AtomicInteger views = new AtomicInteger();
      Showing shown = new Showing(solving.result(), solving.foreseen());
      Lessons lessons = new Lessons(files, shown, v -> views.incrementAndGet());
      lessons.begin("lobule");
      assertTrue(solving.settle(20_000));
      int atFirst = views.get();
      shown.show(0);
      shown.paint().set(Paint.STRESS);
      solving.again(desk.document().get().ear());
      assertTrue(solving.settle(20_000));
      assertEquals(atFirst, views.get());
      assertEquals(0, shown.index());
      assertEquals(Paint.STRESS, shown.paint().get());
      lessons.turn(1);
      assertEquals(atFirst + 1, views.get());
    }
  }
}
