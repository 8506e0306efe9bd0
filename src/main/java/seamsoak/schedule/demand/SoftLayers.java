package seamsoak.schedule.demand;

import java.util.List;
import java.util.function.Predicate;
import seamsoak.billet.Billet;
import seamsoak.billet.Stack;
import seamsoak.billet.Step;
import seamsoak.steel.Steel;

/**
 * The steels of a blade that stay soft: against the smith's will, or as cladding is meant to.
 *
 * @param billet it is of
 * @param steels as they are by then
 * @param edge the steel that cuts
 * @param quenched those that the quench is for
 */
public record SoftLayers(Billet billet, List<SteelNow> steels, String edge, List<String> quenched) {
  /**
   * With more layers than these an edge shows all of them: a core between two jackets has three.
   */
  private static final int FEW_LAYERS = 5;

  /** Those that somebody has to do something about. */
  public List<Conflict> conflicts() {
    return steels.stream()
        .filter(this::isSoft)
        .filter(Predicate.not(this::isCladding))
        .<Conflict>map(
            s ->
                new Conflict.SoftLayer(
                    List.of(s.id()),
                    edge,
                    inTheEdge(),
                    s.lines().alwaysAustenite(),
                    s.steel().heatTreatment().harden().filter(r -> s.ownHeat()),
                    s.carbonPct()))
        .toList();
  }

  /** Those that are soft because they were bought soft, and lie beside what cuts. */
  public List<SteelNow> cladding() {
    return steels.stream().filter(this::isCladding).toList();
  }

  /** A hold may bring back carbon that was wanting when the heats were chosen. */
  private boolean isSoft(SteelNow s) {
    return !s.hardens() || !s.beyondFormulas() && !quenched.contains(s.id());
  }

  private boolean isCladding(SteelNow s) {
    boolean bought = isSoft(s) && !s.hardensAsBought() && !s.ownHeat();
    boolean cuts = billet.blade().cuts().filter(c -> c.id().equals(s.id())).isPresent();
    return bought && !cuts && !inTheEdge() && !isCore(s);
  }

  /** Whether the layers are so many that an edge ground through them holds all of them. */
  private boolean inTheEdge() {
    return billet.stack().layers() > FEW_LAYERS
        || billet.steps().stream()
            .anyMatch(s -> s instanceof Step.Restack || s instanceof Step.Tile);
  }

  /** Whether an edge ground from both flats ends in it and in nothing else. */
  private boolean isCore(SteelNow s) {
    Stack stack = billet.stack();
    Steel below = stack.steel((stack.layers() - 1) / 2);
    Steel above = stack.steel(stack.layers() / 2);
    return below.id().equals(s.id()) && above.id().equals(s.id());
  }
}
