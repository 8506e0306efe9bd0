package seamsoak.heatlog;

import java.util.Optional;
import seamsoak.billet.Exposure;
import seamsoak.billet.LoggedCurve.Tip;
import seamsoak.heat.Section;
import seamsoak.steel.Steel;

/**
 * What is known of a heat beside its log.
 *
 * @param steel that was in the fire
 * @param steelTold whether anybody said so
 * @param plannedC what the credit is counted at; the heat's own hold where it is not told
 * @param tip where the thermocouple was
 * @param couple what it was
 * @param section of the piece
 * @param loadedMinute when the piece was in, from the log's first row
 * @param removedMinute when it came out
 * @param face how it lay in the fire; open unless told
 */
public record HeatQuery(
    Steel steel,
    boolean steelTold,
    Optional<Double> plannedC,
    Optional<Tip> tip,
    Optional<Couple> couple,
    Optional<Section> section,
    Optional<Double> loadedMinute,
    Optional<Double> removedMinute,
    Optional<Exposure> face) {}
