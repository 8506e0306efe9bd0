package seamsoak.pairing;

import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.property.hardening.Quenchant;
import seamsoak.steel.Element;

/** What a finding rests on besides the numbers of the two steels. */
public sealed interface Why {
  /** The numbers tell it all. */
  Why NUMBERS = new Numbers();

  /** The name of a steel tells it; there is no number. */
  Why NAME = new Name();

  record Numbers() implements Why {}

  record Name() implements Why {}

  /** What the steels hold of an element. */
  record Content(Element element) implements Why {}

  /** Something that each steel does or does not do; what, the check says. */
  record Each(boolean first, boolean second) implements Why {}

  /** At a heat. */
  record At(double celsius) implements Why {}

  /** From one heat to another. */
  record Between(double lowC, double highC) implements Why {}

  /** Carbon in solution at a heat. */
  record Dissolved(double celsius, double firstPct, double secondPct) implements Why {}

  /** Hardness as quenched; empty where a steel stays soft whatever is done. */
  record AsQuenched(OptionalDouble firstHrc, OptionalDouble secondHrc) implements Why {}

  /**
   * Layers after the first weld heats.
   *
   * @param evenPct how far they have come to even
   */
  record Welded(int heats, double minutes, double firstMetres, double secondMetres, double evenPct)
      implements Why {}

  /** What each is quenched in for a section of its own, and both in one. */
  record Quenches(double sectionMetres, In first, In second, Quenchant both) implements Why {}

  /** What a steel comes out of a bath with; empty where it has too much alloy to tell. */
  record In(Quenchant bath, Optional<Hardness> hardness) {}

  /** HRC as quenched, at a thin edge and in the middle. */
  record Hardness(double edgeHrc, double coreHrc) {}

  /** The depth of hardening that a section needs to harden in still air. */
  record Air(double sectionMetres, double neededMetres) implements Why {}

  /** How strong a contrast is. */
  enum Contrast implements Why {
    HARDLY_ANY,
    SOME,
    STRONG
  }
}
