package seamsoak.chart;

import java.awt.Graphics2D;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGGraphics2DIOException;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import seamsoak.chart.figure.Figure;

/** An SVG document: Batik turns shapes into elements, text is written beside it. */
final class SvgPage {
  private static final String SVG = "http://www.w3.org/2000/svg";

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
    defaults.setFont(new Lettering(Ink.NOTE, Letters.Anchor.START));
    graphics = new SVGGraphics2D(context, false);
  }

  Graphics2D graphics() {
    return graphics;
  }

  byte[] bytes(Canvas canvas) {
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
    canvas.pictures().forEach(p -> root.appendChild(picture(p)));
    Element shapes = graphics.getTopLevelGroup(true);
    rename(shapes);
    root.appendChild(shapes);
    Element text = document.createElementNS(SVG, "g");
    text.setAttribute("font-family", "DejaVu Sans, sans-serif");
    for (Letters line : canvas.letters()) {
      text.appendChild(text(line));
    }
    root.appendChild(text);
    return written(root).getBytes(StandardCharsets.UTF_8);
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
    element.setTextContent(allowed(content));
    return element;
  }

  private Element text(Letters line) {
    Element element = document.createElementNS(SVG, "text");
    element.setAttribute("x", number(line.x()));
    element.setAttribute("y", number(line.y()));
    element.setAttribute("font-size", number(line.print().size()));
    element.setAttribute(
        "fill", String.format(Locale.ROOT, "#%06x", line.print().color().getRGB() & 0xFFFFFF));
    if (line.anchor() != Letters.Anchor.START) {
      element.setAttribute("text-anchor", line.anchor().svg);
    }
    if (line.print().bold()) {
      element.setAttribute("font-weight", "bold");
    }
    element.setTextContent(allowed(line.text()));
    return element;
  }

  private Element picture(Picture picture) {
    Element element = document.createElementNS(SVG, "image");
    element.setAttribute("x", number(picture.place().getX()));
    element.setAttribute("y", number(picture.place().getY()));
    element.setAttribute("width", number(picture.place().getWidth()));
    element.setAttribute("height", number(picture.place().getHeight()));
    element.setAttribute("preserveAspectRatio", "none");
    element.setAttribute(
        "href", "data:image/png;base64," + Base64.getEncoder().encodeToString(picture.png()));
    return element;
  }

  private String number(double value) {
    return context.doubleString(value);
  }

  /** The element alone, without a document type or unused names, its lines ended alike anywhere. */
  private String written(Element root) {
    StringWriter out = new StringWriter();
    try {
      graphics.stream(root, out, false, false);
    } catch (SVGGraphics2DIOException e) {
      throw new UncheckedIOException(e);
    }
    String svg = out.toString().replace(System.lineSeparator(), "\n");
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        + svg.substring(svg.indexOf("<svg ")).replaceFirst(" xmlns:xlink=\"[^\"]*\"", "");
  }

  /** Characters that XML 1.0 forbids cannot be written at all, not even escaped. */
  private static String allowed(String text) {
    return text.replaceAll(
        "[^\\t\\n\\x20-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]", "\uFFFD");
  }

  private static Document empty() {
    try {
      return DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().newDocument();
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException(e);
    }
  }
}
