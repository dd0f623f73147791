package auricle.report;

import auricle.analysis.AnalysisResult;
import auricle.analysis.CheckResult;
import auricle.analysis.Probe;
import auricle.analysis.StepResult;
import auricle.numerics.NewtonIteration;
import java.util.List;

/**
 * The whole result as JSON, by the schema {@code auricle/report/result-1.schema.json}. It holds no
 * time and no path, so the same input gives the same bytes.
 */
public final class ResultJson {
  private final JsonText json;

  private ResultJson(JsonText json) {
    this.json = json;
  }

  /** The file. */
  public static String write(Provenance from, List<Probe> probes, AnalysisResult result) {
    return JsonText.of(json -> new ResultJson(json).all(from, probes, result));
  }

  private void all(Provenance from, List<Probe> probes, AnalysisResult result) {
    json.text("format", "auricle-result/1");
    json.text("use", UseNotice.TEXT);
    json.truth("converged", result.converged());
    json.text("outcome", result.outcome());
    json.texts("remarks", result.remarks());
    json.truth("expectations_met", result.expectationsMet());
    json.object("inputs", o -> inputs(from));
    json.object("size", o -> size(result.size()));
    json.objects("steps", result.steps(), step -> step(step, probes));
    json.objects("checks", result.checks(), this::check);
  }

  private void inputs(Provenance from) {
    json.text("program_version", from.version());
    json.text("title", from.title());
    json.text("model_file", from.modelFile());
    json.text("model_sha256", from.modelSha256());
    if (!from.meshFile().isEmpty()) {
      json.text("mesh_file", from.meshFile());
      json.text("mesh_sha256", from.meshSha256());
    }
    if (!from.otherMeshes().isEmpty()) {
      json.objects("other_meshes", from.otherMeshes(), this::otherMesh);
    }
  }

  private void otherMesh(Provenance.MeshFile file) {
    json.text("file", file.name());
    json.text("sha256", file.sha256());
  }

  private void size(AnalysisResult.Size size) {
    json.count("vertices", size.vertices());
    json.count("triangles", size.triangles());
    json.count("edges", size.edges());
    json.count("unknowns", size.unknowns());
    json.count("free_unknowns", size.freeUnknowns());
  }

  private void step(StepResult step, List<Probe> probes) {
    json.count("step", step.number());
    json.number("load_factor", step.loadFactor());
    json.truth("converged", step.converged());
    json.text("outcome", step.outcome());
    json.text("reason", step.reason());
    json.object(
        "probes",
        o -> {
          for (int i = 0; i < probes.size(); i++) {
            json.number(ProbeTable.column(probes.get(i)), step.probes().get(i));
          }
        });
    json.objects("iterations", step.iterations(), this::iteration);
  }

  private void iteration(NewtonIteration i) {
    json.count("iteration", i.iteration());
    json.number("energy_mj", i.value());
    json.number("residual_n", i.residual());
    json.number("step_mm", i.step());
    json.number("shift", i.shift());
    json.count("negative_pivots", i.negativePivots());
    json.count("factorisations", i.factorisations());
    json.truth("accepted", i.accepted());
  }

  private void check(CheckResult check) {
    json.text("probe", check.probe());
    json.number("at", check.abscissa());
    json.number("expected", check.expected());
    json.number("found", check.found());
    json.number("allowed", check.allowed());
    json.truth("met", check.met());
    json.text("source", check.source());
    json.text("confidence", check.confidence());
  }
}
