package seamsoak.kiln;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import seamsoak.billet.Billet;
import seamsoak.billet.Kiln;
import seamsoak.plan.Advice;
import seamsoak.property.Correlations;
import seamsoak.property.QuenchedSteel;
import seamsoak.schedule.Margins;
import seamsoak.schedule.StepKind;
import seamsoak.unit.UnitSystem;

/** Puts the schedules of several billets into one kiln. */
public final class KilnAdvisor {
  /** More billets than that no smith's kiln holds, judgement. */
  public static final int MOST = 8;

  /** Between quench and temper no longer than that, min; common practice, no source. */
  private static final double SOON = 60;

  private final List<Given> given;
  private final List<Wishes> wishes;
  private final double kilnC;
  private final double rampPerHour;

  /**
   * A billet with its own plan.
   *
   * @param file as it was given
   */
  public record Given(String file, Billet billet, Advice advice) {}

  /** Those that all are written in, where they agree. */
  public static Optional<UnitSystem> units(List<Given> given) {
    List<Optional<UnitSystem>> own =
        given.stream().map(g -> g.billet().units()).distinct().toList();
    return own.size() == 1 ? own.get(0) : Optional.empty();
  }

  private KilnAdvisor(Correlations k, List<Given> given) {
    this.given = List.copyOf(given);
    this.wishes =
        IntStream.range(0, given.size())
            .mapToObj(
                i -> {
                  Given g = given.get(i);
                  return new Wishes(
                      i,
                      g.billet(),
                      g.advice().soak(),
                      g.advice().schedule(),
                      new Growth(k, g.billet(), g.advice().schedule()),
                      k.hardening().parameter());
                })
            .toList();
    List<Kiln> kilns = kilns();
    this.kilnC =
        kilns.stream().mapToDouble(n -> n.highestTaken().celsius()).min().orElse(Double.NaN);
    this.rampPerHour =
        kilns.stream().mapToDouble(n -> n.rampTaken().kelvinPerHour()).min().orElse(Double.NaN);
  }

  /** One kiln for all of them. */
  public static KilnPlan advise(Correlations k, List<Given> given) {
    return new KilnAdvisor(k, given).plan();
  }

  private List<Kiln> kilns() {
    List<Kiln> there =
        given.stream().map(g -> g.billet().equipment().kilnTaken()).filter(Kiln::there).toList();
    return there.isEmpty() ? List.of(Kiln.UNSTATED) : there;
  }

  private KilnPlan plan() {
    List<Wish> wanted = wishes.stream().flatMap(w -> w.all().stream()).toList();
    List<Wish> all =
        wanted.stream().filter(w -> w.lowC() <= kilnC).map(w -> w.upTo(kilnC)).toList();
    List<Load> loads = new ArrayList<>();
    List<Apart> apart =
        new ArrayList<>(
            wanted.stream()
                .filter(w -> w.lowC() > kilnC)
                .map(w -> new Apart.KilnTooCool(w.kind(), w.billet(), w.lowC(), kilnC))
                .toList());
    StaysOut stays = new StaysOut(wishes, all);
    double from = QuenchedSteel.ROOM_CELSIUS;
    // what is hard must not wait for its temper until others are
    for (boolean hardFirst : List.of(true, false)) {
      List<Wish> now = all.stream().filter(w -> stays.isHard(w.billet()) == hardFirst).toList();
      for (StepKind kind : StepKind.values()) {
        for (int fromEnd : counted(now, kind)) {
          List<List<Wish>> groups =
              Loads.groups(
                  now.stream().filter(w -> w.kind() == kind && w.fromEnd() == fromEnd).toList());
          for (List<Wish> group : groups) {
            Load load = load(kind, fromEnd, group, stays, from);
            from = load.fall().map(Load.Fall::toC).orElse(load.celsius());
            loads.add(load);
          }
          apart.addAll(Parting.of(kind, groups));
        }
      }
    }
    apart.addAll(Parting.bySheet(wishes, all));
    return new KilnPlan(
        told(), kilnC, loads, apart.stream().distinct().toList(), remarks(loads, stays));
  }

  /** How many of a kind come after each, the first of the work first. */
  private static List<Integer> counted(List<Wish> all, StepKind kind) {
    TreeSet<Integer> numbers = new TreeSet<>(Comparator.reverseOrder());
    all.stream().filter(w -> w.kind() == kind).forEach(w -> numbers.add(w.fromEnd()));
    return List.copyOf(numbers);
  }

  private List<KilnPlan.Billet> told() {
    return given.stream()
        .map(
            g ->
                new KilnPlan.Billet(
                    g.file(),
                    g.advice().billet(),
                    g.advice().soak().clears(),
                    g.advice().hardStops()))
        .toList();
  }

