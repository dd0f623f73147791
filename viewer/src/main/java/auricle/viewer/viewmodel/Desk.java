package auricle.viewer.viewmodel;

import auricle.plan.Plan;
import auricle.scenario.Scenario;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The document on the desk: every change goes through here, so every change can be undone. */
public final class Desk {
  private final ReadOnlyObjectWrapper<Document> document;
  private final ReadOnlyBooleanWrapper canUndo = new ReadOnlyBooleanWrapper();
  private final ReadOnlyBooleanWrapper canRedo = new ReadOnlyBooleanWrapper();
  private final ReadOnlyBooleanWrapper unsaved = new ReadOnlyBooleanWrapper();
  private History<Document> history;
  private Optional<Scenario> saved;

  /** A desk with a document that needs no saving. */
  public Desk(Document start) {
    history = new History<>(start);
    saved = Optional.of(start.scenario());
    document = new ReadOnlyObjectWrapper<>(start);
  }

  /** The document. */
  public ReadOnlyObjectProperty<Document> document() {
    return document.getReadOnlyProperty();
  }

  /** Whether a change can be undone. */
  public ReadOnlyBooleanProperty canUndo() {
    return canUndo.getReadOnlyProperty();
  }

  /** Whether a change can be redone. */
  public ReadOnlyBooleanProperty canRedo() {
    return canRedo.getReadOnlyProperty();
  }

  /** Whether there are changes that are not in a file. */
  public ReadOnlyBooleanProperty unsaved() {
    return unsaved.getReadOnlyProperty();
  }

  /** Changes the plan of the ear that is shown. */
  public void editPlan(UnaryOperator<Plan> edit) {
    edit(d -> d.withPlan(edit), "");
  }

  /** Changes the document; see {@link History#change} for the gesture. */
  public void edit(UnaryOperator<Document> edit, String gesture) {
    history.change(edit.apply(history.present()), gesture);
    tell();
  }

  /** Ends a gesture: the next change is undone by itself. */
  public void endGesture() {
    history.endGesture();
  }

  /** Back by one change. */
  public void undo() {
    history.undo();
    tell();
  }

  /** Forward by one change. */
  public void redo() {
    history.redo();
    tell();
  }

  /** Puts another document on the desk; what was there is gone, with its history. */
  public void lay(Document other, boolean needsSaving) {
    history = new History<>(other);
    saved = needsSaving ? Optional.empty() : Optional.of(other.scenario());
    tell();
  }

  /** Says that what is on the desk is in a file now. */
  public void markSaved() {
    saved = Optional.of(history.present().scenario());
    tell();
  }

  private void tell() {
    document.set(history.present());
    canUndo.set(history.canUndo());
    canRedo.set(history.canRedo());
    unsaved.set(saved.filter(history.present().scenario()::equals).isEmpty());
  }
}
