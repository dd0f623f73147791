package auricle.plan;

import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import java.util.List;

/** An operation that ties a thread. */
public sealed interface TiedOperation extends Operation
    permits FoldSuture, ConchaMastoidSuture, LobuleSuture {

  /** How it is tied. */
  Tie tie();

  /** Row of the thread table. */
  String thread();

  /** The same, tied in another way. */
  TiedOperation withTie(Tie tie);

  /** The same with another row of the thread table. */
  TiedOperation withThread(String thread);

  @Override
  default List<Finding> findings(String at) {
    return tied(this, at);
  }

  /** What is wrong with the doses, the tie and the thread. */
  private static List<Finding> tied(TiedOperation operation, String at) {
    Findings findings = new Findings();
    String tie = operation.tie().dose().key();
    for (Finding finding : OperationCheck.doses(operation, at)) {
      boolean ofTie = finding.where().equals(at + "/" + tie);
      findings.add(ofTie ? finding.at(at + "/tie/" + tie) : finding);
    }
    if (operation.thread().isBlank()) {
      findings.error(at + "/thread", "no thread", "a row of the thread table", "");
    }
    return findings.list();
  }
}
