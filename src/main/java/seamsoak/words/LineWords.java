package seamsoak.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.soak.SoakAdvice;
import seamsoak.state.CrossingReport;
import seamsoak.state.LineGroup;
import seamsoak.state.LineReport;
import seamsoak.state.StageReport;
import seamsoak.unit.UnitSystem;

/** The white lines as they are. */
public record LineWords(UnitSystem units) {
  /** From here on a line on the face is hardly broader than square to its seam. */
  private static final double STEEP_DEGREES = 60;

  private static final double ALL_PCT = 99.5;

  /** Which lines show, a sentence each, and where they cross. */
  public List<String> said(SoakAdvice soak) {
    return said(soak.lines(), soak.brightest());
  }

  /** The same of a billet on its way. */
  public List<String> said(StageReport metal) {
    return said(metal.lines(), CrossingReport.brightest(metal.crossings()));
  }

  private List<String> said(List<LineReport> lines, Optional<CrossingReport> brightest) {
    List<LineGroup> groups = LineGroup.of(lines);
    if (groups.isEmpty()) {
      return List.of("There are no seams, so there is no white line.");
    }
    List<String> all =
        new ArrayList<>(groups.stream().filter(LineGroup::visible).map(this::said).toList());
    brightest
        .filter(CrossingReport::visible)
        .ifPresent(
            c ->
                all.add(
                    "Where seams cross a knot shows brighter than the line"
                        + (all.isEmpty() ? ", though no line does" : "")
                        + ": most where "
                        + SeamWords.cross(c)
                        + "."));
    return all.isEmpty() ? List.of("Likely no line shows.") : all;
  }

  private String said(LineGroup g) {
    return "%s: a line %s wide shows%s, with %s %% carbon at the seam and %s %% far from it."
        .formatted(
            name(g),
            new Amounts(units).millimetres(g.widestMm().orElse(0.0)),
            lying(g),
            Amounts.percent(g.seamPct()),
            Amounts.percent(g.farPct()));
  }

  /** A seam that lies flat makes a fine line broad on the face. */
  private static String lying(LineGroup g) {
    return g.degreesToFace()
        .filter(d -> d < STEEP_DEGREES)
        .map(d -> " (its seams lie at " + Math.round(d) + " degrees to the face)")
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

  /** Whether it shows. */
  public static String shows(LineGroup g) {
    return g.visible() ? "yes" : g.widestMm().isEmpty() ? "no, lies under the face" : "no";
  }
}
