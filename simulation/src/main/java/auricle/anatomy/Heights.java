package auricle.anatomy;

/** Heights of the smooth rest shape along z, and where lines of the surface have them. */
final class Heights {
  private static final int SECTIONS = 40;
  private static final int SAMPLES = 16;
  private static final double TOP_FROM = 0.12;
  private static final double TOP_TO = 0.45;
  private static final double BOTTOM_FROM = 0.84;
  private static final double BOTTOM_TO = 1.06;
  private static final double ROOT = 0.03;
  private static final double TAIL = 0.78;
  private static final double FADE = 0.07;
  private static final double RIM_FROM = 0.25;
  private final AuricleSurface surface;
  private final double lowest;
  private final double highest;

  Heights(AuricleSurface surface) {
    this.surface = surface;
    this.highest = extreme(TOP_FROM, TOP_TO, 1);
    this.lowest = -extreme(BOTTOM_FROM, BOTTOM_TO, -1);
  }

  /** Greatest sign z of the helix or lobule between two places around. */
  private double extreme(double from, double to, int sign) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= SECTIONS; i++) {
      Section section = surface.section(from + (to - from) * i / SECTIONS);
      for (int k = 0; k <= SAMPLES; k++) {
        double across = Section.SCAPHA_END + (1 - Section.SCAPHA_END) * k / SAMPLES;
        most = Math.max(most, sign * section.point(across)[2]);
      }
    }
    return most;
  }

  double lowest() {
    return lowest;
  }

  double highest() {
    return highest;
  }

  double percent(double z) {
    return 100 * (z - lowest) / (highest - lowest);
  }

  /** Around where the fold line has a height. */
  double aroundOfFold(double percent) {
    return bisect(percent, Chart.FOLD_START, Chart.FOLD_END, false);
  }

  /** Around where the most lateral line of the helix at the back has a height. */
  double aroundOfRim(double percent) {
    return bisect(percent, RIM_FROM, 1, true);
  }

  private double bisect(double percent, double from, double to, boolean rim) {
    double low = from;
    double high = to;
    for (int i = 0; i < 50; i++) {
      double middle = (low + high) / 2;
      Section section = surface.section(middle);
      double across = rim ? rim(section) : Section.FOLD;
      if (percent(section.point(across)[2]) > percent) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /**
   * Across of the rim: the most lateral point of the roll; towards the root of the helix and on the
   * lobule, where nothing is rolled, the edge.
   */
  static double rim(Section section) {
    double around = section.around();
    double rolled = Steps.rise((around - ROOT) / FADE) * Steps.fall((around - TAIL) / FADE);
    return 1 - rolled * (1 - mostLateral(section));
  }

  private static double mostLateral(Section section) {
    double step = (1 - Section.SCAPHA_END) / SAMPLES;
    double best = 1;
    for (int i = 0; i <= SAMPLES; i++) {
      best = moreLateral(section, best, Section.SCAPHA_END + i * step);
    }
    for (double part = step / 2; part > 1e-7; part /= 2) {
      double middle = best;
      best = moreLateral(section, best, Math.max(Section.SCAPHA_END, middle - part));
      best = moreLateral(section, best, Math.min(1, middle + part));
    }
    return best;
  }

  private static double moreLateral(Section section, double best, double across) {
    return section.point(across)[0] > section.point(best)[0] ? across : best;
  }
}
