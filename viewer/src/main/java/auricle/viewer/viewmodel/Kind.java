package auricle.viewer.viewmodel;

import auricle.plan.Bolster;
import auricle.plan.BowlStrip;
import auricle.plan.CaudaExcision;
import auricle.plan.ConchaMastoidSuture;
import auricle.plan.FoldSuture;
import auricle.plan.FullThicknessIncision;
import auricle.plan.LobuleSuture;
import auricle.plan.Operation;
import auricle.plan.RimShaving;
import auricle.plan.RimWedge;
import auricle.plan.Scoring;
import auricle.plan.SkinStrip;
import auricle.plan.Tie;
import java.util.function.Function;

/** The kinds of step that can be added, each with doses to begin from; the doses are our choice. */
@SuppressWarnings("ImmutableEnumChecker") // the makers keep no state
public enum Kind {
  /** Mattress suture between concha and scapha. */
  FOLD_SUTURE(
      "Fold suture", n -> FoldSuture.square(n, 68, 5, -5, 10, new Tie.Tension(0.3), Kind.THREAD)),
  /** Cuts on the posterior face. */
  SCORING("Scoring", Scoring::usual),
  /** Strip out of the wall of the bowl. */
  BOWL_STRIP("Bowl strip", BowlStrip::usual),
  /** Bowl to mastoid. */
  CONCHA_MASTOID_SUTURE(
      "Concha-mastoid suture",
      n -> ConchaMastoidSuture.usual(n, new Tie.Tension(0.5), Kind.THREAD)),
  /** Cauda to bowl. */
  LOBULE_SUTURE("Lobule suture", n -> LobuleSuture.usual(n, new Tie.Tension(0.13), Kind.THREAD)),
  /** End of the cauda taken away. */
  CAUDA_EXCISION("Cauda excision", CaudaExcision::usual),
  /** Skin taken from the back. */
  SKIN_STRIP("Skin strip", SkinStrip::usual),
  /** Wedge out of the rim. */
  RIM_WEDGE("Rim wedge", RimWedge::usual),
  /** Rim thinned. */
  RIM_SHAVING("Rim shaving", RimShaving::usual),
  /** Cut through the whole thickness. */
  INCISION("Full-thickness incision", FullThicknessIncision::usual),
  /** Pad outside. */
  BOLSTER("Bolster", Bolster::usual);

  /** Row of the thread table that new sutures take: braided polyester 4-0. */
  public static final String THREAD = "polyester_4_0";

  private final String label;
  private final transient Function<String, Operation> maker;

  Kind(String label, Function<String, Operation> maker) {
    this.label = label;
    this.maker = maker;
  }

  /** As shown. */
  public String label() {
    return label;
  }

  /** A step of this kind under a name. */
  public Operation usual(String name) {
    return maker.apply(name);
  }
}
