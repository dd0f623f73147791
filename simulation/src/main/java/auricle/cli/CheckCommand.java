package auricle.cli;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.material.MaterialTables;
import auricle.report.UseNotice;
import auricle.scenario.LoadedScenario;
import auricle.scenario.PlaceCheck;
import auricle.scenario.Scenario;
import auricle.scenario.ScenarioEar;
import auricle.scenario.ScenarioReader;
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

/** Checks scenario files without rehearsing them. */
@Command(
    name = "check",
    description = {
      "Checks scenario files: keys, units, bounds, whether there is an ear with the measurements,",
      "and whether the plan makes sense on it.",
      "Prints every finding with file, line and column; ends with 2 if a file cannot be used.",
      "A scenario file is YAML; 'auricle check --schema' prints its JSON Schema."
    },
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {"", UseNotice.TEXT})
final class CheckCommand implements Callable<Integer> {
  private final Ahead<ScenarioSchema> schema;

  @Parameters(arity = "0..*", paramLabel = "SCENARIO.yaml", description = "Files to check.")
  private List<Path> files = new ArrayList<>();

  @Option(names = "--schema", description = "Prints the JSON Schema of scenario files and ends.")
  private boolean printSchema;

  @Option(
      names = "--tables",
      paramLabel = "DIR",
      description = "Folder with material tables of your own that go before ours.")
  private List<Path> tables = new ArrayList<>();

  @Spec private CommandSpec spec = CommandSpec.create();

  CheckCommand(Ahead<ScenarioSchema> schema) {
    this.schema = schema;
  }

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    if (printSchema) {
      out.print(ScenarioSchema.text());
      out.flush();
      return ExitCode.DONE;
    }
    if (files.isEmpty()) {
      spec.commandLine().getErr().println("Give a scenario file; see --help.");
      return ExitCode.BAD_INPUT;
    }
    try {
      MaterialTables rows = MaterialTables.load(tables);
      return checkAll(new ScenarioReader(schema.get(), rows), out);
    } catch (BadInputException e) {
      FindingLines.print(e.findings(), spec.commandLine().getErr());
      return ExitCode.BAD_INPUT;
    }
  }

  private int checkAll(ScenarioReader reader, PrintWriter out) {
    boolean usable = true;
    for (Path file : files) {
      usable &= check(reader, file, out);
    }
    out.flush();
    return usable ? ExitCode.DONE : ExitCode.BAD_INPUT;
  }

  private boolean check(ScenarioReader reader, Path file, PrintWriter out) {
    try {
      LoadedScenario loaded = reader.read(file);
      List<Finding> findings = new ArrayList<>(loaded.warnings());
      for (ScenarioEar ear : loaded.scenario().ears()) {
        findings.addAll(loaded.locate(ear.side(), PlaceCheck.findings(ear.ear())));
      }
      FindingLines.print(findings, spec.commandLine().getErr());
      boolean usable = findings.stream().noneMatch(Finding::isError);
      String contents = usable ? contents(loaded.scenario()) : "cannot be used";
      out.println(file + ": " + contents + ", " + words(findings) + ".");
      return usable;
    } catch (BadInputException e) {
      FindingLines.print(e.findings(), spec.commandLine().getErr());
      out.println(file + ": cannot be used, " + words(e.findings()) + ".");
      return false;
    }
  }

  private static String contents(Scenario scenario) {
    int steps = scenario.ears().stream().mapToInt(e -> e.ear().plan().enabled().size()).sum();
    int ears = scenario.ears().size();
    return count(ears, "ear") + ", " + count(steps, "step");
  }

  private static String words(List<Finding> findings) {
    int errors = (int) findings.stream().filter(Finding::isError).count();
    return count(errors, "error") + ", " + count(findings.size() - errors, "warning");
  }

  private static String count(int number, String thing) {
    return (number == 0 ? "no" : number) + " " + thing + (number == 1 ? "" : "s");
  }
}
