package auricle.cli;

import auricle.report.UseNotice;
import picocli.CommandLine.IVersionProvider;

/** Version of the program. */
final class ProgramVersion implements IVersionProvider {
  /** From the jar, or "development" where there is none. */
  static String version() {
    String version = Main.class.getPackage().getImplementationVersion();
    return version == null ? "development" : version;
  }

  @Override
  public String[] getVersion() {
    return new String[] {"auricle " + version(), UseNotice.TEXT};
  }
}
