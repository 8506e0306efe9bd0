package seamsoak.kiln;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.Exposure;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.heat.HeatCurve;
import seamsoak.property.Correlations;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.forging.Atmosphere;
import seamsoak.schedule.Margins;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.StepKind;
import seamsoak.schedule.StepName;
import seamsoak.single.Decarburization;
import seamsoak.state.Grain;
import seamsoak.steel.Steel;
import seamsoak.unit.Temperature;

/** What a billet's steps lose when they last longer, or are hotter, than its schedule has it. */
final class Growth {
  private static final Set<StepKind> GROWS =
      EnumSet.of(StepKind.SOAK, StepKind.NORMALIZE, StepKind.REFINE, StepKind.HARDEN);

  /** A skin deeper by that much takes half of what is ground off besides, mm; judgement. */
  private static final double DEEPER_MM = 0.05;

  private static final double DAY = 24 * 60;
  private static final int HALVINGS = 20;

  private final Shop shop;
  private final Billet billet;
  private final ScheduleAdvice schedule;
  private final Grain grains;

  Growth(Correlations k, Billet billet, ScheduleAdvice schedule) {
    this.shop = new Shop(k, Assumptions.usual(billet.coveredTaken().share()), Resolution.FINE);
    this.billet = billet;
    this.schedule = schedule;
    this.grains = new Grain(shop, billet.stack());
  }

  /** The most minutes of a step. */
  Hold.Most most(StepName step, double riseMinutes) {
    if (!GROWS.contains(step.kind()) || before(step).isEmpty()) {
      return Hold.Most.ANY;
    }
    return (celsius, least) -> {
      double grain = coarsened(step, riseMinutes, celsius, least);
      double skin = step.kind() == StepKind.HARDEN ? skinned(riseMinutes, celsius, least) : DAY;
      double most = Math.min(grain, skin);
      return most < DAY ? OptionalDouble.of(most) : OptionalDouble.empty();
    };
  }

  /** Grain number after a step at a heat held so long; empty where none grows. */
  Optional<Double> number(StepName step, double riseMinutes, double celsius, double minutes) {
    return before(step)
        .filter(b -> GROWS.contains(step.kind()))
        .map(
            b ->
                grains.number(
                    grains.after(
                        HeatCurve.riseAndHold(
                            QuenchedSteel.ROOM_CELSIUS + Temperature.ZERO_CELSIUS,
                            celsius + Temperature.ZERO_CELSIUS,
                            60 * riseMinutes,
                            60 * minutes),
                        grains.metres(b))));
  }

  /** Where grain is half a number coarser than after the least, min. */
  private double coarsened(StepName step, double rise, double celsius, double least) {
    double limit = number(step, rise, celsius, least).orElseThrow() - Margins.WORTH_A_CYCLE;
    if (number(step, rise, celsius, DAY).orElseThrow() >= limit) {
      return DAY;
    }
    double low = least;
    double high = DAY;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = Math.sqrt(Math.max(1, low) * high);
      if (number(step, rise, celsius, middle).orElseThrow() >= limit) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Where the skin of a bare edge is so much deeper: its depth goes as the root of the time. */
  private double skinned(double rise, double celsius, double least) {
    String edge = schedule.blade().map(ScheduleAdvice.Outcome::edge).orElse("");
    Optional<Steel> steel =
        billet.stack().steels().stream().filter(s -> s.id().equals(edge)).findFirst();
    double seconds = 60 * (rise / 2 + least); // on the way up it is hot for about half of it
    double depth =
        steel
            .map(
                s ->
                    Decarburization.of(
                            shop,
                            s,
                            celsius + Temperature.ZERO_CELSIUS,
                            seconds,
                            Exposure.OPEN,
                            Atmosphere.STILL_AIR)
                        .depthMm()
                        .to90Pct())
            .orElse(0.0);
    return depth > 0 ? seconds / 60 * Math.pow(1 + DEEPER_MM / depth, 2) - rise / 2 : DAY;
  }

  /** Grain number before a step, as the schedule has it. */
  private Optional<Double> before(StepName step) {
    Optional<Double> last = Optional.empty();
    for (ScheduleAdvice.After after : schedule.after()) {
      if (after.step().equals(step)) {
        return last;
      }
      last = Optional.of(after.grainAstm());
    }
    return last;
  }
}
