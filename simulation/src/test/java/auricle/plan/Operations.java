package auricle.plan;

import java.util.List;

/** One operation of every kind, for tests. */
final class Operations {
  private Operations() {}

  static FoldSuture foldSuture() {
    return FoldSuture.square("upper", 75, 4, -4, 14, new Tie.Gap(6), "any");
  }

  static List<Operation> all() {
    return List.of(
        foldSuture(),
        Scoring.usual("scoring"),
        FullThicknessIncision.usual("cut"),
        BowlStrip.usual("strip"),
        ConchaMastoidSuture.usual("mastoid", new Tie.Tension(0.5), "any"),
        LobuleSuture.usual("lobule", new Tie.Gap(8), "any"),
        CaudaExcision.usual("cauda"),
        SkinStrip.usual("skin"),
        RimWedge.usual("wedge"),
        RimShaving.usual("shaving"),
        Bolster.usual("pad"));
  }
}
