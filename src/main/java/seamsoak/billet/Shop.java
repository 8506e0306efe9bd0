package seamsoak.billet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.carbon.Edge;
import seamsoak.carbon.Metal;
import seamsoak.carbon.StripSolver;
import seamsoak.carbon.Surroundings;
import seamsoak.heat.HeatCurve;
import seamsoak.heat.Section;
import seamsoak.property.Correlations;
import seamsoak.property.forging.Atmosphere;
import seamsoak.property.forging.CompactScale;
import seamsoak.property.phase.PhaseLines;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Limits;
import seamsoak.steel.Steel;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;

/** What the walk works with: metals, the fire, the solver, all under one set of assumptions. */
public final class Shop {
  /** Where a rise into the fire begins and where forging leaves off, C; judgement. */
  public static final double DULL_CELSIUS = 850;

  /** The same, K. */
  public static final double DULL_KELVIN = DULL_CELSIUS + Temperature.ZERO_CELSIUS;

  /** Where steel no longer glows in shade, C. */
  public static final double BLACK_CELSIUS = 480;

  /** The same, K. */
  public static final double BLACK_KELVIN = BLACK_CELSIUS + Temperature.ZERO_CELSIUS;

  private static final double COOLING_STEP_KELVIN = 25;
  private static final double FURNACE_KELVIN_PER_SECOND = 50.0 / 3600;

  private final Correlations correlations;
  private final Assumptions assumptions;
  private final Resolution resolution;
  private final StripSolver solver;
  private final Map<Steel, Metal> metals = new HashMap<>();

  public Shop(Correlations correlations, Assumptions assumptions, Resolution resolution) {
    this.correlations = correlations;
    this.assumptions = assumptions;
    this.resolution = resolution;
    this.solver =
        new StripSolver(
            new Surroundings(this::underScale, this::scaling, stillAir()),
            resolution.relativeTolerance());
  }

  /** Compact scale, by the analysis of the metal at the face. */
  private Surroundings.StillAir stillAir() {
    CompactScale compact = correlations.forging().compactScale();
    return new Surroundings.StillAir() {
      @Override
      public double open(Metal metal, double kelvin) {
        double celsius = kelvin - Temperature.ZERO_CELSIUS;
        return analysis(metal)
            .map(c -> compact.open(c, Atmosphere.STILL_AIR, celsius).value())
            .orElse(1.0);
      }

      @Override
      public double scaling(Metal metal) {
        return analysis(metal).map(c -> compact.scaling(c).value()).orElse(1.0);
      }

      private Optional<Composition> analysis(Metal metal) {
        return metal.law().phases().map(PhaseLines::steel);
      }
    };
  }

  /** Carbon activity at a bare face under its scale. */
  public double underScale(double kelvin) {
    return Math.exp(
        correlations.phases().scaledSurface().lnActivity(kelvin, assumptions.carbonMonoxideAtm()));
  }

  private double scaling(double kelvin) {
    double steel = correlations.forging().steelScaling().squareMetresPerSecond(kelvin);
    double iron = correlations.forging().ironScaling().squareMetresPerSecond(kelvin);
    return steel * Math.pow(iron / steel, assumptions.ironShare());
  }

  public Correlations correlations() {
    return correlations;
  }

  public Assumptions assumptions() {
    return assumptions;
  }

  public Resolution resolution() {
    return resolution;
  }

  public StripSolver solver() {
    return solver;
  }

  /** A steel with the carbon these assumptions give it. */
  public Metal metal(Steel steel) {
    return metals.computeIfAbsent(
        steel, s -> Metal.of(correlations, s.id(), analysis(s), assumptions.mobilityFactor()));
  }

  /** Analysis of a steel with its carbon moved within the grade's limits. */
  public Composition analysis(Steel steel) {
    double place = assumptions.carbonPlace();
    double typical = steel.analysis().carbon();
    Limits limits = steel.limits(Element.C);
    double end = place < 0 ? limits.min().orElse(typical) : limits.max().orElse(typical);
    return steel.analysis().with(Element.C, typical + Math.abs(place) * (end - typical));
  }

  /** The mean analysis of a stack by thickness. */
  public Composition bodyAnalysis(Stack stack) {
    Composition mean = analysis(stack.steel(0));
    double so = stack.shareInBody(0) * stack.thickness(0).metres();
    for (int i = 1; i < stack.layers(); i++) {
      double next = stack.shareInBody(i) * stack.thickness(i).metres();
      mean = mean.mix(analysis(stack.steel(i)), so / (so + next));
      so += next;
    }
    return mean;
  }

  /** The mean of a stack's steels as a metal; the steel itself where there is only one. */
  public Metal body(Stack stack) {
    boolean one = stack.steels().stream().distinct().count() == 1;
    return one
        ? metal(stack.steel(0))
        : Metal.of(correlations, "body", bodyAnalysis(stack), assumptions.mobilityFactor());
  }

  public Edge edge(Exposure exposure) {
    return switch (exposure) {
      case OPEN -> Edge.OPEN;
      case COVERED -> new Edge(assumptions.coveredShare());
      case SEALED -> Edge.SEALED;
    };
  }

  /** Its stays in the fire in their order, each as it was done, or else as planned. */
  List<HeatCurve> curves(Heat heat) {
    return heat.each().stream().map(how -> curve(heat, how)).toList();
  }

  private HeatCurve curve(Heat heat, HeatDone.How how) {
    if (how instanceof HeatDone.Logged logged) {
      return logged.curve().curve().plus(assumptions.kelvinOff()).above(BLACK_KELVIN);
    }
    return how instanceof HeatDone.Held held
        ? riseAndHold(heat, held.at(), held.hold())
        : riseAndHold(heat, heat.at(), heat.hold());
  }

  /** From dull heat; from black where the fire is no hotter than dull, so that none comes down. */
  private HeatCurve riseAndHold(Heat heat, Temperature at, TimeSpan hold) {
    double kelvin = at.kelvin() + assumptions.kelvinOff();
    return HeatCurve.riseAndHold(
            at.kelvin() > DULL_KELVIN ? DULL_KELVIN : Math.min(BLACK_KELVIN, kelvin),
            kelvin,
            heat.riseTaken().seconds() * assumptions.timeFactor(),
            hold.seconds() * assumptions.timeFactor())
        .above(BLACK_KELVIN);
  }

  /** Cooling of a section from a temperature to black; nothing when it is black already. */
  public HeatCurve cooling(Cooling in, Size size, double fromKelvin) {
    if (fromKelvin <= BLACK_KELVIN) {
      return new HeatCurve(List.of());
    }
    return switch (in) {
      case AIR ->
          correlations
              .sections()
              .coolInAir(
                  new Section(size.thicknessMetres(), size.widthMetres()), fromKelvin, BLACK_KELVIN)
              .core(COOLING_STEP_KELVIN);
      case FURNACE ->
          new HeatCurve(
              List.of(
                  new HeatCurve.Segment(
                      fromKelvin,
                      BLACK_KELVIN,
                      (fromKelvin - BLACK_KELVIN) / FURNACE_KELVIN_PER_SECOND)));
      case QUENCH -> new HeatCurve(List.of(new HeatCurve.Segment(fromKelvin, BLACK_KELVIN, 1)));
    };
  }
}
