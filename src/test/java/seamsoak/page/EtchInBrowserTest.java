package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.billet.Seen;
import seamsoak.support.Looks;
import seamsoak.support.Walks;

/** The photograph of a test etch beside the computed face. */
@Tag("slow")
@Timeout(300)
class EtchInBrowserTest extends InBrowser {
  /** Of a face 60 mm wide: 600 pixels, with two white lines 30 mm apart. */
  private static final int PIXELS = 600;

  private Path file;

  @BeforeEach
  void toTheEtch() throws Exception {
    file = folder.resolve("mosaic.json");
    Files.copy(Path.of("alloy-data/billets/mosaic.json"), file);
    page.lay("mosaic.json");
    tab.go(page.address());
    tab.until("document.getElementById('bench') !== null");
    tab.go(page.address() + "d/1/fire.etch");
    tab.until("document.getElementById('computed')?.complete");
  }

  private Path photo() throws Exception {
    BufferedImage image = new BufferedImage(PIXELS, 200, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(new Color(0x556070));
    g.fillRect(0, 0, PIXELS, 200);
    g.setColor(Color.WHITE);
    g.fillRect(148, 0, 4, 200);
    g.fillRect(448, 0, 4, 200);
    g.dispose();
    Path photo = browser.resolve("etch.png");
    ImageIO.write(image, "png", photo.toFile());
    return photo;
  }

  private double number(String expression) throws Exception {
    return Double.parseDouble(tab.ask(expression));
  }

  private double widthOf(String id) throws Exception {
    return number("document.getElementById('" + id + "').getBoundingClientRect().width");
  }

  /** By pointing and by the list, the photograph to the computed scale; it is never sent. */
  @Test
  void beside() throws Exception {
    List<String> requests = tab.requests();
    Path photo = photo();
    tab.choose("#photo-file", photo);
    tab.until("!document.getElementById('photo').hidden");
    double perMm = widthOf("computed") / number("document.getElementById('stage').dataset.across");
    // by its whole width
    tab.tap("#far");
    tab.type("2 1/2 parsecs");
    tab.press("Tab");
    tab.until("!document.getElementById('far-fault').hidden");
    tab.tap("#far");
    tab.type("60 mm");
    tab.press("Tab");
    assertEquals(60 * perMm, widthOf("photo"), 0.5);
    // by two points 300 pixels apart
    tab.tap("#two");
    tab.tap("#photo", 150.0 / PIXELS, 0.5);
    tab.tap("#photo", 450.0 / PIXELS, 0.5);
    tab.until("document.activeElement.id === 'far'");
    tab.type("2 in");
    tab.press("Tab");
    assertEquals(2 * 50.8 * perMm, widthOf("photo"), 1.5);
    // the width of a line
    tab.tap("#etch-more summary");
    tab.tap("#measure");
    tab.tap("#photo", 148.0 / PIXELS, 0.5);
    tab.tap("#photo", 152.0 / PIXELS, 0.5);
    tab.until("document.getElementById('width').value !== ''");
    assertEquals(4 * 2 * 2.0 / PIXELS, Double.parseDouble(value("width").replace(" in", "")), 0.01);
    picture("etch-beside");
    // pointing at a seam of the tiles, then looking over it
    String dot =
        "(m => m[1] + ' ' + m[2])(/M([\\d.]+) ([\\d.]+)/.exec(document.querySelector(\"#dots path[data-where^='tiles']\").getAttribute('d')))";
    String[] at = tab.ask(dot).split(" ");
    double across = number("document.getElementById('stage').dataset.across");
    double up = number("document.getElementById('stage').dataset.up");
    tab.tap("#computed", Double.parseDouble(at[0]) / across, Double.parseDouble(at[1]) / up);
    String chosen = "document.querySelector('#look input[name=where]:checked')?.value";
    tab.until(chosen + "?.startsWith('tiles')");
    assertEquals("2", tab.ask("document.querySelectorAll('#sheet path.on').length"));
    tab.tap("#show-over");
    tab.tap("#fade");
    picture("etch-over");
    tab.tap("#line-faint");
    tab.tap("#look .go button");
    tab.until("!document.getElementById('entered').hidden");
    Seen seen =
        Walks.billet(Files.readString(file)).steps().get(14).mark().seen().stream()
            .findFirst()
            .orElseThrow();
    assertEquals(Seen.Look.FAINT, seen.line());
    assertTrue(seen.width().isPresent(), seen::toString);
    tab.until("!document.getElementById('photo').hidden");
    // never sent
    List<String> sent = requests.stream().filter(r -> !r.contains("\"url\":\"data:")).toList();
    assertTrue(sent.stream().anyMatch(r -> r.contains("fire.enter")), sent::toString);
    String whole = Base64.getEncoder().encodeToString(Files.readAllBytes(photo));
    String part = whole.substring(whole.length() / 2, whole.length() / 2 + 40);
    for (String request : sent) {
      assertTrue(!request.contains(part) && request.length() < 8000, request);
    }
    try (Stream<Path> kept = Files.walk(folder)) {
      assertTrue(kept.noneMatch(p -> p.toString().matches(".*(png|jpg)")));
    }
  }

  /** The list does without the script; the page says that the photograph does not. */
  @Test
  void withoutTheScriptTheListWorks() throws Exception {
    tab.scripts(false);
    tab.go(page.address() + "d/1/fire.etch");
    tab.until("document.getElementById('computed')?.complete");
    assertTrue(tab.ask("document.querySelector('main').innerText").contains("page's script"));
    assertEquals("0", tab.ask("document.getElementById('tools').offsetHeight"));
    tab.tap(".places label:last-child");
    tab.tap("#line-none");
    tab.tap("#look .go button");
    tab.until("location.pathname.endsWith('/fire')");
    assertEquals(
        Seen.Look.NONE,
        Walks.billet(Files.readString(file)).steps().get(14).mark().seen().get(0).line());
  }

  @ParameterizedTest
  @ValueSource(ints = {390, 1280})
  void looks(int width) throws Exception {
    tab.size(width, 844);
    tab.choose("#photo-file", photo());
    tab.until("!document.getElementById('photo').hidden");
    tab.ask("document.querySelectorAll('details').forEach(d => d.open = true)");
    assertEquals("", tab.ask(Looks.LAYOUT));
    assertEquals("", tab.ask(Looks.SMALL));
    tab.run(Looks.axe());
    assertEquals("", tab.ask(Looks.AXE));
    tab.ask("document.getElementById('stage').scrollIntoView()");
    picture("etch-" + width);
    tab.ask("scrollTo(0, 0)");
    picture("etch-top-" + width);
  }

  /** Kept where somebody wants to look at it. */
  private void picture(String name) throws Exception {
    String to = System.getProperty("pictures");
    if (to != null) {
      Files.write(Path.of(to, name + ".png"), tab.picture());
    }
  }
}
