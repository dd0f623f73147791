package auricle.viewer.view;

import auricle.viewer.viewmodel.Look;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.layout.Region;

/**
 * Whether a part of the window is too small, for the size of text, for all that stands in it: then
 * what is also found elsewhere gives way to the ear.
 */
final class Room {
  private static final double LOW_EM = 36;
  private static final double NARROW_EM = 30;

  private final BooleanBinding low;
  private final BooleanBinding narrow;

  Room(Region part, Look look) {
    low = smaller(part.heightProperty(), look, LOW_EM);
    narrow = smaller(part.widthProperty(), look, NARROW_EM);
  }

  private static BooleanBinding smaller(
      javafx.beans.value.ObservableDoubleValue size, Look look, double than_em) {
    return Bindings.createBooleanBinding(
        () -> size.get() > 0 && size.get() < than_em * Texts.em(look), size, look.textScale());
  }

  /** Little height. */
  BooleanBinding low() {
    return low;
  }

  /** Little width. */
  BooleanBinding narrow() {
    return narrow;
  }
}
