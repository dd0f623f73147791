package auricle.cli;

import auricle.analysis.AnalysisWatcher;
import auricle.diagnostics.NearestName;
import auricle.modelfile.ModelReader;
import auricle.modelfile.ModelSchema;
import auricle.report.UseNotice;
import auricle.verification.CaseResult;
import auricle.verification.VerificationSuite;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs the benchmark set and prints one table. */
@Command(
    name = "verify",
    description = {
      "Runs the benchmark set and prints one table: case, expected value and its source, ours,",
      "difference, unknowns, time. Ends with 1 if a case is outside its tolerance."
    },
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {"", UseNotice.TEXT})
final class VerifyCommand implements Callable<Integer> {
  private final Ahead<ModelSchema> schema;

  @Parameters(paramLabel = "CASE", arity = "0..*", description = "Cases to run; default: all.")
  private List<String> cases = new ArrayList<>();

  @Option(names = "--list", description = "Prints the names of the cases and ends.")
  private boolean list;

  @Option(
      names = "--show",
      paramLabel = "CASE",
      description = "Prints the model file of a case, to be changed and given to 'analyse'.")
  private String show = "";

  @Spec private CommandSpec spec = CommandSpec.create();

  VerifyCommand(Ahead<ModelSchema> schema) {
    this.schema = schema;
  }

  @Override
  public Integer call() throws Exception {
    PrintWriter out = spec.commandLine().getOut();
    List<String> known = VerificationSuite.names();
    List<String> asked = show.isEmpty() ? cases : List.of(show);
    for (String name : asked) {
      if (!known.contains(name)) {
        spec.commandLine()
            .getErr()
            .println("error: no case '" + name + "'. " + NearestName.hint(name, known));
        return ExitCode.BAD_INPUT;
      }
    }
    if (list || !show.isEmpty()) {
      out.print(list ? String.join("\n", known) + "\n" : VerificationSuite.text(show + ".yaml"));
      out.flush();
      return ExitCode.DONE;
    }
    return run(cases.isEmpty() ? known : cases, out);
  }

  private int run(List<String> names, PrintWriter out) throws Exception {
    VerificationSuite suite = new VerificationSuite(new ModelReader(schema.get()));
    VerificationTable table = new VerificationTable(out);
    try (Cancellation cancellation = new Cancellation()) {
      AnalysisWatcher watcher =
          new AnalysisWatcher() {
            @Override
            public boolean cancelled() {
              return cancellation.asked();
            }
          };
      boolean passed = true;
      for (String name : names) {
        CaseResult result = suite.run(name, watcher);
        if (cancellation.asked()) {
          return ExitCode.CANCELLED;
        }
        table.add(result);
        passed &= result.passed();
      }
      table.close();
      return passed ? ExitCode.DONE : ExitCode.NOT_AS_EXPECTED;
    }
  }
}
