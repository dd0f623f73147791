package auricle.report;

import java.io.StringWriter;
import java.util.Collection;
import java.util.function.Consumer;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** Writes one JSON object, indented, its keys in the order in which they are given. */
final class JsonText {
  private final JsonGenerator json;

  private JsonText(JsonGenerator json) {
    this.json = json;
  }

  /** The text of an object, with an end of line. */
  static String of(Consumer<JsonText> content) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(pretty(), text)) {
      json.writeStartObject();
      content.accept(new JsonText(json));
      json.writeEndObject();
    }
    return text.append('\n').toString();
  }

  private static ObjectWriteContext pretty() {
    return new ObjectWriteContext.Base() {
      @Override
      public tools.jackson.core.PrettyPrinter getPrettyPrinter() {
        return new DefaultPrettyPrinter()
            .withObjectIndenter(new DefaultIndenter(" ", "\n"))
            .withArrayIndenter(new DefaultIndenter(" ", "\n"));
      }

      @Override
      public boolean hasPrettyPrinter() {
        return true;
      }
    };
  }

  /** Adds a text. */
  void text(String key, String value) {
    json.writeStringProperty(key, value);
  }

  /** Adds true or false. */
  void truth(String key, boolean value) {
    json.writeBooleanProperty(key, value);
  }

  /** Adds a whole number. */
  void count(String key, long value) {
    json.writeNumberProperty(key, value);
  }

  /** Adds a number; JSON has no NaN, so null says that there is none. */
  void number(String key, double value) {
    if (Double.isFinite(value)) {
      json.writeNumberProperty(key, value);
    } else {
      json.writeNullProperty(key);
    }
  }

  /** Adds an object. */
  void object(String key, Consumer<JsonText> content) {
    json.writeObjectPropertyStart(key);
    content.accept(this);
    json.writeEndObject();
  }

  /** Adds a list of texts. */
  void texts(String key, Collection<String> values) {
    json.writeArrayPropertyStart(key);
    values.forEach(json::writeString);
    json.writeEndArray();
  }

  /** Adds a list of numbers; null for what is none. */
  void numbers(String key, Collection<Double> values) {
    json.writeArrayPropertyStart(key);
    for (double value : values) {
      if (Double.isFinite(value)) {
        json.writeNumber(value);
      } else {
        json.writeNull();
      }
    }
    json.writeEndArray();
  }

  /** Adds a list of objects. */
  <T> void objects(String key, Collection<T> items, Consumer<T> content) {
    json.writeArrayPropertyStart(key);
    for (T item : items) {
      json.writeStartObject();
      content.accept(item);
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
