package seamsoak.property.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.data.DataFolder;
import seamsoak.heat.Course;
import seamsoak.heat.Environment;
import seamsoak.heat.HeatCurve;
import seamsoak.heat.Section;
import seamsoak.heat.SectionCurve;
import seamsoak.heat.SectionModel;
import seamsoak.numeric.OneTerm;
import seamsoak.property.Correlations;
import seamsoak.property.hardening.Quenchant;
import seamsoak.property.hardening.QuenchantTable;

/** Heat in sections, against exact series and a computation that shares nothing with it. */
class SectionTest {
  private static final double ZERO = 273.15;
  private static final double CONDUCTIVITY = 28;
  private static final double CAPACITY = 5e6;
  private static final double HALF = 0.01;

  /** Two thousandths of the change of 1000 K. */
  private static final double NEAR = 2;

  private final Correlations k = Correlations.load(DataFolder.packed());

  /** 40 terms of the series of a plate, with roots found by halving. */
  private static double plate(double biot, double fourier, double place) {
    double sum = 0;
    for (int n = 0; n < 40; n++) {
      double z = root(x -> x * Math.sin(x) - biot * Math.cos(x), n * Math.PI, (n + 0.5) * Math.PI);
      sum +=
          4
              * Math.sin(z)
              / (2 * z + Math.sin(2 * z))
              * Math.exp(-z * z * fourier)
              * Math.cos(z * place);
    }
    return sum;
  }

  /** The same of a round bar; Bessel functions by Simpson's rule over their integrals. */
  private static double bar(double biot, double fourier, double place) {
    double sum = 0;
    double low = 1e-9;
    for (int n = 0; n < 12; n++) {
      // between two extremes of J0 lies one root
      double high = root(x -> bessel(1, x), (n + 1) * Math.PI, (n + 1.4) * Math.PI);
      double z = root(x -> x * bessel(1, x) - biot * bessel(0, x), low, high);
      double j0 = bessel(0, z);
      double j1 = bessel(1, z);
      sum += 2 * j1 / (z * (j0 * j0 + j1 * j1)) * Math.exp(-z * z * fourier) * bessel(0, z * place);
      low = high;
    }
    return sum;
  }

  private static double bessel(int order, double x) {
    int n = 400;
    double sum = 0;
    for (int i = 0; i <= n; i++) {
      double t = Math.PI * i / n;
      double weight = i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * Math.cos(order * t - x * Math.sin(t));
    }
    return sum / (3.0 * n);
  }

  private static double root(DoubleUnaryOperator f, double low, double high) {
    double a = low;
    double b = high;
    boolean rising = f.applyAsDouble(a) < 0;
    for (int i = 0; i < 100; i++) {
      double middle = 0.5 * (a + b);
      if (f.applyAsDouble(middle) < 0 == rising) {
        a = middle;
      } else {
        b = middle;
      }
    }
    return 0.5 * (a + b);
  }

  private static SectionCurve cooled(Section section, double biot, double seconds) {
    double film = biot * CONDUCTIVITY / HALF;
    return new SectionModel(SteelHeat.constant(CAPACITY, CONDUCTIVITY))
        .run(section, 1100 + ZERO, Environment.steady(100 + ZERO, film, 0), Double.NaN, seconds);
  }

  @ParameterizedTest
  @CsvSource({"0.05, 6", "0.3, 2", "1, 0.3", "1, 1", "5, 0.2", "5, 0.6", "20, 0.3"})
  void plateFollowsTheExactSeries(double biot, double fourier) {
    double seconds = fourier * HALF * HALF * CAPACITY / CONDUCTIVITY;
    SectionCurve.Moment end = cooled(Section.plate(2 * HALF), biot, seconds).end();
    assertEquals(seconds, end.seconds(), 1e-9 * seconds);
    assertEquals(1000 * plate(biot, fourier, 0), end.coreKelvin() - 373.15, NEAR);
    assertEquals(1000 * plate(biot, fourier, 1), end.faceKelvin() - 373.15, NEAR);
  }

  @ParameterizedTest
  @CsvSource({"0.05, 3", "0.3, 1", "1, 0.3", "1, 0.6", "5, 0.1", "5, 0.4", "20, 0.2"})
  void roundBarFollowsTheExactSeries(double biot, double fourier) {
    double seconds = fourier * HALF * HALF * CAPACITY / CONDUCTIVITY;
    SectionCurve.Moment end = cooled(Section.bar(2 * HALF), biot, seconds).end();
    assertEquals(1000 * bar(biot, fourier, 0), end.coreKelvin() - 373.15, NEAR);
    assertEquals(1000 * bar(biot, fourier, 1), end.faceKelvin() - 373.15, NEAR);
  }

