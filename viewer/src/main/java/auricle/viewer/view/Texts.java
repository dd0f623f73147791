package auricle.viewer.view;

import auricle.viewer.viewmodel.Look;
import java.util.Locale;
import javafx.scene.control.Label;

/** Sizes and forms of text. */
final class Texts {
  /** Font of all text. */
  static final String FAMILY = "System";

  private static final double USUAL_PX = 13;

  private Texts() {}

  /** Height of a line of text at the present size, pixels. */
  static double em(Look look) {
    return USUAL_PX * look.textScale().get();
  }

  /** A number with its unit; an en dash for what is not known. */
  static String number(double value, String unit) {
    if (!Double.isFinite(value)) {
      return "–";
    }
    double shown = Math.abs(value) < 0.05 ? 0 : value;
    return switch (unit) {
      case "deg" -> String.format(Locale.ROOT, "%.0f°", shown);
      case "" -> String.format(Locale.ROOT, "%.2f", value);
      default -> String.format(Locale.ROOT, "%.1f", shown);
    };
  }

  /** A label of a style. */
  static Label label(String words, String... styles) {
    Label label = new Label(words);
    label.getStyleClass().addAll(styles);
    return label;
  }

  /** A label that breaks its lines. */
  static Label paragraph(String words, String... styles) {
    Label label = label(words, styles);
    label.setWrapText(true);
    label.setMinHeight(javafx.scene.layout.Region.USE_PREF_SIZE);
    return label;
  }

  /** With its first letter in upper case. */
  static String upper(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
