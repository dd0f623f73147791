package auricle.viewer.viewmodel;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;

/** How the screens look: colours, size of text, full screen. */
public final class Look {
  /** Sets of colours. */
  public enum Theme {
    /** Dark text on light ground. */
    LIGHT("Light"),
    /** Light text on dark ground. */
    DARK("Dark"),
    /** Black, white and few strong colours. */
    CONTRAST("High contrast");

    private final String label;

    Theme(String label) {
      this.label = label;
    }

    /** As shown. */
    public String label() {
      return label;
    }
  }

  private static final double SMALLEST = 0.8;
  private static final double LARGEST = 2.2;

  private final ObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.LIGHT);
  private final DoubleProperty textScale = new SimpleDoubleProperty(1);
  private final BooleanProperty fullScreen = new SimpleBooleanProperty();

  /** Set of colours. */
  public ObjectProperty<Theme> theme() {
    return theme;
  }

  /** Size of text over the usual. */
  public DoubleProperty textScale() {
    return textScale;
  }

  /** Whether the window fills the screen. */
  public BooleanProperty fullScreen() {
    return fullScreen;
  }

  /** Makes text larger (above 1) or smaller. */
  public void scaleText(double factor) {
    textScale.set(Math.max(SMALLEST, Math.min(LARGEST, textScale.get() * factor)));
  }
}
