package auricle.anatomy;

import java.util.ArrayList;
import java.util.List;

/**
 * The profile at one place around: wall of the bowl, edge of the bowl (inferior crus) and
 * triangular fossa where there are any, fold, scapha, helix, joined with continuous slope.
 */
final class EarProfile {
  private static final double EDGE_RADIUS = 2.2;
  private static final double FOSSA_FADE = 5;
  private static final double WALL_OVER_EDGE = 0.6;
  private final List<ProfilePiece> pieces = new ArrayList<>();
  private final double edgeStart;
  private final double edgeEnd;
  private final double foldHalf;
  private final double fold;
  private final double scaphaEnd;
  private double length;

  EarProfile(LocalForm form, ProfilePoint foot) {
    double turn = form.foldTurn();
    double leave = form.scaphaSlope() - form.sag();
    double bend = leave - form.wallSlope();
    double half = Math.abs(bend) * form.foldRadius() / 2;
    ProfilePoint foldStart = foldStart(form, bend, half);
    addWall(form, foot, foldStart);
    edgeStart = pieces.get(0).length();
    edgeEnd = pieces.size() > 1 ? edgeStart + pieces.get(1).length() : edgeStart;
    foldHalf = half;
    add(new ArcPiece(foldStart, half, bend / 2));
    fold = length();
    add(new ArcPiece(last(), half, bend / 2));
    add(new CubicPiece(last(), scaphaEnd(form, last())));
    scaphaEnd = length();
    add(new ArcPiece(last(), form.helix(), form.curl() + Math.min(0, turn)));
  }

  /** Where the fold starts, so that its middle lies at the crest. */
  private static ProfilePoint foldStart(LocalForm form, double bend, double half) {
    ProfilePoint middle =
        new ArcPiece(new ProfilePoint(0, 0, form.wallSlope()), half, bend / 2).end();
    return new ProfilePoint(
        form.crest() - middle.out(), Floor.BED + form.depth() - middle.lateral(), form.wallSlope());
  }

  private void addWall(LocalForm form, ProfilePoint foot, ProfilePoint foldStart) {
    double fossa = form.plain(Form.FOSSA_MM);
    if (fossa < 1e-3) {
      add(new CubicPiece(foot, foldStart));
      return;
    }
    double rise = Math.toRadians(form.plain(Form.RISE_DEG));
    double edge = Math.toRadians(form.plain(Form.EDGE_DEG));
    double grown = Steps.rise(fossa / FOSSA_FADE);
    double reach = (1 - grown) * foldStart.slope() + grown * (rise + WALL_OVER_EDGE * edge);
    double line = (1 - grown) * foldStart.slope() + grown * rise;
    ProfilePoint start =
        new ProfilePoint(
            foldStart.out() - fossa * Math.cos(line),
            foldStart.lateral() - fossa * Math.sin(line),
            reach);
    add(new CubicPiece(foot, start));
    add(new ArcPiece(start, EDGE_RADIUS * edge * grown, -edge * grown));
    add(new CubicPiece(last(), foldStart));
  }

  private static ProfilePoint scaphaEnd(LocalForm form, ProfilePoint start) {
    double slope = form.scaphaSlope();
    return new ProfilePoint(
        start.out() + form.flat() * Math.cos(slope),
        start.lateral() + form.flat() * Math.sin(slope),
        slope + form.sag());
  }

  private void add(ProfilePiece piece) {
    pieces.add(piece);
    length += piece.length();
  }

  private ProfilePoint last() {
    return pieces.get(pieces.size() - 1).end();
  }

  /** Arc length of the whole profile, mm. */
  double length() {
    return length;
  }

  /** Arc length from the foot to the start of the turn at the edge of the bowl, mm. */
  double edgeStart() {
    return edgeStart;
  }

  /** Arc length from the foot to the end of that turn, mm; the start where there is no fossa. */
  double edgeEnd() {
    return edgeEnd;
  }

  /** Arc length of half the fold, mm. */
  double foldHalf() {
    return foldHalf;
  }

  /** Arc length from the foot to the fold, mm. */
  double fold() {
    return fold;
  }

  /** Arc length from the foot to where the helix begins, mm. */
  double scaphaEnd() {
    return scaphaEnd;
  }

  /** The point at an arc length from the foot. */
  ProfilePoint at(double length) {
    double rest = length;
    for (ProfilePiece piece : pieces) {
      if (rest <= piece.length()) {
        return piece.at(Math.max(0, rest));
      }
      rest -= piece.length();
    }
    return last();
  }
}
