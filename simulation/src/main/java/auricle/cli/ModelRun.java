package auricle.cli;

import auricle.analysis.Analysis;
import auricle.analysis.AnalysisResult;
import auricle.analysis.MeshSource;
import auricle.diagnostics.BadInputException;
import auricle.modelfile.LoadedModel;
import auricle.report.Hash;
import auricle.report.ProbeTable;
import auricle.report.Provenance;
import auricle.report.ResultFolder;
import auricle.report.ResultJson;
import auricle.report.StepFiles;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Runs one model and puts its results into a folder, all of them or none. */
final class ModelRun {
  private final LoadedModel loaded;
  private final Path out;
  private final PrintWriter err;
  private final Stopwatch watch;

  ModelRun(LoadedModel loaded, Path out, PrintWriter err, Stopwatch watch) {
    this.loaded = loaded;
    this.out = out;
    this.err = err;
    this.watch = watch;
  }

  /**
   * Runs the model.
   *
   * @return the result, or nothing if the run was cancelled
   * @throws BadInputException if the model cannot be solved or the results cannot be written
   */
  Optional<AnalysisResult> run(boolean quiet, boolean noFields) throws BadInputException {
    try (Cancellation cancellation = new Cancellation();
        ResultFolder folder = new ResultFolder(out)) {
      StepFiles files = new StepFiles(folder, loaded.model().title());
      RunProgress progress = new RunProgress(err, quiet, cancellation, files, noFields);
      AnalysisResult result = solve(progress);
      if (cancellation.asked()) {
        err.println("Cancelled; nothing was written.");
        return Optional.empty();
      }
      if (!noFields) {
        files.finish();
      }
      write(folder, result);
      return Optional.of(result);
    } catch (IOException e) {
      throw ResultFolder.unwritable(out, e);
    } catch (UncheckedIOException e) {
      throw ResultFolder.unwritable(out, new IOException(e));
    }
  }

  private AnalysisResult solve(RunProgress progress) throws BadInputException {
    try {
      AnalysisResult result = Analysis.run(loaded.model(), progress);
      watch.lapAt("prepare_ms", progress.preparedAt());
      watch.lap("solve_ms");
      return result;
    } catch (BadInputException e) {
      throw new BadInputException(loaded.locate(e.findings()));
    }
  }

  private void write(ResultFolder folder, AnalysisResult result) throws IOException {
    folder.write("probes.csv", ProbeTable.write(loaded.model().probes(), result));
    folder.write("result.json", ResultJson.write(provenance(), loaded.model().probes(), result));
    watch.lap("write_ms");
    folder.write("timing.json", watch.json());
    folder.commit();
  }

  private Provenance provenance() throws IOException {
    Provenance.MeshFile mesh = new Provenance.MeshFile("", "");
    if (loaded.model().mesh() instanceof MeshSource.File file) {
      mesh = hashed(file);
    }
    List<Provenance.MeshFile> others = new ArrayList<>();
    for (MeshSource.File file : loaded.model().otherMeshFiles()) {
      others.add(hashed(file));
    }
    return new Provenance(
        ProgramVersion.version(),
        loaded.model().title(),
        loaded.name(),
        Hash.sha256(loaded.text().getBytes(StandardCharsets.UTF_8)),
        mesh.name(),
        mesh.sha256(),
        others);
  }

  private static Provenance.MeshFile hashed(MeshSource.File file) throws IOException {
    Path path = Path.of(file.path());
    return new Provenance.MeshFile(
        String.valueOf(path.getFileName()), Hash.sha256(Files.readAllBytes(path)));
  }
}
