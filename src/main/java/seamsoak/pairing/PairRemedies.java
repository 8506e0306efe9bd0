package seamsoak.pairing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import seamsoak.numeric.Roots;
import seamsoak.steel.Element;
import seamsoak.unit.Length;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;

/** What would make a pair work: each change is tried and the pair checked again. */
public final class PairRemedies {
  private static final double THICKEST_FACTOR = 16;
  private static final int NEAREST = 3;

  private final PairCheck check;
  private final UnitSystem units;

  public PairRemedies(PairCheck check, UnitSystem units) {
    this.check = check;
    this.units = units;
  }

  /** Changes of how it is made that improve a check, the one that helps most first. */
  public List<Remedy> of(PairResult now, PairSetting s) {
    List<Remedy> all = new ArrayList<>();
    if (now.rating() == Rating.FITS) {
      return all;
    }
    closed(all, now, s);
    cooler(all, now, s);
    thicker(all, now, s);
    all.sort(
        Comparator.comparing(Remedy::rating)
            .thenComparing(Comparator.comparingInt((Remedy r) -> r.better().size()).reversed()));
    return all;
  }

  private void closed(List<Remedy> all, PairResult now, PairSetting s) {
    add(all, now, s.inClosedStack(), "Weld it in a closed stack, its edges sealed", null, "");
  }

  private void cooler(List<Remedy> all, PairResult now, PairSetting s) {
    if (rating(now, "solidus-margin") == Rating.FITS) {
      return;
    }
    PairSteel a = now.first();
    PairSteel b = now.second();
    double margin = check.limits().of("solidus-margin").watch().orElse(0);
    double melts = Math.min(a.limits().solidusCelsius(), b.limits().solidusCelsius());
    double heat = Math.floor((melts - margin) / 5) * 5;
    if (heat < Math.max(a.welding().lowC(), b.welding().lowC())) {
      return;
    }
    add(
        all,
        now,
        s.weldedAt(heat),
        "Weld no hotter than " + Temperature.ofCelsius(heat).format(units),
        heat,
        "C");
  }

  private void thicker(List<Remedy> all, PairResult now, PairSetting s) {
    PairLimit limit = check.limits().of("carbon-loss");
    if (rating(now, "carbon-loss") == Rating.FITS || limit.watch().isEmpty()) {
      return;
    }
    double watch = limit.watch().getAsDouble();
    if (rated(now, s.thicker(THICKEST_FACTOR)) > watch) {
      return;
    }
    double factor =
        Roots.between(f -> watch - rated(now, s.thicker(f)), 1, THICKEST_FACTOR, 1e-3) * 1.01;
    PairSetting thick = s.thicker(factor);
    add(
        all,
        now,
        thick,
        "Begin with layers of "
            + length(thick.firstMetres())
            + " "
            + now.first().id()
            + " and "
            + length(thick.secondMetres())
            + " "
            + now.second().id()
            + " or thicker, and do not draw them out",
        1e3 * thick.firstMetres(),
        "mm");
  }

  private double rated(PairResult now, PairSetting s) {
    return check
        .of(now.first(), now.second(), s)
        .check("carbon-loss")
        .map(Finding::rated)
        .orElse(0.0);
  }

  private static Rating rating(PairResult result, String name) {
    return result.check(name).map(Finding::rating).orElse(Rating.FITS);
  }

  private void add(
      List<Remedy> all, PairResult now, PairSetting s, String change, Double value, String unit) {
    PairResult then = check.of(now.first(), now.second(), s);
    List<String> better =
        now.checks().stream().filter(f -> improved(f, then)).map(Finding::title).toList();
    if (!better.isEmpty()) {
      all.add(new Remedy(change, value, unit, then.rating(), better));
    }
  }

  /** A check that a change does away with is better too, unless its kin warns as before. */
  private static boolean improved(Finding f, PairResult then) {
    if (f.rating() == Rating.FITS) {
      return false;
    }
    String kin = f.name() + "-sealed";
    Rating after = then.check(kin).map(Finding::rating).orElse(rating(then, f.name()));
    return after.compareTo(f.rating()) < 0;
  }

  /**
   * A grade near the second by analysis that fits with the first.
   *
   * @param id of the grade
   * @param distance from the second, in steps of what the smith would notice
   * @param closedStack whether it does so only in a closed stack
   */
  public record Near(String id, double distance, boolean closedStack) {}

  /** The three nearest; in a closed stack where the first fits with none in the open. */
  public List<Near> insteadOfSecond(PairResult now, List<PairSteel> grades, PairSetting s) {
    if (now.rating() == Rating.FITS) {
      return List.of();
    }
    List<Near> open = nearest(now, grades, s);
    return open.isEmpty() ? nearest(now, grades, s.inClosedStack()) : open;
  }

  private List<Near> nearest(PairResult now, List<PairSteel> grades, PairSetting s) {
    return grades.stream()
        .filter(g -> !g.sameAs(now.first()) && !g.sameAs(now.second()))
        .sorted(Comparator.comparingDouble(g -> distance(g, now.second())))
        .filter(g -> check.of(now.first(), g, s).rating() == Rating.FITS)
        .limit(NEAREST)
        .map(g -> new Near(g.id(), distance(g, now.second()), s.sealed()))
        .toList();
  }

  /** Steps that change what a steel is for: judgement. */
  private static double distance(PairSteel a, PairSteel b) {
    double sum = 0;
    for (Element e : Element.values()) {
      double step =
          switch (e) {
            case C -> 0.1;
            case MN, SI, CR, W -> 0.3;
            case NI -> 0.5;
            case MO, V, CU, AL -> 0.2;
            case P, S -> 0.05;
          };
      double steps = (a.percent(e) - b.percent(e)) / step;
      sum += steps * steps;
    }
    return Math.sqrt(sum);
  }

  private String length(double metres) {
    return new Length(metres).format(units);
  }
}
