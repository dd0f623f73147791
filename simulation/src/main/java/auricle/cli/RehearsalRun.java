package auricle.cli;

import auricle.diagnostics.BadInputException;
import auricle.material.MaterialTables;
import auricle.report.PictureStart;
import auricle.report.RehearsalFiles;
import auricle.report.RehearsalReport;
import auricle.report.ResultFolder;
import auricle.scenario.LoadedScenario;
import auricle.scenario.ScenarioReader;
import auricle.scenario.ScenarioSchema;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;

/** Rehearses one scenario and puts its results into a folder, all of them or none. */
final class RehearsalRun {
  private final Ahead<ScenarioSchema> schema;
  private final Path file;
  private final Path out;
  private final RehearsalOptions options;
  private final PrintWriter errors;

  /**
   * @param schema what the file is checked against
   * @param out folder for the results; an empty path for none
   */
  RehearsalRun(
      Ahead<ScenarioSchema> schema,
      Path file,
      Path out,
      RehearsalOptions options,
      PrintWriter errors) {
    this.schema = schema;
    this.file = file;
    this.out = out;
    this.options = options;
    this.errors = errors;
  }

  /**
   * Runs it.
   *
   * @return what came out, or nothing if it was cancelled
   * @throws BadInputException if the scenario cannot be used or the results cannot be written
   */
  Optional<RehearsalReport> run() throws BadInputException {
    MaterialTables tables = MaterialTables.load(options.tables());
    LoadedScenario loaded = new ScenarioReader(schema.get(), tables).read(file);
    if (writes()) {
      PictureStart.begin();
    }
    FindingLines.print(loaded.warnings(), errors);
    try (Cancellation cancellation = new Cancellation()) {
      ScenarioRehearsal rehearsal =
          new ScenarioRehearsal(loaded, tables, options, cancellation, errors);
      Optional<RehearsalReport> report =
          writes() ? written(rehearsal, cancellation) : rehearsal.run();
      if (report.isEmpty()) {
        errors.println("Cancelled; nothing was written.");
      }
      return report;
    }
  }

  private boolean writes() {
    return !out.toString().isEmpty();
  }

  private Optional<RehearsalReport> written(ScenarioRehearsal rehearsal, Cancellation cancellation)
      throws BadInputException {
    try (ResultFolder folder = new ResultFolder(out)) {
      Optional<RehearsalReport> report = rehearsal.run();
      if (report.isPresent()) {
        RehearsalFiles.write(folder, report.get(), cancellation::asked);
      }
      if (report.isEmpty() || cancellation.asked()) {
        return Optional.empty();
      }
      folder.commit(RehearsalFiles::isOurs);
      return report;
    } catch (IOException e) {
      throw ResultFolder.unwritable(out, e);
    }
  }
}
