package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.energy.ElasticThread;
import auricle.mesh.ShellMesh;
import java.util.Set;

/** Threads of a model as energy terms. */
final class ThreadPlan {
  private final ShellMesh mesh;
  private final Findings findings;

  ThreadPlan(ShellMesh mesh, Findings findings) {
    this.mesh = mesh;
    this.findings = findings;
  }

  /**
   * A thread, tied as the model says.
   *
   * @param taken names that other threads have
   */
  ElasticThread thread(Load.TiedThread l, Set<String> taken) {
    if (taken.contains(l.name())) {
      findings.error(
          l.at() + "/name", "a second thread '" + l.name() + "'", "a name of its own", "");
    }
    SurfacePlaces places = new SurfacePlaces(mesh);
    ElasticThread thread =
        new ElasticThread(
            "thread " + l.name(),
            l.points().stream().map(places::point).toList(),
            l.closed(),
            l.stiffness_n());
    double now = thread.length(mesh.unknowns());
    boolean tooShort = l.tie() == Load.Tie.SHORTENING && l.amount() >= now;
    if (tooShort) {
      findings.error(
          l.at() + "/tie/shorten_mm",
          "shorter by " + l.amount(),
          "less than the thread's first length, " + now,
          "");
      return thread;
    }
    switch (l.tie()) {
      case LENGTH -> thread.tighten(now, l.amount());
      case SHORTENING -> thread.tighten(now, now - l.amount());
      case TENSION -> thread.pull(l.amount());
    }
    return thread;
  }
}
