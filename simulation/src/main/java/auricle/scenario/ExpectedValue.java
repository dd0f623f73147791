package auricle.scenario;

import auricle.measurement.Figure;
import java.util.OptionalDouble;

/** The number that an expectation means, read from a course. */
final class ExpectedValue {
  private static final double PERCENT = 100;

  private final Expectation expectation;

  ExpectedValue(Expectation expectation) {
    this.expectation = expectation;
  }

  /** The number, in {@link #unit()}; empty if the course does not have it. */
  OptionalDouble in(Course course) {
    return switch (expectation.kind()) {
      case FIGURE, CHANGE ->
          expectation.over().isEmpty() ? plain(course, subject()) : ratio(course);
      case LOSS -> loss(course);
      case TENSION -> course.tension(expectation.subject(), expectation.to());
    };
  }

  /** Its unit; empty if it has none. */
  String unit() {
    return switch (expectation.kind()) {
      case FIGURE, CHANGE -> expectation.over().isEmpty() ? subject().unit() : "";
      case LOSS -> "%";
      case TENSION -> "N";
    };
  }

  /** What is meant, in words. */
  String words() {
    String subject =
        expectation.kind() == Expectation.Kind.TENSION
            ? "tension of '" + expectation.subject() + "'"
            : subject().label();
    String over =
        expectation.over().isEmpty() ? "" : " divided by " + figure(expectation.over()).label();
    return switch (expectation.kind()) {
      case FIGURE, TENSION -> subject + over + ", " + expectation.to().said();
      case LOSS -> "lost correction of " + subject + ", " + expectation.to().words();
      case CHANGE ->
          "change of %s%s, from %s to %s"
              .formatted(subject, over, expectation.from().said(), expectation.to().said());
    };
  }

  private Figure subject() {
    return figure(expectation.subject());
  }

  private static Figure figure(String key) {
    return Figure.ofKey(key).orElseThrow(() -> new IllegalStateException("no figure " + key));
  }

  private OptionalDouble plain(Course course, Figure figure) {
    OptionalDouble end = course.figure(figure, expectation.to());
    if (expectation.kind() == Expectation.Kind.FIGURE) {
      return end;
    }
    OptionalDouble start = course.figure(figure, expectation.from());
    return start.isPresent() && end.isPresent()
        ? OptionalDouble.of(end.getAsDouble() - start.getAsDouble())
        : OptionalDouble.empty();
  }

  private OptionalDouble ratio(Course course) {
    OptionalDouble above = plain(course, subject());
    OptionalDouble below = plain(course, figure(expectation.over()));
    return above.isPresent() && below.isPresent()
        ? OptionalDouble.of(above.getAsDouble() / below.getAsDouble())
        : OptionalDouble.empty();
  }

  /** (p(t) − p(tied)) / (p(before) − p(tied)), %. */
  private OptionalDouble loss(Course course) {
    OptionalDouble before = course.figure(subject(), Moment.BEFORE);
    OptionalDouble tied = course.figure(subject(), Moment.AFTER);
    OptionalDouble then = course.figure(subject(), expectation.to());
    if (before.isEmpty() || tied.isEmpty() || then.isEmpty()) {
      return OptionalDouble.empty();
    }
    double correction = before.getAsDouble() - tied.getAsDouble();
    return OptionalDouble.of(PERCENT * (then.getAsDouble() - tied.getAsDouble()) / correction);
  }
}
