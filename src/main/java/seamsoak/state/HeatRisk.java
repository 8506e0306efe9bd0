package seamsoak.state;

import static java.util.Comparator.naturalOrder;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import seamsoak.billet.Billet;
import seamsoak.billet.Now;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Step;
import seamsoak.property.forging.ForgingLimits;
import seamsoak.property.forging.WeldingRule;
import seamsoak.unit.Temperature;

/**
 * A heat that a steel does not stand, or that does not do what the step wants.
 *
 * @param kind what is the matter
 * @param steel whose limit comes first
 * @param celsius the heat
 * @param limitC what it ought not to pass, or not to stay below
 */
public record HeatRisk(Kind kind, String steel, double celsius, double limitC, boolean done) {
  /** What is the matter with a heat, worst first. */
  public enum Kind {
    /** So near melting that it is refused. */
    MELTS,
    /** No weld comes of it. */
    NO_WELD,
    /** Above the burning line. */
    MAY_BURN,
    /** A temper or a stress relief so hot that steel changes. */
    NO_TEMPER,
    /** Hotter than any heat treatment of its steels. */
    COARSENS,
    /** Colder than where steel welds readily. */
    COLD_TO_WELD,
    /** Colder than where forging is to stop. */
    COLD_TO_FORGE,
    /** Hotter than where forging is to start; no weld is told of that, which always is. */
    ABOVE_FORGING;

    /** Whether it is more than a remark. */
    public boolean isGrave() {
      return this != ABOVE_FORGING;
    }
  }

  /** Whether a plan with it is refused; what is done cannot be. */
  public boolean isRefused() {
    return !done && (kind == Kind.MELTS || kind == Kind.NO_WELD);
  }

  /** A limit of a handbook is no sharper than this, K; judgement. */
  private static final double SHARP_KELVIN = 5;

  /** For the stack, then for each step of a billet, worst first. */
  public static List<List<HeatRisk>> ofHistory(Billet billet, List<Stage> stages, Shop shop) {
    List<List<HeatRisk>> all = new ArrayList<>(List.of(List.of()));
    Optional<Now> now = Now.of(billet.steps());
    for (int i = 0; i < billet.steps().size(); i++) {
      Step step = billet.steps().get(i);
      all.add(
          step.heats().isEmpty()
              ? List.of()
              : new Judged(
                      step,
                      now.map(n -> done(step, n)).orElse(0),
                      SteelLimits.of(billet, stages.get(i).piece(), shop),
                      shop.correlations().mechanics().welding())
                  .all());
    }
    return List.copyOf(all);
  }

  /** How many heats of a step are done: all of those that come before the last one that is. */
  private static int done(Step step, Now now) {
    int at = now.step().mark().number();
    return step.mark().number() < at || step.mark().number() == at && now.stepDone()
        ? step.times()
        : step.mark().number() == at ? now.heats() : 0;
  }

  private HeatRisk asDone() {
    return new HeatRisk(kind, steel, celsius, limitC, true);
  }

  /**
   * A step with what its steels stand before it.
   *
   * @param done how many of its heats are
   */
  private record Judged(Step step, int done, List<SteelLimits> steels, WeldingRule welding) {
    List<HeatRisk> all() {
      List<Double> celsius =
          step.heats().stream().flatMap(h -> h.peaks().stream()).map(Temperature::celsius).toList();
      int told = Math.min(done, celsius.size());
      Optional<HeatRisk> was =
          celsius.subList(0, told).stream().max(naturalOrder()).flatMap(this::tooHot);
      Optional<HeatRisk> willBe =
          celsius.subList(told, celsius.size()).stream().max(naturalOrder()).flatMap(this::tooHot);
      List<HeatRisk> all = new ArrayList<>();
      // of two the worse one is told, and of two alike that which can still be changed
      Stream.concat(willBe.stream(), was.map(HeatRisk::asDone).stream())
          .min(Comparator.comparing(HeatRisk::kind))
          .ifPresent(all::add);
      tooCold(Collections.max(celsius), Collections.min(celsius))
          .map(r -> told == celsius.size() ? r.asDone() : r)
          .ifPresent(all::add);
      return List.copyOf(all);
    }

