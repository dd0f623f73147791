package auricle.surgery;

import auricle.anatomy.*;
import auricle.equilibrium.*;
import auricle.material.Tissue;
import auricle.mesh.ShellMesh;
import auricle.plan.*;
import java.util.*;

final class Proto {
  static long cpu() { return java.lang.management.ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime(); }
  public static void main(String[] args) throws Exception {
    int runs = Integer.getInteger("runs", 3);
    for (int r = 0; r < runs; r++) run();
  }
  static ShapeParameters shape() {
    ShapeParameters s = ShapeParameters.normalAdult().with(ShapeKnob.FOLD_UPPER, 135).with(ShapeKnob.FOLD_MIDDLE, 130).with(ShapeKnob.FOLD_LOWER, 120).with(ShapeKnob.LEAN_UPPER, 52).with(ShapeKnob.LEAN_MIDDLE, 52).with(ShapeKnob.BOWL_DEPTH,13);
    return s;
  }
  static String heights(Auricle a, double[] u) {
    // lateral of rim at 4 levels, crude
    StringBuilder b = new StringBuilder();
    for (Level l : Level.values()) {
      double ar = a.chart().aroundOfRimAtHeight(l.heightPercent());
      double[] p = a.chart().spot(ar, a.chart().acrossOfRim(ar)).position(a.mesh().topology(), u);
      b.append(String.format("%s %.2f  ", l.key(), p[0]));
    }
    return b.toString();
  }
  static void run() throws Exception {
    long t0 = cpu();
    Auricle a = Auricle.of(shape(), MeshLevel.PLANNING);
    Tissue tissue = Tissue.standard();
    long t1 = cpu();
    List<Operation> ops = new ArrayList<>();
    String th = "polyester_4_0";
    ops.add(Scoring.usual("scoring"));
    for (double l : new double[] {78, 68, 58, 48}) ops.add(FoldSuture.square("fold " + l, l, 7, -7, 8, new Tie.Gap(Double.parseDouble(System.getProperty("gap","11"))), th));
    ops.add(BowlStrip.usual("strip"));
    ops.add(LobuleSuture.usual("lobule", new Tie.Gap(10), th));
    if (Boolean.getBoolean("more")) {
      ops.add(ConchaMastoidSuture.usual("cm", new Tie.Gap(12), th));
      ops.add(new SkinStrip("skin", true, 25, 80, 10));
      ops.add(RimWedge.usual("wedge"));
      ops.add(RimShaving.usual("shave"));
      ops.add(CaudaExcision.usual("cauda"));
      ops.add(FullThicknessIncision.usual("cut"));
      ops.add(Bolster.usual("bolster"));
    }
    EarBody body = EarBody.of(a, tissue, ops);
    long t2 = cpu();
    System.out.printf("V %d T %d auricle+tissue %.0f ms body %.0f ms start %s%n", a.mesh().vertexCount(), a.mesh().topology().triangleCount(), (t1 - t0) / 1e6, (t2 - t1) / 1e6, heights(a, body.unknowns()));
    for (Operation o : ops) {
      t0 = cpu();
      Settled s = body.apply(o, Solving.watched((l, n) -> { if (Boolean.getBoolean("table")) System.out.printf("  %.4f %d e=%.5f r=%.2e step=%.3f neg=%d shift=%.0e fac=%d %s%n", l, n.iteration(), n.value(), n.residual(), n.step(), n.negativePivots(), n.shift(), n.factorisations(), n.accepted()); return true; }));
      System.out.printf("%-10s %s it %d %.0f ms %s T %s %s%s%n", o.name(), s.outcome(), s.iterations(), (cpu() - t0) / 1e6, heights(a, body.unknowns()),
          body.threads().stream().map(t -> String.format("%.3f", t.thread().tension(body.unknowns()))).toList(), s.converged() ? "" : s.words(), s.events());
    }
  }
}
