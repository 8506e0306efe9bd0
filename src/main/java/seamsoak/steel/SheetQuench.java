package seamsoak.steel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a sheet quenches a grade in.
 *
 * @param words as the table has them
 * @param choices each medium that it names, in its order; none for a grade that does not harden
 */
public record SheetQuench(String words, List<Choice> choices) {
  /** Where a sheet says thin and gives no figure, m: handbooks quench 1080 in oil below 1/4 in. */
  public static final double THIN_METRES = 6.35e-3;

  private static final String SOFT = "does not harden";
  private static final String MEDIA =
      Arrays.stream(Medium.values()).map(Medium::words).reduce((a, b) -> a + "|" + b).orElseThrow();
  private static final Pattern CLAUSE =
      Pattern.compile(
          "((?:MEDIA)(?: or (?:MEDIA))*)( when thin| when thick| (below|from) ([0-9]+(?:\\.[0-9]+)?) mm)?"
              .replace("MEDIA", MEDIA));

  public SheetQuench {
    choices = List.copyOf(choices);
  }

  /** What sheets speak of, the gentlest first. */
  public enum Medium {
    AIR,
    OIL,
    FAST_OIL,
    WATER,
    BRINE;

    String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static Medium of(String words) {
      return Arrays.stream(values()).filter(m -> m.words().equals(words)).findFirst().orElseThrow();
    }
  }

  /** A medium, for sections from one thickness up to another. */
  public record Choice(Medium medium, double fromMetres, double belowMetres) {
    private boolean any() {
      return fromMetres == 0 && belowMetres == Double.POSITIVE_INFINITY;
    }
  }

  /**
   * Of words such as {@code oil}, {@code water or brine; fast oil when thin}, {@code oil below 8
   * mm; water from 8 mm}, {@code does not harden}; empty for any other.
   */
  static Optional<SheetQuench> parse(String words) {
    if (words.startsWith(SOFT)) {
      return Optional.of(new SheetQuench(words, List.of()));
    }
    List<Choice> all = new ArrayList<>();
    for (String clause : words.split(";")) {
      Matcher m = CLAUSE.matcher(clause.strip());
      if (!m.matches()) {
        return Optional.empty();
      }
      for (String medium : m.group(1).split(" or ")) {
        all.add(choice(Medium.of(medium), m));
      }
    }
    return Optional.of(new SheetQuench(words, all));
  }

  private static Choice choice(Medium medium, Matcher m) {
    if (m.group(2) == null) {
      return new Choice(medium, 0, Double.POSITIVE_INFINITY);
    }
    double at = m.group(3) == null ? THIN_METRES : Double.parseDouble(m.group(4)) / 1e3;
    boolean below = m.group(3) == null ? m.group(2).endsWith("thin") : m.group(3).equals("below");
    return below ? new Choice(medium, 0, at) : new Choice(medium, at, Double.POSITIVE_INFINITY);
  }

  /**
   * What it names for a section, most usual first: what is said of such sections, then the rest.
   */
  public List<Medium> media(double thicknessMetres) {
    return fitting(thicknessMetres)
        .sorted(Comparator.comparing(Choice::any))
        .map(Choice::medium)
        .distinct()
        .toList();
  }

  private Stream<Choice> fitting(double thicknessMetres) {
    return choices.stream()
        .filter(c -> thicknessMetres >= c.fromMetres() && thicknessMetres < c.belowMetres());
  }
}
