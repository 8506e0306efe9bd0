package seamsoak.billet;

import java.util.List;
import java.util.Optional;
import seamsoak.unit.Percent;
import seamsoak.unit.UnitSystem;

/**
 * A billet file as written: the stack, what is done to it, and what is asked.
 *
 * @param name as stated, or the name of the file
 * @param units that it is written in, if stated; its answers are shown in them
 * @param stack the pieces before the first weld
 * @param steps in their order, at least one
 * @param soak what is allowed for the soak
 * @param blade what it becomes
 * @param equipment what the shop has
 * @param quenchants what there is to quench in; none when not stated
 * @param shown the face the pattern will be looked at on, if stated
 * @param visible from when a line counts
 * @param covered how far the fire reaches a covered face, of an open one, if stated
 * @param oldWords that the file says otherwise than one would today
 */
public record Billet(
    String name,
    Optional<UnitSystem> units,
    Stack stack,
    List<Step> steps,
    SoakWish soak,
    Blade blade,
    Equipment equipment,
    List<Bath> quenchants,
    Optional<Face> shown,
    Visible visible,
    Optional<Percent> covered,
    List<OldWord> oldWords) {
  public Billet {
    oldWords = List.copyOf(oldWords);
    steps = List.copyOf(steps);
    quenchants = List.copyOf(quenchants);
  }

  /** The same with only the first steps. */
  public Billet first(int count) {
    return with(stack, steps.subList(0, count));
  }

  /** The same of another stack. */
  public Billet with(Stack other) {
    return with(other, steps);
  }

  private Billet with(Stack laid, List<Step> done) {
    return new Billet(
        name,
        units,
        laid,
        done,
        soak,
        blade,
        equipment,
        quenchants,
        shown,
        visible,
        covered,
        oldWords);
  }

  /** The share stated, or the default. */
  public Percent coveredTaken() {
    return covered.orElse(Defaults.COVERED);
  }

  /** The quenchants stated, or the default one. */
  public List<Bath> quenchantsTaken() {
    return quenchants.isEmpty() ? Defaults.QUENCHANTS : quenchants;
  }
}
