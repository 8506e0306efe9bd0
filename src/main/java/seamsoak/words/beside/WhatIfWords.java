package seamsoak.words.beside;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.soak.SoakAdvice;
import seamsoak.soak.SoakAdvice.SoakOption;
import seamsoak.soak.SoakCost;
import seamsoak.soak.SoakReason;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.Sentence;
import seamsoak.words.SoakWords;

/** What another soak than the one advised would come to. */
public record WhatIfWords(SoakAdvice soak, UnitSystem units) {
  private Amounts amounts() {
    return new Amounts(units);
  }

  /** The option at the temperature that is advised, if one is. */
  public Optional<SoakOption> advised() {
    return soak.recommended()
        .filter(r -> r.minutes() > 0)
        .flatMap(
            r ->
                soak.options().stream()
                    .filter(o -> o.temperatureC() == r.temperatureC())
                    .findFirst());
  }

  /** How long the face is shown held: as advised, or where nothing is, as long as is allowed. */
  public double heldMinutes() {
    return soak.recommended()
        .map(SoakAdvice.Recommended::minutes)
        .filter(m -> m > 0)
        .orElse(soak.mostMinutes());
  }

  /** The option asked for by its whole degrees, else the one advised, else the hottest. */
  public Optional<SoakOption> asked(String at) {
    return soak.options().stream()
        .filter(o -> Amounts.format("%.0f", o.temperatureC()).equals(at))
        .findFirst()
        .or(this::advised)
        .or(() -> soak.options().stream().reduce((cooler, hotter) -> hotter));
  }

  /** What the picture beside the soaks shows. */
  public String face() {
    return "The face of the finished blade in the likely case after "
        + amounts().time(heldMinutes())
        + " at that heat, drawn to scale; light is what the etch leaves white.";
  }

  /**
   * What is told of an option: of the minutes that do in nine of ten where cases were tried, else
   * of the likely ones.
   */
  public record Costs(
      Optional<Double> minutes,
      Optional<Double> grain,
      Optional<Double> flatsMm,
      Optional<Double> sidesMm) {
    /** Of an option of that soak. */
    public static Costs of(SoakOption o, SoakAdvice soak) {
      if (!sure(soak)) {
        return new Costs(
            o.minutes(),
            o.grainAstm(),
            sum(o.metalLossMm(), o.softMm()),
            sum(o.metalLossMm(), o.sideSoftMm()));
      }
      Optional<SoakCost> cost = o.nineOfTenCost();
      return new Costs(
          o.minutesNineOfTen(),
          cost.map(SoakCost::grainAstm),
          cost.map(SoakCost::offMm),
          cost.map(SoakCost::sideOffMm));
    }

    /** Whether it is nine of ten that the soak is chosen for. */
    public static boolean sure(SoakAdvice soak) {
      return soak.samples() > 0
          && soak.recommended()
              .filter(r -> r.reason().kind() != SoakReason.Kind.BALANCED_BY_HISTORIES)
              .isEmpty();
    }

    private static Optional<Double> sum(Optional<Double> one, Optional<Double> other) {
      return one.flatMap(a -> other.map(b -> a + b));
    }
  }

  /** How long, what it costs, what speaks against it, and what differs from the soak advised. */
  public String says(SoakOption o) {
    Costs costs = Costs.of(o, soak);
    List<String> all = new ArrayList<>();
    all.add("At " + amounts().heat(o.temperatureC()) + ": " + minutes(o));
    costs(costs).ifPresent(all::add);
    if (costs.minutes().filter(m -> m <= soak.mostMinutes()).isEmpty()) {
      all.add("That is longer than the " + amounts().time(soak.mostMinutes()) + " allowed.");
    }
    SoakWords words = new SoakWords(units);
    o.remarks().forEach(r -> all.add(Sentence.capital(words.remark(r)) + "."));
    advised().map(a -> against(o, costs, a)).filter(a -> !a.isEmpty()).ifPresent(all::add);
    return String.join(" ", all);
  }

  private String minutes(SoakOption o) {
    String likely = time(o.minutes()) + " in the likely case";
    if (soak.samples() == 0) {
      return likely + ".";
    }
    String sure = time(o.minutesNineOfTen()) + " to do in nine of ten such billets";
    return (Costs.sure(soak) ? sure + ", " + likely : likely + ", " + sure) + ".";
  }

  private String time(Optional<Double> minutes) {
    return minutes.map(m -> amounts().time(Math.ceil(m))).orElse("more than 24 h");
  }

  private Optional<String> costs(Costs costs) {
    return costs
        .grain()
        .map(
            grain ->
                Amounts.format(
                        Costs.sure(soak)
                            ? "So long leaves grain about ASTM %.1f"
                            : "The likely time leaves grain about ASTM %.1f",
                        grain)
                    + " and takes "
                    + amounts().millimetres(costs.flatsMm().orElse(0.0))
                    + " off each flat and "
                    + amounts().millimetres(costs.sidesMm().orElse(0.0))
                    + " off each side, scale and soft skin together.");
  }

  private String against(SoakOption o, Costs costs, SoakOption advised) {
    if (o.temperatureC() == advised.temperatureC()) {
      return "This is the soak advised, for "
          + soak.recommended().map(r -> amounts().time(r.minutes())).orElse("no time")
          + ".";
    }
    Costs other = Costs.of(advised, soak);
    List<String> all = new ArrayList<>();
    difference(costs.minutes().map(Math::ceil), other.minutes().map(Math::ceil))
        .map(d -> told(d, 0.5, amounts().time(Math.abs(d)), "longer", "shorter", "as long"))
        .ifPresent(all::add);
    difference(costs.grain(), other.grain())
        .map(
            d ->
                told(
                    d,
                    0.05,
                    Amounts.format("grain %.1f numbers", Math.abs(d)),
                    "finer",
                    "coarser",
                    "grain alike"))
        .ifPresent(all::add);
    difference(costs.flatsMm(), other.flatsMm())
        .map(
            d ->
                told(d, 0.005, amounts().millimetres(Math.abs(d)), "more", "less", "as much")
                    + " off each flat")
        .ifPresent(all::add);
    return all.isEmpty()
        ? ""
        : "Against "
            + amounts().heat(advised.temperatureC())
            + ", which is advised: "
            + String.join(", ", all)
            + ".";
  }

  private static Optional<Double> difference(Optional<Double> here, Optional<Double> there) {
    return here.flatMap(h -> there.map(t -> h - t));
  }

  private static String told(
      double by, double least, String amount, String more, String less, String alike) {
    return Math.abs(by) < least ? alike : amount + " " + (by > 0 ? more : less);
  }
}
