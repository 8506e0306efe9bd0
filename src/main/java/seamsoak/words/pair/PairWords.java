package seamsoak.words.pair;

import static seamsoak.words.Amounts.number;
import static seamsoak.words.pair.PairTerms.why;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import seamsoak.pairing.Finding;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.PairLimit;
import seamsoak.pairing.Why;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;

/** What the checks found of two steels. */
public final class PairWords {
  private static final String CELSIUS = "C";
  private static final String MILLIONTHS = "1e-6/K";

  private final PairTerms t;

  /** Of two steels by their names. */
  public PairWords(UnitSystem units, String first, String second) {
    t = new PairTerms(units, first, second);
  }

  public PairWords(UnitSystem units, PairAdvice advice) {
    this(units, advice.first(), advice.second());
  }

  /** What a check found and the limits that it is held against. */
  public String reason(Finding f) {
    return says(f) + (f.why() == Why.NAME ? "" : limits(f.limit()));
  }

  /** What a check found. */
  public String says(Finding f) {
    HardeningPairWords hardening = new HardeningPairWords(t);
    return switch (f.check()) {
      case OXIDE_CHROMIUM, OXIDE_SILICON, OXIDE_ALUMINUM ->
          content(
              f, 2, " Its oxide stays in the seam under plain borax: weld it in a closed stack.");
      case OXIDE_CHROMIUM_SEALED ->
          content(
              f, 2, " So much forms a film even in a closed stack: bright faces, closed at once.");
      case SULFUR -> content(f, 3, " So much is short when hot and cracks in the seam.");
      case COPPER -> content(f, 3, " So much gathers under scale and opens cracks when hot.");
      case WELDING_WINDOW -> t.ranges(f, "welds at ", "at ", "", "");
      case SOLIDUS_MARGIN ->
          "At a welding heat of %s %s and %s."
              .formatted(heat(f), left(t.first(), f.first()), left(t.second(), f.second()));
      case FORGING_WINDOW -> forging(f);
      case HOT_STRENGTH ->
          "At "
              + heat(f)
              + t.told(
                  f,
                  0,
                  " %s withstands about %s MPa and %s %s MPa, a ratio of %s: %s.",
                  number(f.rated(), 2),
                  f.gap() == 0
                      ? "neither spreads before the other"
                      : t.more(f) + " is the stiffer");
      case AC1 -> hardening.lines(f, "Ac1", "");
      case UPPER_CRITICAL -> hardening.upper(f, why(f, Why.Each.class));
      case HARDENING_WINDOW -> hardening.window(f, why(f, Why.Each.class));
      case MS -> hardening.martensite(f, why(f, Why.Dissolved.class));
      case HARDENABILITY -> hardening.depth(f, why(f, Why.Each.class));
      case QUENCH -> hardening.quench(why(f, Why.Quenches.class));
      case AIR_HARDENING -> hardening.air(f, why(f, Why.Air.class));
      case EXPANSION_COLD ->
          "From room heat to " + heat(f) + ", where layers no longer give way" + grows(f);
      case EXPANSION_TO_WELD ->
          "From room heat to welding at " + heat(f) + ", transformation and all" + grows(f);
      case EXPANSION_GAMMA ->
          "As austenite, from "
              + t.celsius(why(f, Why.Between.class).lowC())
              + " to "
              + heat(f)
              + grows(f);
      case TRANSFORMATION ->
          t.told(
              f,
              2,
              "When its austenite becomes martensite %s grows by %s %% in length and %s by %s %%:"
                  + " %s %% apart.",
              number(f.gap(), 2));
      case CARBON_ACTIVITY -> activity(f, why(f, Why.Dissolved.class));
      case EVENED_CARBON -> {
        Why.AsQuenched hard = why(f, Why.AsQuenched.class);
        yield t.told(
            f,
            2,
            "Evened out, as after many restacks, %s holds %s %% carbon and %s %s %%: as quenched"
                + " %s and %s.%s",
            hardness(hard.firstHrc()),
            hardness(hard.secondHrc()),
            lost(f));
      }
      case CARBON_LOSS -> loss(f, why(f, Why.Welded.class));
      case CARBON_BARRIER ->
          "Against plain iron, carbon takes %s times as long through %s and %s times through %s: %s."
              .formatted(
                  number(f.first(), 1),
                  t.first(),
                  number(f.second(), 1),
                  t.second(),
                  f.warns() ? t.more(f) + " holds it up" : "neither holds it up");
      case SOFT_LAYER ->
          t.told(
              f,
              2,
              "%s has %s %% carbon and %s %s %%: %s stays soft, so never at the edge.",
              why(f, Why.Each.class).first() ? t.second() : t.first());
      case NORMALIZING ->
          t.more(f)
              + " must not be normalized: it hardens or cracks in air; "
              + t.less(f)
              + " is meant to be.";
      case CONTRAST, CONTRAST_FAINT, CONTRAST_STRONG -> contrast(f, why(f, Why.Contrast.class));
      case UNKNOWN_STOCK ->
          stock(f)
              + ": Nobody knows what is in it: no heat, no quench and no carbon can be told. Ask"
              + " for the certificate, or harden and break a piece of it, judge its sparks beside a"
              + " known steel, and give the analysis here.";
      case PLATED_STOCK ->
          stock(f)
              + ": What is on it makes poisonous fume in the fire and keeps the seam from welding:"
              + " do not heat it. Take bare stock.";
    };
  }

