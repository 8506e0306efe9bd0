package seamsoak.billet;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A step that was done, or finished, and differently from the plan where the file says so.
 *
 * @param on which day, if stated
 * @param planned the step as it was meant
 */
public record StepDone(Optional<LocalDate> on, Step planned) {}
