package auricle.viewer.view;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.Region;

/** Panes under titles, one of them open. */
final class Tabs extends TabPane {
  Tabs(String id) {
    setId(id);
    setTabClosingPolicy(TabClosingPolicy.UNAVAILABLE);
  }

  /**
   * Adds a pane as high as its tab or as it needs to be, which is moved up and down in its tab
   * where that is more; drawings in it may grow.
   */
  void add(String title, Supplier<Region> pane) {
    addWhole(title, () -> scrolled(pane.get()));
  }

  private static ScrollPane scrolled(Region pane) {
    ScrollPane scroll = Scrolled.over(pane);
    scroll.setFitToHeight(true);
    pane.setMinHeight(USE_PREF_SIZE);
    return scroll;
  }

  /**
   * Adds a pane as high as its tab, which is drawn while its tab is open. It is made and comes into
   * the window when the tab is opened first: the first ear need not wait until the controls of all
   * tabs are made, styled and laid out.
   */
  void addWhole(String title, Supplier<Node> pane) {
    Tab tab = new Tab(title);
    tab.setId("tab-" + title.toLowerCase(Locale.ROOT).replace(' ', '-'));
    tab.selectedProperty().addListener((o, was, now) -> opened(tab, now, pane));
    getTabs().add(tab);
  }

  private static void opened(Tab tab, boolean now, Supplier<Node> pane) {
    if (now && tab.getContent() == null) {
      tab.setContent(pane.get());
    }
    Node content = tab.getContent() instanceof ScrollPane s ? s.getContent() : tab.getContent();
    if (content instanceof SidePane side) {
      side.seen(now);
    }
  }

  /** Opens the pane under a title, if it is one of these. */
  void open(String title) {
    getTabs().stream()
        .filter(t -> t.getText().equals(title))
        .findFirst()
        .ifPresent(t -> getSelectionModel().select(t));
  }

  /** Title of the pane that is open; empty if there is none. */
  String openTitle() {
    Tab tab = getSelectionModel().getSelectedItem();
    return tab == null ? "" : tab.getText();
  }

  /** Takes over panes of others, before its own; what is open stays open. */
  void takeIn(Tabs other) {
    List<Tab> moved = List.copyOf(other.getTabs());
    other.getTabs().clear();
    getTabs().addAll(0, moved);
  }

  /** Gives panes back that were taken in. */
  void giveBack(Tabs other, List<Tab> theirs) {
    getTabs().removeAll(theirs);
    other.getTabs().addAll(theirs);
  }
}
