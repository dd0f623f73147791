package auricle.scenario;

import auricle.assessment.CautionKind;
import auricle.diagnostics.Finding;
import auricle.diagnostics.NearestName;
import auricle.measurement.Figure;
import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.plan.TiedOperation;
import auricle.yamlfile.Entry;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** What should come out, read and held against the plan. */
final class ExpectedEntries {
  private static final List<String> FIGURES =
      Arrays.stream(Figure.values()).map(Figure::key).toList();

  private static final List<String> CAUTIONS =
      Arrays.stream(CautionKind.values()).map(CautionKind::key).toList();

  private final Plan plan;
  private final boolean sound;
  private final Consumer<Finding> findings;

  /**
   * @param sound whether the schema had nothing to object; if it had, nothing is missed
   */
  ExpectedEntries(Plan plan, boolean sound, Consumer<Finding> findings) {
    this.plan = plan;
    this.sound = sound;
    this.findings = findings;
  }

  Expected expected(List<Entry> blocks) {
    List<CautionKind> cautions = new ArrayList<>();
    List<CautionKind> noCautions = new ArrayList<>();
    List<Expectation> figures = new ArrayList<>();
    boolean converged = true;
    for (Entry block : blocks) {
      converged = block.has("converged") ? block.flag("converged") : converged;
      cautions.addAll(cautions(block, "cautions"));
      noCautions.addAll(cautions(block, "no_cautions"));
      block.items("figures").stream()
          .filter(e -> e.node().isObject())
          .flatMap(e -> expectation(e).stream())
          .forEach(figures::add);
    }
    return new Expected(converged, cautions, noCautions, figures);
  }

  private List<CautionKind> cautions(Entry block, String key) {
    List<Entry> items = block.items(key).stream().filter(e -> e.node().isString()).toList();
    items.forEach(e -> known(e, e.string(), CAUTIONS, "a caution"));
    return items.stream().flatMap(e -> CautionKind.ofKey(e.string()).stream()).toList();
  }

  private Optional<Expectation> expectation(Entry e) {
    List<Expectation.Kind> kinds =
        Arrays.stream(Expectation.Kind.values()).filter(k -> e.has(k.key())).toList();
    if (kinds.size() != 1) {
      error(
          e.at(),
          kinds.isEmpty() ? "nothing that is expected" : "several at once",
          "one of figure, change_of, loss_of, tension_of",
          "");
      return Optional.empty();
    }
    Expectation expectation = read(e, kinds.get(0));
    check(e, expectation);
    return Optional.of(expectation);
  }

  private static Expectation read(Entry e, Expectation.Kind kind) {
    boolean change = kind == Expectation.Kind.CHANGE;
    return new Expectation(
        kind,
        e.text(kind.key()),
        Moment.of(e.text("from", "before")),
        Moment.of(e.text(change ? "to" : "at", "after")),
        e.text("over"),
        e.find("range")
            .map(
                r ->
                    new Expectation.Bounds(
                        r.node().path(0).asDouble(), r.node().path(1).asDouble())),
        e.find("sign").map(s -> Expectation.Sign.valueOf(upper(s))),
        e.number("by_at_least", 0),
        e.find("other_side").map(s -> Expectation.OtherSide.valueOf(upper(s))),
        e.text("because"));
  }

  private static String upper(Entry e) {
    return e.string().toUpperCase(Locale.ROOT);
  }

  private void check(Entry e, Expectation x) {
    String key = x.kind().key();
    if (x.kind() == Expectation.Kind.TENSION) {
      known(e.get(key), x.subject(), threads(), "a step that ties a thread");
    } else {
      known(e.get(key), x.subject(), FIGURES, "a measurement");
    }
    e.find("over").ifPresent(o -> known(o, o.string(), FIGURES, "a measurement"));
    for (String moment : List.of("from", "to", "at")) {
      e.find(moment).ifPresent(this::moment);
    }
    if (sound && x.range().isEmpty() && x.sign().isEmpty() && x.otherSide().isEmpty()) {
      error(e.at(), "no range, sign or other_side", "what it should be", "");
    }
    if (x.range().filter(r -> !(r.low() <= r.high())).isPresent()) {
      error(e.get("range").at(), "the greater value first", "the lesser value first", "");
    }
    uses(e, x.kind());
  }

  /** Keys that say nothing for this kind. */
  private void uses(Entry e, Expectation.Kind kind) {
    boolean change = kind == Expectation.Kind.CHANGE;
    for (String stray : change ? List.of("at") : List.of("from", "to")) {
      if (e.has(stray)) {
        error(
            e.get(stray).at(),
            "'" + stray + "' beside " + kind.key(),
            change ? "'from' and 'to' with change_of" : "'at' with " + kind.key(),
            "");
      }
    }
    if (kind == Expectation.Kind.LOSS && !Moment.of(e.text("at")).isTime()) {
      error(e.at(), "no time of the loss", "'at' with a time such as 12 months", "");
    }
  }

  private void moment(Entry e) {
    String words = e.string();
    List<String> known = new ArrayList<>(List.of("before", "after"));
    plan.operations().forEach(o -> known.add(o.name()));
    if (!Moment.of(words).isTime()) {
      known(e, words, known, "before, after, the name of a step, or a time such as 12 months");
    }
  }

  private List<String> threads() {
    return plan.operations().stream()
        .filter(TiedOperation.class::isInstance)
        .map(Operation::name)
        .toList();
  }

  private void known(Entry e, String name, List<String> known, String what) {
    if (!known.contains(name)) {
      error(e.at(), "'" + name + "'", what, NearestName.hint(name, known));
    }
  }

  private void error(String at, String found, String expected, String remedy) {
    findings.accept(Finding.error(at, found, expected, remedy));
  }
}
