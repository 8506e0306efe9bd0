package seamsoak.billet;

import java.util.Optional;
import seamsoak.data.Place;
import seamsoak.unit.Temperature;

/**
 * A quenchant at hand.
 *
 * @param kind its id in the table of quenchants
 * @param at how warm it is kept, if stated
 * @param flash flash point on its label, if stated
 * @param place where it stands in the file
 */
public record Bath(
    String kind, Optional<Temperature> at, Optional<Temperature> flash, Place place) {}
