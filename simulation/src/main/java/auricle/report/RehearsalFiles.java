package auricle.report;

import auricle.anatomy.Side;
import auricle.rehearsal.RehearsalResult;
import auricle.report.drawing.Page;
import auricle.report.drawing.PngPicture;
import auricle.report.drawing.SvgPicture;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;

/** Writes every file of a rehearsal into a folder, several at a time. */
public final class RehearsalFiles {
  /** Resolution of the raster pictures, dots an inch: an A4 page is about 1,750 dots wide. */
  private static final double DOTS_PER_INCH = 150;

  private static final Pattern OURS =
      Pattern.compile(
          "(sections|outlines|steps|timeline)(_right|_left)?\\.(svg|png)"
              + "|(steps|threads|timeline)\\.csv|shapes((_right|_left)?\\.pvd)?|result\\.json");

  private final RehearsalReport report;
  private final Map<String, Callable<byte[]>> files = new LinkedHashMap<>();

  private RehearsalFiles(RehearsalReport report) {
    this.report = report;
    report.ears().forEach(this::pictures);
    text("result.json", () -> RehearsalJson.write(report));
    text("steps.csv", () -> StepsTable.write(report.ears()));
    text("threads.csv", () -> ThreadsTable.write(report.ears()));
    if (report.ears().stream().anyMatch(ear -> ear.timeline().isPresent())) {
      text("timeline.csv", () -> TimelineTable.write(report.ears()));
    }
    report.ears().forEach(this::shapes);
  }

  /**
   * Writes the files; the folder is not committed.
   *
   * @param cancelled whether to stop, asked before every file
   * @throws IOException if one cannot be written
   */
  public static void write(ResultFolder folder, RehearsalReport report, BooleanSupplier cancelled)
      throws IOException {
    new RehearsalFiles(report).write(folder, cancelled);
  }

  /** Whether a name in a folder of results is one that a rehearsal writes. */
  public static boolean isOurs(String name) {
    return OURS.matcher(name).matches();
  }

  private void write(ResultFolder folder, BooleanSupplier cancelled) throws IOException {
    int threads = Math.min(4, Runtime.getRuntime().availableProcessors());
    ExecutorService pool = Executors.newFixedThreadPool(threads, RehearsalFiles::daemon);
    try {
      List<Future<?>> written = new ArrayList<>();
      files.forEach(
          (name, content) -> written.add(pool.submit(() -> put(folder, name, content, cancelled))));
      for (Future<?> file : written) {
        file.get();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException io) {
        throw io;
      }
      throw new IllegalStateException(e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "files");
    thread.setDaemon(true);
    return thread;
  }

  private static Void put(
      ResultFolder folder, String name, Callable<byte[]> content, BooleanSupplier cancelled)
      throws Exception {
    if (!cancelled.getAsBoolean()) {
      Files.write(folder.place(name), content.call());
    }
    return null;
  }

  private void text(String name, Callable<String> content) {
    files.put(name, () -> content.call().getBytes(StandardCharsets.UTF_8));
  }

  private void pictures(RehearsalResult ear) {
    Map<String, FutureTask<Page>> pages = new LinkedHashMap<>();
    new RehearsalPictures(report, ear)
        .all()
        .forEach((name, page) -> pages.put(name, new FutureTask<>(page::get)));
    pages.forEach(
        (name, page) ->
            files.put(name + ".png", () -> PngPicture.write(drawn(page), DOTS_PER_INCH)));
    pages.forEach(
        (name, page) -> text(name + ".svg", () -> SvgPicture.write(drawn(page), UseNotice.TEXT)));
  }

  /** The page, which is drawn once for both of its files. */
  private static Page drawn(FutureTask<Page> page) throws Exception {
    page.run();
    return page.get();
  }

  private void shapes(RehearsalResult ear) {
    String suffix = EarNames.suffix(report, ear);
    List<PvdWriter.Member> members = new ArrayList<>();
    for (NamedShape shape : NamedShape.of(report, ear)) {
      String name = "shapes/" + shape.name() + suffix;
      EarShapes forms = new EarShapes(shape.shape(), EarNames.side(ear) == Side.LEFT);
      text(name + ".vtu", () -> forms.vtu(shape.note()));
      text(name + ".obj", () -> forms.obj(shape.note()));
      members.add(new PvdWriter.Member(members.size(), name + ".vtu"));
    }
    text("shapes" + suffix + ".pvd", () -> PvdWriter.write(members));
  }
}
