package auricle.cli;

import auricle.modelfile.ModelSchema;
import auricle.report.UseNotice;
import auricle.scenario.ScenarioSchema;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/**
 * The command line. Exit codes: 0 done, 1 an expected value was not met, 2 bad input, 3 no
 * equilibrium (results are written and say so), 70 an error of the program, 130 cancelled.
 */
@Command(
    name = "auricle",
    description = "Rehearses the set-back of protruding ears on a model of the ear's cartilage.",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {
      "",
      "Exit codes: 0 done, 1 an expected value was not met, 2 bad input, 3 no equilibrium,",
      "70 an error of the program, 130 cancelled.",
      "",
      UseNotice.TEXT
    })
public final class Main {
  /** Commands that read model files. */
  private static final List<String> OF_MODELS = List.of("analyse", "verify");

  /** Commands that read scenario files. */
  private static final List<String> OF_SCENARIOS = List.of("rehearse", "check");

  private Main() {}

  /** Runs the command named by the arguments and ends the program with its exit code. */
  public static void main(String[] arguments) {
    // pictures are drawn in memory; without this a machine that names a display must have one
    System.setProperty("java.awt.headless", "true");
    System.exit(run(arguments));
  }

  /** Runs the command named by the arguments; the exit code. */
  static int run(String... arguments) {
    return run(
        new PrintWriter(System.out, true, StandardCharsets.UTF_8),
        new PrintWriter(System.err, true, StandardCharsets.UTF_8),
        arguments);
  }

  /** The same with other places to write to. */
  static int run(PrintWriter out, PrintWriter err, String... arguments) {
    Ahead<ModelSchema> models = new Ahead<>(ModelSchema::load);
    Ahead<ScenarioSchema> scenarios = new Ahead<>(ScenarioSchema::load);
    // reading a schema takes longest of all that comes before solving: begun beside the rest
    String command = arguments.length == 0 ? "" : arguments[0];
    if (OF_MODELS.contains(command)) {
      models.begin();
    } else if (OF_SCENARIOS.contains(command)) {
      scenarios.begin();
    }
    CommandLine line = new CommandLine(new Main());
    line.addSubcommand(new RehearseCommand(scenarios));
    line.addSubcommand(new CheckCommand(scenarios));
    line.addSubcommand(new MaterialsCommand());
    line.addSubcommand(new CalibrateCommand());
    line.addSubcommand(new AnalyseCommand(models));
    line.addSubcommand(new VerifyCommand(models));
    // the settings hold for the commands that are there by now
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setExecutionExceptionHandler(new ProgramErrors());
    line.setUsageHelpWidth(110);
    line.setOut(out);
    line.setErr(err);
    return arguments.length == 0 ? usage(line) : line.execute(arguments);
  }

  private static int usage(CommandLine line) {
    line.usage(line.getErr());
    return ExitCode.BAD_INPUT;
  }
}
