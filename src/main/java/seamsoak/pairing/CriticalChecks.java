package seamsoak.pairing;

import java.util.ArrayList;
import java.util.List;
import seamsoak.property.Correlations;
import seamsoak.property.QuenchedSteel;

/** Critical temperatures, hardening heat and which steel becomes martensite first. */
record CriticalChecks(Correlations k, Judge judge) implements PairFamily {
  @Override
  public List<Finding> of(PairSteel a, PairSteel b, PairSetting s) {
    List<Finding> all = new ArrayList<>();
    if (!a.lines().alwaysAustenite() && !b.lines().alwaysAustenite()) {
      all.add(judge.of(CheckName.AC1, a, b, x -> x.lines().a1Celsius(), Why.NUMBERS));
      all.add(
          judge.of(
              CheckName.UPPER_CRITICAL,
              a,
              b,
              x -> x.lines().fullAusteniteCelsius(x.analysis().carbon()),
              new Why.Each(carbideLast(a), carbideLast(b))));
    }
    if (a.hardens() && b.hardens()) {
      all.add(
          judge.miss(
              CheckName.HARDENING_WINDOW,
              a.hardening().orElseThrow(),
              b.hardening().orElseThrow(),
              new Why.Each(bySheet(a), bySheet(b))));
      if (QuenchedSteel.reaches(a.analysis()) && QuenchedSteel.reaches(b.analysis())) {
        all.add(martensite(a, b));
      }
    }
    return all;
  }

  private static boolean carbideLast(PairSteel s) {
    return s.lines().carbideLast(s.analysis().carbon());
  }

  private static boolean bySheet(PairSteel s) {
    return s.steel().heatTreatment().harden().isPresent();
  }

  private Finding martensite(PairSteel a, PairSteel b) {
    double heat = PairSteel.hardenCelsius(k, a, b);
    return judge.of(
        CheckName.MS,
        a,
        b,
        x -> k.critical().martensite(x.austenite(k, heat)).value(),
        new Why.Dissolved(heat, a.austenite(k, heat).carbon(), b.austenite(k, heat).carbon()));
  }
}
