package auricle.cli;

/** The command line. */
public final class Main {
  private Main() {}

  /** Runs the command named by the arguments. */
  public static void main(String[] arguments) {}
}
