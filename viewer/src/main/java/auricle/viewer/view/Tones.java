package auricle.viewer.view;

import auricle.viewer.scene.Sheet.Tone;
import auricle.viewer.viewmodel.Look.Theme;
import javafx.scene.paint.Color;

/** Colours of drawings and of the three-dimensional picture in each theme. */
final class Tones {
  private Tones() {}

  static Color of(Tone tone, Theme theme) {
    return switch (theme) {
      case LIGHT -> Color.web(light(tone));
      case DARK -> Color.web(dark(tone));
      case CONTRAST -> Color.web(contrast(tone));
    };
  }

  /** What stands behind the ear. */
  static Color backdrop(Theme theme) {
    return switch (theme) {
      case LIGHT -> Color.web("#e4e9e8");
      case DARK -> Color.web("#1a2226");
      case CONTRAST -> Color.BLACK;
    };
  }

  private static String light(Tone tone) {
    return switch (tone) {
      case INK -> "#1d2a2e";
      case FAINT -> "#566468";
      case GRID -> "#cfd7d6";
      case PAPER -> "#ffffff";
      case BEFORE -> "#6d7f9c";
      case NOW -> "#b4451f";
      case YEAR -> "#7d4a94";
      case TARGET -> "#12705f";
      case CAUTION -> "#9a5200";
      case UPPER -> "#12507d";
      case MIDDLE -> "#b4451f";
      case LOWER -> "#6f7d12";
      case LOBULE -> "#7d4a94";
    };
  }

  private static String dark(Tone tone) {
    return switch (tone) {
      case INK -> "#e8eeec";
      case FAINT -> "#a3b1b1";
      case GRID -> "#3b484c";
      case PAPER -> "#222c30";
      case BEFORE -> "#93a7c8";
      case NOW -> "#f08a5d";
      case YEAR -> "#c59bdb";
      case TARGET -> "#55c2ab";
      case CAUTION -> "#f0b054";
      case UPPER -> "#6db3e6";
      case MIDDLE -> "#f08a5d";
      case LOWER -> "#c5d267";
      case LOBULE -> "#c59bdb";
    };
  }

  private static String contrast(Tone tone) {
    return switch (tone) {
      case INK, FAINT -> "#ffffff";
      case GRID -> "#707070";
      case PAPER -> "#000000";
      case BEFORE -> "#9fc4ff";
      case NOW, MIDDLE -> "#ffb000";
      case YEAR, LOBULE -> "#ff9df5";
      case TARGET -> "#3dffcf";
      case CAUTION -> "#ffe100";
      case UPPER -> "#7cc7ff";
      case LOWER -> "#d7ff5c";
    };
  }
}
