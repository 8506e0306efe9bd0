package seamsoak.chart;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import seamsoak.chart.figure.FaceFigure;
import seamsoak.chart.figure.FadingFigure;
import seamsoak.chart.figure.Figure;
import seamsoak.chart.figure.LogFigure;
import seamsoak.chart.figure.MatrixFigure;
import seamsoak.chart.figure.ScheduleFigure;
import seamsoak.chart.figure.SeamFigure;
import seamsoak.chart.figure.SectionFigure;
import seamsoak.chart.figure.SoakFigure;

/** Draws figures. The same figure gives the same SVG, byte for byte, on every machine. */
public final class Charts {
  static {
    // A chart never needs a screen; without this some systems would open one.
    if (System.getProperty("java.awt.headless") == null) {
      System.setProperty("java.awt.headless", "true");
    }
  }

  /**
   * Where something may stand upright in a chart.
   *
   * @param across from the left
   * @param top where its plot begins
   * @param bottom where it ends
   * @param width of the whole chart
   */
  public record Uprights(List<Double> across, double top, double bottom, double width) {}

  private Charts() {}

  /** Where the options of a soak chart stand in what {@link #svg} draws of it. */
  public static Uprights uprights(SoakFigure figure) {
    return new SoakDrawing(figure).uprights();
  }

  /** The chart as SVG in UTF-8, with real text, a title and a description. */
  public static byte[] svg(Figure figure) {
    Drawing drawing = drawing(figure);
    SvgPage page = new SvgPage(figure, Drawing.WIDTH, drawing.height());
    Canvas canvas = new Canvas(page.graphics());
    drawing.draw(canvas);
    return page.bytes(canvas);
  }

  /** The first of a figure's sections alone, without words. */
  public static byte[] sketch(SectionFigure figure) {
    return tapped(figure, 0);
  }

  /** Width of a sketch, and that of {@link #tapped}. */
  public static final double SKETCH_WIDTH = SectionDrawing.SKETCH_WIDTH;

  /** A sketch that is at least so high: what is tapped is no lower than a finger. */
  public static byte[] tapped(SectionFigure figure, double leastHeight) {
    SectionDrawing drawing = new SectionDrawing(figure);
    SvgPage page =
        new SvgPage(
            figure, SectionDrawing.SKETCH_WIDTH, Math.max(leastHeight, drawing.sketchHeight()));
    Canvas canvas = new Canvas(page.graphics());
    drawing.sketch(canvas);
    return page.bytes(canvas);
  }

  /** What of a sketch lies at a place in it; empty beside the metal. */
  public static Optional<SectionFigure.Spotted> at(SectionFigure figure, double x, double y) {
    return new SectionDrawing(figure).at(x, y);
  }

  /** The chart as PNG, {@code scale} dots to a unit of the SVG. */
  public static byte[] png(Figure figure, double scale) {
    Drawing drawing = drawing(figure);
    BufferedImage image =
        new BufferedImage(
            (int) Math.round(Drawing.WIDTH * scale),
            (int) Math.round(drawing.height() * scale),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    graphics.scale(scale, scale);
    Canvas canvas = new Canvas(graphics);
    canvas.fill(new Rectangle2D.Double(0, 0, Drawing.WIDTH, drawing.height() + 1), Ink.PAPER);
    drawing.draw(canvas);
    for (Picture picture : canvas.pictures()) {
      BufferedImage face = decoded(picture.png());
      AffineTransform there =
          AffineTransform.getTranslateInstance(picture.place().getX(), picture.place().getY());
      there.scale(
          picture.place().getWidth() / face.getWidth(),
          picture.place().getHeight() / face.getHeight());
      graphics.drawImage(face, there, null);
    }
    for (Letters line : canvas.letters()) {
      Print print = line.print();
      Typeface face = Typeface.of(print.bold());
      canvas.fill(face.outline(line.text(), print.size(), line.left(), line.y()), print.color());
    }
    graphics.dispose();
    return encode(image);
  }

  private static BufferedImage decoded(byte[] png) {
    try {
      return ImageIO.read(new ByteArrayInputStream(png));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] encode(BufferedImage image) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      if (!ImageIO.write(image, "png", out)) {
        throw new IllegalStateException("this Java cannot write PNG");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** A figure laid out. */
  static Drawing drawing(Figure figure) {
    if (figure instanceof ScheduleFigure schedule) {
      return new ScheduleDrawing(schedule);
    }
    if (figure instanceof SeamFigure seam) {
      return new SeamDrawing(seam);
    }
    if (figure instanceof MatrixFigure matrix) {
      return new MatrixDrawing(matrix);
    }
    if (figure instanceof FadingFigure fading) {
      return new FadingDrawing(fading);
    }
    if (figure instanceof LogFigure log) {
      return new LogDrawing(log);
    }
    if (figure instanceof FaceFigure face) {
      return new FaceDrawing(face);
    }
    if (figure instanceof SectionFigure section) {
      return new SectionDrawing(section);
    }
    return new SoakDrawing((SoakFigure) figure);
  }
}
