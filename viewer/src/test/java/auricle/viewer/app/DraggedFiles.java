package auricle.viewer.app;

import java.io.File;
import java.lang.reflect.Constructor;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.List;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.Scene;
import javafx.scene.input.DataFormat;
import javafx.scene.input.DragEvent;
import javafx.scene.input.Dragboard;
import javafx.scene.input.TransferMode;

/** Files that are dragged onto a window from another program: its events, with a stand-in board. */
final class DraggedFiles {
  private final Dragboard board;

  private DraggedFiles(Path file) throws ReflectiveOperationException {
    List<File> files = List.of(file.toFile());
    Constructor<?> made = Dragboard.class.getDeclaredConstructors()[0];
    made.setAccessible(true);
    Class<?> clipboard = made.getParameterTypes()[0];
    Object peer =
        Proxy.newProxyInstance(
            clipboard.getClassLoader(),
            new Class<?>[] {clipboard},
            (self, method, of) ->
                switch (method.getName()) {
                  case "hasContent" -> DataFormat.FILES.equals(of[0]);
                  case "getContent" -> DataFormat.FILES.equals(of[0]) ? files : null;
                  default -> null;
                });
    board = (Dragboard) made.newInstance(peer);
  }

  /** Moves a file over a window and lets go; on the screen's thread. */
  static void drop(Path file, Scene scene) {
    try {
      DraggedFiles dragged = new DraggedFiles(file);
      Event.fireEvent(scene, dragged.event(DragEvent.DRAG_OVER));
      Event.fireEvent(scene, dragged.event(DragEvent.DRAG_DROPPED));
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private DragEvent event(EventType<DragEvent> type) {
    return new DragEvent(type, board, 400, 300, 400, 300, TransferMode.COPY, null, null, null);
  }
}
