package auricle.viewer.view;

import auricle.viewer.scene.ClinicalView;
import auricle.viewer.viewmodel.Files;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.Models;
import auricle.viewer.viewmodel.Paint;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCombination;

/** Every command by name, with its key. */
public final class Menus {
  private final Models models;
  private final Files files;
  private final Workbench bench;
  private final FileDialogs dialogs;
  private final Runnable quit;

  /** Menus of a window. */
  public Menus(Models models, Files files, Workbench bench, FileDialogs dialogs, Runnable quit) {
    this.models = models;
    this.files = files;
    this.bench = bench;
    this.dialogs = dialogs;
    this.quit = quit;
  }

  /** The bar; worked scenarios by name and what opens them. */
  public MenuBar bar(Map<String, Runnable> worked) {
    MenuBar bar = new MenuBar(file(worked), edit(), view(), look(), help());
    bar.setId("menus");
    return bar;
  }

  private Menu file(Map<String, Runnable> worked) {
    Menu recent = new Menu("Open recent");
    Menu examples = new Menu("Worked scenarios");
    worked.forEach((name, action) -> examples.getItems().add(item(name, "", action)));
    Menu out = new Menu("Export");
    out.getItems()
        .addAll(
            item("Picture (PNG) …", "Shortcut+E", dialogs::exportPicture),
            item("Turntable (GIF, PNG frames) …", "", dialogs::exportTurntable),
            item("Course (GIF, PNG frames) …", "", dialogs::exportCourse),
            item("Section (SVG) …", "", dialogs::exportSection),
            item("Shape (OBJ, STL, VTU) …", "", dialogs::exportShape));
    Menu menu = new Menu("File");
    menu.getItems()
        .addAll(
            item("Open …", "Shortcut+O", dialogs::open),
            recent,
            examples,
            new SeparatorMenuItem(),
            item("Save", "Shortcut+S", dialogs::save),
            item("Save as …", "Shortcut+Shift+S", dialogs::saveAs),
            out,
            new SeparatorMenuItem(),
            item("Quit", "Shortcut+Q", quit));
    menu.setOnShowing(e -> fillRecent(recent));
    return menu;
  }

  private void fillRecent(Menu recent) {
    recent.getItems().clear();
    List<Path> paths = files.recent();
    recent.setDisable(paths.isEmpty());
    for (Path p : paths) {
      recent.getItems().add(item(p.toString(), "", () -> dialogs.open(p)));
    }
  }

  private Menu edit() {
    Menu menu = new Menu("Edit");
    MenuItem undo = item("Undo", "Shortcut+Z", models.desk()::undo);
    MenuItem redo = item("Redo", "Shortcut+Y", models.desk()::redo);
    undo.disableProperty().bind(models.desk().canUndo().not());
    redo.disableProperty().bind(models.desk().canRedo().not());
    menu.getItems()
        .addAll(
            undo,
            redo,
            new SeparatorMenuItem(),
            item("Show the other ear of the pair", "Shortcut+T", this::otherEar));
    return menu;
  }

  private void otherEar() {
    int count = models.desk().document().get().scenario().ears().size();
    models.desk().edit(d -> d.showing((d.shown() + 1) % count), "");
  }

  private Menu view() {
    Menu menu = new Menu("View");
    for (ClinicalView v : ClinicalView.values()) {
      menu.getItems().add(item(v.label() + "    " + v.digit(), "", () -> bench.view(v)));
    }
    menu.getItems().add(new SeparatorMenuItem());
    ToggleGroup group = new ToggleGroup();
    for (Paint p : Paint.values()) {
      RadioMenuItem item = new RadioMenuItem("Colours: " + p.label());
      item.setToggleGroup(group);
      item.setOnAction(e -> models.showing().paint().set(p));
      models
          .showing()
          .paint()
          .addListener(o -> item.setSelected(models.showing().paint().get() == p));
      item.setSelected(models.showing().paint().get() == p);
      menu.getItems().add(item);
    }
    return menu;
  }

  private Menu look() {
    Menu menu = new Menu("Window");
    Look look = models.look();
    ToggleGroup group = new ToggleGroup();
    for (Look.Theme theme : Look.Theme.values()) {
      RadioMenuItem item = new RadioMenuItem(theme.label());
      item.setToggleGroup(group);
      item.setSelected(look.theme().get() == theme);
      item.setOnAction(e -> look.theme().set(theme));
      look.theme().addListener(o -> item.setSelected(look.theme().get() == theme));
      menu.getItems().add(item);
    }
    CheckMenuItem full = new CheckMenuItem("Full screen");
    full.setAccelerator(KeyCombination.valueOf("F11"));
    full.selectedProperty().bindBidirectional(look.fullScreen());
    menu.getItems()
        .addAll(
            new SeparatorMenuItem(),
            item("Larger text", "Shortcut+Plus", () -> look.scaleText(1.15)),
            item("Smaller text", "Shortcut+Minus", () -> look.scaleText(1 / 1.15)),
            full);
    return menu;
  }

  private Menu help() {
    Menu menu = new Menu("Help");
    menu.getItems()
        .addAll(
            item("What this is for", "", () -> bench.welcome()),
            item("Keys", "F1", () -> bench.keys()));
    return menu;
  }

  private static MenuItem item(String words, String keys, Runnable action) {
    MenuItem item = new MenuItem(words);
    item.setMnemonicParsing(false);
    item.setOnAction(e -> action.run());
    if (!keys.isEmpty()) {
      item.setAccelerator(KeyCombination.valueOf(keys));
    }
    return item;
  }
}
