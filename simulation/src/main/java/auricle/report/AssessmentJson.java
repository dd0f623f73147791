package auricle.report;

import auricle.assessment.Assessment;
import auricle.assessment.Balance;
import auricle.assessment.Caution;
import auricle.assessment.Fault;
import auricle.assessment.Limit;
import auricle.assessment.SideDifference;
import auricle.plan.Range;
import java.util.List;

/** What there is to say about an ear, as JSON. */
final class AssessmentJson {
  private final JsonText json;

  AssessmentJson(JsonText json) {
    this.json = json;
  }

  /** Faults before, balance, cautions. */
  void write(Assessment assessment) {
    json.objects("faults_before", assessment.faults(), this::fault);
    json.truth("balanced", assessment.balanced());
    json.objects("balance", assessment.balance(), this::balance);
    json.objects("cautions", assessment.cautions(), this::caution);
  }

  private void fault(Fault fault) {
    json.text("level", fault.level().key());
    json.text("words", fault.words());
    json.text("figure", fault.figure().key());
    json.number("measured", fault.measured());
    json.object("limit", o -> limit(fault.limit()));
  }

  private void balance(Balance balance) {
    Range target = balance.target();
    json.text("figure", balance.figure().key());
    json.number("before", balance.before());
    json.number("after", balance.after());
    json.object(
        "target",
        o -> {
          json.number("low", target.low());
          json.number("high", target.high());
          json.text("source", target.source());
          json.text("confidence", target.confidence());
        });
    json.truth("met", balance.met());
    json.number("beyond", balance.beyond());
    json.text("words", balance.words());
  }

  private void caution(Caution caution) {
    json.text("key", caution.kind().key());
    json.text("words", caution.words());
    json.number("measured", caution.measured());
    json.object("limit", o -> limit(caution.limit()));
    json.text("where", caution.where());
  }

  private void limit(Limit limit) {
    json.text("key", limit.key());
    json.number("value", limit.value());
    json.text("unit", limit.unit());
    json.text("source", limit.source());
    json.text("confidence", limit.confidence());
  }

  /** The two ears of a pair against each other. */
  void sides(List<SideDifference> differences) {
    json.objects("side_differences", differences, this::side);
  }

  private void side(SideDifference side) {
    json.text("figure", side.figure().key());
    json.number("right", side.right());
    json.number("left", side.left());
    json.number("difference", side.difference());
    json.object("limit", o -> limit(side.limit()));
    json.truth("within", side.within());
  }
}
