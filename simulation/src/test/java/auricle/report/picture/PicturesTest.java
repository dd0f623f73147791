package auricle.report.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.Level;
import auricle.anatomy.Side;
import auricle.report.UseNotice;
import auricle.report.drawing.Mark;
import auricle.report.drawing.Page;
import auricle.report.drawing.PngPicture;
import auricle.testing.Check;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every picture, of a right and a left ear, in equilibrium and not, with few steps and with many.
 */
class PicturesTest {
  private static final String FAILURE =
      "step 'middle fold suture': the forces could not be brought into balance after 40 iterations";

  static List<Page> pages() {
    List<Page> pages = new ArrayList<>();
    for (Side side : Side.values()) {
      EarStory story = PaperEar.story(side, side == Side.LEFT ? FAILURE : "");
      pages.add(SectionsPicture.draw(story));
      pages.add(OutlinesPicture.draw(story));
      pages.add(CourseChart.draw(story, PaperEar.course(), "10–90 % of 64 sampled tissues"));
      pages.add(StepChart.draw(story.caption(), story.target(), PaperEar.steps()));
    }
    EarStory story = PaperEar.story(Side.RIGHT, "");
    pages.add(StepChart.draw(story.caption(), story.target(), PaperEar.steps().subList(0, 1)));
    pages.add(StepChart.draw(story.caption(), story.target(), many()));
    return pages;
  }

  private static List<StepRow> many() {
    return Stream.generate(PaperEar::steps).limit(5).flatMap(List::stream).toList();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void allLettersLieOnThePage(Page page) {
    for (Mark.Label label : page.labels()) {
      Rectangle2D box = Page.box(label);
      boolean within =
          box.getMinX() >= 5
              && box.getMinY() >= 5
              && box.getMaxX() <= page.width_mm() - 5
              && box.getMaxY() <= page.height_mm() - 3;
      assertTrue(within, label.text() + " at " + box);
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void noLabelLiesOnAnother(Page page) {
    List<Mark.Label> labels = page.labels();
    for (int i = 0; i < labels.size(); i++) {
      for (int j = 0; j < i; j++) {
        Rectangle2D common = Page.box(labels.get(i)).createIntersection(Page.box(labels.get(j)));
        boolean apart = common.getWidth() <= 0.05 || common.getHeight() <= 0.35;
        assertTrue(apart, labels.get(i).text() + " on " + labels.get(j).text());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void everyPictureSaysWhatItIsFor(Page page) {
    assertTrue(texts(page).contains(UseNotice.TEXT));
  }

  @ParameterizedTest
  @MethodSource("pages")
  void everyPictureHasInkOnEverySideOfItsMiddle(Page page) throws Exception {
    byte[] png = PngPicture.write(page, 50);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
    int width = image.getWidth() / 2;
    for (int part = 0; part < 2; part++) {
      int dark = 0;
      for (int y = image.getHeight() / 8; y < image.getHeight() * 7 / 8; y++) {
        for (int x = part * width; x < (part + 1) * width; x++) {
          dark += (image.getRGB(x, y) & 0xff) < 200 ? 1 : 0;
        }
      }
      assertTrue(dark > 100, page.title() + ": " + dark);
    }
  }

  private static List<String> texts(Page page) {
    return page.labels().stream().map(Mark.Label::text).toList();
  }

  @Test
  void aStateThatIsNoneOfRestIsMarkedOnEveryPicture() {
    for (Page page : pages()) {
      boolean marked =
          texts(page).stream().anyMatch(t -> t.startsWith("NOT IN EQUILIBRIUM, do not use"));
      assertEquals(page.title().contains("Left"), marked, page.title());
    }
  }

  @Test
  void theStepWithoutEquilibriumIsNamedInTheChartOfSteps() {
    EarStory story = PaperEar.story(Side.RIGHT, "");
    Page page = StepChart.draw(story.caption(), story.target(), PaperEar.steps());
    assertEquals(1, texts(page).stream().filter("not in equilibrium"::equals).count());
  }

  @Test
  void theSectionsPrintTheDistancesAsMeasured() {
    EarStory story = PaperEar.story(Side.RIGHT, "");
    List<String> texts = texts(SectionsPicture.draw(story));
    for (Level level : Level.values()) {
      double before = LevelFigures.distance(level).of(story.before().measures());
      double after = LevelFigures.distance(level).of(story.after().measures());
      assertTrue(texts.contains(Words.number(before) + " → "), texts::toString);
      assertTrue(texts.contains("(" + Words.change(after - before) + ")"), texts::toString);
    }
  }

  @Test
  void theDimensionLineIsAsLongAsTheDistanceInTheScale() {
    EarStory story = PaperEar.story(Side.RIGHT, "");
    SectionScale scale = new SectionScale(story, 133, 45);
    Page page = SectionsPicture.draw(story);
    double upper = story.after().measures().helixMastoidUpper_mm();
    double longest =
        page.marks().stream()
            .filter(
                m ->
                    m instanceof Mark.Line l
                        && l.pen()
                            .equals(
                                new auricle.report.drawing.Pen(
                                    auricle.report.drawing.Ink.BLUE, 0.35)))
            .map(m -> ((Mark.Line) m).path().getBounds2D())
            .filter(b -> b.getWidth() == 0)
            .mapToDouble(Rectangle2D::getHeight)
            .findFirst()
            .orElse(0);
    Check.close(longest, scale.factor() * upper, 1e-6, "by the scale printed on the page");
  }

  @Test
  void aLeftEarIsTheMirrorImageOfARightOne() {
    double[] right = View.FRONT.seen(new float[] {3, 2, 1}, 1);
    double[] left = View.FRONT.seen(new float[] {3, 2, 1}, -1);
    assertEquals(-right[0], left[0]);
    assertEquals(right[1], left[1]);
    assertEquals(right[2], left[2]);
  }

  @Test
  void whatWasNotMeasuredIsADash() {
    assertEquals("–", Words.number(Double.NaN));
    assertEquals("–", Words.change(Double.NaN));
    assertEquals("0.0", Words.change(-0.04));
    assertEquals("−0.1", Words.change(-0.06));
  }
}