  private String content(Finding f, int decimals, String tooMuch) {
    String symbol = why(f, Why.Content.class).element().symbol();
    return t.told(f, decimals, "%s has %s %% " + symbol + " and %s %s %%.")
        + (f.warns() ? tooMuch : "");
  }

  private String left(String steel, double margin) {
    return margin < 0
        ? steel + " is " + t.apart(-margin) + " above where it starts to melt"
        : steel + " keeps " + t.apart(margin) + " to melting";
  }

  private String forging(Finding f) {
    return "%s forges %s, %s %s: %s."
        .formatted(
            t.first(),
            down(f.firstRange().orElseThrow()),
            t.second(),
            down(f.secondRange().orElseThrow()),
            f.rated() < 0
                ? "no heat suits both, " + t.apart(f.gap()) + " lie between"
                : t.apart(f.rated()) + " of it together");
  }

  private String down(TemperatureRange range) {
    return "from " + t.celsius(range.highC()) + " down to " + t.celsius(range.lowC());
  }

  private String grows(Finding f) {
    return t.told(
        f, 1, ", %s grows %s and %s %s millionths per degree C: %s apart.", number(f.gap(), 1));
  }

  private String activity(Finding f, Why.Dissolved d) {
    return "At %s the carbon of %s (%s %%) has activity %s, that of %s (%s %%) %s: carbon %s."
        .formatted(
            t.celsius(d.celsius()),
            t.first(),
            number(d.firstPct(), 2),
            number(f.first(), 2),
            t.second(),
            number(d.secondPct(), 2),
            number(f.second(), 2),
            f.gap() == 0 ? "stays where it is" : "goes from " + t.more(f) + " to " + t.less(f));
  }

  private static String hardness(OptionalDouble hrc) {
    return hrc.isPresent() ? number(hrc.getAsDouble(), 0) + " HRC" : "soft";
  }

  private String loss(Finding f, Why.Welded w) {
    return "After the first weld heats (%s of %s min) layers of %s %s and %s %s have come %s %% of"
            .formatted(
                w.heats(),
                number(w.minutes(), 0),
                t.length(w.firstMetres()),
                t.first(),
                t.length(w.secondMetres()),
                t.second(),
                number(w.evenPct(), 0))
        + t.told(f, 2, " the way to even: %s %s %%, %s %s %%.%s", lost(f));
  }

  private static String lost(Finding f) {
    return f.rated() < 0.5
        ? " No hardness is lost."
        : " The harder one loses " + number(f.rated(), 1) + " HRC.";
  }

  private String contrast(Finding f, Why.Contrast strength) {
    return t.told(
        f,
        1,
        "Etched after hardening, by nickel, chromium, manganese, phosphorus and carbon: brightness %s %s,"
            + " %s %s, so %s contrast%s.",
        switch (strength) {
          case HARDLY_ANY -> "hardly any";
          case SOME -> "some";
          case STRONG -> "strong";
        },
        f.gap() == 0 ? "" : ", " + t.more(f) + " the brighter one");
  }

  private String stock(Finding f) {
    return f.gap() == 0 ? t.first() + " and " + t.second() : t.more(f);
  }

  private String limits(PairLimit limit) {
    return limit.silent()
        ? ""
        : " Limit: "
            + Stream.of(limit("watch", limit, limit.watch()), limit("clash", limit, limit.clash()))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "))
            + " ("
            + limit.standing().words()
            + ").";
  }

  private Optional<String> limit(String word, PairLimit limit, OptionalDouble value) {
    return value.isEmpty()
        ? Optional.empty()
        : Optional.of(
            word
                + (limit.above() ? " above " : " below ")
                + switch (limit.unit()) {
                  case CELSIUS -> t.apart(value.getAsDouble());
                  case "" -> Amounts.plain(value.getAsDouble());
                  case MILLIONTHS -> Amounts.plain(value.getAsDouble()) + " millionths";
                  default -> Amounts.plain(value.getAsDouble()) + " " + limit.unit();
                });
  }

  /** The heat that a check is made at, or the one that it goes up to. */
  private String heat(Finding f) {
    return t.celsius(f.why() instanceof Why.Between b ? b.highC() : why(f, Why.At.class).celsius());
  }
}
