package seamsoak.advice;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import seamsoak.advice.ScheduleAdvice.After;
import seamsoak.advice.ScheduleAdvice.CriticalTemperatures;
import seamsoak.advice.ScheduleAdvice.Segment;
import seamsoak.billet.Billet;
import seamsoak.billet.Cooling;
import seamsoak.billet.Exposure;
import seamsoak.billet.Shop;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.CarbonInSteel;
import seamsoak.carbon.Edge;
import seamsoak.carbon.LineVisibility;
import seamsoak.heat.HeatCurve;
import seamsoak.property.PhaseLines;
import seamsoak.source.Caution;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Hardenability;
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
  private static final double ROOM_KELVIN = 293.15;
  private static final double ZERO_CELSIUS = 273.15;

  /** Above the highest upper critical temperature when normalizing, K (common glossary: 38). */
  private static final double NORMALIZE_ABOVE = 40;

  /** Above it in the last refining cycle, K; judgement. */
  private static final double LAST_CYCLE_ABOVE = 35;

  private static final int CYCLES = 3;
  private static final double HOT_KELVIN = 1100 + ZERO_CELSIUS;

  /** Rise in a hot kiln, minutes per mm of a plate heated on both faces, at 870 and at 1150 C. */
  private static final double RISE_870 = 1.25;

  private static final double RISE_1150 = 0.65;
  private static final double LEAST_RISE_MINUTES = 6;

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

  /**
   * A schedule carried out.
   *
   * @param advice what to do and what comes of it
   * @param pieces the metal after each step
   */
  record Run(ScheduleAdvice advice, List<Workpiece> pieces) {}

  /** A step as planned: a rise, a hold, a cooling. */
  private record Plan(
      String name, double celsius, double holdSeconds, String why, String check, Edge outside) {
    double kelvin() {
      return celsius + ZERO_CELSIUS;
    }
  }

  /** The curves of normalizing and cycles for a piece as it is, without a soak. */
  List<HeatCurve> cyclesFor(Workpiece piece) {
    return plans(piece, Optional.empty()).stream().map(p -> curve(p, piece)).toList();
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
    for (Plan plan : plans(piece, Optional.of(critical))) {
      piece = carry(plan, piece, segments, after, pieces);
    }
    return new Run(
        new ScheduleAdvice(segments, after, critical, remarks(segments, critical)),
        List.copyOf(pieces));
  }

  private Plan soakPlan(SoakAdvice.Recommended soak) {
    return new Plan(
        "soak",
        soak.temperatureC(),
        soak.minutes() * 60,
        soak.reason(),
        "thermocouple beside the work; count the hold from when its color matches the fire",
        shop.edge(billet.soak().outsideTaken()));
  }

  private List<Plan> plans(Workpiece piece, Optional<List<CriticalTemperatures>> known) {
    List<CriticalTemperatures> critical = known.orElseGet(() -> critical(piece));
    CriticalTemperatures highest =
        critical.stream().reduce((a, b) -> b.upperC() > a.upperC() ? b : a).orElseThrow();
    double normalize = normalizeCelsius(highest.upperC());
    double last = Math.min(normalize, roundUp(highest.upperC() + LAST_CYCLE_ABOVE, 5));
    double millimetres = piece.size().thicknessMetres() * 1e3;
    double hold = Math.max(5, Math.min(15, millimetres)) * 60;
    Edge open = shop.edge(Exposure.OPEN);
    List<Plan> plans = new ArrayList<>();
    plans.add(
        new Plan(
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
          new Plan(
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
      Plan plan,
      Workpiece piece,
      List<Segment> segments,
      List<After> after,
      List<Workpiece> pieces) {
    HeatCurve curve = curve(plan, piece);
    Workpiece next = piece.heated(curve, plan.outside(), Edge.SEALED, shop.solver()).piece();
    segments.addAll(segments(plan, curve));
    List<LineReport> lines = LineReport.of(next, visibility);
    after.add(
        new After(
            plan.name(),
            (int) lines.stream().filter(LineReport::visible).count(),
            lines.stream().mapToDouble(LineReport::dipPct).max().orElse(0),
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

  private HeatCurve curve(Plan plan, Workpiece piece) {
    double millimetres = piece.size().thicknessMetres() * 1e3;
    double celsius = plan.celsius();
    double perMillimetre =
        Math.max(RISE_1150, RISE_870 - (celsius - 870) * (RISE_870 - RISE_1150) / (1150 - 870));
    double rise = 60 * Math.max(LEAST_RISE_MINUTES, perMillimetre * millimetres);
    HeatCurve up;
    if (plan.kelvin() > Shop.DULL_KELVIN) {
      double last = Math.min(Clearing.RISE_SECONDS, 0.9 * rise);
      up =
          HeatCurve.riseAndHold(ROOM_KELVIN, Shop.DULL_KELVIN, rise - last, 0)
              .then(
                  HeatCurve.riseAndHold(Shop.DULL_KELVIN, plan.kelvin(), last, plan.holdSeconds()));
    } else {
      up = HeatCurve.riseAndHold(ROOM_KELVIN, plan.kelvin(), rise, plan.holdSeconds());
    }
    return up.then(shop.cooling(Cooling.AIR, piece.size(), plan.kelvin()));
  }

  private List<Segment> segments(Plan plan, HeatCurve curve) {
    double rise = 0;
    double cool = 0;
    double end = plan.kelvin();
    for (HeatCurve.Segment s : curve.segments()) {
      if (s.toKelvin() > s.fromKelvin()) {
        rise += s.seconds();
      } else if (s.toKelvin() < s.fromKelvin()) {
        cool += s.seconds();
        end = s.toKelvin();
      }
    }
    String word = plan.name().split(" ")[0];
    List<String> said =
        cautions.at(word, conditions(plan.kelvin())).stream().map(Caution::statement).toList();
    double top = plan.celsius();
    return List.of(
        new Segment(
            plan.name(),
            "rise",
            ROOM_KELVIN - ZERO_CELSIUS,
            top,
            rise / 60,
            "",
            "the core lags the face: the hold counts from when the core is there",
            "",
            said),
        new Segment(
            plan.name(),
            "hold",
            top,
            top,
            plan.holdSeconds() / 60,
            "",
            plan.why(),
            plan.check(),
            List.of()),
        new Segment(
            plan.name(),
            "cool",
            top,
            end - ZERO_CELSIUS,
            cool / 60,
            "air",
            "still air, down to where it is black in shade",
            "no red in shade before the next heat",
            List.of()));
  }

  /** What holds in this shop; who cannot tell takes it to hold. */
  private Set<String> conditions(double kelvin) {
    Set<Condition> all = EnumSet.of(Condition.GAS_FORGE, Condition.KILN, Condition.INDOORS);
    if (kelvin > HOT_KELVIN) {
      all.add(Condition.HOT);
    }
    for (Steel steel : steels()) {
      if (steel.analysis().percent(Element.NI) >= 1) {
        all.add(Condition.NICKEL);
      }
      if (steel.analysis().percent(Element.CR) >= 1) {
        all.add(Condition.CHROMIUM);
      }
      if (steel.hardenability().map(h -> h == Hardenability.AIR).orElse(false)) {
        all.add(Condition.AIR_HARDENING);
      }
    }
    return all.stream().map(Condition::word).collect(Collectors.toSet());
  }

  private List<String> remarks(List<Segment> segments, List<CriticalTemperatures> critical) {
    List<String> all = new ArrayList<>();
    all.add(
        "Normalizing hides a faint line more by its finer structure than by moving carbon: it may"
            + " come back after an anneal.");
    double normalize =
        segments.stream()
            .filter(s -> s.step().equals("normalize") && s.kind().equals("hold"))
            .findFirst()
            .orElseThrow()
            .toC();
    for (Steel steel : steels()) {
      steel
          .heatTreatment()
          .normalize()
          .filter(r -> normalize < r.lowC() - 0.5 || normalize > r.highC() + 0.5)
          .ifPresent(
              r ->
                  all.add(
                      "Normalizing at "
                          + show(normalize)
                          + " lies outside the published range of "
                          + steel.id()
                          + ", "
                          + show(r.lowC())
                          + " to "
                          + show(r.highC())
                          + ": the other steel needs it, or the carbon has moved."));
      if (steel.category().startsWith("tool (air") || steel.category().startsWith("stainless")) {
        all.add(
            steel.id()
                + " hardens in air or is not normalized at all: this schedule is not for it; follow"
                + " its sheet.");
      }
    }
    if (critical.size() > 1) {
      String names =
          critical.stream().map(CriticalTemperatures::steel).collect(Collectors.joining(", "));
      all.add("The temperatures rest on the carbon that each of " + names + " has after the soak.");
    }
    return List.copyOf(all);
  }

  private String show(double celsius) {
    return Temperature.ofCelsius(celsius).format(units);
  }

  private static double roundUp(double value, double step) {
    return Math.ceil(value / step - 1e-9) * step;
  }
}
