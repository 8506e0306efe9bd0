package seamsoak.measured;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Exposure;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.carbon.Edge;
import seamsoak.carbon.Grid;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.data.DataFolder;
import seamsoak.heat.HeatCurve;
import seamsoak.heat.Section;
import seamsoak.property.Correlations;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.SteelGrains;
import seamsoak.property.forging.Atmosphere;
import seamsoak.property.hardening.AstmE140;
import seamsoak.single.Decarburization;
import seamsoak.single.SteelReport;
import seamsoak.source.Estimate;
import seamsoak.steel.Composition;
import seamsoak.steel.Steel;

/** What the program says to a published measurement. */
final class Program {
  /** Where no time is stated: an hour. */
  private static final double USUAL_SECONDS = 3600;

  /** Source of an estimate to which the program tells no band. */
  static final String NO_BAND = "no band";

  private static final double ZERO_CELSIUS = 273.15;

  private final Correlations k = Correlations.load(DataFolder.packed());

  /** Its number with its band; empty where it has none to compare. */
  Optional<Estimate> says(Measurement m) {
    return switch (m.kind()) {
      case "as-quenched-hardness" -> Optional.of(quenched(m).fullHrc(QuenchedSteel.ROOM_CELSIUS));
      case "tempered-hardness" -> Optional.of(tempered(m));
      case "air-cooled-hardness" -> Optional.of(airCooled(m));
      case "martensite-start" -> Optional.of(martensiteStart(m));
      case "retained-austenite" -> Optional.of(retained(m));
      case "austenite-grain" -> Optional.of(grain(m));
      case "decarburized-depth" -> m.minutes().isEmpty() ? Optional.empty() : Optional.of(depth(m));
      case "decarburization-temperature" ->
          Optional.of(within(m, temperature(m))).filter(e -> Double.isFinite(e.value()));
      case "scale-thickness" -> Optional.of(scale(m));
      case "carbon-at-seam" -> Optional.of(within(m, seam(m)));
      case "carbon-in-nickel" -> Optional.of(within(m, nickel(m)));
      case "critical-temperature" -> Optional.of(critical(m));
      default -> throw new IllegalArgumentException("no such kind: " + m.kind());
    };
  }

  /** Where the program gives no band, the stated error of the measurement stands for one. */
  private static Estimate within(Measurement m, double value) {
    return new Estimate(value, value - m.error(), value + m.error(), NO_BAND, List.of());
  }

  /** What was quenched; all dissolved unless the heat is known. */
  private QuenchedSteel quenched(Measurement m) {
    return new QuenchedSteel(k, Composition.parse(m.steel()), QuenchedSteel.FINEST_GRAIN);
  }

  private Estimate tempered(Measurement m) {
    Estimate hrc = quenched(m).tempering().hrc(m.kelvin(), m.seconds() / 3600);
    if (m.unit().equals("HRC")) {
      return hrc;
    }
    AstmE140 e140 = k.hardening().conversion();
    return hrc.map(e140::vickers);
  }

  /** Of a bar, or of a bar that cools as fast; where it was measured in Brinell, made that. */
  private Estimate airCooled(Measurement m) {
    String[] words = m.condition().split(" ");
    double number = Double.parseDouble(words[1]);
    double metres = words[0].equals("bar") ? number / 1000 : barThatCools(number);
    Estimate vickers =
        k.hardening()
            .airCooled()
            .estimate(Composition.parse(m.steel()).carbon(), Section.bar(metres));
    double brinell = k.hardening().brinell().vickers(1);
    return m.unit().equals("HB") ? vickers.map(hv -> hv / brinell) : vickers;
  }

  /** Diameter of a bar that passes 700 C in still air at a rate, m; it goes as one over it. */
  private double barThatCools(double kelvinPerSecond) {
    Section bar = Section.bar(0.01);
    double seconds =
        k.sections()
            .austeniteInAir(bar, 900 + ZERO_CELSIUS, 600 + ZERO_CELSIUS)
            .coreSecondsBetween(710 + ZERO_CELSIUS, 690 + ZERO_CELSIUS)
            .orElseThrow();
    return 0.01 * 20 / seconds / kelvinPerSecond;
  }

  /** What is dissolved after the hold, if that is known; else all. */
  private Composition austenite(Measurement m) {
    Composition c = Composition.parse(m.steel());
    return m.celsius().isPresent()
        ? k.austenite(k.lines(c), c.carbon(), m.celsius().getAsDouble(), m.seconds()).orElseThrow()
        : c;
  }

  private Estimate retained(Measurement m) {
    return new QuenchedSteel(k, austenite(m), QuenchedSteel.FINEST_GRAIN)
        .retained(QuenchedSteel.ROOM_CELSIUS)
        .map(share -> 100 * share);
  }

