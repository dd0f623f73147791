package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What pulls, as a reader is shown it. */
class ThreadStateTest {
  private static ThreadState pulling(String name, boolean suture, double tension_n) {
    double none = Double.POSITIVE_INFINITY;
    double knot_n = suture ? 5.9 : none;
    Position place = new Position(0, 0, 0);
    return new ThreadState(name, suture, tension_n, knot_n, none, false, 4, suture, List.of(place));
  }

  @Test
  void skinAlongAStripIsGatheredAndSuturesOfOneNameAreNot() {
    List<ThreadState> shown =
        ThreadState.gathered(
            List.of(
                pulling("fold", true, 0.3),
                pulling("skin", false, 0.12),
                pulling("skin", false, 0.13),
                pulling("fold", true, 0.2)));
    assertEquals(List.of("fold", "skin", "fold"), shown.stream().map(ThreadState::name).toList());
    assertEquals(0.25, shown.get(1).tension_n(), 1e-12);
    assertEquals(2, shown.get(1).points().size());
    assertEquals(0.2, shown.get(2).tension_n());
  }

  /** A name is the user's: it must not join what it belongs to with anything else. */
  @Test
  void skinIsNotGatheredWithASutureWhateverItsName() {
    List<ThreadState> threads =
        List.of(pulling("fold", true, 0.3), pulling("suture 2", false, 0.1), pulling("0", true, 1));
    assertEquals(threads, ThreadState.gathered(threads));
  }
}