  /**
   * Explicit differences of temperature on nodes, with the standard's formulas written anew: when
   * the core reaches the temperatures wanted, and the greatest difference to the face.
   */
  private static double[] differences(double thickness, double[] wanted) {
    double greatest = 0;
    int n = 20;
    double dx = thickness / 2 / n;
    double dt = 0.2 * dx * dx / 1.6e-5;
    double[] t = new double[n + 1];
    Arrays.fill(t, 900);
    double[] q = new double[n + 1];
    double[] found = new double[wanted.length + 1];
    int next = 0;
    for (long step = 1; next < wanted.length; step++) {
      for (int i = 0; i < n; i++) {
        double mean = 0.5 * (t[i] + t[i + 1]);
        double conductivity = mean < 800 ? 54 - 0.0333 * mean : 27.3;
        q[i] = conductivity * (t[i] - t[i + 1]) / dx;
      }
      double face = t[n] + ZERO;
      q[n] = 10 * (t[n] - 20) + 0.8 * 5.670374419e-8 * (Math.pow(face, 4) - Math.pow(293.15, 4));
      double before = t[0];
      for (int i = 0; i <= n; i++) {
        double in = i == 0 ? 0 : q[i - 1];
        double width = i == 0 || i == n ? dx / 2 : dx;
        t[i] += dt * (in - q[i]) / (width * 7850 * specificHeat(t[i]));
      }
      greatest = Math.max(greatest, t[0] - t[n]);
      while (next < wanted.length && t[0] <= wanted[next]) {
        found[next++] = dt * (step - 1 + (before - wanted[next - 1]) / (before - t[0]));
      }
    }
    found[next] = greatest;
    return found;
  }

