package seamsoak.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import seamsoak.billet.Billet;

/**
 * A bar of many layers as most are made: a stack of two steels welded, drawn, cut and laid flat on
 * itself once or more, then drawn to what a blade is made from. Sizes in inches and Fahrenheit, as
 * in the trade.
 *
 * @param name what a test calls it
 * @param stack the layers before the first weld
 * @param rounds the restacks in their order
 * @param last section to which the bar is drawn in the end
 * @param fire heats of every weld and draw
 * @param grindInches taken off each face before a restack, 0 where it is only brushed
 */
public record FlatRestack(
    String name, Sheets stack, List<Round> rounds, Section last, Fire fire, double grindInches) {
  private static final double KERF_INCHES = 0.0625;

  /** A draw worth its heats leaves no more of the section, so that no scale is in its way. */
  private static final double MOST_LEFT = 0.7;

  /** What a heat takes off an open face by the trade's rule, in. */
  public static final double SCALE_INCHES = 0.008;

  public FlatRestack {
    rounds = List.copyOf(rounds);
  }

  /** Sheets of two steels in turn, the first one outside. */
  public record Sheets(
      int layers,
      List<String> steels,
      List<Double> thicknesses,
      double widthInches,
      double lengthInches) {
    public double thicknessInches() {
      double second = layers / 2;
      return (layers - second) * thicknesses.get(0) + second * thicknesses.get(1);
    }
  }

  /** Thickness and width of a bar, in. */
  public record Section(double thickness, double width) {
    double area() {
      return thickness * width;
    }
  }

  /** A bar drawn to a section, cut, and the pieces laid on each other. */
  public record Round(Section drawn, int high) {}

  /** Heats of the welds and of the draws, and whether air comes to the faces before they join. */
  public record Fire(Heats weld, Heats draw, boolean airy) {}

  /** So many heats of so many minutes. */
  public record Heats(int fahrenheit, double minutes, int times) {
    String json() {
      return String.format(
          Locale.ROOT,
          "[{ 'at': '%d F', 'for': '%s min', 'times': %d }]",
          fahrenheit,
          minutes,
          times);
    }
  }

  /** A bar by the trade's arithmetic, in: what is drawn grows longer, each heat takes its scale. */
  public record Bar(double thickness, double width, double length) {
    Bar heated(int times, double loss) {
      double gone = 2 * times * loss;
      return new Bar(thickness - gone, width - gone, length - gone);
    }

    Bar drawn(Section to, Heats heats, double loss) {
      Bar left = heated(heats.times(), loss);
      double grown = left.thickness * left.width * left.length / to.area();
      return new Bar(to.thickness(), to.width(), grown);
    }

    Bar ground(double depth) {
      return heated(1, depth);
    }

    Bar stacked(int high) {
      return new Bar(high * thickness, width, (length - (high - 1) * KERF_INCHES) / high);
    }
  }

  /** Layers in the finished bar. */
  public int layers() {
    return rounds.stream().mapToInt(Round::high).reduce(stack.layers(), (a, b) -> a * b);
  }

  /**
   * The bar after each weld, draw, grinding and restack.
   *
   * @param loss what a heat takes off a face, in
   */
  public List<Bar> bars(double loss) {
    List<Bar> all = new ArrayList<>();
    Bar bar = new Bar(stack.thicknessInches(), stack.widthInches(), stack.lengthInches());
    for (Round round : rounds) {
      bar = add(all, bar.heated(fire.weld().times(), loss));
      bar = add(all, bar.drawn(round.drawn(), fire.draw(), loss));
      bar = add(all, bar.ground(grindInches));
      bar = add(all, bar.stacked(round.high()));
    }
    bar = add(all, bar.heated(fire.weld().times(), loss));
    add(all, bar.drawn(last, fire.draw(), loss));
    return List.copyOf(all);
  }

  private static Bar add(List<Bar> all, Bar bar) {
    all.add(bar);
    return bar;
  }

  /** Whether a bar that loses so much by heat and face gives pieces that can be held and forged. */
  public boolean canBeMade(double loss) {
    Bar before = new Bar(stack.thicknessInches(), stack.widthInches(), stack.lengthInches());
    for (Round round : rounds) {
      Bar welded = before.heated(fire.weld().times(), loss);
      Bar stacked =
          welded.drawn(round.drawn(), fire.draw(), loss).ground(grindInches).stacked(round.high());
      if (!drawsDown(welded, round.drawn()) || stacked.length() < 2.5) {
        return false;
      }
      before = stacked;
    }
    return drawsDown(before.heated(fire.weld().times(), loss), last);
  }

  private static boolean drawsDown(Bar bar, Section to) {
    return bar.thickness() > 0 && to.area() <= MOST_LEFT * bar.thickness() * bar.width();
  }

  /** The billet's file. */
  public String json() {
    String weld =
        text(
            "{ 'do': 'weld', 'faces': '%s', 'heats': %s }",
            fire.airy() ? "open" : "covered", fire.weld().json());
    List<String> steps = new ArrayList<>();
    for (Round round : rounds) {
      steps.add(weld);
      steps.add(draw(round.drawn()));
      if (grindInches > 0) {
        steps.add(text("{ 'do': 'grind', 'depth': '%.3f in' }", grindInches));
      }
      steps.add(
          text(
              "{ 'do': 'restack', 'across': 1, 'high': %d, 'turn': 'none', 'kerf': '%.4f in' }",
              round.high(), KERF_INCHES));
    }
    steps.add(weld);
    steps.add(draw(last));
    return text(
            "{ 'name': '%s', 'stack': { 'layers': %d, 'steels': ['%s', '%s'],"
                + " 'thickness': ['%.4f in', '%.4f in'], 'width': '%.4f in', 'length': '%.2f in' },"
                + " 'steps': [ %s ] }",
            name,
            stack.layers(),
            stack.steels().get(0),
            stack.steels().get(1),
            stack.thicknesses().get(0),
            stack.thicknesses().get(1),
            stack.widthInches(),
            stack.lengthInches(),
            String.join(",\n  ", steps))
        .replace('\'', '"');
  }

  private String draw(Section to) {
    return text(
        "{ 'do': 'draw', 'thickness': '%.4f in', 'width': '%.4f in', 'heats': %s }",
        to.thickness(), to.width(), fire.draw().json());
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  public Billet billet() {
    return Walks.billet(json());
  }

  @Override
  public String toString() {
    return name;
  }
}
