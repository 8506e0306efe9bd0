package seamsoak.chart.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.billet.Billet;
import seamsoak.billet.Shop;
import seamsoak.billet.Size;
import seamsoak.face.FaceSize;
import seamsoak.plan.Advice;
import seamsoak.schedule.Coolant;
import seamsoak.schedule.CriticalTemperatures;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.StepName;
import seamsoak.soak.SoakAdvice;
import seamsoak.state.SeamProfile;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;
import seamsoak.words.SeamWords;
import seamsoak.words.Sentence;
import seamsoak.words.SoakAnswerWords;
import seamsoak.words.face.FaceWords;

/** The charts of an advice: nothing is computed here, only put into the charts' words. */
public final class Figures {
  /** The ids that a billet's charts may have. */
  public static final String IDS = "schedule|soak|seam|fading|face|section-[0-9]+";

  /** Pixels of a face on a chart, so that the file stays light. */
  private static final int FACE_ACROSS = 600;

  private static final int FACE_UP = 300;

  private final Advice advice;
  private final UnitSystem units;

  public Figures(Advice advice, UnitSystem units) {
    this.advice = advice;
    this.units = units;
  }

  /** All that there is to draw: the schedule, soak, seam and lines, the billet's sections. */
  public List<Figure> all(Billet billet) {
    return with(allButFace(billet), face());
  }

  /** The same of which the face was worked out by itself; it stands before how lines fade. */
  public static List<Figure> with(List<Figure> others, Optional<Figure> face) {
    List<Figure> all = new ArrayList<>(others);
    int at = 0;
    while (at < all.size()
        && !(all.get(at) instanceof FadingFigure || all.get(at) instanceof SectionFigure)) {
      at++;
    }
    all.addAll(at, face.stream().toList());
    return List.copyOf(all);
  }

  /** All but the face, which takes as long as all that is reckoned of a likely case. */
  public List<Figure> allButFace(Billet billet) {
    List<Figure> figures = new ArrayList<>();
    if (!advice.schedule().byStep().isEmpty()) {
      figures.add(schedule());
    }
    soak().ifPresent(figures::add);
    advice.seam().map(this::seam).ifPresent(figures::add);
    new FadingFigures(advice, units).figure().ifPresent(figures::add);
    List<Size> sizes =
        advice.history().stream()
            .map(s -> new Size(s.lengthMm() / 1e3, s.widthMm() / 1e3, s.thicknessMm() / 1e3))
            .toList();
    figures.addAll(new SectionFigures(billet, sizes, units).all());
    return List.copyOf(figures);
  }

  private ScheduleFigure schedule() {
    Map<StepName, List<ScheduleAdvice.Segment>> steps = advice.schedule().byStep();
    List<ScheduleFigure.Treatment> drawn = new ArrayList<>();
    List<String> said = new ArrayList<>();
    Optional<ScheduleAdvice.Step> refused =
        advice.schedule().steps().stream().filter(s -> s.refused().isPresent()).findFirst();
    refused.ifPresent(r -> cut(steps, r.step()));
    steps.forEach(
        (name, segments) -> {
          ScheduleFigure.Treatment step = step(name, segments);
          drawn.add(step);
          said.add(name.words() + " " + step.detail());
        });
    return new ScheduleFigure(
        "schedule",
        "Heat treatment of " + advice.billet(),
        refused
            .map(r -> "Do not " + r.step().words() + " it as planned: this ends before that")
            .orElseGet(() -> answer("No soak clears these lines")),
        "Temperature against time: "
            + String.join("; ", said)
            + "."
            + refused.map(r -> " The step " + r.step().words() + " is refused.").orElse(""),
        units,
        drawn,
        bands());
  }

  /** What must not be done is not drawn, nor what rests on it. */
  private static void cut(Map<StepName, List<ScheduleAdvice.Segment>> steps, StepName refused) {
    List<StepName> names = new ArrayList<>(steps.keySet());
    int at = names.indexOf(refused);
    if (at > 0) {
      names.subList(at, names.size()).forEach(steps::remove);
    }
  }

  private ScheduleFigure.Treatment step(StepName name, List<ScheduleAdvice.Segment> segments) {
    String detail = "";
    Optional<Coolant> in = Optional.empty();
    for (ScheduleAdvice.Segment s : segments) {
      if (s.kind() == ScheduleAdvice.Segment.Kind.HOLD) {
        detail = at(s.toC()) + ", " + minutes(s.minutes());
      } else if (s.cool().isPresent() && !s.cool().equals(in)) {
        detail += (detail.isEmpty() ? "" : ", ") + s.cool().get().word();
      }
      in = s.cool();
    }
    ScheduleAdvice.Curve drawn =
        advice.schedule().curve().stream()
            .filter(c -> c.step().equals(name))
            .findFirst()
            .orElseThrow();
    return new ScheduleFigure.Treatment(
        name.words(), detail, corners(drawn.core()), corners(drawn.face()));
  }

  private static List<ScheduleFigure.Corner> corners(List<ScheduleAdvice.Corner> corners) {
    return corners.stream().map(c -> new ScheduleFigure.Corner(c.minutes(), c.celsius())).toList();
  }

