package seamsoak.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import seamsoak.chart.figure.Figure;
import seamsoak.chart.figure.ScheduleFigure;
import seamsoak.chart.figure.SeamFigure;
import seamsoak.unit.UnitSystem;

@Tag("slow")
class ChartsTest {

  static Stream<Figure> figures() {
    return Samples.all().values().stream();
  }

  @ParameterizedTest
  @MethodSource("figures")
  void sameBytesInAnotherLocaleAndTimeZone(Figure figure) {
    byte[] first = Charts.svg(figure);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String tag : List.of("de-DE", "ar-EG-u-nu-arab", "tr-TR")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
        assertArrayEquals(first, Charts.svg(figure), tag);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @ParameterizedTest
  @MethodSource("figures")
  void isNamedAndDescribedForThoseWhoCannotSeeIt(Figure figure) throws Exception {
    Element root = parse(Charts.svg(figure)).getDocumentElement();
    assertEquals("img", root.getAttribute("role"));
    assertTrue(root.getAttribute("viewBox").startsWith("0 0 960 "));
    List<Element> children = elements(root.getChildNodes());
    assertEquals("title", children.get(0).getTagName());
    assertEquals(figure.title(), children.get(0).getTextContent());
    assertEquals("desc", children.get(1).getTagName());
    assertEquals(figure.description(), children.get(1).getTextContent());
    assertEquals(
        children.get(0).getAttribute("id") + " " + children.get(1).getAttribute("id"),
        root.getAttribute("aria-labelledby"));
  }

  @ParameterizedTest
  @MethodSource("figures")
  void refersToNothingOutsideItself(Figure figure) {
    String svg =
        text(figure)
            .replace("http://www.w3.org/2000/svg", "")
            // a picture that lies in the file itself
            .replaceAll(
                "<image [^>]*href=\"data:image/png;base64,[A-Za-z0-9+/=]*\"[^>]*>", "<picture>");
    for (String outside : List.of("href", "://", "<image", "<!DOCTYPE", "@import", "<style")) {
      assertFalse(svg.contains(outside), outside);
    }
    for (String reference : svg.split("url\\(")) {
      assertTrue(reference.startsWith("<?xml") || reference.startsWith("#" + figure.id() + "-"));
    }
  }

  @Test
  void noIdIsUsedTwiceInOnePage() throws Exception {
    Set<String> seen = new HashSet<>();
    for (Figure figure : Samples.all().values()) {
      for (Element element : elements(parse(Charts.svg(figure)).getElementsByTagName("*"))) {
        String id = element.getAttribute("id");
        assertTrue(id.isEmpty() || id.startsWith(figure.id() + "-"), id);
        assertTrue(id.isEmpty() || seen.add(id), id);
      }
    }
    assertTrue(seen.contains("seam-title") && seen.contains("soak-desc"));
  }

  @Test
  void scheduleSaysItsStepsAndBands() throws Exception {
    List<String> words = words(Samples.schedule("a", UnitSystem.BOTH));
    for (String word :
        List.of(
            "Soak 12 min, normalize once, refine three times",
            "normalize",
            "1580 F (860 C),",
            "10 min, air",
            "26 min",
            "Ac1 80CrV2",
            "1340–1380 F (730–750 C)",
            "forging limit",
            "°F",
            "°C")) {
      assertTrue(words.contains(word), word + " in " + words);
    }
  }

  @Test
  void seamSaysItsCurvesAndLevels() throws Exception {
    List<String> words = words(Samples.seam("a", UnitSystem.BOTH));
    for (String word :
        List.of(
            "before",
            "after the soak",
            "after the schedule",
            "0.45 %",
            "0.72 %",
            "shows below 0.69 %",
            "seam",
            "inches from the seam",
            "mm from the seam")) {
      assertTrue(words.contains(word), word + " in " + words);
    }
    assertFalse(words.stream().anyMatch(word -> word.startsWith("-")), "distances have no sign");
  }

  @Test
  void soakSaysItsLimitsAndThePick() throws Exception {
    List<String> words = words(Samples.soak("a", UnitSystem.BOTH));
    for (String word :
        List.of(
            "2050 F (1120 C), 6 min (4 to 9)",
            "longest soak 1 h",
            "over a day",
            "refused",
            "2310 F",
            "metal lost per face, thousandths of an inch",
            "mm",
            "grain")) {
      assertTrue(words.contains(word), word + " in " + words);
    }
  }

  @Test
  void oneUnitSystemShowsNoTraceOfTheOther() throws Exception {
    assertTrue(words(Samples.schedule("a", UnitSystem.US)).contains("°F"));
    assertFalse(words(Samples.schedule("a", UnitSystem.US)).contains("°C"));
    assertFalse(words(Samples.seam("a", UnitSystem.METRIC)).contains("inches from the seam"));
    assertFalse(words(Samples.soak("a", UnitSystem.METRIC)).contains("2310 F"));
  }

  @Test
  void markupInANameIsText() throws Exception {
    String svg = text(Samples.nastySchedule());
    assertTrue(svg.contains("&lt;b&gt;&amp;\"' name"));
    assertFalse(svg.contains("<b>"));
    Document page = parse(Charts.svg(Samples.nastySchedule()));
    assertEquals(Samples.NASTY, page.getElementsByTagName("desc").item(0).getTextContent());
  }

  @Test
  void charactersThatXmlForbidsAreReplaced() throws Exception {
    Figure figure =
        new SeamFigure(
            "odd",
            "bell \u0007 and half a pair \uD800",
            "",
            "none",
            UnitSystem.US,
            List.of(Samples.dip("\u0000", 0.4, 0.8, 0.3)),
            List.of());
    Document page = parse(Charts.svg(figure));
    assertEquals(
        "bell \uFFFD and half a pair \uFFFD",
        page.getElementsByTagName("title").item(0).getTextContent());
  }

  @ParameterizedTest
  @MethodSource("figures")
  void pictureOfDotsHasTheSizeAskedFor(Figure figure) throws Exception {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(Charts.png(figure, 0.5)));
    assertNotNull(image);
    assertEquals(480, image.getWidth());
    String height = parse(Charts.svg(figure)).getDocumentElement().getAttribute("height");
    assertEquals(Math.round(Double.parseDouble(height) / 2), image.getHeight(), 1);
    assertTrue(inked(image) > 1000, "something is drawn");
  }

