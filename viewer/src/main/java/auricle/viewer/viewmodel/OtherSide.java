package auricle.viewer.viewmodel;

import auricle.plan.EarCase;
import auricle.scenario.ScenarioEar;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.task.Rehearser;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The other ear of a pair, worked out to the end of its plan while both are looked at. A scenario
 * of one ear has none.
 */
public final class OtherSide implements AutoCloseable {
  private final Desk desk;
  private final Supplier<Rehearser> rehearsers;
  private final Executor screen;
  private final ReadOnlyObjectWrapper<Optional<Rehearsed>> result =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private Optional<Solving> solving = Optional.empty();
  private Optional<Desk> shadow = Optional.empty();
  private boolean looked;

  /**
   * @param rehearsers make what computes; asked once, when a second ear is first looked at
   * @param screen runs what changes properties
   */
  public OtherSide(Desk desk, Supplier<Rehearser> rehearsers, Executor screen) {
    this.desk = desk;
    this.rehearsers = rehearsers;
    this.screen = screen;
    desk.document().addListener(o -> follow());
  }

  /** The other ear's result; empty while there is none. */
  public ReadOnlyObjectProperty<Optional<Rehearsed>> result() {
    return result.getReadOnlyProperty();
  }

  /** Says whether both ears are looked at. */
  public void look(boolean now) {
    looked = now;
    follow();
  }

  private void follow() {
    Optional<EarCase> other = other();
    if (other.isEmpty()) {
      result.set(Optional.empty());
    } else if (looked) {
      work(other.orElseThrow());
    }
  }

  /** The ear of the pair that is not on the desk. */
  public Optional<EarCase> other() {
    Document now = desk.document().get();
    return now.scenario().ears().stream()
        .map(ScenarioEar::ear)
        .filter(e -> e.ear().side() != now.ear().ear().side())
        .findFirst();
  }

  private void work(EarCase ear) {
    Document document = Document.of(auricle.scenario.Scenario.of("", ear));
    if (shadow.isPresent()) {
      shadow.orElseThrow().lay(document, false);
      return;
    }
    Desk made = new Desk(document);
    Solving begun = new Solving(made, rehearsers.get(), screen);
    shadow = Optional.of(made);
    solving = Optional.of(begun);
    begun.result().addListener((o, was, now) -> result.set(now.filter(r -> other().isPresent())));
  }

  /** Waits until it is worked out; for tests and scripts. */
  public boolean settle(long milliseconds) throws InterruptedException {
    return solving.isEmpty() || solving.orElseThrow().settle(milliseconds);
  }

  @Override
  public void close() {
    solving.ifPresent(Solving::close);
  }
}
