package auricle.measurement;

/**
 * The crest of the antihelix and how even it is: the smallest radius is that across the fold, over
 * 2 mm to either side, which tells a round fold from a sharp edge; the kinks are those along the
 * crest, over some 4 mm.
 */
final class FoldLine {
  private static final double BESIDE = 2;
  private static final int ALONG = 3;
  private final SampleBlock crest;

  FoldLine(SamplePlan plan) {
    crest = plan.fromFold(new Stations(0.3, 0.8, 40), -BESIDE, BESIDE, 3);
  }

  /** Evenness of the fold. */
  Evenness evenness(double[] points, EarHeight height) {
    Evenness across =
        EvenLine.of(
            crest.stations(),
            k -> Bend.radius_mm(points, crest.at(k, 0), crest.at(k, 1), crest.at(k, 2)),
            k -> height.percent(points[crest.at(k, 1) + 2]));
    Evenness along =
        EvenLine.of(
            crest.stations() - 2 * ALONG,
            k ->
                Bend.radius_mm(
                    points, crest.at(k, 1), crest.at(k + ALONG, 1), crest.at(k + 2 * ALONG, 1)),
            k -> height.percent(points[crest.at(k + ALONG, 1) + 2]));
    return new Evenness(across.smallestRadius_mm(), across.level_percent(), along.kinks());
  }
}
