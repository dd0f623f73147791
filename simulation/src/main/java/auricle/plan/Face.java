package auricle.plan;

/** A face of the cartilage. */
public enum Face {
  /** Towards the head, seen from behind. */
  POSTERIOR,
  /** Away from the head, the face that is seen. */
  ANTERIOR
}
