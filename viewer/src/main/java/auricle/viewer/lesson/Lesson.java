package auricle.viewer.lesson;

import java.util.List;

/**
 * A lesson.
 *
 * @param title in a few words
 * @param scenario text of the scenario that it is about
 * @param pages in order
 */
public record Lesson(String title, String scenario, List<Page> pages) {
  /** Keeps its own copy. */
  public Lesson {
    pages = List.copyOf(pages);
  }

  /**
   * One page: what to look at and what is said; with a question, the picture stays as it is until
   * the question is answered.
   *
   * @param show moment of the course: {@code before}, name of a step, {@code tied}, or a time such
   *     as {@code 12 months}
   * @param view clinical view by its name; empty keeps the view
   * @param colours what the colours say, by its name; empty keeps them
   * @param text what is said; after the answer if there is a question
   * @param question what is asked first; empty if nothing is
   * @param choices answers to choose from
   * @param right index of the right one
   */
  public record Page(
      String show,
      String view,
      String colours,
      String text,
      String question,
      List<String> choices,
      int right) {
    /** Keeps its own copy. */
    public Page {
      choices = List.copyOf(choices);
    }

    /** Whether something is asked before it is shown. */
    public boolean asks() {
      return !question.isEmpty();
    }
  }
}
