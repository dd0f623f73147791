package auricle.cli;

/** What the program ends with. */
final class ExitCode {
  static final int DONE = 0;
  static final int NOT_AS_EXPECTED = 1;
  static final int BAD_INPUT = 2;
  static final int NO_EQUILIBRIUM = 3;
  static final int PROGRAM_ERROR = 70;
  static final int CANCELLED = 130;

  private ExitCode() {}
}
