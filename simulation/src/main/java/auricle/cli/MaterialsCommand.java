package auricle.cli;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.diagnostics.NearestName;
import auricle.material.MaterialRow;
import auricle.material.MaterialTables;
import auricle.report.MaterialExplained;
import auricle.report.MaterialJson;
import auricle.report.MaterialList;
import auricle.report.UseNotice;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Shows the material tables. */
@Command(
    name = "materials",
    description = {
      "Shows the numbers that tissue and threads are made of: value, unit, spread, confidence and",
      "source of every row. Checks tables of your own, if you give them."
    },
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {"", UseNotice.TEXT})
final class MaterialsCommand implements Callable<Integer> {
  /** More rows than that are no help in a message. */
  private static final int MOST_NAMED = 12;

  @Option(names = "--table", paramLabel = "NAME", description = "Shows one table alone.")
  private List<String> asked = new ArrayList<>();

  @Option(
      names = "--explain",
      paramLabel = "ROW",
      description =
          "Shows all that is known about a row: what it rests on, who uses it, what else is known.")
  private String explain = "";

  @Option(
      names = "--tables",
      paramLabel = "DIR",
      description = "Folder with material tables of your own that go before ours.")
  private List<Path> folders = new ArrayList<>();

  @Option(names = "--json", description = "Prints JSON.")
  private boolean json;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    try {
      MaterialTables tables = MaterialTables.load(folders);
      PrintWriter out = spec.commandLine().getOut();
      out.print(explain.isEmpty() ? list(tables) : explained(tables));
      if (!json) {
        out.println(UseNotice.TEXT);
      }
      out.flush();
      return ExitCode.DONE;
    } catch (BadInputException e) {
      FindingLines.print(e.findings(), spec.commandLine().getErr());
      return ExitCode.BAD_INPUT;
    }
  }

  private String list(MaterialTables tables) throws BadInputException {
    List<String> known = tables.quantities().tables();
    List<Finding> unknown =
        asked.stream()
            .filter(name -> !known.contains(name))
            .map(name -> refused("--table", name, "a table", NearestName.hint(name, known)))
            .toList();
    if (!unknown.isEmpty()) {
      throw new BadInputException(unknown);
    }
    List<String> shown = asked.isEmpty() ? known : asked;
    return json
        ? MaterialJson.write(tables, shown)
        : MaterialList.write(tables, shown)
            + "All about a row: auricle materials --explain ROW. Confidence and spread: material-tables/README.md.\n";
  }

  private String explained(MaterialTables tables) throws BadInputException {
    List<String> known = tables.rows().stream().map(MaterialRow::key).toList();
    Optional<MaterialRow> row = tables.row(explain).or(() -> tables.wholeEar(explain));
    if (row.isEmpty()) {
      String hint =
          NearestName.of(explain, known)
              .map(name -> "Did you mean '" + name + "'?")
              .orElseGet(() -> holding(explain, known));
      throw new BadInputException(refused("--explain", explain, "the key of a row", hint));
    }
    return json
        ? MaterialJson.write(tables, row.get())
        : MaterialExplained.write(tables, explain, row.get());
  }

  /** Rows whose key holds a word that is no key. */
  private static String holding(String word, List<String> known) {
    List<String> some = known.stream().filter(key -> key.contains(word)).toList();
    return some.isEmpty() || some.size() > MOST_NAMED
        ? "'auricle materials' lists them."
        : "Rows with it in their key: " + String.join(", ", some) + ".";
  }

  private static Finding refused(String option, String found, String expected, String remedy) {
    return Finding.error(option, "'" + found + "'", expected, remedy);
  }
}
