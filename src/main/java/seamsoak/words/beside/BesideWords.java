package seamsoak.words.beside;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.soak.SoakAdvice.Recommended;
import seamsoak.state.Joints;
import seamsoak.state.LineReport;
import seamsoak.state.StageReport;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.CardWords;
import seamsoak.words.SeamWords;
import seamsoak.words.beside.WhatIfWords.Costs;

/**
 * Two plans beside each other: what each comes to, and what differs.
 *
 * @param first the one that was kept
 * @param now the one that it is held against
 */
public record BesideWords(Advice first, Advice now, UnitSystem units) {
  /**
   * A line of the comparison.
   *
   * @param differs of the plan now against the first; empty where they are alike
   */
  public record Row(String what, String first, String now, String differs) {}

  private static final String ANSWER = "answer";

  /** Layers are the pattern: no line of theirs is to be cleared. */
  private static final Set<Joints.Way> LAYERS = Set.of(Joints.Way.LIKE, Joints.Way.UNLIKE);

  private Amounts amounts() {
    return new Amounts(units);
  }

  /** What differs, most important first. */
  public String says() {
    List<Row> all = rows().stream().filter(r -> !r.differs().isEmpty()).toList();
    if (all.isEmpty()) {
      return "Nothing differs from plan A. Change something, and what it comes to stands here.";
    }
    return all.stream()
        .filter(r -> all.size() == 1 || !r.what().equals(ANSWER)) // the rest says how
        .map(r -> r.what() + " " + r.differs())
        .collect(Collectors.joining("; ", "Against plan A: ", "."));
  }

  /** Whether there is anything to compare. */
  public boolean differs() {
    return rows().stream().anyMatch(r -> !r.differs().isEmpty());
  }

  /** All that is compared. */
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    rows.add(said(ANSWER, a -> new CardWords(a, units).answer()));
    rows.add(
        told(
            "soak at",
            a -> soaks(a).map(Recommended::temperatureC),
            amounts()::heat,
            d -> amounts().apart(Math.abs(d)),
            2.5,
            "hotter",
            "cooler"));
    rows.add(minutes("soak", a -> a.soak().recommended().map(r -> Math.ceil(r.minutes()))));
    rows.add(
        told(
            "of a hundred such billets clean without a soak",
            a -> a.soak().goneByScheduleAlonePct(),
            v -> Amounts.format("%.0f", v),
            d -> Amounts.format("%.0f", Math.abs(d)),
            0.5,
            "more",
            "fewer"));
    lines(rows);
    rows.add(
        told(
            "grain after the soak, ASTM",
            a -> costs(a).flatMap(Costs::grain),
            v -> Amounts.format("%.1f", v),
            d -> Amounts.format("%.1f numbers", Math.abs(d)),
            0.05,
            "finer",
            "coarser"));
    rows.add(
        length("off each flat in the soak", a -> costs(a).flatMap(Costs::flatsMm), "more", "less"));
    rows.add(length("scale in the steps", a -> Optional.of(scaled(a)), "more", "less"));
    rows.add(length("thickness", a -> end(a, StageReport::thicknessMm), "more", "less"));
    rows.add(length("width", a -> end(a, StageReport::widthMm), "more", "less"));
    rows.add(length("length", a -> end(a, StageReport::lengthMm), "more", "less"));
    rows.add(minutes("schedule, soak included", BesideWords::scheduled));
    return rows.stream().filter(r -> !r.first().equals("-") || !r.now().equals("-")).toList();
  }

  private void lines(List<Row> rows) {
    Map<String, Double> there = missing(first);
    Map<String, Double> here = missing(now);
    List<String> names = new ArrayList<>(there.keySet());
    here.keySet().stream().filter(n -> !there.containsKey(n)).forEach(names::add);
    for (String name : names) {
      rows.add(
          row(
              "carbon missing at " + name,
              Optional.ofNullable(there.get(name)),
              Optional.ofNullable(here.get(name)),
              v -> Amounts.percent(v) + " %",
              d -> Amounts.percent(Math.abs(d)) + " %",
              0.005,
              "more",
              "less"));
    }
  }

  /** The deepest line of each set of seams before the soak. */
  private static Map<String, Double> missing(Advice a) {
    return a.soak().lines().stream()
        .filter(l -> !LAYERS.contains(l.joints().way()))
        .collect(
            Collectors.toMap(
                l -> SeamWords.says(l.joints()),
                LineReport::missingPct,
                Math::max,
                LinkedHashMap::new));
  }

  private Row said(String what, Function<Advice, String> of) {
    String there = of.apply(first);
    String here = of.apply(now);
    return new Row(what, there, here, there.equals(here) ? "" : "differs");
  }

  private Row minutes(String what, Function<Advice, Optional<Double>> of) {
    return told(
        what, of, amounts()::time, d -> amounts().time(Math.abs(d)), 0.5, "longer", "shorter");
  }

  private Row length(String what, Function<Advice, Optional<Double>> of, String more, String less) {
    return told(
        what,
        of,
        amounts()::millimetres,
        d -> amounts().millimetres(Math.abs(d)),
        0.005,
        more,
        less);
  }

  private Row told(
      String what,
      Function<Advice, Optional<Double>> of,
      Function<Double, String> shown,
      Function<Double, String> apart,
      double least,
      String more,
      String less) {
    return row(what, of.apply(first), of.apply(now), shown, apart, least, more, less);
  }

  private static Row row(
      String what,
      Optional<Double> there,
      Optional<Double> here,
      Function<Double, String> shown,
      Function<Double, String> apart,
      double least,
      String more,
      String less) {
    String differs =
        there
            .flatMap(t -> here.map(h -> h - t))
            .filter(d -> Math.abs(d) >= least)
            .map(d -> apart.apply(d) + " " + (d > 0 ? more : less))
            .orElse("");
    return new Row(what, there.map(shown).orElse("-"), here.map(shown).orElse("-"), differs);
  }

  private static Optional<Recommended> soaks(Advice a) {
    return a.soak().recommended().filter(r -> r.minutes() > 0);
  }

  private Optional<Costs> costs(Advice a) {
    return new WhatIfWords(a.soak(), units).advised().map(o -> Costs.of(o, a.soak()));
  }

  private static double scaled(Advice a) {
    return a.history().stream().mapToDouble(StageReport::scaledMm).sum();
  }

  private static Optional<Double> end(Advice a, Function<StageReport, Double> of) {
    return a.history().isEmpty()
        ? Optional.empty()
        : Optional.of(of.apply(a.history().get(a.history().size() - 1)));
  }

  private static Optional<Double> scheduled(Advice a) {
    return Optional.of(
        a.schedule().segments().stream().mapToDouble(ScheduleAdvice.Segment::minutes).sum());
  }
}
