package seamsoak.property.correlation;

import java.util.List;
import seamsoak.source.Exceeded;
import seamsoak.steel.Composition;

/** A published correlation, whatever it computes. */
public interface Published {
  /** What it says about itself. */
  Correlation correlation();

  /** The ranges of composition that an analysis leaves, empty when all hold. */
  default List<Exceeded> exceeded(Composition c) {
    return correlation().exceeded(c);
  }
}
