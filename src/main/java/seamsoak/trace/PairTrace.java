package seamsoak.trace;

import java.util.ArrayList;
import java.util.List;
import seamsoak.pairing.PairLimit;
import seamsoak.pairing.PairLimits;
import seamsoak.pairing.PairSteel;
import seamsoak.property.Correlations;
import seamsoak.property.forging.Mechanics;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;
import seamsoak.trace.TraceEntries.Material;
import seamsoak.trace.TraceEntries.Moment;

/** What the checks of a pair rest on. */
record PairTrace(Correlations k, TraceEntries all) {
  private static final List<Moment> NEVER = List.of();
  private static final List<Material> WHATEVER = List.of();
  private static final List<String> PUBLISHED =
      List.of(
          "forge_start_C",
          "forge_stop_C",
          "harden_min_C",
          "harden_max_C",
          "normalize_min_C",
          "normalize_max_C");

  /** Of steels checked against each other. */
  void checks(List<Steel> steels, Moment coldest, Moment hottest) {
    MetalTrace metals = new MetalTrace(k, all);
    List<Material> bulk = steels.stream().map(Material::of).toList();
    for (Steel s : steels) {
      all.analysis(s);
      all.temperatures(s, PUBLISHED);
    }
    metals.carbon(bulk, coldest, hottest);
    // carbon that has moved may lie on either side of the eutectoid
    all.use(k.phases().ironCarbon().a3(), WHATEVER, NEVER);
    all.use(k.phases().ironCarbon().accm(), WHATEVER, NEVER);
    metals.forging(steels);
    Mechanics m = k.mechanics();
    all.use(m.welding().correlation(), WHATEVER, NEVER);
    all.use(m.hotStrength().correlation(), bulk, NEVER);
    all.use(m.brightness().correlation(), bulk, NEVER);
    all.use(k.hardening().window().correlation(), bulk, NEVER);
    all.use(m.expansion().lattice().correlation(), bulk, List.of(hottest));
    all.use(m.expansion().correlation(), WHATEVER, NEVER);
    List<Material> dissolved = new ArrayList<>();
    for (Steel s : steels) {
      PairSteel one = PairSteel.of(k, s);
      if (!m.isLattice(s.analysis(), one.lines())) {
        all.use(m.line(s.analysis(), one.lines()).correlation(), List.of(Material.of(s)), NEVER);
      }
      one.hardening()
          .ifPresent(
              r ->
                  dissolved.add(
                      new Material(
                          s.id(),
                          s.analysis()
                              .with(
                                  Element.C,
                                  one.dissolvedCarbonPct(k.hardening().window().heatCelsius(r))))));
    }
    if (!dissolved.isEmpty()) {
      all.use(m.martensiteGrowth().correlation(), dissolved, NEVER);
      all.use(k.critical().ms().correlation(), dissolved, NEVER);
      all.use(k.hardening().idealDiameter().correlation(), dissolved, NEVER);
      all.use(k.hardening().criterion().correlation(), WHATEVER, NEVER);
    }
    all.use(k.hardening().asQuenched().correlation(), dissolved, NEVER);
    all.use(k.hardening().martensite().correlation(), dissolved, NEVER);
    all.use(k.hardening().conversion().correlation(), WHATEVER, NEVER);
  }

  /** The limits, each with its own standing. */
  void limits(PairLimits limits) {
    limits.all().stream().filter(l -> l.watch().isPresent()).forEach(this::limit);
  }

  private void limit(PairLimit l) {
    String side = l.above() ? " above " : " below ";
    String unit = l.unit().isEmpty() ? "" : " " + l.unit();
    StringBuilder gives = new StringBuilder(l.title() + ":");
    l.watch().ifPresent(w -> gives.append(" watch").append(side).append(w).append(unit));
    l.clash().ifPresent(c -> gives.append(", clash").append(side).append(c).append(unit));
    all.limit("pair-limit-" + l.name(), gives.toString(), l.source(), l.standing());
  }
}
