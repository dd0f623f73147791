package auricle.analysis;

/** One state of a shell as probes see it, from a linear or a nonlinear solution. */
interface ShellView {
  /** Positions of the vertices, then tilts of the directors; not to be changed. */
  double[] unknowns();

  /** Share of the loads that acts. */
  double loadFactor();

  /** Displacement from the mesh, mm, component c. */
  double displacement(int vertex, int c);

  /** Change of the director of a vertex (whole vector), component c. */
  double directorChange(int vertex, int c);

  /** Angle by which a director has turned about the axis of a tracked probe, rad. */
  double turned(String probe, int vertex);

  /** Force that supports exert on a vertex, N, component c. */
  double reaction(int vertex, int c);

  /** Strain and change of curvature against the rest shape of the moment: what makes stress. */
  ShellFields elastic();

  /** Strain and change of curvature against the mesh: what is seen. */
  ShellFields total();

  /** Energy of everything, mJ. */
  double energy();

  /** Tension of a thread, N. */
  double tension(String thread);
}
