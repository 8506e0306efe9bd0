package seamsoak.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import seamsoak.support.FlatRestack.Fire;
import seamsoak.support.FlatRestack.Heats;
import seamsoak.support.FlatRestack.Round;
import seamsoak.support.FlatRestack.Section;
import seamsoak.support.FlatRestack.Sheets;

/**
 * A made-up family of flat-restacked billets of 60 to 800 layers. Some are written out, the others
 * drawn from what a shop has at hand: fractions of an inch, the usual heats, six pairs of steels.
 * The seed is fixed, so they are the same each time. Sizes are common practice, no source.
 */
public final class FlatRestacks {
  private static final long SEED = 25;
  private static final int DRAWN = 60;
  private static final int AIRY_EVERY = 7;
  private static final int FEWEST = 60;
  private static final int MOST = 800;

  private static final List<List<String>> PAIRS =
      List.of(
          List.of("1095", "75Ni8"),
          List.of("1084", "75Ni8"),
          List.of("1084", "L6"),
          List.of("1075", "75Ni8"),
          List.of("O1", "75Ni8"),
          List.of("80CrV2", "75Ni8"));

  /** How often and how high it is restacked. */
  private static final List<List<Integer>> RESTACKS =
      List.of(
          List.of(4),
          List.of(4, 2),
          List.of(2, 2),
          List.of(3, 3),
          List.of(2, 2, 2),
          List.of(3),
          List.of(4, 4),
          List.of(2, 4),
          List.of(3, 2, 2),
          List.of(2, 3),
          List.of(4, 3),
          List.of(4, 2, 3));

  private static final List<Double> SHEETS = List.of(0.0625, 0.072, 0.09375, 0.125, 0.1875);
  private static final List<Double> THIN_SHEETS = List.of(0.040, 0.060, 0.0625, 0.072, 0.09375);
  private static final List<Double> WIDTHS = List.of(1.25, 1.5, 1.75, 2.0);
  private static final List<Double> LENGTHS = List.of(5.0, 6.0, 7.0, 8.0);
  private static final List<Double> PIECES = List.of(0.375, 0.5, 0.625, 0.75, 0.875, 1.0);
  private static final List<Double> FINALS = List.of(0.1875, 0.25, 0.3125, 0.375, 0.5);
  private static final List<Double> GRINDINGS = List.of(0.010, 0.015, 0.020, 0.030);

  private FlatRestacks() {}

  /** 25 layers of 1095 and 75Ni8 made 200, three long heats for each weld. */
  public static FlatRestack usual() {
    return new FlatRestack(
        "1095 and 75Ni8, 200 layers, 10 min welds",
        new Sheets(25, List.of("1095", "75Ni8"), List.of(0.125, 0.060), 1.5, 7),
        List.of(new Round(new Section(0.75, 1.5), 4), new Round(new Section(0.75, 1.5), 2)),
        new Section(0.25, 1.5),
        new Fire(new Heats(2300, 10, 3), new Heats(2100, 3, 5), false),
        0);
  }

  /** 1084 and 75Ni8 restacked twice, to 1/4 in. */
  public static FlatRestack of1084(int sheets, int first, int second) {
    return new FlatRestack(
        String.format(Locale.ROOT, "1084 and 75Ni8, %d layers", sheets * first * second),
        new Sheets(sheets, List.of("1084", "75Ni8"), List.of(0.125, 0.0625), 1.5, 7),
        List.of(
            new Round(new Section(0.75, 1.5), first), new Round(new Section(0.75, 1.5), second)),
        new Section(0.25, 1.5),
        new Fire(new Heats(2250, 5, 3), new Heats(2100, 3, 5), false),
        0);
  }

  /** Long welds that air comes to and quick draws to half an inch: its lines surely show. */
  public static FlatRestack inHaste() {
    return new FlatRestack(
        "1084 and 75Ni8, 75 layers, welded without a cover",
        new Sheets(25, List.of("1084", "75Ni8"), List.of(0.125, 0.0625), 1.5, 6),
        List.of(new Round(new Section(1, 1.5), 3)),
        new Section(0.5, 1.5),
        new Fire(new Heats(2300, 10, 2), new Heats(2000, 2, 4), true),
        0);
  }

  /** Those that are written out. */
  public static List<FlatRestack> named() {
    return List.of(usual(), of1084(25, 4, 2), of1084(20, 4, 3), of1084(25, 4, 4), inHaste());
  }

  /** All of them. */
  public static List<FlatRestack> all() {
    return Stream.concat(
            named().stream(), IntStream.range(0, DRAWN).mapToObj(FlatRestacks::drawnFromTheShop))
        .toList();
  }

  /** The first that can be made of those that this one's own stream of chance brings. */
  private static FlatRestack drawnFromTheShop(int index) {
    SplittableRandom random = new SplittableRandom(1000 * SEED + index);
    while (true) {
      FlatRestack one = any(index, random);
      double high = one.stack().thicknessInches();
      if (one.layers() >= FEWEST
          && one.layers() <= MOST
          && high >= 2
          && high <= 4
          && one.canBeMade(FlatRestack.SCALE_INCHES)) {
        return one;
      }
    }
  }

  /** Pairs, restacks, last thickness and grinding go round; the rest is chance. */
  private static FlatRestack any(int index, SplittableRandom random) {
    List<String> steels = PAIRS.get(index % PAIRS.size());
    List<Integer> highs = RESTACKS.get((index + index / PAIRS.size()) % RESTACKS.size());
    boolean ground = index / PAIRS.size() % 2 == 1;
    Sheets stack =
        new Sheets(
            15 + 2 * random.nextInt(9),
            steels,
            List.of(one(SHEETS, random), one(THIN_SHEETS, random)),
            one(WIDTHS, random),
            one(LENGTHS, random));
    double width = one(WIDTHS, random);
    List<Round> rounds = new ArrayList<>();
    for (int high : highs) {
      rounds.add(new Round(new Section(piece(high, random), width), high));
    }
    return new FlatRestack(
        String.format(
            Locale.ROOT,
            "%d: %s, %d sheets restacked %s, %s",
            index + 1,
            String.join(" and ", steels),
            stack.layers(),
            highs,
            ground ? "ground" : "not ground"),
        stack,
        rounds,
        new Section(FINALS.get(index % FINALS.size()), width),
        fire(index, random),
        ground ? one(GRINDINGS, random) : 0);
  }

  /** A piece that makes a stack of 1 to 3 in. */
  private static double piece(int high, SplittableRandom random) {
    List<Double> fit = PIECES.stream().filter(t -> high * t >= 1 && high * t <= 3).toList();
    return one(fit, random);
  }

  /** One in a few is welded without a cover, as one in a hurry does. */
  private static Fire fire(int index, SplittableRandom random) {
    return new Fire(
        new Heats(
            2200 + 25 * random.nextInt(5),
            one(List.of(5.0, 6.0, 8.0, 10.0), random),
            2 + random.nextInt(2)),
        new Heats(
            2000 + 50 * random.nextInt(4),
            one(List.of(2.0, 3.0, 4.0), random),
            4 + random.nextInt(4)),
        index % AIRY_EVERY == 0);
  }

  private static <T> T one(List<T> of, SplittableRandom random) {
    return of.get(random.nextInt(of.size()));
  }
}
