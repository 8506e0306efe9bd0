package seamsoak.safety;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import seamsoak.billet.Bath;
import seamsoak.billet.Billet;
import seamsoak.billet.Cooling;
import seamsoak.billet.Equipment;
import seamsoak.billet.Exposure;
import seamsoak.billet.Heat;
import seamsoak.billet.Jacket;
import seamsoak.billet.Step;
import seamsoak.property.hardening.QuenchantTable;
import seamsoak.source.Caution;
import seamsoak.state.HeatRisk;
import seamsoak.steel.Element;
import seamsoak.steel.Hardenability;
import seamsoak.steel.Steel;

/**
 * The cautions of the steps of a billet and of its schedule.
 *
 * @param table all cautions
 * @param billet which says what the shop has
 * @param quenchants the table of them
 */
public record StepCautions(CautionTable table, Billet billet, QuenchantTable quenchants) {
  private static final double HOT_CELSIUS = 1100;

  /** Content from which a steel counts as alloyed with nickel or chromium, wt%. */
  private static final double ALLOYED_PCT = 1;

  /**
   * For the stack, then for each step of a billet; a jacket or a can counts until it is off.
   *
   * @param risks of its heats, likewise
   */
  public List<List<Caution>> ofHistory(List<List<HeatRisk>> risks) {
    List<List<Caution>> all = new ArrayList<>(List.of(List.of()));
    Set<Condition> wrapped = Set.of();
    for (Step step : billet.steps()) {
      Set<Condition> during = during(step, wrapped);
      Set<Condition> conditions = new HashSet<>(during);
      conditions.addAll(own(step));
      if (!step.heats().isEmpty()) {
        conditions.addAll(fire());
      }
      if (risks.get(step.mark().number()).stream().anyMatch(StepCautions::burns)) {
        conditions.add(Condition.BURNING);
      }
      double hottest =
          step.heats().stream().map(Heat::hottest).mapToDouble(t -> t.celsius()).max().orElse(0);
      all.add(at(CautionStep.of(step), hottest, conditions));
      wrapped = after(step, during);
    }
    return List.copyOf(all);
  }

  private static boolean burns(HeatRisk risk) {
    return risk.kind() == HeatRisk.Kind.MELTS || risk.kind() == HeatRisk.Kind.MAY_BURN;
  }

  /** What a jacket that is still on when the schedule begins brings along. */
  public Set<Condition> leftOn() {
    Set<Condition> on = Set.of();
    for (Step step : billet.steps()) {
      on = jacketOf(after(step, during(step, on)));
    }
    return on;
  }

  /** What the work is wrapped in while a step is done; tiles are laid in their jacket. */
  private static Set<Condition> during(Step step, Set<Condition> before) {
    return switch (step.kind()) {
      case TILE ->
          ((Step.Tile) step)
              .jacket()
              .map(Jacket::coatingTaken)
              .map(Condition::ofJacket)
              .orElse(Set.of());
      case WELD -> isSealed((Step.Weld) step) ? with(before, Condition.SEALED_CAN) : before;
      case DRAW,
          PRESS,
          ROLL,
          TWIST,
          GRIND,
          RESTACK,
          UNJACKET,
          SOAK,
          ANNEAL,
          NORMALIZE,
          REFINE,
          RELIEVE,
          HARDEN,
          TEMPER,
          COOL ->
          before;
    };
  }

  /** What is still wrapped about it after a step. */
  private Set<Condition> after(Step step, Set<Condition> during) {
    return switch (step.kind()) {
      case UNJACKET -> Set.of();
      case GRIND ->
          ((Step.Grind) step).depth().metres() >= thickestSheetMetres()
              ? Set.of()
              : jacketOf(during);
      case WELD,
          DRAW,
          PRESS,
          ROLL,
          TWIST,
          RESTACK,
          TILE,
          SOAK,
          ANNEAL,
          NORMALIZE,
          REFINE,
          RELIEVE,
          HARDEN,
          TEMPER,
          COOL ->
          during;
    };
  }

