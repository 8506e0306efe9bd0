package seamsoak.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import seamsoak.advice.ScheduleAdvice.After;
import seamsoak.advice.ScheduleAdvice.CriticalTemperatures;
import seamsoak.advice.ScheduleAdvice.Segment;
import seamsoak.billet.Billet;
import seamsoak.billet.Exposure;
import seamsoak.billet.Shop;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.CarbonInSteel;
import seamsoak.carbon.Edge;
import seamsoak.carbon.LineVisibility;
import seamsoak.heat.HeatCurve;
import seamsoak.property.PhaseLines;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.Temperature;
import seamsoak.unit.TemperatureDifference;
import seamsoak.unit.UnitSystem;

/**
 * The schedule after the last weld: soak, normalize, descending refining cycles. Temperatures
 * follow from the carbon each steel has by then; the strips are carried through it.
 */
final class ScheduleAdvisor {

  /** Above the highest upper critical temperature when normalizing, K (common glossary: 38). */
  private static final double NORMALIZE_ABOVE = 40;

  /** Above it in the last refining cycle, K; judgement. */
  private static final double LAST_CYCLE_ABOVE = 35;

  private static final int CYCLES = 3;

  private final Billet billet;
  private final Shop shop;
  private final LineVisibility visibility;
  private final CautionTable cautions;
  private final UnitSystem units;

  ScheduleAdvisor(
      Billet billet,
      Shop shop,
      LineVisibility visibility,
      CautionTable cautions,
      UnitSystem units) {
    this.billet = billet;
    this.shop = shop;
    this.visibility = visibility;
    this.cautions = cautions;
    this.units = units;
  }

  /** Where its temperatures and times lie, in words. */
  static String margins() {
    return String.format(
        Locale.ROOT,
        "the schedule: normalize %.0f C above the highest Ac3 or Accm, %d cycles down to %.0f C"
            + " above it, within the published ranges that the steels share; %s",
        NORMALIZE_ABOVE,
        CYCLES,
        LAST_CYCLE_ABOVE,
        ScheduleStep.rises());
  }

  /**
   * A schedule carried out.
   *
   * @param advice what to do and what comes of it
   * @param pieces the metal after each step
   */
  record Run(ScheduleAdvice advice, List<Workpiece> pieces) {}

  /** The curves of normalizing and cycles for a piece as it is, without a soak. */
  List<HeatCurve> cyclesFor(Workpiece piece) {
    return plans(piece, Optional.empty()).stream().map(p -> p.curve(shop, piece.size())).toList();
  }

  /** The whole schedule, with a soak first when one is given. */
  Run run(Workpiece start, Optional<SoakAdvice.Recommended> soak) {
    List<Segment> segments = new ArrayList<>();
    List<After> after = new ArrayList<>();
    List<Workpiece> pieces = new ArrayList<>();
    Workpiece piece = start;
    if (soak.isPresent() && soak.get().minutes() > 0) {
      piece = carry(soakPlan(soak.get()), piece, segments, after, pieces);
    }
    List<CriticalTemperatures> critical = critical(piece);
    for (ScheduleStep plan : plans(piece, Optional.of(critical))) {
      piece = carry(plan, piece, segments, after, pieces);
    }
    return new Run(
        new ScheduleAdvice(
            segments,
            after,
            critical,
            new ScheduleWords(steels(), visibility, units)
                .remarks(start, segments, after, critical)),
        List.copyOf(pieces));
  }

  private ScheduleStep soakPlan(SoakAdvice.Recommended soak) {
    return new ScheduleStep(
        "soak",
        soak.temperatureC(),
        soak.minutes() * 60,
        soak.reason(),
        "thermocouple beside the work; count the hold from when its color matches the fire",
        shop.edge(billet.soak().outsideTaken()));
  }

