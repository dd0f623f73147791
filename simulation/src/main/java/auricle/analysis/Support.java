package auricle.analysis;

import java.util.List;

/** What holds or moves a part of the shell. */
public sealed interface Support {
  /** Place in the model file. */
  String at();

  /** The vertices it acts on. */
  Selector where();

  /** Holds or moves one of the vertices. */
  void hold(int vertex, SupportPlan plan);

  /** Vertices and directors held. */
  record Clamp(String at, Selector where) implements Support {
    @Override
    public void hold(int vertex, SupportPlan plan) {
      plan.holdAxes(vertex, at);
      plan.hold(vertex, DirectorHold.FULLY);
    }
  }

  /**
   * Vertices held along some directions, directors held if asked for.
   *
   * @param directions one to three directions, not parallel; may be none if rotation is held
   * @param rotation whether directors are held
   */
  record Fix(String at, Selector where, List<Triple> directions, boolean rotation)
      implements Support {
    @Override
    public void hold(int vertex, SupportPlan plan) {
      directions.forEach(d -> plan.holdAlong(vertex, plan.unit(at, d), at));
      if (rotation) {
        plan.hold(vertex, DirectorHold.FULLY);
      }
    }
  }

  /** A plane of symmetry: vertices stay in it, directors too. */
  record Symmetry(String at, Selector where, Triple normal) implements Support {
    @Override
    public void hold(int vertex, SupportPlan plan) {
      double[] n = plan.unit(at, normal);
      plan.holdAlong(vertex, n, at);
      plan.hold(vertex, DirectorHold.inPlane(at, n));
    }
  }

  /**
   * Vertices moved by a displacement that grows with the load factor.
   *
   * @param displacement mm at load factor 1; NaN in a component that is left free
   */
  record Move(String at, Selector where, Triple displacement) implements Support {
    @Override
    public void hold(int vertex, SupportPlan plan) {
      plan.move(vertex, displacement, at);
    }
  }

  /**
   * Directors turned about an axis by an angle that grows with the load factor.
   *
   * @param axis any length
   * @param angle_deg at load factor 1; more than one turn is allowed
   */
  record Turn(String at, Selector where, Triple axis, double angle_deg) implements Support {
    @Override
    public void hold(int vertex, SupportPlan plan) {
      plan.turn(vertex, plan.unit(at, axis), Math.toRadians(angle_deg), at);
    }
  }
}
