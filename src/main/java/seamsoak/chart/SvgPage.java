package seamsoak.chart;

import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.nio.charset.StandardCharsets;
import java.text.AttributedCharacterIterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** An SVG document: Batik turns shapes into elements, text is written beside it. */
final class SvgPage {
  private static final String SVG = "http://www.w3.org/2000/svg";

  /** A name only: asking Java for a real font would depend on the fonts of the machine. */
  private static final Font NAMED =
      new Font("DejaVu Sans", Font.PLAIN, 12) {
        private static final long serialVersionUID = 1;

        @Override
        public String getFamily() {
          return "DejaVu Sans";
        }

        @Override
        public Font deriveFont(Map<? extends AttributedCharacterIterator.Attribute, ?> changes) {
          return this;
        }
      };

  private final Figure figure;
  private final double width;
  private final double height;
  private final Document document;
  private final SVGGeneratorContext context;
  private final SVGGraphics2D graphics;

  SvgPage(Figure figure, double width, double height) {
    this.figure = figure;
    this.width = width;
    this.height = height;
    document = empty();
    context = SVGGeneratorContext.createDefault(document);
    context.setComment(null);
    context.setPrecision(2);
    context.setIDGenerator(
        new SVGIDGenerator() {
          @Override
          public String generateID(String prefix) {
            return figure.id() + "-" + super.generateID(prefix);
          }
        });
    SVGGeneratorContext.GraphicContextDefaults defaults =
        new SVGGeneratorContext.GraphicContextDefaults() {};
    context.setGraphicContextDefaults(defaults);
    defaults.setFont(NAMED);
    graphics = new ShapesOnly(context);
  }

  Graphics2D graphics() {
    return graphics;
  }

  byte[] bytes(List<Letters> letters) {
    Element root = document.createElementNS(SVG, "svg");
    root.setAttribute("viewBox", "0 0 " + number(width) + " " + number(height));
    root.setAttribute("width", number(width));
    root.setAttribute("height", number(height));
    root.setAttribute("role", "img");
    root.setAttribute("aria-labelledby", figure.id() + "-title " + figure.id() + "-desc");
    root.appendChild(words("title", figure.title()));
    root.appendChild(words("desc", figure.description()));
    Element ground = document.createElementNS(SVG, "rect");
    ground.setAttribute("width", number(width));
    ground.setAttribute("height", number(height));
    ground.setAttribute("fill", "#ffffff");
    root.appendChild(ground);
    Element shapes = graphics.getTopLevelGroup(true);
    rename(shapes);
    root.appendChild(shapes);
    Element text = document.createElementNS(SVG, "g");
    text.setAttribute("font-family", "DejaVu Sans, sans-serif");
    for (Letters line : letters) {
      text.appendChild(text(line));
    }
    root.appendChild(text);
    return new XmlText().document(root, SVG).getBytes(StandardCharsets.UTF_8);
  }

  /** Batik names its definitions alike in every document; two charts in one page need two names. */
  private void rename(Element shapes) {
    for (var node = shapes.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element e && e.getAttribute("id").equals("genericDefs")) {
        e.removeAttribute("id");
      } else if (node instanceof Element e) {
        rename(e);
      }
    }
  }

  private Element words(String tag, String content) {
    Element element = document.createElementNS(SVG, tag);
    element.setAttribute("id", figure.id() + "-" + tag);
    element.setTextContent(content);
    return element;
  }

  private Element text(Letters line) {
    Element element = document.createElementNS(SVG, "text");
    element.setAttribute("x", number(line.x()));
    element.setAttribute("y", number(line.y()));
    element.setAttribute("font-size", number(line.size()));
    element.setAttribute(
        "fill", String.format(Locale.ROOT, "#%06x", line.color().getRGB() & 0xFFFFFF));
    if (line.anchor() != Letters.Anchor.START) {
      element.setAttribute("text-anchor", line.anchor().svg);
    }
    if (line.bold()) {
      element.setAttribute("font-weight", "bold");
    }
    element.setTextContent(line.text());
    return element;
  }

  private String number(double value) {
    return context.doubleString(value);
  }

  private static Document empty() {
    try {
      return DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().newDocument();
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Text never comes this way, so no font is ever looked up. */
  private static final class ShapesOnly extends SVGGraphics2D {
    ShapesOnly(SVGGeneratorContext context) {
      super(context, false);
    }

    private ShapesOnly(ShapesOnly other) {
      super(other);
    }

    @Override
    public Graphics create() {
      return new ShapesOnly(this);
    }

    @Override
    public void setFont(Font font) {
      // The font of the page stands.
    }

    @Override
    public void setRenderingHint(RenderingHints.Key key, Object value) {
      // Axes hand back a hint that was never set, which Batik refuses; an SVG has no use for any.
    }
  }
}
