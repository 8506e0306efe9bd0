package seamsoak.billet;

import java.util.List;
import java.util.Optional;
import seamsoak.unit.Length;

/**
 * Turning the bar about its length. Its section keeps its profile; what lies off the middle is
 * drawn out along a helix and comes closer together.
 *
 * @param turns whole turns and parts of one
 * @param over length of the bar that is twisted
 * @param way which way it is turned, if stated; it makes no difference to the carbon
 */
public record Twist(
    Mark mark,
    double turns,
    Length over,
    Optional<Way> way,
    List<Heat> heats,
    Optional<Exposure> outside)
    implements Step {
  /** Which way a bar is turned, looking along it. */
  public enum Way {
    LEFT,
    RIGHT
  }

  @Override
  public Kind kind() {
    return Kind.TWIST;
  }

  public Twist {
    heats = List.copyOf(heats);
  }

  /** What becomes of a distance at a radius, of 1: a line along the bar grows to a helix. */
  public double shrinkAt(double radiusMetres) {
    double slope = 2 * Math.PI * radiusMetres * turns / over.metres();
    return 1 / Math.sqrt(1 + slope * slope);
  }
}
