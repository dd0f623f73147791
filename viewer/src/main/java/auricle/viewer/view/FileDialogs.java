package auricle.viewer.view;

import auricle.viewer.viewmodel.Desk;
import auricle.viewer.viewmodel.Files;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Parent;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.scene.control.ChoiceDialog;
import javafx.scene.control.Dialog;
import javafx.scene.control.DialogPane;
import javafx.stage.FileChooser;
import javafx.stage.FileChooser.ExtensionFilter;
import javafx.stage.Stage;

/** Asks for files, and before work is lost. */
public final class FileDialogs {
  private static final ExtensionFilter SCENARIOS =
      new ExtensionFilter("Scenario files", "*.yaml", "*.yml");

  private static final ExtensionFilter[] RUNS = {
    new ExtensionFilter("GIF animation", "*.gif"), new ExtensionFilter("PNG frames", "*.png")
  };

  private static final List<Integer> HEIGHTS_PX = List.of(480, 720, 1080, 1440);
  private static final int USUAL_HEIGHT_PX = 1080;

  private final Stage stage;
  private final Files files;
  private final Desk desk;
  private final Exports exports;

  /** For a window. */
  public FileDialogs(Stage stage, Files files, Desk desk, Exports exports) {
    this.stage = stage;
    this.files = files;
    this.desk = desk;
    this.exports = exports;
  }

  /** Asks for a scenario and opens it. */
  public void open() {
    if (mayLeave()) {
      FileChooser chooser = chooser("Open a scenario", SCENARIOS);
      Optional.ofNullable(chooser.showOpenDialog(stage)).map(File::toPath).ifPresent(files::open);
    }
  }

  /** Opens a file after asking about unsaved work. */
  public void open(Path file) {
    if (mayLeave()) {
      files.open(file);
    }
  }

  /** Saves; asks for a file if there is none. */
  public void save() {
    if (files.file().get().isPresent()) {
      files.save();
    } else {
      saveAs();
    }
  }

  /** Asks for a file and saves to it. */
  public boolean saveAs() {
    FileChooser chooser = chooser("Save the scenario", SCENARIOS);
    chooser.setInitialFileName(
        files.file().get().map(f -> f.getFileName().toString()).orElse("scenario.yaml"));
    return Optional.ofNullable(chooser.showSaveDialog(stage))
        .map(File::toPath)
        .map(files::saveAs)
        .orElse(false);
  }

  /** Asks what to do with unsaved work; false if the user would rather stay. */
  public boolean mayLeave() {
    if (!desk.unsaved().get()) {
      return true;
    }
    ButtonType save = new ButtonType("Save", ButtonData.YES);
    ButtonType drop = new ButtonType("Do not save", ButtonData.NO);
    ButtonType stay = new ButtonType("Stay", ButtonData.CANCEL_CLOSE);
    Alert alert =
        new Alert(
            Alert.AlertType.CONFIRMATION,
            "There are changes that are in no file.",
            save,
            drop,
            stay);
    alert.setHeaderText("Save the changes to “" + desk.document().get().title() + "”?");
    dress(alert);
    ButtonType answer = alert.showAndWait().orElse(stay);
    if (answer.equals(save)) {
      return files.file().get().isPresent() ? files.save() : saveAs();
    }
    if (answer.equals(drop)) {
      files.discard();
      return true;
    }
    return false;
  }

  /** Asks for a file for the picture. */
  public void exportPicture() {
    write(
        "Export the picture",
        "ear.png",
        exports::picture,
        new ExtensionFilter("PNG picture", "*.png"));
  }

  /** Asks for a file for the section. */
  public void exportSection() {
    write(
        "Export the section",
        "section.svg",
        exports::section,
        new ExtensionFilter("SVG drawing", "*.svg"));
  }

  /** Asks for a file for the shape. */
  public void exportShape() {
    write(
        "Export the shape",
        "ear.obj",
        exports::shape,
        new ExtensionFilter("OBJ", "*.obj"),
        new ExtensionFilter("STL", "*.stl"),
        new ExtensionFilter("VTU", "*.vtu"));
  }

  /** Asks for a file for the ear on a turntable. */
  public void exportTurntable() {
    Animation run = exports.animation();
    height()
        .ifPresent(
            h ->
                write(
                    "Export a turntable",
                    "turntable.gif",
                    f -> run.turntable(f, h, this::told),
                    RUNS));
  }

  /** Asks for a file for the course, a picture a moment. */
  public void exportCourse() {
    Animation run = exports.animation();
    height()
        .ifPresent(
            h -> write("Export the course", "course.gif", f -> run.course(f, h, this::told), RUNS));
  }

  /** Asks how large the pictures of a run shall be. */
  private Optional<Integer> height() {
    ChoiceDialog<Integer> dialog = new ChoiceDialog<>(USUAL_HEIGHT_PX, HEIGHTS_PX);
    dress(dialog);
    dialog.setTitle("Size of the pictures");
    dialog.setHeaderText("How high shall each picture be?");
    dialog.setContentText("Height, pixels");
    return dialog.showAndWait();
  }

  /** In the colours of the window and its size of text. */
  private void dress(Dialog<?> dialog) {
    dialog.initOwner(stage);
    Parent window = stage.getScene().getRoot();
    DialogPane pane = dialog.getDialogPane();
    pane.getStylesheets().addAll(window.getStylesheets());
    pane.getStyleClass().addAll(window.getStyleClass());
    pane.setStyle(window.getStyle());
  }

  private void told(List<String> wrong) {
    files.say(wrong);
  }

  private interface Writing {
    void to(Path file) throws IOException;
  }

  private void write(String title, String name, Writing writing, ExtensionFilter... filters) {
    FileChooser chooser = chooser(title, filters);
    chooser.setInitialFileName(name);
    Optional<Path> file = Optional.ofNullable(chooser.showSaveDialog(stage)).map(File::toPath);
    if (file.isPresent()) {
      try {
        writing.to(file.get());
      } catch (IOException e) {
        files.say(
            List.of(
                "Cannot write "
                    + file.get().getFileName()
                    + ": "
                    + e.getMessage()
                    + ". Choose another place."));
      }
    }
  }

  /** Begins where the user worked last. */
  private FileChooser chooser(String title, ExtensionFilter... filters) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(title);
    files.folder().map(Path::toFile).ifPresent(chooser::setInitialDirectory);
    chooser.getExtensionFilters().addAll(filters);
    return chooser;
  }
}
