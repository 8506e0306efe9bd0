package seamsoak.words.pair;

import static seamsoak.words.Amounts.number;

import seamsoak.pairing.Finding;
import seamsoak.pairing.Why;
import seamsoak.source.Standing;

/** How two steels harden: critical temperatures, ranges, depth, quench. */
public record HardeningPairWords(PairTerms t) {
  String upper(Finding f, Why.Each carbideLast) {
    return lines(f, line(carbideLast.first()), line(carbideLast.second()) + " ");
  }

  String window(Finding f, Why.Each bySheet) {
    return t.ranges(
        f, "hardens from ", "from ", computed(bySheet.first()), computed(bySheet.second()));
  }

  String quench(Why.Quenches q) {
    return "%s thick, %s is quenched in %s and %s in %s%s."
        .formatted(
            t.length(q.sectionMetres()),
            t.first(),
            in(q.first()),
            t.second(),
            in(q.second()),
            q.first().bath().equals(q.second().bath()) && q.both().equals(q.first().bath())
                ? ""
                : "; both together in " + q.both().name());
  }

  private static String in(Why.In in) {
    return "%s (severity %s%s)"
        .formatted(
            in.bath().name(),
            number(in.bath().severity(), 2),
            in.hardness().map(HardeningPairWords::hardness).orElse(""));
  }

  private static String hardness(Why.Hardness h) {
    return "; as quenched %s HRC at a thin edge, %s in the middle"
        .formatted(number(h.edgeHrc(), 0), number(h.coreHrc(), 0));
  }

  String lines(Finding f, String line, String otherLine) {
    return "%s of %s %s, %sof %s %s: %s apart."
        .formatted(
            line,
            t.first(),
            t.celsius(f.first()),
            otherLine,
            t.second(),
            t.celsius(f.second()),
            t.apart(f.gap()));
  }

  private static String line(boolean carbideLast) {
    return carbideLast ? "Accm" : "Ac3";
  }

  private static String computed(boolean bySheet) {
    return bySheet ? "" : " (" + Standing.COMPUTED.words() + ")";
  }

  String martensite(Finding f, Why.Dissolved d) {
    return "Hardened from %s, Ms of %s is %s (%s %% carbon in solution), of %s %s (%s %%): %s."
        .formatted(
            t.celsius(d.celsius()),
            t.first(),
            t.celsius(f.first()),
            number(d.firstPct(), 2),
            t.second(),
            t.celsius(f.second()),
            number(d.secondPct(), 2),
            f.gap() < 1
                ? "they transform together"
                : t.more(f)
                    + " transforms first, by "
                    + t.apart(f.gap())
                    + ", and is stretched when the other follows");
  }

  String depth(Finding f, Why.Each within) {
    return ("A round bar of %s hardens through in a perfect quench up to %s, of %s up to %s: a"
            + " ratio of %s%s.")
        .formatted(
            t.first(),
            diameter(within.first(), f.first()),
            t.second(),
            diameter(within.second(), f.second()),
            number(f.rated(), 1),
            f.gap() == 0 ? "" : ", " + t.more(f) + " the deeper");
  }

  private String diameter(boolean within, double millimetres) {
    return (within ? "" : "more than ") + t.length(millimetres / 1e3);
  }

  String air(Finding f, Why.Air air) {
    boolean one = f.first() >= 1;
    return t.length(air.sectionMetres())
        + " thick, a piece may harden at least in part in still air when its depth of hardening is "
        + t.length(air.neededMetres())
        + t.told(
            f,
            2,
            " or more; %s has %s of that and %s %s: %s.",
            one != f.second() >= 1
                ? t.more(f) + " comes hard out of a normalizing heat, so anneal after it"
                : one ? "both may" : "neither does");
  }
}
