package auricle.cli;

import auricle.analysis.AnalysisResult;
import auricle.diagnostics.BadInputException;
import auricle.modelfile.LoadedModel;
import auricle.modelfile.ModelReader;
import auricle.modelfile.ModelSchema;
import auricle.report.CheckTable;
import auricle.report.UseNotice;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Solves a model file and writes its results. */
@Command(
    name = "analyse",
    description = {
      "Solves a shell model: mesh, section, supports, loads, load steps, probes.",
      "Writes probes.csv, result.json, timing.json, and steps.pvd with a .vtu file a load step.",
      "The model file is YAML; 'auricle analyse --schema' prints its JSON Schema."
    },
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {"", UseNotice.TEXT})
final class AnalyseCommand implements Callable<Integer> {
  private final Ahead<ModelSchema> schema;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "MODEL.yaml",
      description = "The model file.")
  private Path model = Path.of("");

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "Folder for the results; it appears only when they are complete.")
  private Path out = Path.of("");

  @Option(names = "--schema", description = "Prints the JSON Schema of model files and ends.")
  private boolean printSchema;

  @Option(
      names = {"-q", "--quiet"},
      description = "No progress on standard error.")
  private boolean quiet;

  @Option(names = "--no-fields", description = "Leaves out the .vtu files.")
  private boolean noFields;

  @Spec private CommandSpec spec = CommandSpec.create();

  AnalyseCommand(Ahead<ModelSchema> schema) {
    this.schema = schema;
  }

  @Override
  public Integer call() throws Exception {
    PrintWriter output = spec.commandLine().getOut();
    if (printSchema) {
      output.print(ModelSchema.text());
      output.flush();
      return ExitCode.DONE;
    }
    if (model.toString().isEmpty() || out.toString().isEmpty()) {
      spec.commandLine().getErr().println("Give a model file and --out DIR; see --help.");
      return ExitCode.BAD_INPUT;
    }
    try {
      return analyse(output);
    } catch (BadInputException e) {
      FindingLines.print(e.findings(), spec.commandLine().getErr());
      return ExitCode.BAD_INPUT;
    }
  }

  private int analyse(PrintWriter output) throws Exception {
    Stopwatch watch = new Stopwatch();
    LoadedModel loaded = new ModelReader(schema.get()).read(model);
    watch.lap("read_ms");
    ModelRun run = new ModelRun(loaded, out, spec.commandLine().getErr(), watch);
    return run.run(quiet, noFields).map(r -> tell(output, r)).orElse(ExitCode.CANCELLED);
  }

  private int tell(PrintWriter output, AnalysisResult result) {
    if (!result.checks().isEmpty()) {
      output.print(CheckTable.write(result.checks()));
    }
    result.remarks().forEach(output::println);
    output.println(
        (result.converged() ? "Converged: " : "NOT CONVERGED: ") + result.outcome() + ".");
    output.println("Results are in " + out + ". " + UseNotice.TEXT);
    output.flush();
    if (!result.converged()) {
      return ExitCode.NO_EQUILIBRIUM;
    }
    return result.expectationsMet() ? ExitCode.DONE : ExitCode.NOT_AS_EXPECTED;
  }
}