  private List<ScheduleStep> plans(Workpiece piece, Optional<List<CriticalTemperatures>> known) {
    List<CriticalTemperatures> critical = known.orElseGet(() -> critical(piece));
    CriticalTemperatures highest =
        critical.stream().reduce((a, b) -> b.upperC() > a.upperC() ? b : a).orElseThrow();
    double normalize = normalizeCelsius(highest.upperC());
    double last = Math.min(normalize, roundUp(highest.upperC() + LAST_CYCLE_ABOVE, 5));
    double millimetres = piece.size().thicknessMetres() * 1e3;
    double hold = Math.max(5, Math.min(15, millimetres)) * 60;
    Edge open = shop.edge(Exposure.OPEN);
    List<ScheduleStep> plans = new ArrayList<>();
    plans.add(
        new ScheduleStep(
            "normalize",
            normalize,
            hold,
            String.format(
                Locale.ROOT,
                "%s above the %s of %s (%s at %.2f %% C), the highest of its steels%s",
                new TemperatureDifference(normalize - highest.upperC()).format(units),
                highest.upper(),
                highest.steel(),
                show(highest.upperC()),
                highest.carbonPct(),
                normalize == roundUp(highest.upperC() + NORMALIZE_ABOVE, 10)
                    ? ""
                    : "; drawn into the range that their sheets share"),
            "no magnet pull at heat; still air to black, away from drafts and concrete",
            open));
    for (int i = 1; i <= CYCLES; i++) {
      double celsius = Math.round((normalize + (last - normalize) * i / CYCLES) / 5) * 5.0;
      plans.add(
          new ScheduleStep(
              "refine " + i,
              celsius,
              5 * 60,
              i < CYCLES
                  ? "new, finer grains form each time it passes the critical range; cooler each"
                      + " time so that they stay fine"
                  : "just above the upper critical temperature: the last and finest grains",
              i < CYCLES
                  ? "color even through the section before counting"
                  : "break a test piece: the fracture should look like gray silk",
              open));
    }
    return plans;
  }

  /** Above the critical range, drawn into the range that all its steels' sheets share if near. */
  private double normalizeCelsius(double upperCelsius) {
    double celsius = roundUp(upperCelsius + NORMALIZE_ABOVE, 10);
    double low = 0;
    double high = Double.POSITIVE_INFINITY;
    for (Steel steel : steels()) {
      Optional<TemperatureRange> range = steel.heatTreatment().normalize();
      low = Math.max(low, range.map(TemperatureRange::lowC).orElse(0.0));
      high = Math.min(high, range.map(TemperatureRange::highC).orElse(Double.POSITIVE_INFINITY));
    }
    if (low > high) {
      return celsius;
    }
    return Math.max(upperCelsius + LAST_CYCLE_ABOVE, Math.max(low, Math.min(high, celsius)));
  }

  private List<Steel> steels() {
    return billet.stack().steels().stream().distinct().toList();
  }

  private List<CriticalTemperatures> critical(Workpiece piece) {
    List<CriticalTemperatures> all = new ArrayList<>();
    for (Steel steel : steels()) {
      double carbon = Limits.carbonPct(steel, piece);
      PhaseLines lines = ((CarbonInSteel) shop.metal(steel).law()).lines();
      Composition analysis = steel.analysis().with(Element.C, carbon);
      boolean beyond = lines.accmCelsius(carbon) > lines.ac3Celsius(carbon);
      all.add(
          new CriticalTemperatures(
              steel.id(),
              carbon,
              lines.a1Celsius(),
              lines.fullAusteniteCelsius(carbon),
              beyond ? "Accm" : "Ac3",
              shop.correlations().vanBohemenMs().celsius(analysis)));
    }
    return all;
  }

  private Workpiece carry(
      ScheduleStep plan,
      Workpiece piece,
      List<Segment> segments,
      List<After> after,
      List<Workpiece> pieces) {
    HeatCurve curve = plan.curve(shop, piece.size());
    Workpiece next = piece.heated(curve, plan.outside(), Edge.SEALED, shop.solver()).piece();
    segments.addAll(plan.segments(curve, new StepCautions(cautions, steels())));
    List<LineReport> lines = LineReport.of(next, visibility);
    after.add(
        new After(
            plan.name(),
            (int) lines.stream().filter(LineReport::visible).count(),
            ScheduleWords.deepest(lines),
            grain(curve),
            StageReport.skinMetres(next) * 1e3,
            StageReport.layers(next),
            lines));
    pieces.add(next);
    return next;
  }

  /** Grain number after a curve, its grains forming anew. */
  double grain(HeatCurve curve) {
    int n = curve.segments().size();
    double[] seconds = new double[2 * n];
    double[] kelvin = new double[2 * n];
    double t = 0;
    for (int i = 0; i < n; i++) {
      HeatCurve.Segment s = curve.segments().get(i);
      seconds[2 * i] = t;
      kelvin[2 * i] = s.fromKelvin();
      t += s.seconds();
      seconds[2 * i + 1] = t;
      kelvin[2 * i + 1] = s.toKelvin();
    }
    double metres =
        shop.correlations()
            .grainGrowth()
            .metresAfter(shop.bodyAnalysis(billet.stack()), 0, seconds, kelvin);
    return shop.correlations().grainNumber().number(metres);
  }

  private String show(double celsius) {
    return Temperature.ofCelsius(celsius).format(units);
  }

  private static double roundUp(double value, double step) {
    return Math.ceil(value / step - 1e-9) * step;
  }
}
