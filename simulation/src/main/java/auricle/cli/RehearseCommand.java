package auricle.cli;

import auricle.anatomy.MeshLevel;
import auricle.diagnostics.BadInputException;
import auricle.report.RehearsalJson;
import auricle.report.RehearsalReport;
import auricle.report.RehearsalSchema;
import auricle.report.RehearsalText;
import auricle.report.UseNotice;
import auricle.scenario.ScenarioSchema;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Rehearses the plan of a scenario and tells what it does to every third of the ear. */
@Command(
    name = "rehearse",
    description = {
      "Rehearses a plan on an ear: every step to equilibrium, every third measured after each.",
      "Prints a table; with --out writes result.json, steps.csv, threads.csv, timeline.csv,",
      "pictures (SVG and PNG) and the shape after every step (VTU and OBJ)."
    },
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {
      "",
      "Exit codes: 0 done, 1 an expectation of the scenario was not met, 2 bad input,",
      "3 no equilibrium (results are written and say so), 70 an error of the program,",
      "130 cancelled.",
      "",
      UseNotice.TEXT
    })
final class RehearseCommand implements Callable<Integer> {
  private final Ahead<ScenarioSchema> schema;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "SCENARIO.yaml",
      description = "The scenario: an ear or a pair, the plan, the target.")
  private Path file = Path.of("");

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "Folder for the results; it appears only when they are complete.")
  private Path out = Path.of("");

  @Option(
      names = "--mesh",
      paramLabel = "LEVEL",
      description = "planning (default), fine (four times the vertices) or reference (16 times).")
  private MeshLevel mesh = MeshLevel.PLANNING;

  @Option(names = "--json", description = "Prints result.json instead of the table.")
  private boolean json;

  @Option(names = "--tied", description = "Stops when the last thread is tied: no spring-back.")
  private boolean tied;

  @Option(
      names = "--samples",
      paramLabel = "N",
      description = "Tissues drawn for the 10-90 %% band over time; 0 (default) for none.")
  private int samples;

  @Option(names = "--seed", paramLabel = "S", description = "Seed of the drawing; default 1.")
  private long seed = 1;

  @Option(
      names = "--tables",
      paramLabel = "DIR",
      description = "Folder of material tables whose rows take the place of the shipped ones.")
  private List<Path> tables = new ArrayList<>();

  @Option(
      names = "--reactions",
      description =
          "Tells too what a little more of every dose would do; takes some tenth of a second a dose.")
  private boolean reactions;

  @Option(
      names = {"-q", "--quiet"},
      description = "No progress on standard error.")
  private boolean quiet;

  @Option(names = "--schema", description = "Prints the JSON Schema of result.json and ends.")
  private boolean printSchema;

  @Spec private CommandSpec spec = CommandSpec.create();

  RehearseCommand(Ahead<ScenarioSchema> schema) {
    this.schema = schema;
  }

  @Override
  public Integer call() {
    PrintWriter output = spec.commandLine().getOut();
    PrintWriter errors = spec.commandLine().getErr();
    if (printSchema) {
      output.print(RehearsalSchema.text());
      output.flush();
      return ExitCode.DONE;
    }
    if (file.toString().isEmpty() || samples < 0) {
      errors.println("Give a scenario file, and no negative number of samples; see --help.");
      return ExitCode.BAD_INPUT;
    }
    try {
      RehearsalOptions options =
          new RehearsalOptions(mesh, !tied, samples, seed, tables, reactions, quiet);
      return new RehearsalRun(schema, file, out, options, errors)
          .run()
          .map(report -> tell(report, output))
          .orElse(ExitCode.CANCELLED);
    } catch (BadInputException e) {
      FindingLines.print(e.findings(), errors);
      return ExitCode.BAD_INPUT;
    }
  }

  private int tell(RehearsalReport report, PrintWriter output) {
    output.print(json ? RehearsalJson.write(report) : RehearsalText.write(report));
    if (!json && !out.toString().isEmpty()) {
      output.println("Results are in " + out + ".");
    }
    output.flush();
    if (!report.converged()) {
      return ExitCode.NO_EQUILIBRIUM;
    }
    return report.expectationsMet() ? ExitCode.DONE : ExitCode.NOT_AS_EXPECTED;
  }
}
