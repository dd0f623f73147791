package auricle.mesh;

import java.util.List;

/**
 * A curve in the x-z plane of straight pieces and arcs that follow each other smoothly from the
 * origin along +x, drawn out along y = 0 … width. The normal is to the left of the curve: +z at its
 * beginning.
 *
 * @param pieces in order
 * @param width mm
 */
public record Profile(List<Piece> pieces, double width) implements ParametricSurface {
  /**
   * A piece.
   *
   * @param length along the curve, mm
   * @param turn by which the direction turns over the piece, positive to the left, rad
   */
  public record Piece(double length, double turn) {}

  /** Copies the list. */
  public Profile {
    pieces = List.copyOf(pieces);
  }

  @Override
  public void at(double s, double t, double[] point, double[] normal) {
    double left = s * pieces.stream().mapToDouble(Piece::length).sum();
    double[] state = new double[3];
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      boolean last = i == pieces.size() - 1 || left <= piece.length();
      advance(state, piece, last ? left / piece.length() : 1);
      left -= piece.length();
      if (last) {
        break;
      }
    }
    Surfaces.set(point, state[0], width * t, state[1]);
    Surfaces.set(normal, -Math.sin(state[2]), 0, Math.cos(state[2]));
  }

  /** Moves (x, z, direction) along a part of a piece. */
  private static void advance(double[] state, Piece piece, double part) {
    double length = piece.length() * part;
    double turn = piece.turn() * part;
    double half = turn / 2;
    double chord = Math.abs(half) < 1e-9 ? length : length * Math.sin(half) / half;
    state[0] += chord * Math.cos(state[2] + half);
    state[1] += chord * Math.sin(state[2] + half);
    state[2] += turn;
  }
}