  private static double specificHeat(double t) {
    if (t >= 900) {
      return 650;
    }
    if (t >= 735) {
      return 545 + 17820 / (t - 731);
    }
    return t >= 600
        ? 666 + 13002 / (738 - t)
        : 425 + 0.773 * t - 1.69e-3 * t * t + 2.22e-6 * t * t * t;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.006, 0.020, 0.050})
  void airCoolingAgreesWithAnIndependentComputation(double thickness) {
    double[] wanted = {800, 740, 700, 500, 300};
    double[] found = differences(thickness, wanted);
    SectionCurve curve = k.sections().coolInAir(Section.plate(thickness), 900 + ZERO, 290 + ZERO);
    for (int i = 0; i < wanted.length; i++) {
      double here = curve.coreSecondsBetween(900 + ZERO, wanted[i] + ZERO).orElseThrow();
      assertEquals(found[i], here, 0.005 * found[i], wanted[i] + " C");
    }
    double greatest = found[wanted.length];
    assertEquals(greatest, curve.greatestDifferenceKelvin(), 0.02 * greatest);
  }

  /** At 850 C, by hand: what leaves the face. */
  @Test
  void whatLeavesTheFaceByHand() {
    double t = 1123.15;
    double flux = 0.8 * 5.670374419e-8 * (Math.pow(t, 4) - Math.pow(293.15, 4)) + 10 * (t - 293.15);
    Environment air = k.sections().airCooling().air();
    assertEquals(-flux, air.into(7, t), 1e-9 * flux);
    double slope = (air.into(0, t + 1e-3) - air.into(0, t - 1e-3)) / 2e-3;
    assertEquals(slope, air.slope(0, t), 1e-6 * Math.abs(slope));
  }

  /** More cells and the answer stays. */
  @ParameterizedTest
  @CsvSource({"0.003", "0.025", "0.075"})
  void cellsDoNotMatter(double thickness) {
    SteelHeat steel = SteelHeat.changing(k.sections().steel());
    Environment kiln = k.sections().furnace().kiln(1143);
    Section section = Section.plate(thickness);
    double few = new SectionModel(steel).run(section, 293, kiln, 1133, 1e6).seconds();
    double many = new SectionModel(steel, 48).run(section, 293, kiln, 1133, 1e6).seconds();
    assertEquals(many, few, 0.005 * many);
  }

  /** A thin bar has twice the surface of a plate for what it holds; 2 to 1 lies between. */
  @Test
  void thinSectionsCoolByVolumeOverSurface() {
    double plate = air(Section.plate(0.004));
    assertEquals(plate / 2, air(Section.bar(0.004)), 0.005 * plate);
    assertEquals(plate / 1.5, air(new Section(0.008, 0.004)), 0.005 * plate);
  }

  private double air(Section section) {
    return k.sections().coolInAir(section, 1150, 750).seconds();
  }

  @Test
  void aCurveEndsAsAskedAndItsSegmentsAddUp() {
    SectionCurve curve = k.sections().coolInAir(Section.plate(0.03), 1173.15, 753.15);
    assertEquals(753.15, curve.end().coreKelvin(), 1e-9);
    assertTrue(curve.end().faceKelvin() < 753.15);
    for (HeatCurve c : new HeatCurve[] {curve.core(25), curve.core(0), curve.face(25)}) {
      assertEquals(curve.seconds(), c.seconds(), 1e-9 * curve.seconds());
    }
    HeatCurve core = curve.core(25);
    assertEquals(1173.15, core.segments().get(0).fromKelvin(), 1e-9);
    assertEquals(753.15, core.segments().get(core.segments().size() - 1).toKelvin(), 1e-9);
    assertTrue(core.segments().size() > 10 && core.segments().size() < 30);
    double middle = curve.coreSecondsBetween(1173.15, 1000).orElseThrow();
    assertEquals(1000, curve.coreKelvin(middle), 1e-9);
    assertTrue(curve.faceSecondsBetween(1173.15, 1000).orElseThrow() < middle);
    assertTrue(curve.coreSecondsBetween(1000, 300).isEmpty());
  }

  @Test
  void timeEndsACurveToo() {
    Environment kiln = k.sections().furnace().kiln(1100);
    SectionCurve curve =
        new SectionModel(SteelHeat.changing(k.sections().steel()))
            .run(Section.plate(0.02), 293.15, kiln, 1090, 60);
    assertEquals(60, curve.seconds(), 1e-9);
    assertTrue(curve.end().faceKelvin() > curve.end().coreKelvin());
  }

  /** A slow climb is followed with the lag that its heat makes: r half^2 / (2 a). */
  @Test
  void aSteadyClimbLagsByItsOwnHeat() {
    double rate = 400 / 3600.0;
    SectionModel model = new SectionModel(SteelHeat.constant(CAPACITY, CONDUCTIVITY));
    Environment climb = new Environment(Course.ramp(293.15, 1293.15, rate), 1e5, 0);
    SectionCurve.Moment end = model.run(Section.plate(0.05), 293.15, climb, Double.NaN, 8000).end();
    double lag = rate * 0.025 * 0.025 * CAPACITY / (2 * CONDUCTIVITY);
    assertEquals(lag, end.faceKelvin() - end.coreKelvin(), 0.01 * lag);
  }

  @Test
  void heatContentIsTheIntegralOfTheSpecificHeat() {
    En1993Steel steel = k.sections().steel();
    for (double t : new double[] {10, 300, 599, 601, 700, 734, 736, 800, 899, 901, 1100}) {
      double slope = (steel.heatContent(t + 0.01) - steel.heatContent(t - 0.01)) / 0.02;
      assertEquals(specificHeat(t), slope, 1e-3 * slope, t + " C");
    }
  }

  @Test
  void aSectionIsNamedBySmallAndLargeSide() {
    assertEquals(new Section(0.003, 0.04), new Section(0.04, 0.003));
    assertEquals(0, Section.plate(0.003).roundness());
    assertThrows(IllegalArgumentException.class, () -> new Section(0, 1));
  }

  /** In a bath the steel stays austenite: nothing of the arrest is seen. */
  @Test
  void aQuenchIsFasterThanAirAndHasNoArrest() {
    QuenchantTable quenchants = k.hardening().quenchants();
    Section blade = Section.plate(0.005);
    double last = Double.POSITIVE_INFINITY;
    for (String id : new String[] {"still-air", "moving-air", "plates", "oil-fast", "brine"}) {
      Quenchant q = quenchants.find(id).orElseThrow();
      double seconds =
          k.sections()
              .quench(blade, 1093.15, q, q.severity(), 303.15, 773.15)
              .coreSecondsBetween(1073.15, 773.15)
              .orElseThrow();
      assertTrue(seconds < last, id);
      last = seconds;
    }
    Quenchant oil = quenchants.find("oil-fast").orElseThrow();
    // lumped: ln((800-30)/(500-30)) rho c half / h, and half a percent per tenth of Bi more inside
    double film = k.hardening().criterion().filmWattsPerSquareMetreKelvin(oil.severity());
    double lumped = Math.log(770.0 / 470) * 5.1e6 * 0.0025 / film;
    double seconds =
        k.sections()
            .quench(blade, 1123.15, oil, oil.severity(), 303.15, 773.15)
            .coreSecondsBetween(1073.15, 773.15)
            .orElseThrow();
    double root = OneTerm.plate(film * 0.0025 / 28).root();
    double oneTerm = Math.log(770.0 / 470) * 5.1e6 * 0.0025 * 0.0025 / 28 / (root * root);
    assertEquals(oneTerm, seconds, 0.01 * seconds);
    assertTrue(lumped < seconds);
  }
}
