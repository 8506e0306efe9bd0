package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import seamsoak.pairing.MayBe;
import seamsoak.single.SteelReport;
import seamsoak.single.SteelReport.AtTemperature;
import seamsoak.single.SteelReport.Diffusivity;
import seamsoak.single.SteelReport.Formula;
import seamsoak.single.SteelReport.Quantity;
import seamsoak.steel.Steel;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.SteelWords;
import seamsoak.words.UnknownMakeWords;

/** One steel, or all of them, in words. */
public record SteelText(UnitSystem units) {
  private static final String UNKNOWN = "unknown, see below";

  /** The table of steels; at once, the names of each kind. */
  public Answer list(List<Steel> steels) {
    Map<String, List<String>> byKind = new LinkedHashMap<>();
    steels.forEach(s -> byKind.computeIfAbsent(s.category(), k -> new ArrayList<>()).add(s.id()));
    Table table =
        Columns.of(steels, units)
            .words("steel", Steel::id)
            .percent("C %", s -> s.analysis().carbon())
            .words("designation", Steel::designation)
            .words("kind", Steel::category)
            .captioned("");
    List<String> kinds = new ArrayList<>();
    byKind.forEach((kind, ids) -> kinds.add(kind + ": " + String.join(", ", ids)));
    return new Answer(
        List.of(Chapter.of("steels").table(table)),
        List.of(
            Chapter.of("steels", steels.size() + " steels").items(kinds),
            Chapter.of("rest")
                .words("--full also shows their carbon; steels GRADE tells of one.")));
  }

  /**
   * One steel.
   *
   * @param citation of a source's key
   */
  public Answer told(SteelReport r, Function<String, Optional<String>> citation) {
    Chapter notes = Chapter.of("notes", "Notes").words(r.notes());
    return new Answer(
        List.of(
            answer(r),
            temperatures(r),
            ranges(r),
            formulas(r),
            diffusivities(r).items(r.chosen()),
            notes,
            Chapter.of("sources", "Sources").items(sources(r, citation)),
            Chapter.of("remarks", "Remarks").items(r.exceeded())),
        List.of(
            answer(r),
            temperatures(r),
            ranges(r),
            notes,
            Chapter.of("rest")
                .words(
                    "--full also shows every formula side by side, which of them left its range,"
                        + " the speed of carbon, and sources.")));
  }

  private Chapter answer(SteelReport r) {
    SteelWords words = new SteelWords(r, units);
    Chapter first = Chapter.of("answer");
    return r.mayBe()
        .map(m -> first.words(new UnknownMakeWords(units).all(m)).table(mayBe(m)))
        .orElse(first.words(words.analysis()))
        .words(words.aliases());
  }

  private Table mayBe(MayBe of) {
    return Columns.of(of.grades(), units)
        .words("may be", MayBe.Grade::id)
        .percent("C %", g -> g.carbonPct().low())
        .percent("to", g -> g.carbonPct().high())
        .heatIfKnown("hardens from", g -> g.hardenC().map(MayBe.Span::low))
        .heatIfKnown("up to", g -> g.hardenC().map(MayBe.Span::high))
        .numberIfKnown("edge HRC", 0, MayBe.Grade::edgeHrc)
        .words("quench", g -> g.quench().orElse("-"))
        .captioned("By what it may be, the likeliest first; HRC as quenched at a thin edge");
  }

  private Chapter temperatures(SteelReport r) {
    SteelWords words = new SteelWords(r, units);
    return Chapter.of("temperatures", "Temperatures")
        .table(limits(r))
        .words(words.martensite())
        .words(words.unknown());
  }

  private Chapter ranges(SteelReport r) {
    String of = r.mayBe().map(m -> " of " + m.reckonedAs()).orElse("");
    return Chapter.of("ranges", "Published ranges" + of)
        .table(
            Columns.of(List.copyOf(r.ranges().entrySet()), units)
                .words("", e -> SteelWords.range(e.getKey()))
                .heat("from", e -> e.getValue().lowC())
                .heat("to", e -> e.getValue().highC())
                .captioned(""))
        .words(new SteelWords(r, units).quench());
  }

  private Table limits(SteelReport r) {
    record Row(String name, Optional<Quantity> known) {}
    List<Row> rows =
        List.of(
            new Row("Ac1", r.ac1C()),
            new Row(r.upper(), r.ac3OrAccmC()),
            new Row("Ms", r.msC()),
            new Row("solidus", Optional.of(r.solidusC())),
            new Row("forge up to", Optional.of(r.highestForgingC())),
            new Row("may burn", Optional.of(r.burningC())),
            new Row("soak below", Optional.of(r.refusalC())));
    return Columns.of(rows, units)
        .words("", Row::name)
        .heatIfKnown("at", row -> row.known().map(Quantity::value))
        .heatIfKnown("low", row -> row.known().map(Quantity::low))
        .heatIfKnown("high", row -> row.known().map(Quantity::high))
        .words("source", row -> row.known().map(Quantity::source).orElse(UNKNOWN))
        .captioned("");
  }

  private Chapter formulas(SteelReport r) {
    return Chapter.of("formulas", "Every formula side by side")
        .table(
            Columns.of(r.formulas(), units)
                .words("formula", Formula::name)
                .words("gives", Formula::gives)
                .heatIfKnown("at", Formula::valueC)
                .words("range", f -> f.outsideRange() ? "outside" : "")
                .words("used for", f -> f.used().orElse(""))
                .captioned(""));
  }

  private Chapter diffusivities(SteelReport r) {
    Chapter chapter =
        Chapter.of(
            "diffusivities",
            "Speed of carbon (diffusivity) side by side, in millionths of mm2 a second");
    for (String phase : List.of("austenite", "ferrite")) {
      List<Diffusivity> of =
          r.diffusivities().stream().filter(d -> d.phase().equals(phase)).toList();
      Columns<Diffusivity> table = Columns.of(of, units).words("in " + phase, Diffusivity::name);
      List<AtTemperature> at = of.get(0).at();
      for (int i = 0; i < at.size(); i++) {
        int c = i;
        table.words(
            new Amounts(units).heat(at.get(c).temperatureC()).replace(" (", "/").replace(")", ""),
            d -> number(d.at().get(c).squareMetresPerSecond() * 1e12));
      }
      table
          .words(
              "range", d -> d.at().stream().anyMatch(AtTemperature::outsideRange) ? "outside" : "")
          .words("used for", d -> d.used().orElse(""));
      chapter = chapter.table(table.captioned(""));
    }
    return chapter;
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, value < 10 ? "%.1f" : "%.0f", value);
  }

  private static List<String> sources(SteelReport r, Function<String, Optional<String>> citation) {
    Set<String> keys = new LinkedHashSet<>();
    Stream.concat(
            Stream.of(r.ac1C(), r.ac3OrAccmC(), r.msC()).flatMap(Optional::stream),
            Stream.of(r.solidusC(), r.highestForgingC(), r.burningC()))
        .forEach(q -> keys.addAll(List.of(q.source().split(",\\s*"))));
    List<String> all = new ArrayList<>();
    keys.forEach(k -> citation.apply(k).ifPresent(c -> all.add(k + ": " + c)));
    return all;
  }
}
