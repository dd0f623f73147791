package auricle.viewer.viewmodel;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.viewer.lesson.Lesson;
import auricle.viewer.lesson.LessonReader;
import auricle.viewer.scene.ClinicalView;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** A lesson being given: which page, whether its question has been answered. */
public final class Lessons {
  /**
   * Where a lesson stands.
   *
   * @param lesson that is given
   * @param page index of the page
   * @param answer index of the answer given; empty if none was given yet
   */
  public record At(Lesson lesson, int page, OptionalInt answer) {
    /** The page. */
    public Lesson.Page current() {
      return lesson.pages().get(page);
    }

    /** Whether the picture of the page is still held back by its question. */
    public boolean waits() {
      return current().asks() && answer.isEmpty();
    }

    /** Whether the answer was the right one. */
    public boolean answeredRightly() {
      return answer.isPresent() && answer.getAsInt() == current().right();
    }
  }

  private final Files files;
  private final Showing showing;
  private final Consumer<ClinicalView> view;

  /** Whether the page's moment has still to be shown. */
  private boolean pending;

  private final LessonReader reader = new LessonReader();
  private final ReadOnlyObjectWrapper<Optional<At>> at =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  /** Lessons are laid out by files and shown through the others. */
  public Lessons(Files files, Showing showing, Consumer<ClinicalView> view) {
    this.files = files;
    this.showing = showing;
    this.view = view;
    files.whenLaid(this::leave);
    showing.result().addListener((o, was, now) -> moment());
  }

  /** Where the lesson stands; empty if none is given. */
  public ReadOnlyObjectProperty<Optional<At>> at() {
    return at.getReadOnlyProperty();
  }

  /** Begins a lesson that comes with the program. */
  public void begin(String shippedName) {
    try {
      begin(reader.read(shippedName));
    } catch (BadInputException e) {
      files.say(e.findings().stream().map(Finding::line).toList());
    }
  }

  /** Begins a lesson from a file. */
  public void begin(Path file) {
    try {
      begin(reader.read(file));
    } catch (BadInputException e) {
      files.say(e.findings().stream().map(Finding::line).toList());
    }
  }

  private void begin(Lesson lesson) {
    if (files.openText(lesson.title(), lesson.scenario())) {
      at.set(Optional.of(new At(lesson, 0, OptionalInt.empty())));
      show();
    }
  }

  /** Ends the lesson; its scenario stays on the desk. */
  public void end() {
    at.set(Optional.empty());
  }

  /** Another scenario comes onto the desk: the lesson ends, and its colours with it. */
  private void leave() {
    if (at.get().isPresent()) {
      end();
      showing.paint().set(Paint.SKIN);
    }
  }

  /** On to another page: +1 or −1. */
  public void turn(int by) {
    at.get()
        .ifPresent(
            a -> {
              int page = Math.max(0, Math.min(a.lesson().pages().size() - 1, a.page() + by));
              at.set(Optional.of(new At(a.lesson(), page, OptionalInt.empty())));
              show();
            });
  }

  /** Answers the page's question. */
  public void answer(int choice) {
    at.get()
        .filter(At::waits)
        .ifPresent(
            a -> {
              at.set(Optional.of(new At(a.lesson(), a.page(), OptionalInt.of(choice))));
              show();
            });
  }

  /** Shows what the page is about, unless its question holds that back. */
  private void show() {
    at.get()
        .ifPresent(
            a -> {
              look(a.current());
              pending = true;
              moment();
            });
  }

  private void look(Lesson.Page page) {
    java.util.Arrays.stream(ClinicalView.values())
        .filter(v -> v.label().toLowerCase(Locale.ROOT).equals(page.view()))
        .findFirst()
        .ifPresent(view);
    if (!page.colours().isEmpty()) {
      showing.paint().set(paint(page.colours()));
    }
  }

  /** Shows the page's moment until it is there; after that the user goes where they like. */
  private void moment() {
    at.get()
        .filter(a -> pending && !a.waits() && !a.current().show().isEmpty())
        .flatMap(a -> index(a.current().show()))
        .ifPresent(
            i -> {
              showing.show(i);
              pending = !showing.result().get().map(Rehearsed::whole).orElse(false);
            });
  }

  private static Paint paint(String word) {
    return word.equals("change") ? Paint.STEP_CHANGE : Paint.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private Optional<Integer> index(String words) {
    List<Moment> course = showing.result().get().map(Rehearsed::course).orElse(List.of());
    if (words.equals("tied")) {
      return Optional.of(showing.result().get().map(r -> r.steps().size() - 1).orElse(0));
    }
    for (int i = 0; i < course.size(); i++) {
      if (course.get(i).label().equals(words)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }
}
