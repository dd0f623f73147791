package auricle.cli;

import auricle.diagnostics.BadInputException;
import auricle.material.MaterialTables;
import auricle.plan.EarCase;
import auricle.rehearsal.Calibration;
import auricle.rehearsal.OutcomeRow;
import auricle.rehearsal.RehearsalWatcher;
import auricle.report.UseNotice;
import auricle.scenario.ScenarioReader;
import auricle.scenario.ScenarioSchema;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Fits what nobody has measured to outcome. */
@Command(
    name = "calibrate",
    description = {
      "Sets the speed at which bites migrate, which nobody has measured, so that an open fold",
      "treated by sutures with posterior scoring loses what common practice says; prints the value",
      "and how the model stands against outcomes that took no part in the fit. Changes no file."
    },
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {"", UseNotice.TEXT})
final class CalibrateCommand implements Callable<Integer> {
  @Parameters(
      paramLabel = "SCENARIO",
      description = "An open fold with sutures and posterior scoring: scenarios/open_fold.yaml.")
  private Path scenario = Path.of("scenarios", "open_fold.yaml");

  @Option(
      names = "--tables",
      paramLabel = "DIR",
      description = "Folder with material tables of your own that go before ours.")
  private List<Path> folders = new ArrayList<>();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try {
      MaterialTables tables = MaterialTables.load(folders);
      EarCase ear =
          new ScenarioReader(ScenarioSchema.load(), tables)
              .read(scenario)
              .scenario()
              .ears()
              .get(0)
              .ear();
      Optional<Calibration.Fitted> fitted =
          new Calibration(ear, tables, new Told(spec.commandLine().getErr())).fit();
      if (fitted.isEmpty()) {
        out.println("No value found: an ear did not come to rest.");
        return ExitCode.NO_EQUILIBRIUM;
      }
      print(fitted.get(), out);
      return ExitCode.DONE;
    } catch (BadInputException e) {
      FindingLines.print(e.findings(), spec.commandLine().getErr());
      return ExitCode.BAD_INPUT;
    }
  }

  private static void print(Calibration.Fitted fitted, PrintWriter out) {
    for (Calibration.Trial trial : fitted.trials()) {
      out.println(
          words("trial: %.4g mm/(d N) loses %.1f %%", trial.value(), 100 * trial.meanLoss()));
    }
    out.println(words("%s = %.4g mm/(d N)", Calibration.SLOT, fitted.value()));
    for (OutcomeRow row : fitted.rows()) {
      out.println(
          words(
              "%-6s %-66s %s  published %5.3g ... %5.3g  (%s; %s)",
              row.inFit() ? "fit" : "check",
              row.what(),
              found(row),
              row.low(),
              row.high(),
              row.confidence(),
              row.source()));
    }
    out.println(UseNotice.TEXT);
    out.flush();
  }

  /** A level that moved too little has no loss. */
  private static String found(OutcomeRow row) {
    return Double.isNaN(row.found())
        ? "none stated, moved too little"
        : words("found %6.3f, residual %6.3f", row.found(), row.residual());
  }

  private static String words(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /** Says which trial is being computed. */
  private record Told(PrintWriter err) implements RehearsalWatcher {
    @Override
    public void progress(String words, double share) {
      if (words.startsWith("a year")) {
        err.println(words);
        err.flush();
      }
    }

    @Override
    public boolean cancelled() {
      return false;
    }
  }
}
