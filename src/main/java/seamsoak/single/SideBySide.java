package seamsoak.single;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.property.Correlations;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.correlation.Published;
import seamsoak.property.critical.Ae1Mean;
import seamsoak.property.critical.Criticals;
import seamsoak.property.forging.CarbonLine;
import seamsoak.property.forging.ForgingRule;
import seamsoak.property.phase.FeCLines;
import seamsoak.property.phase.PhaseLines;
import seamsoak.single.SteelReport.Formula;
import seamsoak.steel.Composition;
import seamsoak.steel.Steel;

/** Every published formula for a steel beside the others, and which of them are used. */
record SideBySide(Correlations k, Steel steel, Composition austenite, PhaseLines lines) {
  /** Why those that are used are used, a sentence each. */
  static final List<String> CHOSEN =
      List.of(
          PhaseLines.WHY,
          Ae1Mean.WHY,
          "Ms is midway between van Bohemen's and Ingber and Kunert's, made for high carbon: their"
              + " carbon terms level off, so they stay sound where the straight lines of Andrews and"
              + " of Steven and Haynes run far too low, and what is measured lies between them.",
          ForgingRule.WHY);

  private static final String BAND = "its band";
  private static final String FORGING = "forge up to";

  List<Formula> formulas() {
    List<Formula> all = new ArrayList<>();
    lower(all);
    upper(all);
    for (CriticalTemperature f : k.critical().martensiteStart()) {
      boolean used = f == k.critical().ms() || f == k.critical().highCarbonMs();
      boolean told =
          k.critical().martensite(austenite).value() > CriticalTemperature.ABSOLUTE_ZERO
              && QuenchedSteel.reaches(bulk());
      all.add(formula(f, austenite, told && used ? "half of Ms" : ""));
    }
    k.critical().bainiteStart().forEach(f -> all.add(formula(f, austenite, "")));
    forging(all);
    return all;
  }

  private void lower(List<Formula> all) {
    Ae1Mean mean = k.critical().ae1();
    for (CriticalTemperature f : k.critical().lower()) {
      all.add(formula(f, bulk(), mean.members().contains(f) ? "in the mean" : ""));
    }
    boolean outside = mean.members().stream().anyMatch(f -> outside(f, bulk()));
    String used = lines.alwaysAustenite() ? "" : "Ac1";
    all.add(formula(mean, "", "Ac1", mean.celsius(bulk()), outside, used));
  }

  private void upper(List<Formula> all) {
    Criticals c = k.critical();
    FeCLines iron = k.phases().ironCarbon();
    for (CriticalTemperature f : c.upper()) {
      all.add(formula(f, bulk(), f == c.a3Alloy() ? "its alloy terms" : ""));
    }
    double carbon = bulk().carbon();
    double ac3 = lines.ac3Celsius(carbon);
    double accm = lines.accmCelsius(carbon);
    boolean beyond = accm > ac3;
    all.add(alloyed(iron.a3(), c.a3Alloy().alloyShift(), "Ac3", ac3, !beyond));
    all.add(alloyed(iron.accm(), c.accmAlloy(), "Accm", accm, beyond));
  }

  /** An iron-carbon line with the alloy terms of another formula. */
  private Formula alloyed(
      Published line, Published terms, String gives, double celsius, boolean used) {
    boolean outside = outside(line, bulk()) || outside(terms, bulk());
    String part = used && !lines.alwaysAustenite() ? gives : "";
    return formula(line, " + alloy terms", gives, celsius, outside, part);
  }

  private void forging(List<Formula> all) {
    OptionalDouble published = steel.heatTreatment().forgeStartC();
    CarbonLine first = k.forging().rule().highestForging();
    for (CarbonLine line : List.of(first, k.forging().rule().safeForging())) {
      all.add(
          formula(
              line,
              "",
              FORGING,
              line.celsius(bulk().carbon()),
              outside(line, bulk()),
              line == first && published.isEmpty() ? FORGING : BAND));
    }
    published.ifPresent(
        celsius ->
            all.add(
                new Formula(
                    "published for the grade",
                    FORGING,
                    Optional.of(celsius),
                    "as the row of the steel says",
                    false,
                    Optional.of(FORGING))));
  }

  private Composition bulk() {
    return steel.analysis();
  }

  private static Formula formula(CriticalTemperature f, Composition c, String used) {
    return formula(f, "", f.correlation().gives(), f.celsius(c), outside(f, c), used);
  }

  private static Formula formula(
      Published f, String with, String gives, double celsius, boolean outside, String used) {
    return new Formula(
        f.correlation().name() + with,
        gives,
        Optional.of(celsius).filter(v -> v > CriticalTemperature.ABSOLUTE_ZERO),
        f.correlation().standing().words(),
        outside,
        Optional.of(used).filter(u -> !u.isEmpty()));
  }

  private static boolean outside(Published f, Composition c) {
    return !f.exceeded(c).isEmpty();
  }
}
