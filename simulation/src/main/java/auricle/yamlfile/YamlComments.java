package auricle.yamlfile;

import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.comments.CommentType;
import org.snakeyaml.engine.v2.events.CommentEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Comments of a YAML text, which no tree of it holds.
 *
 * @param head lines of comment and empty lines before the first entry, word for word, each with its
 *     end of line; empty if there are none
 * @param among whether there are others, beside or between the entries
 */
public record YamlComments(String head, boolean among) {
  /** Those of a text. Of one that is no YAML nothing is known but that it may have some. */
  public static YamlComments of(String text) {
    String head =
        text.lines()
            .takeWhile(line -> line.isBlank() || line.startsWith("#"))
            .map(line -> line + "\n")
            .collect(Collectors.joining());
    return new YamlComments(head, among(text, head.lines().count()));
  }

  private static boolean among(String text, long firstLine) {
    LoadSettings settings = LoadSettings.builder().setParseComments(true).build();
    try {
      Iterable<Event> events = new Parse(settings).parseString(text);
      return StreamSupport.stream(events.spliterator(), false)
          .anyMatch(event -> isComment(event) && line(event) >= firstLine);
    } catch (YamlEngineException e) {
      return true;
    }
  }

  private static boolean isComment(Event event) {
    return event instanceof CommentEvent c && c.getCommentType() != CommentType.BLANK_LINE;
  }

  private static int line(Event event) {
    return event.getStartMark().map(mark -> mark.getLine()).orElse(0);
  }
}
