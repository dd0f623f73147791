package auricle.surgery;

import auricle.material.SurfaceStress;
import auricle.plan.Face;
import auricle.plan.Scoring;

/**
 * Partial cuts side by side along the fold: the sheet becomes more compliant across them, turns
 * away from the cut face as the tension of that face is released ({@link PartialCut}), and, where
 * folding closes the cuts, becomes stiff again once their mouths are shut ({@link CutShut}).
 */
final class ScoredBand implements Change {
  private final Scoring scoring;
  private final EarPlaces places;
  private final EarWall wall;
  private final SurfaceStress stress;

  ScoredBand(Scoring scoring, EarPlaces places, EarWall wall, SurfaceStress stress) {
    this.scoring = scoring;
    this.places = places;
    this.wall = wall;
    this.stress = stress;
  }

  @Override
  public void alter(AlteredSheet sheet) {
    FoldBand band =
        new FoldBand(
            places,
            scoring.fromLevel_percent(),
            scoring.toLevel_percent(),
            t -> scoring.fromFold_mm(),
            scoring.width_mm());
    for (int t = 0; t < places.triangleCount(); t++) {
      double share = places.region(t).hasCartilage() ? band.share(t) : 0;
      if (share > 0) {
        cut(sheet, t, share);
      }
    }
  }

  private void cut(AlteredSheet sheet, int t, double share) {
    PartialCut cut =
        new PartialCut(scoring.depth_fraction(), wall.sheet_mm(t), scoring.spacing_mm());
    double compliance = share * cut.compliance();
    double closes = cut.shutAt(scoring.kerf_mm()) * compliance / (1 + compliance);
    int side = scoring.face() == Face.POSTERIOR ? 1 : -1;
    sheet.sections().score(t, new CutShut.Cut(side, compliance, closes));
    double turn = share * cut.turn(stress.layerShare(), stress.shortening());
    // the cut face becomes convex; positive curvature is convex to the anterior face
    sheet.bend(t, scoring.face() == Face.ANTERIOR ? turn : -turn);
  }
}
