package auricle.viewer.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckBox;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Spinner;
import javafx.stage.Stage;

/**
 * The program as users start it, its controls worked by lines on standard input: {@code press ID},
 * {@code type ID NUMBER}, {@code read ID}, {@code choose ITEM} of the menus, {@code title}. Each is
 * answered by itself, a colon and what is there afterwards.
 */
final class ViewerOnOrders {
  private static final int TRIES = 600;

  private ViewerOnOrders() {}

  /** The arguments of {@link Launcher}. */
  public static void main(String[] arguments) {
    Thread orders = new Thread(ViewerOnOrders::listen, "orders");
    orders.setDaemon(true);
    orders.start();
    Launcher.main(arguments);
  }

  private static void listen() {
    try (BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))) {
      for (String line = in.readLine(); line != null; line = in.readLine()) {
        System.out.println(line + ": " + obey(line.split(" ", 3)));
      }
    } catch (IOException | InterruptedException e) {
      System.out.println(e);
    }
  }

  /** Tries until the window is there and has what is asked for. */
  private static String obey(String[] order) throws InterruptedException {
    for (int i = 0; i < TRIES; i++) {
      String[] answer = {""};
      OnScreen.tryToRun(() -> answer[0] = once(order));
      if (!answer[0].isEmpty()) {
        return answer[0];
      }
      Thread.sleep(100);
    }
    return "is not there";
  }

  private static String once(String[] order) {
    Stage stage =
        javafx.stage.Window.getWindows().stream()
            .filter(Stage.class::isInstance)
            .map(Stage.class::cast)
            .findFirst()
            .orElse(null);
    if (stage == null || stage.getScene() == null) {
      return "";
    }
    if (order[0].equals("title")) {
      return stage.getTitle();
    }
    if (order[0].equals("choose")) {
      return chosen(stage, order[1]);
    }
    Node node = stage.getScene().lookup(order[1]);
    return node == null ? "" : done(node, order);
  }

  private static String chosen(Stage stage, String words) {
    MenuBar bar = (MenuBar) stage.getScene().lookup(".menu-bar");
    bar.getMenus().stream()
        .flatMap(m -> m.getItems().stream())
        .filter(i -> words.equals(i.getText()))
        .forEach(MenuItem::fire);
    return "done";
  }

  private static String done(Node node, String[] order) {
    if (order[0].equals("press") && node instanceof ButtonBase button) {
      button.fire();
    } else if (order[0].equals("type") && node instanceof Spinner<?> field) {
      field.getEditor().setText(order[2]);
      field.commitValue();
    }
    return node instanceof Spinner<?> f
        ? f.getEditor().getText()
        : node instanceof CheckBox c ? "ticked " + c.isSelected() : "there";
  }
}
