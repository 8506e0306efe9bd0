package seamsoak.pairing;

import java.util.List;
import seamsoak.heat.Section;
import seamsoak.property.Correlations;
import seamsoak.property.hardening.Hardening;

/** How deep each hardens, what quench it needs in the section, and whether air is enough. */
record HardenabilityChecks(Correlations k, Judge judge) implements PairFamily {
  @Override
  public List<Finding> of(PairSteel a, PairSteel b, PairSetting s) {
    if (!a.hardens() || !b.hardens()) {
      return List.of();
    }
    double heat = PairSteel.hardenCelsius(k, a, b);
    Hardened first = Hardened.from(k, a, heat);
    Hardened second = Hardened.from(k, b, heat);
    Section section = Section.plate(s.sectionMetres());
    double air = neededInAir(section);
    double one = first.metres() / air;
    double other = second.metres() / air;
    double rated = one >= 1 == other >= 1 ? 0 : Math.max(one, other);
    return List.of(
        judge.values(
            CheckName.HARDENABILITY,
            1e3 * first.metres(),
            1e3 * second.metres(),
            new Why.Each(first.within(), second.within())),
        quench(first, second, section),
        judge.values(
            CheckName.AIR_HARDENING, one, other, rated, new Why.Air(s.sectionMetres(), air)));
  }

  private Finding quench(Hardened first, Hardened second, Section section) {
    Why.In forFirst = first.alone(section.thicknessMetres());
    Why.In forSecond = second.alone(section.thicknessMetres());
    return judge.values(
        CheckName.QUENCH,
        forFirst.bath().severity(),
        forSecond.bath().severity(),
        new Why.Quenches(
            section.thicknessMetres(),
            forFirst,
            forSecond,
            Hardened.best(k, List.of(first, second), section)));
  }

  /** Depth of hardening with which a section may harden in still air. */
  private double neededInAir(Section section) {
    Hardening h = k.hardening();
    return h.depth().leastMarginInAir()
        * h.criterion().neededMetres(section, h.criterion().stillAirPerInch());
  }
}
