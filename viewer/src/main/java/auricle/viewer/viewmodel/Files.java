package auricle.viewer.viewmodel;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.scenario.LoadedScenario;
import auricle.scenario.ScenarioReader;
import auricle.scenario.ScenarioWriter;
import auricle.viewer.store.AtomicFile;
import auricle.viewer.store.FormerFile;
import auricle.viewer.store.Recovery;
import auricle.viewer.store.Settings;
import auricle.yamlfile.YamlComments;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Opening, saving and keeping: what is on the desk and the file it belongs to. */
public final class Files {
  private final Desk desk;
  private final Settings settings;
  private final Recovery recovery;
  private final ScenarioReader reader;
  private final ReadOnlyObjectWrapper<Optional<Path>> file =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ObservableList<String> messages = FXCollections.observableArrayList();
  private final List<Runnable> onLaid = new ArrayList<>();

  /** What the file of the desk says before its first entry. */
  private String head = "";

  /** For a desk; unsaved work and settings are kept in these. */
  public Files(Desk desk, Settings settings, Recovery recovery, ScenarioReader reader) {
    this.desk = desk;
    this.settings = settings;
    this.recovery = recovery;
    this.reader = reader;
  }

  /** The file that is worked on. */
  public ReadOnlyObjectProperty<Optional<Path>> file() {
    return file.getReadOnlyProperty();
  }

  /** What went wrong last, in sentences; empty if nothing did. */
  public ObservableList<String> messages() {
    return messages;
  }

  /** Files opened lately. */
  public List<Path> recent() {
    return settings.recent();
  }

  /** Folder of the file that is worked on, else of one opened lately, if it is still there. */
  public Optional<Path> folder() {
    return Stream.concat(file.get().stream(), recent().stream())
        .map(path -> path.toAbsolutePath().getParent())
        .filter(java.nio.file.Files::isDirectory)
        .findFirst();
  }

  /** Opens a scenario file; what is on the desk is replaced only if it can be used. */
  public boolean open(Path path) {
    try {
      LoadedScenario loaded = reader.read(path);
      lay(loaded, Optional.of(path), false);
      settings.opened(path);
      settings.save();
      return true;
    } catch (BadInputException e) {
      messages.setAll(sentences("Cannot open " + path.getFileName() + ".", e.findings()));
      return false;
    }
  }

  /** Lays out a scenario that belongs to no file; the name is for messages. */
  public boolean openText(String name, String text) {
    try {
      lay(reader.read(name, text), Optional.empty(), false);
      return true;
    } catch (BadInputException e) {
      messages.setAll(sentences("Cannot open " + name + ".", e.findings()));
      return false;
    }
  }

  /** What an earlier run left unsaved, if anything. */
  public Optional<Recovery.Left> left() {
    return recovery.left();
  }

  /** Lays out what an earlier run left unsaved, and says so. */
  public boolean recover(Recovery.Left left) {
    try {
      lay(reader.read("unsaved changes", left.text()), left.belongsTo(), true);
      messages.add(0, "The viewer ended before these changes were saved. " + whereTo(left));
      return true;
    } catch (BadInputException e) {
      messages.setAll(sentences("The unsaved changes cannot be read. " + aside(), e.findings()));
      return false;
    }
  }

  private static String whereTo(Recovery.Left left) {
    return left.belongsTo()
        .map(p -> "Save writes them to " + p + ".")
        .orElse("They belong to no file yet: Save as gives them one.");
  }

  private String aside() {
    try {
      return "They are kept in " + recovery.setAside() + ".";
    } catch (IOException e) {
      return "They cannot be put aside either ("
          + e.getMessage()
          + "): copy them before you go on.";
    }
  }

  private void lay(LoadedScenario loaded, Optional<Path> path, boolean needsSaving) {
    messages.setAll(loaded.warnings().stream().map(Finding::line).toList());
    file.set(path);
    head = YamlComments.of(loaded.text()).head();
    onLaid.forEach(Runnable::run);
    desk.lay(Document.of(loaded.scenario()), needsSaving);
  }

  /** Is told whenever another scenario is about to be laid out, from wherever it comes. */
  public void whenLaid(Runnable told) {
    onLaid.add(told);
  }

  private static List<String> sentences(String first, List<Finding> findings) {
    List<String> all = new ArrayList<>(List.of(first));
    findings.forEach(f -> all.add(f.line()));
    return all;
  }

  /** Saves to the file that is worked on; false if there is none or it cannot be written. */
  public boolean save() {
    return file.get().map(this::saveAs).orElse(false);
  }

  /**
   * Saves to a file, which is worked on from then on. Comments before its entries are kept; a file
   * with others is put aside first.
   */
  public boolean saveAs(Path path) {
    try {
      Optional<Path> aside = FormerFile.aside(path);
      AtomicFile.write(path, text());
      file.set(Optional.of(path));
      desk.markSaved();
      recovery.forget();
      settings.opened(path);
      settings.save();
      messages.setAll(aside.map(Files::notKept).stream().toList());
      return true;
    } catch (IOException e) {
      messages.setAll(
          "Cannot save "
              + path.getFileName()
              + ": "
              + e.getMessage()
              + ". Choose another place with Save as.");
      return false;
    }
  }

  private static String notKept(Path aside) {
    return "Saved, but without the comments that stood beside or between the entries. The file as it"
        + " was, with them, is now "
        + aside
        + ".";
  }

  private String text() {
    return head + ScenarioWriter.text(desk.document().get().scenario());
  }

  /** Keeps a copy of unsaved work, or forgets it if there is none. */
  public void keep() {
    try {
      if (desk.unsaved().get()) {
        recovery.keep(file.get(), text());
      } else {
        recovery.forget();
      }
    } catch (IOException e) {
      messages.setAll(
          "No copy of the unsaved changes can be kept: "
              + e.getMessage()
              + ". Save the scenario now.");
    }
  }

  /** Forgets unsaved work: the user does not want it. */
  public void discard() {
    recovery.forget();
  }

  /** Says something went wrong, in sentences. */
  public void say(List<String> sentences) {
    messages.setAll(sentences);
  }

  /** Title for the window. */
  public String title() {
    String name = file.get().map(p -> p.getFileName().toString()).orElse("not saved yet");
    return (desk.unsaved().get() ? "• " : "")
        + desk.document().get().title()
        + " — "
        + name
        + " — auricle";
  }
}
