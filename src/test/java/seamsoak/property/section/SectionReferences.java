package seamsoak.property.section;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import seamsoak.heat.Environment;
import seamsoak.heat.Section;
import seamsoak.heat.SectionCurve;
import seamsoak.heat.SectionModel;
import seamsoak.property.Correlations;
import seamsoak.property.hardening.Quenchant;
import seamsoak.reference.Inputs;

/** Heating and cooling of sections, by the names of the reference folders. */
public final class SectionReferences {
  private static final double ZERO = 273.15;
  private static final double START = 900 + ZERO;
  private static final double LONG = 1e6;

  private SectionReferences() {}

  public static void add(Map<String, ToDoubleFunction<Inputs>> all, Correlations k) {
    constant(all);
    air(all, k.sections());
    heating(all, k.sections());
    all.put("heat-content", in -> heatContent(k, in));
    FurnaceHeat furnace = k.sections().furnace();
    all.put(
        "air-cooling-flux",
        in -> -k.sections().airCooling().air().into(0, in.get("celsius") + ZERO));
    all.put("furnace-heat-kiln", in -> into(furnace.kiln(in.get("around") + ZERO), in));
    all.put("furnace-heat-forge", in -> into(furnace.forge(in.get("around") + ZERO), in));
    all.put("quench-film", in -> film(k, in));
  }

  private static double into(Environment around, Inputs in) {
    return around.into(0, in.get("celsius") + ZERO);
  }

  private static double film(Correlations k, Inputs in) {
    Quenchant q =
        k.hardening()
            .quenchants()
            .find(in.get("air") > 0 ? "moving-air" : "oil-fast")
            .orElseThrow();
    return k.sections().environment(q, in.get("severity"), 300).filmWattsPerSquareMetreKelvin();
  }

  private static double heatContent(Correlations k, Inputs in) {
    En1993Steel steel = k.sections().steel();
    return (steel.heatContent(in.get("to")) - steel.heatContent(in.get("from"))) / 1000;
  }

  /** A plate of constant properties put into surroundings without radiation. */
  private static void constant(Map<String, ToDoubleFunction<Inputs>> all) {
    all.put("section-core", in -> run(in, Double.NaN, in.get("seconds")).end().coreKelvin() - ZERO);
    all.put("section-face", in -> run(in, Double.NaN, in.get("seconds")).end().faceKelvin() - ZERO);
    all.put("section-seconds", in -> run(in, in.get("until") + ZERO, LONG).seconds());
  }

  private static SectionCurve run(Inputs in, double untilKelvin, double seconds) {
    return new SectionModel(SteelHeat.constant(in.get("capacity"), in.get("conductivity")))
        .run(
            plate(in),
            in.get("from") + ZERO,
            Environment.steady(in.get("bath") + ZERO, in.get("film"), 0),
            untilKelvin,
            seconds);
  }

  private static void air(Map<String, ToDoubleFunction<Inputs>> all, SectionHeat sections) {
    all.put(
        "air-cooling-seconds",
        in ->
            sections
                .coolInAir(plate(in), START, in.get("to") + ZERO)
                .coreSecondsBetween(in.get("from") + ZERO, in.get("to") + ZERO)
                .orElseThrow());
    all.put(
        "air-cooling-rate",
        in -> {
          double at = in.get("celsius") + ZERO;
          OptionalDouble seconds =
              sections.coolInAir(plate(in), START, at - 10).coreSecondsBetween(at + 5, at - 5);
          return 10 / seconds.orElseThrow();
        });
    all.put(
        "air-cooling-difference",
        in -> sections.coolInAir(plate(in), START, 500 + ZERO).greatestDifferenceKelvin());
  }

  private static void heating(Map<String, ToDoubleFunction<Inputs>> all, SectionHeat sections) {
    FurnaceHeat furnace = sections.furnace();
    all.put(
        "kiln-minutes",
        in -> {
          double kiln = in.get("kiln") + ZERO;
          return minutes(sections.heat(plate(in), 20 + ZERO, furnace.kiln(kiln), kiln - 10));
        });
    all.put("forge-minutes", in -> minutes(forge(in, sections)));
    all.put("forge-face", in -> forge(in, sections).end().faceKelvin() - ZERO);
    all.put(
        "kiln-ramp-lag",
        in -> {
          double kiln = in.get("kiln") + ZERO;
          Environment ramp = furnace.kilnRamp(20 + ZERO, kiln, in.get("perHour"));
          return minutes(sections.heat(plate(in), 20 + ZERO, ramp, kiln - 10))
              - ramp.around().settledSeconds() / 60;
        });
  }

  private static SectionCurve forge(Inputs in, SectionHeat sections) {
    return sections.heat(
        plate(in),
        20 + ZERO,
        sections.furnace().forge(in.get("forge") + ZERO),
        in.get("core") + ZERO);
  }

  private static double minutes(SectionCurve curve) {
    return curve.seconds() / 60;
  }

  private static Section plate(Inputs in) {
    return Section.plate(in.get("millimetres") / 1000);
  }
}
