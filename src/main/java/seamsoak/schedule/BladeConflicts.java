package seamsoak.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.hardening.Quenchant;
import seamsoak.schedule.demand.Conflict;
import seamsoak.schedule.demand.HardeningHeat;
import seamsoak.schedule.demand.Hardens;
import seamsoak.schedule.demand.QuenchChoice;
import seamsoak.schedule.demand.SoftLayers;
import seamsoak.schedule.demand.Tempering;
import seamsoak.state.Etch;
import seamsoak.state.LineReport;
import seamsoak.steel.TemperatureRange;

/**
 * What the steels of a blade do not agree on when it is hardened and tempered.
 *
 * @param course the piece
 * @param heat the hardening heat
 * @param choices the baths at hand and what each would do
 * @param quench the one taken
 * @param temper the tempers
 */
record BladeConflicts(
    Course course,
    HardeningHeat heat,
    List<QuenchChoice> choices,
    QuenchChoice quench,
    Tempering temper) {
  /** Nearer to what it could be than this no file can tell, HRC; judgement. */
  private static final double HRC_NEAR = 2;

  /** Less ferrite than this no file finds; judgement. */
  private static final double MUCH_FERRITE = 0.02;

  /** Less missing at a seam than this changes no depth of hardening to speak of, wt%; judgement. */
  private static final double LEAST_DIP_PCT = 0.03;

  /** Tempered hardnesses further apart than this are worth a word, HRC; judgement. */
  private static final double HRC_APART = 4;

  /** Ideal diameters further apart than this ask for different baths; judgement. */
  private static final double MUCH_DEEPER = 2.5;

  List<Conflict> all() {
    List<Conflict> all = new ArrayList<>(ofHeat());
    List<String> quenched = quench.steels().stream().map(t -> t.steel().id()).toList();
    all.addAll(
        new SoftLayers(course.billet(), course.steels(), heat.edge().id(), quenched).conflicts());
    all.addAll(ofQuench());
    all.addAll(ofTemper());
    return all;
  }

  private List<Conflict> ofHeat() {
    List<Conflict> all = new ArrayList<>();
    if (heat.agrees()) {
      heat.windows().stream()
          .filter(w -> w.sheet().filter(this::outside).isPresent())
          .map(w -> new Conflict.HeatOutsideSheet(List.of(w.steel().id()), heat.celsius()))
          .forEach(all::add);
    } else {
      all.add(new Conflict.NoCommonHeat(heat.told(), heat.edge().id(), heat.celsius()));
    }
    quench.steels().stream()
        .filter(t -> t.austenite().ferriteShare() >= MUCH_FERRITE)
        .map(this::ferriteLeft)
        .forEach(all::add);
    return all;
  }

  private Conflict ferriteLeft(QuenchChoice.Response t) {
    return new Conflict.FerriteLeft(
        List.of(t.steel().id()),
        heat.celsius(),
        100 * t.austenite().ferriteShare(),
        t.steel().upperC(),
        t.austenite().fullHrc(QuenchedSteel.ROOM_CELSIUS),
        t.steel()
            .quenched(t.steel().upperC(), QuenchedSteel.FINEST_GRAIN)
            .fullHrc(QuenchedSteel.ROOM_CELSIUS));
  }

  private boolean outside(TemperatureRange sheet) {
    return heat.celsius() < sheet.lowC() - HardeningHeat.NEAR
        || heat.celsius() > sheet.highC() + HardeningHeat.NEAR;
  }

  private List<Conflict> ofQuench() {
    List<Conflict> all = new ArrayList<>();
    if (!quench.atHand()) {
      all.add(noBath());
    }
    if (quench.quenchant().kind() == Quenchant.Kind.PLATES) {
      all.add(
          new Conflict.FlatForPlates(
              Conflicts.names(quench.steels().stream().map(t -> t.steel()).toList()),
              quench.quenchant().name()));
    }
    quench.steels().forEach(t -> softEdge(t).ifPresent(all::add));
    Optional<Conflict.DeepBesideShallow> deep = deepBesideShallow();
    deep.ifPresent(all::add);
    quench.steels().stream()
        .filter(t -> t.middle() == Hardens.NO && t.edge() != Hardens.NO)
        .filter(t -> deep.filter(d -> d.steels().contains(t.steel().id())).isEmpty())
        .map(this::softMiddle)
        .forEach(all::add);
    quench.steels().forEach(t -> softSeam(t).ifPresent(all::add));
    return all;
  }

  /** Less carbon is less depth of hardening: what etches white where it is hard is then dark. */
  private Optional<Conflict> softSeam(QuenchChoice.Response t) {
    Etch likely = course.etch().at(course.shop().assumptions().ferritePlace());
    return LineReport.of(course.piece(), likely).stream()
        .filter(l -> l.steel().equals(t.steel().id()) && l.dipPct() >= LEAST_DIP_PCT)
        .min(Comparator.comparingDouble(LineReport::seamPct))
        .map(l -> new Poor(l, t.seam(l.seamPct(), quench.section())))
        .filter(p -> p.seam().middle().compareTo(t.middle()) < 0)
        .map(
            p ->
                new Conflict.SoftSeam(
                    List.of(t.steel().id()),
                    quench.quenchant().name(),
                    p.line().seamPct(),
                    p.line().farPct(),
                    p.seam().allowsSeconds(),
                    t.result().coreSeconds8to5()));
  }

  private record Poor(LineReport line, QuenchChoice.Response seam) {}

  private Conflict noBath() {
    List<String> cracks =
        choices.stream()
            .flatMap(c -> c.steels().stream())
            .filter(t -> t.tooFast(quench.section()))
            .map(t -> t.steel().id())
            .distinct()
            .toList();
    return new Conflict.NoBathWillDo(
        cracks.isEmpty()
            ? Conflicts.names(quench.steels().stream().map(t -> t.steel()).toList())
            : cracks,
        choices.stream().map(c -> c.quenchant().name()).toList(),
        !cracks.isEmpty(),
        quench.quenchant().name(),
        quench.celsius());
  }

  private Optional<Conflict> softEdge(QuenchChoice.Response t) {
    double edge = t.result().edgeHrc().value();
    double full = t.austenite().fullHrc(QuenchedSteel.ROOM_CELSIUS).value();
    return edge < full - HRC_NEAR
        ? Optional.of(
            new Conflict.SoftEdge(List.of(t.steel().id()), quench.quenchant().name(), edge, full))
        : Optional.empty();
  }

  private Conflict softMiddle(QuenchChoice.Response t) {
    return new Conflict.SoftMiddle(
        List.of(t.steel().id()),
        t.allowsSeconds(),
        t.result().coreSeconds8to5(),
        quench.quenchant().name(),
        t.result().edgeHrc().value(),
        t.result().coreHrc().value(),
        t.throughMetres(quench.section().widthMetres()),
        t.nearlyMetres(quench.section().widthMetres()),
        quench.quenchant().kind() == Quenchant.Kind.WATER);
  }

  private Optional<Conflict.DeepBesideShallow> deepBesideShallow() {
    List<QuenchChoice.Response> byDepth =
        quench.steels().stream()
            .sorted(Comparator.comparingDouble(t -> t.austenite().idealDiameterMetres()))
            .toList();
    QuenchChoice.Response shallow = byDepth.get(0);
    QuenchChoice.Response deep = byDepth.get(byDepth.size() - 1);
    return deep.austenite().idealDiameterMetres()
                > MUCH_DEEPER * shallow.austenite().idealDiameterMetres()
            && shallow.middle() == Hardens.NO
            && deep.middle() != Hardens.NO
        ? Optional.of(
            new Conflict.DeepBesideShallow(
                quench.quenchant().name(),
                quench.quenchant().kind() == Quenchant.Kind.WATER,
                inBath(shallow),
                inBath(deep)))
        : Optional.empty();
  }

  private static Conflict.InBath inBath(QuenchChoice.Response t) {
    return new Conflict.InBath(
        t.steel().id(), t.result().edgeHrc().value(), t.result().coreHrc().value());
  }

  private List<Conflict> ofTemper() {
    List<Conflict> all = new ArrayList<>();
    String edge = heat.edge().id();
    double edgeHrc = temper.hrc(heat.edge());
    if (Math.abs(edgeHrc - temper.wantedHrc()) > HRC_NEAR) {
      all.add(
          new Conflict.HardnessOutOfReach(
              List.of(edge),
              temper.wantedHrc(),
              edgeHrc,
              temper.quenchedHrc(heat.edge()),
              Optional.of(course.heats().hottestTemperCelsius())
                  .filter(most -> temper.celsius() >= most)));
    }
    for (HardeningHeat.Window w : heat.windows()) {
      double hrc = temper.hrc(w.steel());
      if (Math.abs(hrc - edgeHrc) > HRC_APART) {
        all.add(new Conflict.TemperParts(List.of(edge, w.steel().id()), edgeHrc, hrc));
      }
    }
    return all;
  }
}
