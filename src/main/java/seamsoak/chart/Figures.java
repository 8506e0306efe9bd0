package seamsoak.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.billet.Billet;
import seamsoak.billet.Shop;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.soak.SoakAdvice;
import seamsoak.state.SeamProfile;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;
import seamsoak.words.SeamWords;

/** The charts of an advice: nothing is computed here, only put into the charts' words. */
public final class Figures {
  /** The ids that a billet's charts may have. */
  public static final String IDS = "schedule|soak|seam|fading|section-[0-9]+";

  /** Farthest from a seam that is worth drawing, in widths of the curve's own steep part. */
  private static final double SEAM_SHARE = 0.97;

  private final Advice advice;
  private final UnitSystem units;

  public Figures(Advice advice, UnitSystem units) {
    this.advice = advice;
    this.units = units;
  }

  /** All the charts of a billet: those of the advice, how its lines fade, its sections. */
  public List<Figure> all(Billet billet) {
    List<Figure> figures = new ArrayList<>(all());
    new FadingFigures(advice, units).figure().ifPresent(figures::add);
    figures.addAll(new SectionFigures(billet, advice, units).all());
    return List.copyOf(figures);
  }

  /** Schedule, soak and, where there are seams, the seam. */
  public List<Figure> all() {
    List<Figure> figures = new ArrayList<>(List.of(schedule(), soak()));
    advice.seam().ifPresent(s -> figures.add(seam(s)));
    return List.copyOf(figures);
  }

  public ScheduleFigure schedule() {
    Map<String, List<ScheduleAdvice.Segment>> steps = new LinkedHashMap<>();
    for (ScheduleAdvice.Segment s : advice.schedule().segments()) {
      steps.computeIfAbsent(s.step(), k -> new ArrayList<>()).add(s);
    }
    List<ScheduleFigure.Step> drawn = new ArrayList<>();
    List<String> said = new ArrayList<>();
    Optional<ScheduleAdvice.Step> refused =
        advice.schedule().steps().stream().filter(s -> s.refused().isPresent()).findFirst();
    refused.ifPresent(r -> cut(steps, r.step()));
    steps.forEach(
        (name, segments) -> {
          ScheduleFigure.Step step = step(name, segments);
          drawn.add(step);
          said.add(name + " " + step.detail());
        });
    return new ScheduleFigure(
        "schedule",
        "Heat treatment of " + advice.billet(),
        refused
            .map(r -> "Do not " + r.step() + " it as planned: this ends before that")
            .orElseGet(() -> answer("No soak clears these lines")),
        "Temperature against time: "
            + String.join("; ", said)
            + "."
            + refused.map(r -> " The step " + r.step() + " is refused.").orElse(""),
        units,
        drawn,
        bands());
  }

  /** What must not be done is not drawn, nor what rests on it. */
  private static void cut(Map<String, List<ScheduleAdvice.Segment>> steps, String refused) {
    List<String> names = new ArrayList<>(steps.keySet());
    int at = names.indexOf(refused);
    if (at > 0) {
      names.subList(at, names.size()).forEach(steps::remove);
    }
  }

  private ScheduleFigure.Step step(String name, List<ScheduleAdvice.Segment> segments) {
    String detail = "";
    for (ScheduleAdvice.Segment s : segments) {
      if (s.kind().equals("hold")) {
        detail = at(s.toC()) + ", " + minutes(s.minutes());
      } else if (!s.cool().isEmpty() && !detail.endsWith(s.cool())) {
        detail += (detail.isEmpty() ? "" : ", ") + s.cool();
      }
    }
    ScheduleAdvice.Curve drawn =
        advice.schedule().curve().stream()
            .filter(c -> c.step().equals(name))
            .findFirst()
            .orElseThrow();
    return new ScheduleFigure.Step(name, detail, corners(drawn.core()), corners(drawn.face()));
  }

  private static List<ScheduleFigure.At> corners(List<ScheduleAdvice.Corner> corners) {
    return corners.stream().map(c -> new ScheduleFigure.At(c.minutes(), c.celsius())).toList();
  }

