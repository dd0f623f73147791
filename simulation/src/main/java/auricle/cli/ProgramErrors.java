package auricle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Turns an error of the program into one line; the details go to a file. */
final class ProgramErrors implements IExecutionExceptionHandler {
  @Override
  public int handleExecutionException(Exception error, CommandLine line, ParseResult result) {
    StringWriter details = new StringWriter();
    error.printStackTrace(new PrintWriter(details));
    line.getErr()
        .println("An error of the program, not of your input: " + kept(details.toString()));
    return ExitCode.PROGRAM_ERROR;
  }

  private static String kept(String details) {
    try {
      Path file = Files.createTempFile("auricle-error-", ".txt");
      Files.writeString(file, details);
      return "the details are in " + file;
    } catch (IOException e) {
      return "the details could not be written";
    }
  }
}
