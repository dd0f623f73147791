package auricle.report.picture;

/**
 * What stands on every picture of a rehearsal.
 *
 * @param subject which ear of which scenario
 * @param failure why the state shown is none of rest, in words; empty if it is one
 * @param basis what the figures rest on: program, mesh, tissue
 */
public record Caption(String subject, String failure, String basis) {}