  private List<ScheduleFigure.Band> bands() {
    List<ScheduleFigure.Band> bands = new ArrayList<>();
    double low = Double.POSITIVE_INFINITY;
    double high = 0;
    for (CriticalTemperatures c : advice.schedule().critical()) {
      low = Math.min(low, c.ac1C().orElse(low));
      high = Math.max(high, c.ac1C().orElse(high));
      c.upperC()
          .map(
              upper ->
                  new ScheduleFigure.Band(
                      c.upper() + " " + c.steel(), ScheduleFigure.Meaning.CHANGE, upper, upper))
          .ifPresent(bands::add);
    }
    if (Double.isFinite(low)) {
      bands.add(new ScheduleFigure.Band("Ac1", ScheduleFigure.Meaning.CHANGE, low, high));
    }
    double forging = advice.soak().highestForgingC();
    bands.add(
        new ScheduleFigure.Band("forging limit", ScheduleFigure.Meaning.LIMIT, forging, forging));
    bands.add(
        new ScheduleFigure.Band(
            "black in shade",
            ScheduleFigure.Meaning.GUIDE,
            Shop.BLACK_CELSIUS,
            Shop.BLACK_CELSIUS));
    return bands;
  }

  /** Nothing where no history of the billet needs any soak. */
  private Optional<Figure> soak() {
    SoakAdvice soak = advice.soak();
    if (soak.options().stream().allMatch(Figures::needless)) {
      return Optional.empty();
    }
    Optional<SoakFigure.Pick> pick =
        soak.recommended()
            .filter(r -> r.minutes() > 0)
            .map(
                r ->
                    new SoakFigure.Pick(
                        r.temperatureC(),
                        r.minutes(),
                        at(r.temperatureC()) + ", " + minutes(r.minutes())));
    return Optional.of(
        new SoakFigure(
            "soak",
            "Soak that clears the lines of " + advice.billet(),
            answer("No soak clears within what is allowed"),
            "Minutes to clear the lines against soak temperature"
                + (soak.samples() == 0
                    ? " in the likely case alone"
                    : ", with the band that holds eight of ten of "
                        + soak.samples()
                        + " cases tried")
                + ", and the metal and grain it costs.",
            units,
            soak.options().stream().map(Figures::option).toList(),
            List.of(
                new SoakFigure.Limit("forging limit", soak.highestForgingC(), false),
                new SoakFigure.Limit("no soak above", soak.refusalC(), true)),
            OptionalDouble.of(soak.mostMinutes()),
            pick));
  }

  private static boolean needless(SoakAdvice.SoakOption o) {
    return o.minutes().filter(m -> m == 0).isPresent()
        && (o.minutesHigh().filter(m -> m == 0).isPresent() || o.minutesLow().isEmpty());
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
    SeamProfile.AtStage before = seam.stages().get(0);
    SeamProfile.AtStage after = seam.stages().get(seam.stages().size() - 1);
    return new SeamFigure(
        "seam",
        "Carbon across the seams: " + SeamWords.says(seam.seams()),
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
        seam.stages().stream().map(Figures::curve).toList(),
        List.of(new SeamFigure.Level("far from the seam", seam.farPct())));
  }

  private static SeamFigure.Curve curve(SeamProfile.AtStage stage) {
    return new SeamFigure.Curve(
        SeamWords.moment(stage.stage()),
        stage.points().stream()
            .map(p -> new SeamFigure.Sample(p.distanceMm(), p.carbonPct()))
            .toList());
  }

  /** Nothing where the face cannot be drawn. */
  public Optional<Figure> face() {
    FaceWords words = new FaceWords(units);
    if (advice.faces().isEmpty()) {
      return Optional.empty();
    }
    List<FaceFigure.Panel> panels =
        advice.faces().stream()
            .map(
                f ->
                    new FaceFigure.Panel(
                        FaceWords.title(f),
                        words.shows(f),
                        f.picture(FaceSize.of(f.field(), 0, FACE_ACROSS, FACE_UP))))
            .toList();
    List<String> said = new ArrayList<>();
    panels.forEach(p -> said.add(p.name() + ": " + p.note()));
    return Optional.of(
        new FaceFigure(
            "face",
            "The shown face of " + advice.billet(),
            "",
            String.join(" ", said) + " " + FaceWords.LEGEND,
            panels));
  }

  /** What the chart says in large letters; a danger comes before any soak. */
  private String answer(String none) {
    return advice.hardStops().isEmpty()
        ? advice.soak().recommended().map(this::soakInWords).orElse(none)
        : "Do not heat this billet as written";
  }

  private String soakInWords(SoakAdvice.Recommended r) {
    return r.minutes() > 0
        ? Sentence.capital(SoakAnswerWords.condition(r.reason()) + "soak at ")
            + at(r.temperatureC())
            + " for "
            + minutes(r.minutes())
        : "No soak needed";
  }

  private String at(double celsius) {
    return Temperature.ofCelsius(celsius).format(units);
  }

  private String minutes(double minutes) {
    return TimeSpan.ofMinutes(minutes).format(units);
  }
}
