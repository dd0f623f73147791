package auricle.energy;

import auricle.geometry.Vectors;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Triangles that can be touched: either some of the shell's own, which move with the unknowns, or a
 * surface fixed in space.
 */
public final class ContactSurface {
  private final int[] triangles;
  private final double[] fixedCoordinates;

  private ContactSurface(int[] triangles, double[] fixedCoordinates) {
    this.triangles = triangles.clone();
    this.fixedCoordinates = fixedCoordinates.clone();
  }

  /**
   * Triangles of the shell.
   *
   * @param triangles three vertex indices a triangle
   */
  public static ContactSurface moving(int[] triangles) {
    return new ContactSurface(triangles, new double[0]);
  }

  /**
   * Triangles at rest in space.
   *
   * @param triangles three indices a triangle into the coordinates
   * @param coordinates x, y, z of every corner, mm
   * @throws IllegalArgumentException if an index has no coordinates
   */
  public static ContactSurface fixed(int[] triangles, double[] coordinates) {
    if (IntStream.of(triangles).anyMatch(v -> v < 0 || 3 * v + 3 > coordinates.length)) {
      throw new IllegalArgumentException("a triangle names a corner that has no coordinates");
    }
    return new ContactSurface(triangles, coordinates);
  }

  boolean moves() {
    return fixedCoordinates.length == 0;
  }

  int triangleCount() {
    return triangles.length / 3;
  }

  /** Corner indices of a triangle, a copy. */
  int[] corners(int triangle) {
    return Arrays.copyOfRange(triangles, 3 * triangle, 3 * triangle + 3);
  }

  /** All corner indices, each once. */
  int[] vertices() {
    return Arrays.stream(triangles).distinct().toArray();
  }

  /** Positions of all corners at u, x, y, z each; shared. */
  double[] coordinates(double[] u) {
    return moves() ? u : fixedCoordinates;
  }

  /** Positions of corners at u. */
  double[][] at(double[] u, int[] corners) {
    double[] source = coordinates(u);
    double[][] positions = new double[corners.length][];
    for (int i = 0; i < corners.length; i++) {
      positions[i] = Vectors.at(source, 3 * corners[i]);
    }
    return positions;
  }

  /**
   * Change of the corners' positions along a direction of the unknowns; zero for a fixed surface.
   */
  double[][] along(double[] direction, int[] corners) {
    return moves() ? at(direction, corners) : new double[corners.length][3];
  }

  /** One corner index of a triangle. */
  int corner(int triangle, int k) {
    return triangles[3 * triangle + k];
  }

  /**
   * Distance of a vertex of the shell from a corner, or of their motions.
   *
   * @param of positions, or with {@code motion} a direction of the unknowns
   */
  double gap(double[] of, int vertex, int corner, boolean motion) {
    double[] source = coordinates(of);
    double share = motion && !moves() ? 0 : 1;
    double square = 0;
    for (int c = 0; c < 3; c++) {
      double d = of[3 * vertex + c] - share * source[3 * corner + c];
      square += d * d;
    }
    return Math.sqrt(square);
  }

  /** Distance of two corners. */
  double edge(double[] u, int from, int to) {
    double[] source = coordinates(u);
    double square = 0;
    for (int c = 0; c < 3; c++) {
      double d = source[3 * from + c] - source[3 * to + c];
      square += d * d;
    }
    return Math.sqrt(square);
  }
}
