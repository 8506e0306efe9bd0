package seamsoak.trace;

import java.util.List;
import seamsoak.pairing.PairAdvisor;
import seamsoak.pairing.PairLimit;
import seamsoak.pairing.PairLimits;
import seamsoak.pairing.PairSteel;
import seamsoak.property.Correlations;
import seamsoak.property.forging.Mechanics;
import seamsoak.steel.Steel;
import seamsoak.steel.TemperatureRange;
import seamsoak.trace.TraceEntries.Material;
import seamsoak.trace.TraceEntries.Moment;

/** What the checks of a pair rest on. */
record PairTrace(Correlations k, TraceEntries all) {

  /** Of steels checked against each other. */
  void checks(List<Steel> steels, Moment coldest, Moment hottest) {
    MetalTrace metals = new MetalTrace(k, all);
    List<Material> bulk = steels.stream().map(Material::of).toList();
    for (Steel s : steels) {
      all.analysis(s);
      all.temperatures(s, "published temperatures", "forge", "harden", "normalize");
    }
    metals.carbon(bulk, coldest, hottest);
    // carbon that has moved may lie on either side of the eutectoid
    all.use(k.phases().ironCarbon().a3(), k.phases().ironCarbon().accm());
    metals.forging(steels);
    Mechanics m = k.mechanics();
    all.use(bulk, m.welding(), m.hotStrength(), m.brightness(), k.hardening().window());
    all.use(bulk, List.of(hottest), m.expansion().lattice(), m.expansion());
    List<PairSteel> each = steels.stream().map(s -> PairSteel.of(k, s)).toList();
    each.stream()
        .filter(s -> !m.isLattice(s.analysis(), s.lines()))
        .forEach(s -> all.use(m.line(s.analysis(), s.lines())));
    List<Material> dissolved =
        each.stream().flatMap(s -> s.hardening().map(r -> austenite(s, r)).stream()).toList();
    metals.dissolved(bulk);
    if (!dissolved.isEmpty()) {
      all.use(dissolved, m.martensiteGrowth(), k.critical().ms(), k.critical().highCarbonMs());
      metals.alone(dissolved);
    }
    metals.hardness(dissolved.isEmpty() ? bulk : dissolved);
    all.use(List.of(), k.etching().whiteness());
  }

  private Material austenite(PairSteel steel, TemperatureRange hardening) {
    double celsius = k.hardening().window().heatCelsius(hardening);
    return new Material(steel.id(), steel.austenite(k, celsius));
  }

  /** The settings, and the limits, each with its own standing. */
  void limits(PairLimits limits) {
    all.setting("pair", "%s", PairAdvisor.settings());
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
