package seamsoak.pairing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import seamsoak.numeric.Roots;
import seamsoak.steel.Element;

/** What would make a pair work: each change is tried and the pair checked again. */
record PairRemedies(PairCheck check) {
  private static final double THICKEST_FACTOR = 16;
  private static final int NEAREST = 3;

  /** Changes of how it is made that improve a check, the one that helps most first. */
  List<Remedy> of(PairResult now, PairSetting s) {
    return now.rating() == Rating.FITS
        ? List.of()
        : Stream.of(
                tried(Remedy.Change.CLOSED_STACK, now, Optional.of(s.inClosedStack())),
                tried(Remedy.Change.LOWER_WELDING_HEAT, now, cooler(now, s)),
                tried(Remedy.Change.THICKER_LAYERS, now, thicker(now, s)))
            .flatMap(Optional::stream)
            .sorted(
                Comparator.comparing(Remedy::rating)
                    .thenComparing(
                        Comparator.comparingInt((Remedy r) -> r.better().size()).reversed()))
            .toList();
  }

  /** The highest welding heat that keeps off melting, if both weld at it. */
  private Optional<PairSetting> cooler(PairResult now, PairSetting s) {
    PairSteel a = now.first();
    PairSteel b = now.second();
    double margin = check.limits().of(CheckName.SOLIDUS_MARGIN).watch().orElse(0);
    double melts = Math.min(a.limits().solidusCelsius(), b.limits().solidusCelsius());
    double heat = Math.floor((melts - margin) / 5) * 5;
    return rating(now, CheckName.SOLIDUS_MARGIN) == Rating.FITS
            || heat < Math.max(a.welding().lowC(), b.welding().lowC())
        ? Optional.empty()
        : Optional.of(s.weldedAt(heat));
  }

  /** The thinnest layers that lose little carbon, if any do. */
  private Optional<PairSetting> thicker(PairResult now, PairSetting s) {
    OptionalDouble limit = check.limits().of(CheckName.CARBON_LOSS).watch();
    if (rating(now, CheckName.CARBON_LOSS) == Rating.FITS
        || limit.isEmpty()
        || rated(now, s.thicker(THICKEST_FACTOR)) > limit.getAsDouble()) {
      return Optional.empty();
    }
    double watch = limit.getAsDouble();
    double factor =
        Roots.between(f -> watch - rated(now, s.thicker(f)), 1, THICKEST_FACTOR, 1e-3) * 1.01;
    return Optional.of(s.thicker(factor));
  }

  private double rated(PairResult now, PairSetting s) {
    return check
        .of(now.first(), now.second(), s)
        .check(CheckName.CARBON_LOSS)
        .map(Finding::rated)
        .orElse(0.0);
  }

  private static Rating rating(PairResult result, CheckName name) {
    return result.check(name).map(Finding::rating).orElse(Rating.FITS);
  }

  /** Nothing where a change is not to be had or improves no check. */
  private Optional<Remedy> tried(
      Remedy.Change change, PairResult now, Optional<PairSetting> setting) {
    if (setting.isEmpty()) {
      return Optional.empty();
    }
    PairResult then = check.of(now.first(), now.second(), setting.get());
    List<String> better =
        now.checks().stream().filter(f -> improved(f, then)).map(f -> f.limit().title()).toList();
    return better.isEmpty()
        ? Optional.empty()
        : Optional.of(new Remedy(change, setting.get(), then.rating(), better));
  }

  /** A check that a change does away with is better too, unless its kin warns as before. */
  private static boolean improved(Finding f, PairResult then) {
    CheckName after =
        f.check() == CheckName.OXIDE_CHROMIUM
                && then.check(CheckName.OXIDE_CHROMIUM_SEALED).isPresent()
            ? CheckName.OXIDE_CHROMIUM_SEALED
            : f.check();
    return rating(then, after).compareTo(f.rating()) < 0;
  }

  /** The three nearest; in a closed stack where the first fits with none in the open. */
  List<PairAdvice.Near> insteadOfSecond(PairResult now, List<PairSteel> grades, PairSetting s) {
    if (now.rating() == Rating.FITS) {
      return List.of();
    }
    List<PairAdvice.Near> open = nearest(now, grades, s);
    return open.isEmpty() ? nearest(now, grades, s.inClosedStack()) : open;
  }

  private List<PairAdvice.Near> nearest(PairResult now, List<PairSteel> grades, PairSetting s) {
    return grades.stream()
        .filter(g -> !g.sameAs(now.first()) && !g.sameAs(now.second()))
        .sorted(Comparator.comparingDouble(g -> distance(g, now.second())))
        .filter(g -> check.of(now.first(), g, s).rating() == Rating.FITS)
        .limit(NEAREST)
        .map(g -> new PairAdvice.Near(g.id(), distance(g, now.second()), s.sealed()))
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
}
