package seamsoak.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import seamsoak.billet.Step;
import seamsoak.property.hardening.Quenchant;
import seamsoak.steel.TemperatureRange;

/**
 * What the steels of a blade do not agree on when it is hardened and tempered.
 *
 * @param course the piece
 * @param heat the hardening heat
 * @param quench the bath and what it does
 * @param temper the tempers
 */
record BladeConflicts(Course course, HardeningHeat heat, QuenchChoice quench, Tempering temper) {
  /** Tempered hardnesses further apart than this are worth a word, HRC; judgement. */
  private static final double HRC_APART = 4;

  /** Ideal diameters further apart than this ask for different baths; judgement. */
  private static final double MUCH_DEEPER = 2.5;

  /**
   * With more layers than these an edge shows all of them: a core between two jackets has three.
   */
  private static final int FEW_LAYERS = 5;

  List<Conflict> all() {
    List<Conflict> all = new ArrayList<>(ofHeat());
    course.steels().stream()
        .filter(Predicate.not(SteelNow::hardens))
        .map(this::soft)
        .forEach(all::add);
    all.addAll(ofQuench());
    all.addAll(ofTemper());
    return all;
  }

  private Conflict soft(SteelNow s) {
    return new Conflict.SoftLayer(
        List.of(s.id()),
        heat.edge().id(),
        inTheEdge(),
        s.lines().alwaysAustenite(),
        s.steel().heatTreatment().harden().filter(r -> s.ownHeat()),
        s.carbonPct());
  }

  /** Whether the layers are so many that an edge ground through them holds all of them. */
  private boolean inTheEdge() {
    return course.billet().stack().layers() > FEW_LAYERS
        || course.billet().steps().stream()
            .anyMatch(s -> s instanceof Step.Restack || s instanceof Step.Tile);
  }

  private List<Conflict> ofHeat() {
    if (!heat.agrees()) {
      return List.of(new Conflict.NoCommonHeat(heat.told(), heat.edge().id(), heat.celsius()));
    }
    return heat.windows().stream()
        .filter(w -> w.sheet().filter(this::outside).isPresent())
        .<Conflict>map(w -> new Conflict.HeatOutsideSheet(List.of(w.steel().id()), heat.celsius()))
        .toList();
  }

  private boolean outside(TemperatureRange sheet) {
    return heat.celsius() < sheet.lowC() - HardeningHeat.NEAR
        || heat.celsius() > sheet.highC() + HardeningHeat.NEAR;
  }

  private List<Conflict> ofQuench() {
    return Stream.concat(
            quench.steels().stream().filter(t -> t.middle() == Hardens.NO).map(this::softMiddle),
            deepBesideShallow().stream())
        .toList();
  }

  private Conflict softMiddle(QuenchChoice.Response t) {
    return new Conflict.SoftMiddle(
        List.of(t.steel().id()),
        t.allowsSeconds(),
        t.result().coreSeconds8to5(),
        quench.quenchant().name(),
        thickestMetres(t, "oil-fast"),
        thickestMetres(t, "brine"),
        t.steel().steel().heatTreatment().quench());
  }

  private static double thickestMetres(QuenchChoice.Response t, String id) {
    return t.thickestMetres(t.steel().k().hardening().quenchants().find(id).orElseThrow());
  }

  private Optional<Conflict> deepBesideShallow() {
    List<QuenchChoice.Response> deepest =
        quench.steels().stream()
            .sorted(Comparator.comparingDouble(t -> t.austenite().idealDiameterMetres()))
            .toList();
    QuenchChoice.Response shallow = deepest.get(0);
    QuenchChoice.Response deep = deepest.get(deepest.size() - 1);
    return deep.austenite().idealDiameterMetres()
                > MUCH_DEEPER * shallow.austenite().idealDiameterMetres()
            && quench.quenchant().kind() == Quenchant.Kind.WATER
        ? Optional.of(
            new Conflict.DeepBesideShallow(List.of(shallow.steel().id(), deep.steel().id())))
        : Optional.empty();
  }

  private List<Conflict> ofTemper() {
    List<Conflict> all = new ArrayList<>();
    String edge = heat.edge().id();
    double edgeHrc = temper.hrc(heat.edge());
    if (Math.abs(edgeHrc - temper.wantedHrc()) > 1) {
      all.add(new Conflict.HardnessOutOfReach(List.of(edge), temper.wantedHrc(), edgeHrc));
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
