package auricle.crosssolver;

import auricle.anatomy.SurfacePlace;
import auricle.energy.MaterialPoint;
import auricle.energy.MeanPoint;
import auricle.energy.SurfacePoint;
import auricle.geometry.TrianglePlace;
import auricle.geometry.Vectors;
import auricle.mesh.ShellMesh;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A bite spread over places on one face of the sheet, or its middle, told to both solvers: the mean
 * of these places.
 *
 * @param places on the smooth surface, over a mesh
 * @param face where the thread holds
 * @param offset_mm how far that face is from the smooth surface, + along the normal
 */
record SpreadBite(List<SurfacePlace> places, WedgeModel.Face face, double offset_mm) {
  /** Where a place is among the corners of the triangle under it. */
  record Spot(int triangle, double[] weight) {}

  /** Our point. */
  MaterialPoint point(ShellMesh mesh) {
    List<SurfacePoint> points = new ArrayList<>();
    for (SurfacePlace place : places) {
      points.add(
          SurfacePoint.carried(
              mesh.topology(), place.spot().triangle(), mesh.unknowns(), place.point(offset_mm)));
    }
    return new MeanPoint(points, Collections.nCopies(places.size(), 1.0 / places.size()));
  }

  /** Where it is at rest, mm. */
  double[] middle() {
    double[] mean = new double[3];
    for (SurfacePlace place : places) {
      mean = Vectors.add(mean, 1.0 / places.size(), place.point(offset_mm));
    }
    return mean;
  }

  List<Spot> spots(ShellMesh mesh) {
    return places.stream().map(place -> spot(mesh, place)).toList();
  }

  private static Spot spot(ShellMesh mesh, SurfacePlace place) {
    int t = place.spot().triangle();
    double[][] x = new double[3][];
    for (int i = 0; i < 3; i++) {
      x[i] = Vectors.at(mesh.positions(), 3 * mesh.topology().vertex(t, i));
    }
    TrianglePlace at = TrianglePlace.of(x[0], x[1], x[2], place.point(0));
    return new Spot(t, new double[] {1 - at.weight1() - at.weight2(), at.weight1(), at.weight2()});
  }
}
