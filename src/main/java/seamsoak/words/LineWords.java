package seamsoak.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.soak.SoakAdvice;
import seamsoak.state.CrossingReport;
import seamsoak.state.LineGroup;
import seamsoak.state.LineReport;
import seamsoak.state.Shows;
import seamsoak.state.StageReport;
import seamsoak.state.Verdict;
import seamsoak.unit.UnitSystem;

/** The white lines as they are. */
public record LineWords(UnitSystem units) {
  /** From here on a line on the face is hardly broader than square to its seam. */
  private static final double STEEP_DEGREES = 60;

  private static final double ALL_PCT = 99.5;

  /** Which lines show and in which state, a sentence each, and where they cross. */
  public List<String> said(SoakAdvice soak) {
    return said(soak.lines(), soak.brightest());
  }

  /** The same of a billet on its way, as it has cooled. */
  public List<String> said(StageReport metal) {
    return said(metal.lines(), CrossingReport.brightest(metal.crossings()));
  }

  private List<String> said(List<LineReport> lines, Optional<CrossingReport> brightest) {
    List<LineGroup> groups = LineGroup.of(lines);
    if (groups.isEmpty()) {
      return List.of("There are no seams, so there is no white line.");
    }
    List<String> all =
        new ArrayList<>(groups.stream().filter(LineWords::matters).map(this::said).toList());
    brightest
        .filter(c -> c.shows().map(Shows::matters).orElse(c.visible()))
        .ifPresent(
            c ->
                all.add(
                    "Where "
                        + SeamWords.cross(c)
                        + " a knot "
                        + c.shows().map(s -> "may show, " + states(s)).orElse("shows")
                        + (all.isEmpty() ? ", though no line does" : ", brighter than the line")
                        + "."));
    return all.isEmpty() ? List.of("Likely no line shows.") : all;
  }

  private static boolean matters(LineGroup g) {
    return g.shows().map(Shows::matters).orElse(g.visible());
  }

  private String said(LineGroup g) {
    return "%s: a line %s wide%s%s; %s %% carbon at the seam, %s %% far from it."
        .formatted(
            name(g),
            new Amounts(units).millimetres(g.widestMm().orElse(0.0)),
            lying(g),
            g.shows().map(s -> " may show, " + states(s)).orElse(" shows"),
            Amounts.percent(g.seamPct()),
            Amounts.percent(g.farPct()));
  }

  /** In which state it shows, such as {@code in 43 of a hundred etched now, 65 annealed, ...}. */
  private static String states(Shows s) {
    if (s.hardened().sharePct().isEmpty()) {
      return likely(s.asCooled())
          + " etched now, "
          + likely(s.annealed())
          + " annealed, "
          + likely(s.hardened())
          + " as a finished blade";
    }
    return "in "
        + share(s.asCooled())
        + " of a hundred etched now, "
        + share(s.annealed())
        + " annealed, "
        + share(s.hardened())
        + " as a finished blade";
  }

  private static String likely(Verdict v) {
    return v.verdict() == Verdict.Sure.SHOWS ? "shows" : "hidden";
  }

  private static long share(Verdict v) {
    return Math.round(v.sharePct().orElse(0.0));
  }

  /** Contrast in one state and what it means, as a cell. */
  public static String cell(Optional<Verdict> verdict) {
    return verdict
        .map(
            v ->
                Amounts.number(v.contrast(), 2)
                    + switch (v.verdict()) {
                      case SHOWS -> " yes";
                      case MAY_SHOW -> " may";
                      case CLEAR -> " no";
                    })
        .orElse("-");
  }

  /** A seam that lies flat makes a fine line broad on the face. */
  private static String lying(LineGroup g) {
    return g.degreesToFace()
        .filter(d -> d < STEEP_DEGREES)
        .map(d -> " (seams at " + Math.round(d) + " degrees to the face)")
        .orElse("");
  }

  /** Its name, with the share of the pieces where not all run this way. */
  public static String name(LineGroup g) {
    double share = g.sharePct();
    String in =
        share > ALL_PCT
            ? ""
            : Math.abs(share - 50) < 0.5
                ? " (half the pieces)"
                : " (" + Math.round(share) + " % of the pieces)";
    return SeamWords.says(g.joints()) + in;
  }
}
