package seamsoak.billet;

import java.util.List;
import java.util.Optional;
import seamsoak.data.Place;
import seamsoak.steel.Steel;
import seamsoak.unit.Length;

/**
 * The pieces before the first weld. Steels follow one another and begin again after the last.
 *
 * @param layers how many pieces lie on one another
 * @param steels at least one
 * @param thicknesses one for each steel
 * @param width of every piece
 * @param length of every piece
 * @param skin depth of the decarburized skin that the stock brings along, if stated
 * @param place where it stands in the file
 */
public record Stack(
    int layers,
    List<Steel> steels,
    List<Length> thicknesses,
    Length width,
    Length length,
    Optional<Length> skin,
    Place place) {
  public Stack {
    steels = List.copyOf(steels);
    thicknesses = List.copyOf(thicknesses);
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

  /** The skin stated, or the default. */
  public Length skinTaken() {
    return skin.orElse(Defaults.SKIN);
  }
}
