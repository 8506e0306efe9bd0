package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.chart.GrayPng;
import seamsoak.face.FaceSize;
import seamsoak.plan.FaceAdvice;
import seamsoak.state.CrossingReport;
import seamsoak.state.LineGroup;
import seamsoak.trace.Trace;
import seamsoak.unit.UnitSystem;
import seamsoak.words.LineWords;
import seamsoak.words.SeamWords;
import seamsoak.words.face.FaceWords;
import seamsoak.words.told.Statement;

/**
 * The shown face of a billet: as a picture, in words and as JSON.
 *
 * @param face at one time, etched in one state
 */
public record FaceTold(FaceAdvice face, UnitSystem units) {
  /** A line or a crossing. */
  private record Seen(
      String seams, double seamPct, double farPct, Optional<Double> widthMm, double contrast) {}

  /** A PNG to scale. */
  public byte[] png() {
    return GrayPng.of(
        face.picture(face.size()),
        FaceWords.title(face),
        String.join(" ", new FaceWords(UnitSystem.METRIC).said(face)));
  }

  public Answer answer() {
    return Answer.of(
        List.of(
            Chapter.of("answer").words(String.join(" ", new FaceWords(units).said(face))),
            Chapter.of("lines").table(table()),
            Chapter.of("edge", "On the edge of the blade")
                .items(face.edge().map(new FaceWords(units)::edge).orElse(List.of())),
            Chapter.of("legend").words(FaceWords.LEGEND)));
  }

  /** What is at every line, and where lines cross that show most. */
  Table table() {
    List<Seen> rows = new ArrayList<>();
    for (LineGroup g : LineGroup.of(face.lines())) {
      g.contrast()
          .ifPresent(
              k -> rows.add(new Seen(LineWords.name(g), g.seamPct(), g.farPct(), g.widestMm(), k)));
    }
    CrossingReport.brightest(face.crossings())
        .ifPresent(
            c ->
                rows.add(
                    new Seen(
                        "where " + SeamWords.cross(c),
                        c.seamPct(),
                        c.farPct(),
                        Optional.empty(),
                        c.contrast())));
    return Columns.of(rows, units)
        .words("seams", Seen::seams)
        .percent("C % there", Seen::seamPct)
        .percent("far", Seen::farPct)
        .lengthIfKnown("width", Seen::widthMm)
        .number("contrast", 2, Seen::contrast)
        .words("shows", s -> s.contrast() >= 1 ? "yes" : "no")
        .captioned("The lines " + FaceWords.when(face));
  }

  private String after() {
    return switch (face.moment()) {
      case BEFORE -> "step";
      case AFTER_SOAK -> "soak";
      case AFTER_SCHEDULE -> "schedule";
    };
  }

  /**
   * @param file where the picture was written
   */
  public String json(String file, Trace sources) {
    FaceSize size = face.size();
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("billet", face.billet());
    all.putAll(members());
    all.put("acrossMm", size.acrossMm());
    all.put("upMm", size.upMm());
    all.put("acrossPixels", size.across());
    all.put("upPixels", size.up());
    all.put("mmPerPixel", size.mmPerPixel());
    all.put("files", List.of(file));
    return JsonReport.write("face", all, sources);
  }

  /** When it is looked at and what it shows. */
  Map<String, Object> members() {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("after", after());
    all.put("step", face.step().map(s -> s.mark().number()));
    all.put("etched", Statement.kindOf(face.etched()));
    all.put("view", face.field().isPlan() ? "top" : "end");
    all.put("lines", face.lines());
    all.put("crossings", face.crossings());
    all.put("edge", face.edge());
    all.put("says", new FaceWords(UnitSystem.METRIC).said(face));
    return all;
  }
}
