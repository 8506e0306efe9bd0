package seamsoak.trace;

import java.util.List;
import seamsoak.billet.Exposure;
import seamsoak.billet.LoggedCurve.Tip;
import seamsoak.billet.Shop;
import seamsoak.heatlog.LogSettings;
import seamsoak.heatlog.RealHeat;
import seamsoak.property.Correlations;
import seamsoak.steel.Steel;
import seamsoak.trace.TraceEntries.Material;
import seamsoak.trace.TraceEntries.Moment;

/** What a real heat's worth rests on. */
record HeatTrace(Correlations k, TraceEntries all) {
  /** Carbon, face and grain from its coldest moment that counts to its hottest. */
  void heat(RealHeat heat, LogSettings settings) {
    Steel steel = heat.query().steel();
    Moment cold = new Moment("black heat", Shop.BLACK_CELSIUS);
    Moment hot = new Moment("the peak", Math.max(heat.peakC(), heat.curve().peakC()));
    MetalTrace metals = new MetalTrace(k, all);
    List<Material> metal = List.of(Material.of(steel));
    all.analysis(steel);
    metals.carbon(metal, cold, hot);
    metals.burning(List.of(steel));
    metals.face(Material.of(steel), List.of(cold, hot));
    if (heat.query().face().filter(f -> f == Exposure.COVERED).isPresent()) {
      metals.coveredFaces();
    }
    all.use(
        metal,
        List.of(hot),
        k.forging().grainGrowth(),
        k.forging().pinning(),
        k.forging().grainNumber());
    if (heat.query().tip().filter(t -> t == Tip.AIR).isPresent()) {
      all.use(List.of(), List.of(hot), k.sections().furnace(), k.sections().steel());
    }
    all.limit(
        "thermocouple",
        "tolerance of new wire, "
            + heat.couple().wire().type()
            + " "
            + heat.couple().wire().grade(),
        heat.couple().wire().source(),
        heat.couple().wire().standing());
    settings.settings().values().stream()
        .filter(
            s -> !s.name().contains("-") || s.name().endsWith("-" + heat.couple().wire().type()))
        .forEach(
            s ->
                all.limit(
                    "heat-log " + s.name(),
                    s.name() + ": " + s.value() + " " + s.unit(),
                    s.source(),
                    s.standing()));
  }
}
