package auricle.cli;

import auricle.modelfile.ModelSchema;
import auricle.report.UseNotice;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.FutureTask;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/**
 * The command line. Exit codes: 0 done, 1 an expected value was not met, 2 bad input, 3 no
 * equilibrium (results are written and say so), 70 an error of the program, 130 cancelled.
 */
@Command(
    name = "auricle",
    description = "A simulator of cartilage and thin shells.",
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
  private Main() {}

  /** Runs the command named by the arguments and ends the program with its exit code. */
  public static void main(String[] arguments) {
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
    // reading the schema takes longest of all that comes before solving: begun beside the rest
    FutureTask<ModelSchema> schema = new FutureTask<>(ModelSchema::load);
    Thread reading = new Thread(schema, "schema");
    reading.setDaemon(true);
    reading.start();
    CommandLine line = new CommandLine(new Main());
    line.addSubcommand(new CheckCommand());
    line.addSubcommand(new MaterialsCommand());
    line.addSubcommand(new AnalyseCommand(schema));
    line.addSubcommand(new VerifyCommand(schema));
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
