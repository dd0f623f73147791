package auricle.scenario;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.diagnostics.NearestName;
import auricle.material.MaterialTables;
import auricle.material.ThreadRow;
import auricle.material.Tissue;
import auricle.plan.EarCase;
import auricle.plan.Operation;
import auricle.plan.Tie;
import auricle.plan.TiedOperation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether the material tables have what an ear asks of them: its tissue and its threads. */
final class TissueCheck {
  private final MaterialTables tables;
  private final String at;

  /**
   * @param at JSON pointer of the ear
   */
  TissueCheck(MaterialTables tables, String at) {
    this.tables = tables;
    this.at = at;
  }

  List<Finding> findings(EarCase earCase) {
    try {
      Tissue tissue = Tissue.of(tables, earCase.tissue().keys(earCase.ear()));
      List<Finding> findings = threads(earCase, tissue.threadKeys());
      findings.addAll(overTight(earCase, tissue));
      return findings;
    } catch (BadInputException e) {
      // age and thickness are held against narrower bounds of the ear
      return e.findings().stream().flatMap(f -> placed(f).stream()).toList();
    }
  }

  private Optional<Finding> placed(Finding finding) {
    String where = finding.where().replaceFirst("^/(rows|overrides)/", "/tissue/");
    return where.startsWith("/tissue/") ? Optional.of(finding.at(at + where)) : Optional.empty();
  }

  /** Ties at tensions that knot or bite do not bear. */
  private List<Finding> overTight(EarCase earCase, Tissue tissue) throws BadInputException {
    List<Finding> findings = new ArrayList<>();
    List<Operation> operations = earCase.plan().operations();
    for (int i = 0; i < operations.size(); i++) {
      if (operations.get(i) instanceof TiedOperation tied
          && tied.tie() instanceof Tie.Tension tie) {
        String where = at + "/plan/" + i + "/" + tied.kind() + "/tie/tension_n";
        tissue
            .thread(tied.thread())
            .flatMap(thread -> overTight(where, tie.tension_n(), thread, tissue))
            .ifPresent(findings::add);
      }
    }
    return findings;
  }

  private static Optional<Finding> overTight(
      String where, double tension_n, ThreadRow thread, Tissue tissue) {
    double knot = thread.knotPull_n();
    double tear = tissue.bite(thread.size()).tearThrough_n();
    String bearer = knot <= tear ? "its knot-pull strength" : "what tears its bites out";
    return tension_n <= Math.min(knot, tear)
        ? Optional.empty()
        : Optional.of(
            Finding.warning(
                where,
                "%.2f N is more than %s (%.2f N): the thread lets go as it is tied"
                    .formatted(tension_n, bearer, Math.min(knot, tear)),
                "a tension that thread and bites bear; fold sutures hold at some tenths of a newton",
                ""));
  }

  private List<Finding> threads(EarCase earCase, List<String> known) {
    List<Finding> findings = new ArrayList<>();
    List<Operation> operations = earCase.plan().operations();
    for (int i = 0; i < operations.size(); i++) {
      if (operations.get(i) instanceof TiedOperation tied && !known.contains(tied.thread())) {
        findings.add(
            Finding.error(
                at + "/plan/" + i + "/" + tied.kind() + "/thread",
                "no thread '" + tied.thread() + "' in the tables",
                "material and size, such as polyester_4_0",
                NearestName.hint(tied.thread(), known)));
      }
    }
    return findings;
  }
}
