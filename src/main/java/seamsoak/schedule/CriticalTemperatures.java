package seamsoak.schedule;

import java.util.Optional;

/**
 * Critical temperatures of one steel with the carbon it has by then; those that it has not, or that
 * no formula reaches, are empty.
 *
 * @param steel its name
 * @param carbonPct carbon after the soak, wt%
 * @param ac1C lower critical temperature
 * @param upperC temperature above which all is austenite: Ac3, or Accm
 * @param upper which of the two it is
 * @param msC martensite start with all that carbon dissolved
 * @param magnetC where the magnet lets go on heating
 * @param magnetLowC lower end of that
 * @param magnetHighC upper end of that
 */
public record CriticalTemperatures(
    String steel,
    double carbonPct,
    Optional<Double> ac1C,
    Optional<Double> upperC,
    String upper,
    Optional<Double> msC,
    Optional<Double> magnetC,
    Optional<Double> magnetLowC,
    Optional<Double> magnetHighC) {}
