package auricle.report.picture;

import auricle.rehearsal.Position;

/** From which side an ear is looked at; mm across, mm up, mm towards the viewer. */
enum View {
  /** From the side: the face to the right of a right ear. */
  SIDE {
    @Override
    double across(double lateral, double anterior) {
      return anterior;
    }

    @Override
    double towards(double lateral, double anterior) {
      return lateral;
    }
  },
  /** From the front: a right ear stands out to the left. */
  FRONT {
    @Override
    double across(double lateral, double anterior) {
      return -lateral;
    }

    @Override
    double towards(double lateral, double anterior) {
      return anterior;
    }
  };

  abstract double across(double lateral, double anterior);

  abstract double towards(double lateral, double anterior);

  /** Three numbers each of places or directions: across, up, towards the viewer. */
  double[] seen(float[] points, double mirror) {
    double[] seen = new double[points.length];
    for (int i = 0; i < points.length; i += 3) {
      seen[i] = mirror * across(points[i], points[i + 1]);
      seen[i + 1] = points[i + 2];
      seen[i + 2] = towards(points[i], points[i + 1]);
    }
    return seen;
  }

  /** One place, in the same way. */
  double[] seen(Position place, double mirror) {
    double lateral = place.lateral_mm();
    double anterior = place.anterior_mm();
    return new double[] {
      mirror * across(lateral, anterior), place.superior_mm(), towards(lateral, anterior)
    };
  }
}