  private List<ScheduleFigure.Band> bands() {
    List<ScheduleFigure.Band> bands = new ArrayList<>();
    double low = Double.POSITIVE_INFINITY;
    double high = 0;
    for (ScheduleAdvice.CriticalTemperatures c : advice.schedule().critical()) {
      low = Math.min(low, c.ac1C());
      high = Math.max(high, c.ac1C());
      bands.add(
          new ScheduleFigure.Band(
              c.upper() + " " + c.steel(), ScheduleFigure.Kind.CHANGE, c.upperC(), c.upperC()));
    }
    if (Double.isFinite(low)) {
      bands.add(new ScheduleFigure.Band("Ac1", ScheduleFigure.Kind.CHANGE, low, high));
    }
    double forging = advice.soak().highestForgingC();
    bands.add(
        new ScheduleFigure.Band("forging limit", ScheduleFigure.Kind.LIMIT, forging, forging));
    bands.add(
        new ScheduleFigure.Band(
            "black in shade", ScheduleFigure.Kind.GUIDE, Shop.BLACK_CELSIUS, Shop.BLACK_CELSIUS));
    return bands;
  }

  public SoakFigure soak() {
    SoakAdvice soak = advice.soak();
    Optional<SoakFigure.Pick> pick =
        soak.recommended()
            .filter(r -> r.minutes() > 0)
            .map(
                r ->
                    new SoakFigure.Pick(
                        r.temperatureC(),
                        r.minutes(),
                        at(r.temperatureC()) + ", " + minutes(r.minutes())));
    return new SoakFigure(
        "soak",
        "Soak that clears the lines of " + advice.billet(),
        answer("No soak clears within what is allowed"),
        "Minutes to clear the lines against soak temperature"
            + (soak.samples() == 0
                ? " by the middle estimate alone"
                : ", with the band that holds eight of ten of "
                    + soak.samples()
                    + " possible histories")
            + ", and the metal and grain it costs.",
        units,
        soak.options().stream().map(Figures::option).toList(),
        List.of(
            new SoakFigure.Limit("forging limit", soak.highestForgingC(), false),
            new SoakFigure.Limit("no soak above", soak.refusalC(), true)),
        OptionalDouble.of(soak.mostMinutes()),
        pick);
  }

  private static SoakFigure.Option option(SoakAdvice.SoakOption o) {
    return new SoakFigure.Option(
        o.temperatureC(),
        optional(o.minutes()),
        optional(o.minutesLow()),
        optional(o.minutesHigh()),
        optional(o.metalLossMm()),
        optional(o.grainAstm()));
  }

  private static OptionalDouble optional(Optional<Double> value) {
    return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
  }

  private SeamFigure seam(SeamProfile seam) {
    double reach = reach(seam);
    List<SeamFigure.Curve> curves = new ArrayList<>();
    for (SeamProfile.AtStage stage : seam.stages()) {
      List<SeamFigure.At> points =
          stage.points().stream()
              .filter(p -> Math.abs(p.distanceMm()) <= reach)
              .map(p -> new SeamFigure.At(p.distanceMm(), p.carbonPct()))
              .toList();
      curves.add(new SeamFigure.Curve(SeamWords.moment(stage.stage()), points));
    }
    SeamProfile.AtStage before = seam.stages().get(0);
    SeamProfile.AtStage after = seam.stages().get(seam.stages().size() - 1);
    return new SeamFigure(
        "seam",
        "Carbon across the seams: " + SeamWords.name(seam.seams()),
        String.format(
            Locale.ROOT,
            "Contrast %.2f before, %.2f at the end; a line shows from 1",
            before.contrast(),
            after.contrast()),
        String.format(
            Locale.ROOT,
            "Carbon against distance from the seam. Far from it there is %.2f %%. Missing at the"
                + " seam: %.2f %% before and %.2f %% at the end; contrast %.2f before and %.2f at the"
                + " end, a line shows from 1.",
            seam.farPct(),
            before.missingPct(),
            after.missingPct(),
            before.contrast(),
            after.contrast()),
        units,
        curves,
        List.of(new SeamFigure.Level("far from the seam", seam.farPct())));
  }

  /** Out to where the last curve has all but made good what it lacks, at least half the strip. */
  private static double reach(SeamProfile seam) {
    double far =
        seam.stages().get(0).points().stream()
            .mapToDouble(p -> Math.abs(p.distanceMm()))
            .max()
            .orElseThrow();
    return far * SEAM_SHARE;
  }

  /** What the chart says in large letters; a danger comes before any soak. */
  private String answer(String none) {
    return advice.hardStops().isEmpty()
        ? advice.soak().recommended().map(this::soakInWords).orElse(none)
        : "Do not heat this billet as written";
  }

  private String soakInWords(SoakAdvice.Recommended r) {
    return r.minutes() > 0
        ? "Soak at " + at(r.temperatureC()) + " for " + minutes(r.minutes())
        : "No soak needed";
  }

  private String at(double celsius) {
    return Temperature.ofCelsius(celsius).format(units);
  }

  private String minutes(double minutes) {
    return TimeSpan.ofMinutes(minutes).format(units);
  }
}