  private Load load(StepKind kind, int fromEnd, List<Wish> group, StaysOut stays, double from) {
    double celsius = Loads.celsius(group);
    List<Wish.Then.Fall> falls =
        group.stream()
            .map(Wish::then)
            .filter(Wish.Then.Fall.class::isInstance)
            .map(Wish.Then.Fall.class::cast)
            .toList();
    return new Load(
        kind,
        fromEnd,
        celsius,
        60 * Math.abs(celsius - from) / (celsius > from ? rampPerHour : Margins.KILN_FALLS),
        Loads.turns(group, celsius).stream().map(t -> piece(t, celsius)).toList(),
        falls.isEmpty()
            ? Optional.empty()
            : Optional.of(
                new Load.Fall(
                    falls.stream().mapToDouble(Wish.Then.Fall::toC).min().orElseThrow(),
                    falls.stream().mapToDouble(Wish.Then.Fall::perHourC).min().orElseThrow(),
                    falls.stream().mapToDouble(Wish.Then.Fall::stayMinutes).max().orElseThrow())),
        group.stream().mapToDouble(w -> w.riseMinutes() + w.hold().minutes(w.plannedC())).sum(),
        IntStream.range(0, given.size())
            .filter(i -> group.stream().noneMatch(w -> w.billet() == i))
            .mapToObj(i -> new Load.Out(i, stays.why(i, kind, fromEnd, celsius, group)))
            .toList());
  }

  private Load.Piece piece(Loads.Turn turn, double celsius) {
    Wish w = turn.wish();
    Load.Then then =
        w.then() instanceof Wish.Then.Air
            ? Load.Then.AIR
            : w.then() instanceof Wish.Then.Quench
                ? Load.Then.QUENCH
                : w.then() instanceof Wish.Then.Fall ? Load.Then.FALL : Load.Then.STAY;
    return new Load.Piece(
        w.billet(),
        w.step().words(),
        Parting.window(w),
        turn.in(),
        w.riseMinutes(),
        turn.least(),
        turn.most().isPresent() ? Optional.of(turn.most().getAsDouble()) : Optional.empty(),
        turn.held(),
        then == Load.Then.AIR || then == Load.Then.QUENCH
            ? Optional.of(turn.out())
            : Optional.empty(),
        then,
        w.then() instanceof Wish.Then.Quench q ? Optional.of(q.bath()) : Optional.empty(),
        becomes(w, celsius, turn.held()));
  }

  private Load.Becomes becomes(Wish w, double celsius, double held) {
    Wishes own = wishes.get(w.billet());
    if (w.kind() == StepKind.TEMPER) {
      double planned = own.windows().hrc(w.plannedC()).orElse(Double.NaN);
      double here = own.windows().hrc(celsius).orElse(Double.NaN);
      return Double.isNaN(planned)
          ? Load.Becomes.THE_SAME
          : new Load.Becomes(Optional.empty(), Optional.of(new Load.Hrc(here, planned)));
    }
    Optional<Double> planned =
        own.growth()
            .number(w.step(), w.riseMinutes(), w.plannedC(), w.hold().minutes(w.plannedC()));
    Optional<Double> here = own.growth().number(w.step(), w.riseMinutes(), celsius, held);
    return new Load.Becomes(planned.flatMap(p -> here.map(h -> p - h)), Optional.empty());
  }

  private static boolean sharesBath(Load load) {
    return load.pieces().stream().flatMap(p -> p.bath().stream()).distinct().count()
        < load.pieces().size();
  }

  private List<KilnPlan.Remark> remarks(List<Load> loads, StaysOut stays) {
    List<KilnPlan.Remark> all = new ArrayList<>();
    if (given.stream().anyMatch(g -> !g.billet().equipment().kilnTaken().there())) {
      all.add(KilnPlan.Remark.NO_KILN);
    }
    if (kilns().stream().map(n -> n.highestTaken().celsius()).distinct().count() > 1) {
      all.add(KilnPlan.Remark.KILNS_DIFFER);
    }
    boolean someHard = IntStream.range(0, given.size()).anyMatch(stays::isHard);
    if (someHard && !IntStream.range(0, given.size()).allMatch(stays::isHard)) {
      all.add(KilnPlan.Remark.HARD_ALREADY);
    }
    if (wishes.stream().anyMatch(Wishes::fromTheAnvil)) {
      all.add(KilnPlan.Remark.FROM_THE_ANVIL);
    }
    List<Load> hard = loads.stream().filter(l -> l.kind() == StepKind.HARDEN).toList();
    if (hard.stream().anyMatch(KilnAdvisor::sharesBath)) {
      all.add(KilnPlan.Remark.SAME_BATH);
    }
    if (hard.size() > 1) {
      all.add(KilnPlan.Remark.HARD_AND_WAITING);
    }
    boolean slow =
        !hard.isEmpty()
            && loads.stream()
                .filter(
                    l -> l.kind() == StepKind.TEMPER && !stays.isHard(l.pieces().get(0).billet()))
                .findFirst()
                .filter(l -> l.kilnMinutes() > SOON)
                .isPresent();
    if (slow) {
      all.add(KilnPlan.Remark.SLOW_TO_TEMPER);
    }
    return all;
  }
}