    private Optional<HeatRisk> tooHot(double celsius) {
      return tooHotForAny(celsius).or(() -> tooHotToTreat(celsius));
    }

    private Optional<HeatRisk> tooHotForAny(double celsius) {
      return above(Kind.MELTS, celsius, ForgingLimits::stopCelsius, 0)
          .or(() -> above(Kind.MAY_BURN, celsius, ForgingLimits::burningCelsius, SHARP_KELVIN))
          .or(
              () ->
                  step.kind() == Step.Kind.WELD || step.kind().treats()
                      ? Optional.empty()
                      : above(
                          Kind.ABOVE_FORGING,
                          celsius,
                          l -> l.highestForging().value(),
                          SHARP_KELVIN));
    }

    /** For what it is meant to do. */
    private Optional<HeatRisk> tooHotToTreat(double celsius) {
      boolean below = step.kind() == Step.Kind.TEMPER || step.kind() == Step.Kind.RELIEVE;
      Function<SteelLimits, OptionalDouble> limit =
          below ? SteelLimits::changesC : SteelLimits::treatedC;
      Comparator<HeatRisk> limits = Comparator.comparingDouble(HeatRisk::limitC);
      // what one steel is treated at may be more than another ever wants
      return !step.kind().treats()
          ? Optional.empty()
          : steels.stream()
              .filter(s -> limit.apply(s).isPresent())
              .map(
                  s ->
                      new HeatRisk(
                          below ? Kind.NO_TEMPER : Kind.COARSENS,
                          s.steel().id(),
                          celsius,
                          limit.apply(s).getAsDouble(),
                          false))
              .max(below ? limits.reversed() : limits)
              .filter(r -> celsius > r.limitC() + SHARP_KELVIN);
    }

    /** Told of the steel with the lowest limit. */
    private Optional<HeatRisk> above(
        Kind kind, double celsius, ToDoubleFunction<ForgingLimits> limit, double sharp) {
      return steels.stream()
          .map(
              s ->
                  new HeatRisk(
                      kind, s.steel().id(), celsius, limit.applyAsDouble(s.limits()), false))
          .min(Comparator.comparingDouble(HeatRisk::limitC))
          .filter(r -> celsius > r.limitC() + sharp);
    }

    private Optional<HeatRisk> tooCold(double hottest, double coldest) {
      return switch (step.kind()) {
        case WELD ->
            hottest < welding.noneCelsius()
                ? Optional.of(risk(Kind.NO_WELD, hottest, welding.lowestCelsius()))
                : hottest < welding.lowestCelsius() - SHARP_KELVIN
                    ? Optional.of(risk(Kind.COLD_TO_WELD, hottest, welding.lowestCelsius()))
                    : Optional.empty();
        case DRAW, PRESS, ROLL, TWIST -> below(coldest);
        case GRIND,
            RESTACK,
            TILE,
            UNJACKET,
            SOAK,
            ANNEAL,
            NORMALIZE,
            REFINE,
            RELIEVE,
            HARDEN,
            TEMPER,
            COOL ->
            Optional.empty();
      };
    }

    private HeatRisk risk(Kind kind, double celsius, double limitC) {
      return new HeatRisk(kind, steels.get(0).steel().id(), celsius, limitC, false);
    }

    /** Told of the steel whose forging has to stop soonest. */
    private Optional<HeatRisk> below(double celsius) {
      return steels.stream()
          .filter(s -> s.steel().heatTreatment().forgeStopC().isPresent())
          .map(
              s ->
                  new HeatRisk(
                      Kind.COLD_TO_FORGE,
                      s.steel().id(),
                      celsius,
                      s.steel().heatTreatment().forgeStopC().getAsDouble(),
                      false))
          .max(Comparator.comparingDouble(HeatRisk::limitC))
          .filter(r -> celsius < r.limitC() - SHARP_KELVIN);
    }
  }
}
