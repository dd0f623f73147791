package auricle.report;

import auricle.analysis.AnalysisResult;
import auricle.analysis.CheckResult;
import auricle.analysis.Probe;
import auricle.analysis.StepResult;
import auricle.numerics.NewtonIteration;
import java.io.StringWriter;
import java.util.List;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * The whole result as JSON, by the schema {@code auricle/report/result-1.schema.json}. It holds no
 * time and no path, so the same input gives the same bytes.
 */
public final class ResultJson {
  private final JsonGenerator json;

  private ResultJson(JsonGenerator json) {
    this.json = json;
  }

  /** The file. */
  public static String write(Provenance from, List<Probe> probes, AnalysisResult result) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(pretty(), text)) {
      new ResultJson(json).all(from, probes, result);
    }
    return text.append('\n').toString();
  }

  private static ObjectWriteContext pretty() {
    return new ObjectWriteContext.Base() {
      @Override
      public tools.jackson.core.PrettyPrinter getPrettyPrinter() {
        return new DefaultPrettyPrinter()
            .withObjectIndenter(new DefaultIndenter(" ", "\n"))
            .withArrayIndenter(new DefaultIndenter(" ", "\n"));
      }

      @Override
      public boolean hasPrettyPrinter() {
        return true;
      }
    };
  }

  private void all(Provenance from, List<Probe> probes, AnalysisResult result) {
    json.writeStartObject();
    json.writeStringProperty("format", "auricle-result/1");
    json.writeStringProperty("use", UseNotice.TEXT);
    json.writeBooleanProperty("converged", result.converged());
    json.writeStringProperty("outcome", result.outcome());
    json.writeArrayPropertyStart("remarks");
    result.remarks().forEach(json::writeString);
    json.writeEndArray();
    json.writeBooleanProperty("expectations_met", result.expectationsMet());
    inputs(from);
    size(result.size());
    json.writeArrayPropertyStart("steps");
    result.steps().forEach(step -> step(step, probes));
    json.writeEndArray();
    json.writeArrayPropertyStart("checks");
    result.checks().forEach(this::check);
    json.writeEndArray();
    json.writeEndObject();
  }

  private void inputs(Provenance from) {
    json.writeObjectPropertyStart("inputs");
    json.writeStringProperty("program_version", from.version());
    json.writeStringProperty("title", from.title());
    json.writeStringProperty("model_file", from.modelFile());
    json.writeStringProperty("model_sha256", from.modelSha256());
    if (!from.meshFile().isEmpty()) {
      json.writeStringProperty("mesh_file", from.meshFile());
      json.writeStringProperty("mesh_sha256", from.meshSha256());
    }
    json.writeEndObject();
  }

  private void size(AnalysisResult.Size size) {
    json.writeObjectPropertyStart("size");
    json.writeNumberProperty("vertices", size.vertices());
    json.writeNumberProperty("triangles", size.triangles());
    json.writeNumberProperty("edges", size.edges());
    json.writeNumberProperty("unknowns", size.unknowns());
    json.writeNumberProperty("free_unknowns", size.freeUnknowns());
    json.writeEndObject();
  }

  private void step(StepResult step, List<Probe> probes) {
    json.writeStartObject();
    json.writeNumberProperty("step", step.number());
    number("load_factor", step.loadFactor());
    json.writeBooleanProperty("converged", step.converged());
    json.writeStringProperty("outcome", step.outcome());
    json.writeStringProperty("reason", step.reason());
    json.writeObjectPropertyStart("probes");
    for (int i = 0; i < probes.size(); i++) {
      number(ProbeTable.column(probes.get(i)), step.probes().get(i));
    }
    json.writeEndObject();
    json.writeArrayPropertyStart("iterations");
    step.iterations().forEach(this::iteration);
    json.writeEndArray();
    json.writeEndObject();
  }

  private void iteration(NewtonIteration i) {
    json.writeStartObject();
    json.writeNumberProperty("iteration", i.iteration());
    number("energy_mj", i.value());
    number("residual_n", i.residual());
    number("step_mm", i.step());
    number("shift", i.shift());
    json.writeNumberProperty("negative_pivots", i.negativePivots());
    json.writeNumberProperty("factorisations", i.factorisations());
    json.writeBooleanProperty("accepted", i.accepted());
    json.writeEndObject();
  }

  private void check(CheckResult check) {
    json.writeStartObject();
    json.writeStringProperty("probe", check.probe());
    number("at", check.abscissa());
    number("expected", check.expected());
    number("found", check.found());
    number("allowed", check.allowed());
    json.writeBooleanProperty("met", check.met());
    json.writeStringProperty("source", check.source());
    json.writeStringProperty("confidence", check.confidence());
    json.writeEndObject();
  }

  /** JSON has no NaN: null says that there is no number. */
  private void number(String name, double value) {
    if (Double.isFinite(value)) {
      json.writeNumberProperty(name, value);
    } else {
      json.writeNullProperty(name);
    }
  }
}
