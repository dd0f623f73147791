package auricle.analysis;

import java.util.List;
import java.util.Optional;

/**
 * What acts on the shell. Forces are those at load factor 1; a constant load is there in full from
 * the beginning.
 */
public sealed interface Load {
  /** Place in the model file. */
  String at();

  /** Adds what stands for it in the energy, or findings. */
  void addTo(LoadPlan plan);

  /** A dead force on vertices, N; {@code total}: shared equally by them. */
  record Point(String at, Selector where, Triple force_n, boolean total, boolean constant)
      implements Load {
    @Override
    public void addTo(LoadPlan plan) {
      plan.put(plan.forces().point(this), constant);
    }
  }

  /** A dead force per rest length of edges, N/mm. */
  record Line(String at, Selector where, Triple force_n_per_mm, boolean constant) implements Load {
    @Override
    public void addTo(LoadPlan plan) {
      plan.put(plan.forces().line(this), constant);
    }
  }

  /** A moment per rest length of edges about a fixed axis, N·mm/mm = N. */
  record EdgeMoment(String at, Selector where, Triple axis, double moment_n, boolean constant)
      implements Load {
    @Override
    public void addTo(LoadPlan plan) {
      plan.forces().moment(this).ifPresent(term -> plan.put(term, constant));
    }
  }

  /** A dead force per rest area, N/mm². */
  record Surface(String at, Selector where, Triple force_n_per_mm2, boolean constant)
      implements Load {
    @Override
    public void addTo(LoadPlan plan) {
      plan.put(plan.forces().surface(this), constant);
    }
  }

  /**
   * A pressure, positive along the normal, MPa.
   *
   * @param follower whether it turns with the surface
   * @param origin a point on every plane of symmetry at the rim
   */
  record Pressure(
      String at,
      Selector where,
      double pressure_mpa,
      boolean follower,
      Triple origin,
      boolean constant)
      implements Load {
    @Override
    public void addTo(LoadPlan plan) {
      plan.put(plan.forces().pressure(this), constant);
    }
  }

  /**
   * A thread through points.
   *
   * @param name by which a probe asks for its tension
   * @param points in order
   * @param closed whether it returns to the first
   * @param stiffness_n axial stiffness EA
   * @param tie how it is tied
   * @param amount mm of rest length, mm of shortening, or N of tension
   */
  record TiedThread(
      String at,
      String name,
      List<ThreadPoint> points,
      boolean closed,
      double stiffness_n,
      Tie tie,
      double amount)
      implements Load {
    @Override
    public void addTo(LoadPlan plan) {
      plan.thread(this);
    }
  }

  /** How a thread is tied. */
  enum Tie {
    /** Its rest length goes from the first length to a given one. */
    LENGTH,
    /** Its rest length becomes shorter by a given amount. */
    SHORTENING,
    /** It pulls with a given tension. */
    TENSION
  }

  /**
   * A point of a thread: on the shell nearest to a place, or fixed in space.
   *
   * @param place mm
   * @param fixed whether it is an anchor in space
   * @param offset_mm height above the mid-surface along the normal, for a point on the shell
   */
  record ThreadPoint(String at, Triple place, boolean fixed, double offset_mm) {}

  /** Something that vertices may not enter, without friction. */
  sealed interface Contact extends Load permits PlaneContact, SurfaceContact {
    /** By which probes ask for it; empty if they cannot. */
    String name();

    /** The vertices that are kept out. */
    Selector where();

    /** Distance between the faces at which contact begins to be felt, mm. */
    double gap_mm();

    /** Pressure at half that distance, MPa. */
    double pressure_mpa();

    @Override
    default void addTo(LoadPlan plan) {
      plan.contacts().add(this);
    }

    /** Adds its terms, or findings. */
    void addTo(ContactPlan plan);
  }

  /**
   * A rigid half space.
   *
   * @param normal points to the free side
   */
  record PlaneContact(
      String at,
      String name,
      Selector where,
      Triple point,
      Triple normal,
      double gap_mm,
      double pressure_mpa)
      implements Contact {
    @Override
    public void addTo(ContactPlan plan) {
      plan.plane(this);
    }
  }

  /** Another surface: a part of the shell itself, or one at rest in space. */
  record SurfaceContact(
      String at, String name, Selector where, Partner partner, double gap_mm, double pressure_mpa)
      implements Contact {
    @Override
    public void addTo(ContactPlan plan) {
      plan.surface(this);
    }
  }

  /** What a surface contact is made with. */
  sealed interface Partner {
    /** Place in the model file. */
    String at();

    /** The contact with it, or findings. */
    Optional<List<auricle.energy.SurfaceContact>> terms(
        ContactPlan plan, SurfaceContact contact, double half_mm);

    /** A part of the shell; both sides are kept off each other. */
    record Part(String at, Selector where) implements Partner {
      @Override
      public Optional<List<auricle.energy.SurfaceContact>> terms(
          ContactPlan plan, SurfaceContact contact, double half_mm) {
        return plan.part(contact, this, half_mm);
      }
    }

    /** A rigid surface without thickness, moved to its place by a shift in mm. */
    record Fixed(String at, MeshSource mesh, Triple shift) implements Partner {
      @Override
      public Optional<List<auricle.energy.SurfaceContact>> terms(
          ContactPlan plan, SurfaceContact contact, double half_mm) {
        return plan.fixed(contact, this, half_mm);
      }
    }
  }

  /** An elastic foundation, MPa/mm along and across the normal. */
  record Foundation(
      String at, Selector where, double normal_mpa_per_mm, double tangential_mpa_per_mm)
      implements Load {
    @Override
    public void addTo(LoadPlan plan) {
      plan.foundation(this);
    }
  }
}
