package seamsoak.billet;

import java.util.List;
import java.util.Optional;
import seamsoak.data.Place;
import seamsoak.steel.Steel;
import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;

/**
 * The pieces before the first weld. Steels follow one another and begin again after the last.
 *
 * @param layers how many pieces lie on one another
 * @param steels at least one
 * @param thicknesses one for each steel
 * @param width of every piece
 * @param length of every piece
 * @param units that its sizes are written in
 * @param skin depth of the decarburized skin that the stock brings along, if stated
 * @param place where it stands in the file
 */
public record Stack(
    int layers,
    List<Steel> steels,
    List<Length> thicknesses,
    Length width,
    Length length,
    UnitSystem units,
    Optional<Length> skin,
    Place place) {
  private static final int FEW = 3;

  public Stack {
    steels = List.copyOf(steels);
    thicknesses = List.copyOf(thicknesses);
  }

  /** The same of longer or shorter pieces. */
  public Stack ofLength(Length other) {
    return new Stack(layers, steels, thicknesses, width, other, units, skin, place);
  }

  /** The steel of a layer, counted from 0. */
  public Steel steel(int layer) {
    return steels.get(layer % steels.size());
  }

  /** The thickness of a layer, counted from 0. */
  public Length thickness(int layer) {
    return thicknesses.get(layer % thicknesses.size());
  }

  /** The thickness of the whole stack. */
  public Length thickness() {
    double metres = 0;
    for (int i = 0; i < layers; i++) {
      metres += thickness(i).metres();
    }
    return new Length(metres);
  }

  /**
   * How much a layer counts in the mean of the body. Of an outer layer among many its outer half
   * goes to the fire, and inside every face has another layer beside it; a few layers count whole.
   */
  double shareInBody(int layer) {
    boolean outer = layer == 0 || layer == layers - 1;
    return outer && layers > FEW ? 0.5 : 1;
  }

  /** The skin stated, or the default. */
  public Length skinTaken() {
    return skin.orElse(Defaults.SKIN);
  }
}
