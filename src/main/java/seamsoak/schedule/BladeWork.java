package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Bath;
import seamsoak.billet.Equipment;
import seamsoak.billet.Shop;
import seamsoak.heat.HeatCurve;
import seamsoak.heat.Section;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.hardening.QuenchantTable;
import seamsoak.safety.HardStop;
import seamsoak.safety.Stop;
import seamsoak.schedule.ScheduleAdvice.Outcome;
import seamsoak.schedule.ScheduleAdvice.Quenched;
import seamsoak.schedule.demand.Conflict;
import seamsoak.schedule.demand.Guard;
import seamsoak.schedule.demand.HardeningHeat;
import seamsoak.schedule.demand.QuenchChoice;
import seamsoak.schedule.demand.SteelNow;
import seamsoak.schedule.demand.Tempering;
import seamsoak.source.Estimate;
import seamsoak.state.BathAtHand;
import seamsoak.state.Grain;
import seamsoak.unit.Temperature;

/**
 * A blade from the anneal to the tempers.
 *
 * @param cycled the piece
 * @param guard how it may be cooled
 * @param heat to harden from
 * @param baths at hand
 * @param treated what was done before
 */
record BladeWork(
    Course cycled, Guard guard, HardeningHeat heat, List<BathAtHand> baths, Treated treated) {
  /** Less carbon than that is what the skin loses in the hold, wt%; judgement. */
  private static final double MOVED_PCT = 0.05;

  Treatment treatment() {
    Softening softening = new Softening(cycled, guard, Optional.of(heat), treated);
    Course annealed = softening.anneal();
    BenchWork.Section to =
        treated.ground() ? BenchWork.asItIs(annealed) : BenchWork.section(annealed);
    Course ready = treated.hardened() ? annealed : ready(annealed);
    Section section = new Section(to.thicknessMetres(), to.widthMetres());
    boolean coarse = softening.kind() != Softening.Kind.SUBCRITICAL;
    List<SteelNow> hardening = quenched(ready, coarse);
    Grain grains = cycled.grains();
    double grain =
        grains.number(
            grains.after(
                HeatCurve.riseAndHold(
                    Shop.DULL_KELVIN - 150, heat.celsius() + Temperature.ZERO_CELSIUS, 120, 300),
                ready.grainMetres()));
    List<Stop> stops = stops(ready, heat.celsius());
    QuenchChoice.Asked asked = new QuenchChoice.Asked(section, hardening, heat.celsius(), grain);
    List<QuenchChoice> choices = asked.each(baths);
    QuenchChoice quench =
        treated.bath().map(done -> in(done, asked)).orElseGet(() -> asked.best(choices));
    Course hard =
        treated.hardened()
            ? ready
            : new IntoTheBath(ready, heat, quench, coarse).harden(stops.stream().findFirst());
    AfterTheBath after = new AfterTheBath(hard, quench);
    Tempering temper =
        Tempering.of(
            heat.edge(),
            quench,
            heat.celsius(),
            grain,
            after.coldestC(),
            cycled.billet().blade().hardnessTaken().hrc(),
            cycled.heats().hottestTemperCelsius());
    Course tempered = new AfterTheBath(after.chilled(), quench).tempered(temper, treated.tempers());
    List<Conflict> conflicts = new ArrayList<>();
    List<String> names = Conflicts.names(annealed.steels());
    if (to.tooThin()) {
      conflicts.add(
          new Conflict.TooThin(names, to.skin().flats().offMetres(), to.thicknessMetres()));
    }
    if (to.tooNarrow()) {
      conflicts.add(new Conflict.TooNarrow(names, to.skin().sides().offMetres(), to.widthMetres()));
    }
    conflicts.addAll(new BladeConflicts(tempered, heat, choices, quench, temper).all());
    return new Treatment(
        tempered,
        conflicts,
        stops,
        Optional.of(
            outcome(
                section,
                heat,
                quench,
                temper,
                new Media(asked).of(choices, quench),
                cycled.heats().hottestTemperCelsius())));
  }

  /**
   * The steels to be hardened with the carbon they are quenched with: an anneal may have taken it
   * from one into the other, and the hold brings back what it can.
   */
  private List<SteelNow> quenched(Course ready, boolean coarse) {
    List<SteelNow> before = heat.windows().stream().map(HardeningHeat.Window::steel).toList();
    if (treated.hardened()) {
      return before;
    }
    List<Leg> hold = ready.heats().upAndHold(heat.celsius(), heat.holdMinutes(coarse));
    List<SteelNow> then = ready.steelsAfter(Leg.curve(hold));
    return before.stream()
        .map(
            s ->
                then.stream()
                    .filter(n -> n.id().equals(s.id()))
                    .filter(n -> Math.abs(n.carbonPct() - s.carbonPct()) > MOVED_PCT)
                    .findFirst()
                    .orElse(s))
        .toList();
  }

  private Course ready(Course annealed) {
    if (treated.ground() && treated.relieved()) {
      return annealed;
    }
    Course ground =
        treated.ground() ? BenchWork.etched(annealed) : BenchWork.groundAndEtched(annealed);
    return new Softening(ground, guard, Optional.of(heat), treated).stressRelief();
  }

  /** What the bath did that it was hardened in. */
  private QuenchChoice in(Bath done, QuenchChoice.Asked asked) {
    QuenchantTable table = cycled.shop().correlations().hardening().quenchants();
    return asked.each(List.of(BathAtHand.of(done, table))).get(0);
  }

  /** Why the quench must not be done as planned. */
  private List<Stop> stops(Course ready, double celsius) {
    List<Stop> stops = new ArrayList<>();
    baths.forEach(
        b -> HardStop.bath(b).ifPresent(d -> stops.add(new Stop(StepKind.HARDEN.word(), d))));
    if (ready.heats().heater(celsius) == Heater.SALT
        && cycled.billet().equipment().saltTaken() == Equipment.Salt.NITRATE) {
      HardStop.nitrateHeat(celsius).ifPresent(d -> stops.add(new Stop(StepKind.HARDEN.word(), d)));
    }
    return List.copyOf(stops);
  }

  private static Outcome outcome(
      Section section,
      HardeningHeat heat,
      QuenchChoice quench,
      Tempering temper,
      List<ScheduleAdvice.Medium> media,
      double hottestTemperCelsius) {
    return new Outcome(
        section.thicknessMetres() * 1e3,
        section.widthMetres() * 1e3,
        heat.edge().id(),
        heat.celsius(),
        quench.quenchant().id(),
        quench.quenchant().name(),
        quench.atHand(),
        quench.steels().stream().map(t -> quenched(t, temper)).toList(),
        media,
        temper.near(heat.edge(), hottestTemperCelsius).stream()
            .map(at -> new ScheduleAdvice.Tempered(at.celsius(), at.hrc()))
            .toList());
  }

  private static Quenched quenched(QuenchChoice.Response t, Tempering temper) {
    Estimate retained = t.austenite().retained(QuenchedSteel.ROOM_CELSIUS);
    return new Quenched(
        t.steel().id(),
        t.austenite().austenite().carbon(),
        t.austenite().msCelsius().value(),
        100 * retained.value(),
        100 * retained.low(),
        100 * retained.high(),
        t.result().faceHrc().value(),
        t.result().coreHrc().value(),
        t.austenite().idealDiameterMetres() * 1e3,
        t.result().neededMetres() * 1e3,
        t.allowsSeconds(),
        t.result().coreSeconds8to5(),
        t.result().greatestDifferenceKelvin(),
        t.edge(),
        t.middle(),
        temper.quenchedHrc(t.steel()),
        temper.hrc(t.steel()),
        band(t, temper));
  }

  private static ScheduleAdvice.HrcBand band(QuenchChoice.Response t, Tempering temper) {
    Estimate face = t.result().faceHrc();
    Estimate core = t.result().coreHrc();
    double chilled = temper.quenchedHrc(t.steel()) - t.result().edgeHrc().value();
    Estimate edge = t.result().edgeHrc().map(h -> h + chilled);
    Estimate tempered = temper.estimate(t.steel());
    return new ScheduleAdvice.HrcBand(
        face.low(),
        face.high(),
        core.low(),
        core.high(),
        edge.low(),
        edge.high(),
        tempered.low(),
        tempered.high());
  }
}
