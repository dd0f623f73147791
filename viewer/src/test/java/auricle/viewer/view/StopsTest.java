package auricle.viewer.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.EarMeasurements;
import auricle.plan.EarCase;
import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.plan.Target;
import auricle.plan.TissueChoice;
import auricle.rehearsal.RehearsalWatcher;
import auricle.viewer.scene.Sheet.Hold;
import auricle.viewer.scene.Sheet.Tone;
import auricle.viewer.scene.Sheet.Words;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.viewmodel.Kind;
import auricle.viewer.viewmodel.StandInRehearser;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class StopsTest {
  private static final double EM = 12;
  private static final double HEIGHT = 18;

  private static List<Moment> course(int steps) {
    Operation[] all =
        IntStream.range(0, steps)
            .mapToObj(i -> Kind.FOLD_SUTURE.usual("suture " + (i + 1)))
            .toArray(Operation[]::new);
    EarCase ear =
        new EarCase(
            EarMeasurements.normalAdult(), TissueChoice.standard(), Plan.of(all), Target.usual());
    StandInRehearser rehearser = new StandInRehearser();
    Rehearsed tied = rehearser.tied(ear, RehearsalWatcher.SILENT, p -> {}).orElseThrow();
    return rehearser.overAYear(tied, 0, RehearsalWatcher.SILENT).orElseThrow().course();
  }

  private static List<Words> names(List<Moment> course, int shown, double width) {
    return Stops.draw(course, shown, width, HEIGHT, EM).marks().stream()
        .map(Words.class::cast)
        .toList();
  }

  private static List<String> texts(List<Words> names) {
    return names.stream().map(Words::text).toList();
  }

  @Test
  void whereThereIsRoomEveryMomentIsNamed() {
    List<Moment> course = course(3);
    List<String> texts = texts(names(course, 0, 3000));
    assertEquals(course.size(), texts.size(), texts.toString());
    assertTrue(texts.containsAll(List.of("before", "step 1", "step 2", "step 3")));
  }

  @Test
  void theMomentShownIsNamedHoweverNarrowItIs() {
    List<Moment> course = course(9);
    for (int shown = 0; shown < course.size(); shown++) {
      for (int width = 150; width < 1000; width += 50) {
        List<Words> now =
            names(course, shown, width).stream().filter(w -> w.tone() == Tone.NOW).toList();
        assertEquals(1, now.size(), shown + " in " + width);
        String label = course.get(shown).healed() ? course.get(shown).label() : "step " + shown;
        assertEquals(shown == 0 ? "before" : label, now.get(0).text());
        assertTrue(now.get(0).bold());
      }
    }
  }

  @Test
  void namesLieOnTheSheetAndApart() {
    List<Moment> course = course(9);
    for (int shown = 0; shown < course.size(); shown++) {
      for (int width = 250; width < 1000; width += 50) {
        List<Words> names =
            names(course, shown, width).stream()
                .sorted((a, b) -> Double.compare(left(a), left(b)))
                .toList();
        assertTrue(left(names.get(0)) >= 0, names.toString());
        for (int i = 1; i < names.size(); i++) {
          assertTrue(right(names.get(i - 1)) + EM / 2 < left(names.get(i)), names.toString());
        }
        assertTrue(right(names.get(names.size() - 1)) <= width, names.toString());
      }
    }
  }

  @Test
  void thereIsNothingToNameWhereThereIsNothing() {
    assertTrue(names(List.of(), 0, 400).isEmpty());
  }

  private static double width(Words w) {
    return 0.48 * EM * w.text().length();
  }

  private static double left(Words w) {
    double back = w.hold() == Hold.LEFT ? 0 : w.hold() == Hold.RIGHT ? 1 : 0.5;
    return w.at().x() - back * width(w);
  }

  private static double right(Words w) {
    return left(w) + width(w);
  }
}
