package auricle.viewer.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** A Java program of its own that is told things, answers in lines, and can be killed. */
public final class OtherProcess implements AutoCloseable {
  private static final long LONGEST_S = 180;

  private final Process process;
  private final Writer orders;
  private final BlockingQueue<String> lines = new LinkedBlockingQueue<>();
  private final StringBuffer said = new StringBuffer();

  private OtherProcess(Process process) {
    this.process = process;
    this.orders = process.outputWriter();
    Thread listener = new Thread(this::listen, "listener");
    listener.setDaemon(true);
    listener.start();
  }

  /** Starts a main class on the class path of the tests. */
  public static OtherProcess of(List<String> options, Class<?> main, String... arguments)
      throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    String path = System.getProperty("surefire.test.class.path");
    command.addAll(List.of("-cp", path == null ? System.getProperty("java.class.path") : path));
    command.add(main.getName());
    command.addAll(List.of(arguments));
    return new OtherProcess(new ProcessBuilder(command).redirectErrorStream(true).start());
  }

  private void listen() {
    try (BufferedReader reader = process.inputReader()) {
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        said.append(line).append('\n');
        lines.add(line);
      }
    } catch (IOException e) {
      said.append(e);
    }
  }

  /** Gives an order and waits for its answer, the rest of the line that begins with the order. */
  public String ask(String order) throws IOException, InterruptedException {
    orders.write(order + "\n");
    orders.flush();
    return says(order + ": ");
  }

  /** Waits for a line with a beginning and gives the rest of it. */
  public String says(String beginning) throws InterruptedException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(LONGEST_S);
    while (System.nanoTime() < end && (process.isAlive() || !lines.isEmpty())) {
      String line = lines.poll(100, TimeUnit.MILLISECONDS);
      if (line != null && line.startsWith(beginning)) {
        return line.substring(beginning.length());
      }
    }
    throw new AssertionError("never said \"" + beginning + "\", but\n" + said);
  }

  /** Ends it without asking it, and waits until it is gone. */
  public void kill() throws InterruptedException {
    process.destroyForcibly().waitFor();
  }

  @Override
  public void close() throws InterruptedException {
    kill();
  }
}