  private Estimate martensiteStart(Measurement m) {
    Estimate ms = k.critical().martensite(austenite(m));
    return new Estimate(ms.value(), ms.low() - 15, ms.high() + 15, ms.source(), ms.exceeded());
  }

  private Estimate grain(Measurement m) {
    Composition c = Composition.parse(m.steel());
    return new SteelGrains(k, c).estimate(m.kelvin(), m.seconds()).map(d -> 1e6 * d);
  }

  private Decarburization skin(Measurement m, double kelvin) {
    return Decarburization.of(
        new Shop(k, Assumptions.USUAL, Resolution.FINE),
        Steel.written(m.steel()),
        kelvin,
        m.minutes().isPresent() ? m.seconds() : USUAL_SECONDS,
        Exposure.OPEN,
        atmosphere(m.condition()));
  }

  private static Atmosphere atmosphere(String condition) {
    return condition.startsWith("wet")
        ? Atmosphere.MOIST_AIR
        : condition.endsWith("air") || condition.startsWith("dry")
            ? Atmosphere.STILL_AIR
            : Atmosphere.UNSTATED;
  }

  private Estimate depth(Measurement m) {
    Decarburization d = skin(m, m.kelvin());
    return new Estimate(
        d.depthMm().to90Pct(), d.band().to90PctLow(), d.band().to90PctHigh(), "", List.of());
  }

  /** Oxide is 1.8 times as thick as the iron in it. */
  private Estimate scale(Measurement m) {
    Decarburization d = skin(m, m.kelvin());
    return new Estimate(
            d.metalLossMm(), d.band().metalLossMmLow(), d.band().metalLossMmHigh(), "", List.of())
        .map(mm -> 1.8 * mm);
  }

  private double temperature(Measurement m) {
    return switch (m.what()) {
      case "onset" -> first(m, 600, s -> s.depthMm().to90Pct());
      case "onset of ferrite" -> first(m, 700, Decarburization::ferriteRimMm);
      case "onset of partial" ->
          first(m, 700, s -> s.ferriteRimMm() > 0 ? 0 : s.depthMm().to90Pct());
      case "greatest depth" -> most(m, 900, 1280, s -> s.depthMm().to90Pct());
      case "most ferrite" -> most(m, 700, 950, Decarburization::ferriteRimMm);
      default -> throw new IllegalArgumentException(m.what());
    };
  }

  /** From where on there is more than a hundredth of a millimeter of something, to 10 C. */
  private double first(Measurement m, double from, ToDoubleFunction<Decarburization> what) {
    for (double c = from; c < 1200; c += 10) {
      if (what.applyAsDouble(skin(m, c + ZERO_CELSIUS)) > 0.01) {
        return c;
      }
    }
    return Double.NaN;
  }

  private double most(
      Measurement m, double from, double to, ToDoubleFunction<Decarburization> what) {
    double best = Double.NaN;
    double most = 0;
    for (double c = from; c <= to; c += 10) {
      double here = what.applyAsDouble(skin(m, c + ZERO_CELSIUS));
      if (here > most) {
        most = here;
        best = c;
      }
    }
    return best;
  }

  private double seam(Measurement m) {
    String[] sides = m.steel().split(" \\| ");
    Shop shop = new Shop(k, Assumptions.USUAL, Resolution.FINE);
    Grid grid = new Grid(2e-4, 1.05, false);
    Metal first = shop.metal(Steel.written(sides[0]));
    Metal second = shop.metal(Steel.written(sides[1]));
    Strip start = Strip.of(first, 0.06, grid).weldedTo(Strip.of(second, 0.06, grid));
    Strip end =
        shop.solver().advance(start, HeatCurve.hold(m.kelvin(), m.seconds()), Edge.SEALED).strip();
    return end.percent(m.what().equals("silicon side") ? end.seam() - 1 : end.seam());
  }

  /** Beside graphite, atom percent. */
  private double nickel(Measurement m) {
    Metal nickel = Metal.of(k, "nickel", Composition.parse(m.steel()), 1);
    double y = nickel.law().at(m.kelvin()).ratioAt(1);
    return 100 * y / (1 + y);
  }

  private Estimate critical(Measurement m) {
    SteelReport steel = SteelReport.of(k, Steel.written(m.steel()));
    SteelReport.Quantity q =
        (m.what().equals("Ac1") ? steel.ac1C() : steel.ac3OrAccmC()).orElseThrow();
    return new Estimate(q.value(), q.low(), q.high(), q.source(), List.of());
  }

  /** One line for people. */
  static String line(Measurement m, Estimate e) {
    return String.format(
        Locale.ROOT, "%s: program %.4g (%.4g to %.4g)", m, e.value(), e.low(), e.high());
  }
}