  /** What a step brings about by itself. */
  private Set<Condition> own(Step step) {
    return switch (step.kind()) {
      case WELD ->
          ((Step.Weld) step).facesTaken() == Exposure.COVERED ? Set.of(Condition.FLUX) : Set.of();
      case RESTACK -> sealedNext(step) ? Set.of(Condition.SEALED_CAN) : Set.of();
      case COOL -> ((Step.Cool) step).in() == Cooling.QUENCH ? baths() : Set.of();
      case HARDEN -> ofBath(((Step.Harden) step).in());
      case DRAW,
          PRESS,
          ROLL,
          TWIST,
          GRIND,
          TILE,
          UNJACKET,
          SOAK,
          ANNEAL,
          NORMALIZE,
          REFINE,
          RELIEVE,
          TEMPER ->
          Set.of();
    };
  }

  private double thickestSheetMetres() {
    return billet.steps().stream()
        .filter(Step.Tile.class::isInstance)
        .flatMap(s -> ((Step.Tile) s).jacket().stream())
        .mapToDouble(j -> j.thickness().metres())
        .max()
        .orElse(0);
  }

  private static Set<Condition> jacketOf(Set<Condition> some) {
    Set<Condition> all = new HashSet<>(some);
    all.remove(Condition.SEALED_CAN);
    return all;
  }

  /** Whether the weld after a step is in a can, so that the pieces are laid for one. */
  private boolean sealedNext(Step step) {
    int next = step.mark().number();
    return next < billet.steps().size()
        && billet.steps().get(next) instanceof Step.Weld w
        && isSealed(w);
  }

  private static boolean isSealed(Step.Weld weld) {
    return weld.can().isPresent() || weld.facesTaken() == Exposure.SEALED;
  }

  /**
   * For a step whose heat and conditions are known.
   *
   * @param celsius the hottest it gets
   * @param more what holds there beside what always holds in this shop
   */
  public List<Caution> at(CautionStep step, double celsius, Set<Condition> more) {
    return table.at(step, with(more, always(celsius).toArray(Condition[]::new)));
  }

  private static Set<Condition> with(Set<Condition> some, Condition... more) {
    Set<Condition> all = new HashSet<>(some);
    all.addAll(List.of(more));
    return all;
  }

  /** What the forge brings along. */
  public Set<Condition> fire() {
    return billet.equipment().forgeTaken() == Equipment.Forge.GAS
        ? Set.of(Condition.GAS_FORGE)
        : Set.of();
  }

  /** What the quenchants at hand bring along, when it is not said which is used. */
  private Set<Condition> baths() {
    Set<Condition> all = new HashSet<>();
    billet.quenchantsTaken().forEach(b -> all.addAll(ofBath(b)));
    return all;
  }

  private Set<Condition> ofBath(Bath bath) {
    return quenchants.find(bath.kind()).map(Condition::ofBath).orElse(Set.of());
  }

  /** What holds at every step in this shop. */
  private Set<Condition> always(double celsius) {
    Set<Condition> all = EnumSet.noneOf(Condition.class);
    if (billet.equipment().shopTaken() == Equipment.Room.CLOSED) {
      all.add(Condition.INDOORS);
    }
    if (billet.equipment().descaleTaken() == Equipment.Descale.ACID) {
      all.add(Condition.ACID);
    }
    if (celsius > HOT_CELSIUS) {
      all.add(Condition.HOT);
    }
    for (Steel steel : billet.stack().steels()) {
      if (steel.analysis().percent(Element.NI) >= ALLOYED_PCT) {
        all.add(Condition.NICKEL);
      }
      if (steel.analysis().percent(Element.CR) >= ALLOYED_PCT) {
        all.add(Condition.CHROMIUM);
      }
      if (steel.hardenability().map(h -> h == Hardenability.AIR).orElse(false)
          || !steel.disputes().isEmpty()) {
        all.add(Condition.AIR_HARDENING);
      }
    }
    return all;
  }
}
