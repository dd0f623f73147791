package auricle.viewer.view;

import auricle.viewer.scene.ClinicalView;
import auricle.viewer.viewmodel.Showing;
import java.util.function.Consumer;
import javafx.event.EventHandler;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;

/** Keys that hold anywhere but where text is written: views, moments, running through them. */
final class Shortcuts implements EventHandler<KeyEvent> {
  private final Showing showing;
  private final TimeBar time;
  private final Consumer<ClinicalView> fly;

  Shortcuts(Showing showing, TimeBar time, Consumer<ClinicalView> fly) {
    this.showing = showing;
    this.time = time;
    this.fly = fly;
  }

  @Override
  public void handle(KeyEvent e) {
    if (e.getTarget() instanceof TextInputControl || e.isShortcutDown() || e.isAltDown()) {
      return;
    }
    for (ClinicalView v : ClinicalView.values()) {
      if (e.getText().equals(Integer.toString(v.digit()))) {
        fly.accept(v);
        e.consume();
      }
    }
    switch (e.getText()) {
      case "," -> showing.step(-1);
      case "." -> showing.step(1);
      case "p", "P" -> time.toggle();
      default -> {}
    }
  }
}