  @Test
  void noWordLeavesThePageOrCoversAnother() {
    for (Figure figure : Samples.all().values()) {
      Drawing drawing = Charts.drawing(figure);
      SvgPage page = new SvgPage(figure, Drawing.WIDTH, drawing.height());
      Canvas canvas = new Canvas(page.graphics());
      drawing.draw(canvas);
      List<LetterBox> boxes = canvas.letters().stream().map(LetterBox::of).toList();
      for (int i = 0; i < boxes.size(); i++) {
        LetterBox box = boxes.get(i);
        assertTrue(box.within(Drawing.WIDTH, drawing.height()), figure.id() + " cuts " + box);
        for (int k = 0; k < i; k++) {
          assertFalse(
              box.covers(boxes.get(k)), figure.id() + ": " + box + " covers " + boxes.get(k));
        }
      }
    }
  }

  @Test
  void whatCannotBeDrawnIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new ScheduleFigure.Corner(Double.NaN, 800));
    assertThrows(
        IllegalArgumentException.class, () -> new SeamFigure.Sample(0, Double.POSITIVE_INFINITY));
    assertThrows(IllegalArgumentException.class, () -> Samples.seam("two words", UnitSystem.US));
    assertThrows(
        IllegalArgumentException.class,
        () -> new ScheduleFigure.Band("upside down", ScheduleFigure.Meaning.CHANGE, 800, 700));
  }

  private static String text(Figure figure) {
    return new String(Charts.svg(figure), StandardCharsets.UTF_8);
  }

  private static Document parse(byte[] svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
    factory.setNamespaceAware(true);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
  }

  private static List<String> words(Figure figure) throws Exception {
    return elements(parse(Charts.svg(figure)).getElementsByTagName("text")).stream()
        .map(Element::getTextContent)
        .toList();
  }

  private static List<Element> elements(NodeList nodes) {
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      if (nodes.item(i) instanceof Element element) {
        elements.add(element);
      }
    }
    return elements;
  }

  private static int inked(BufferedImage image) {
    int count = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        if ((image.getRGB(x, y) & 0xFF) < 128) {
          count++;
        }
      }
    }
    return count;
  }
}
