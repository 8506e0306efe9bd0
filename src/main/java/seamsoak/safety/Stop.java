package seamsoak.safety;

/**
 * A step that must not be done as planned.
 *
 * @param step which: of the file or of the schedule
 * @param danger why not
 */
public record Stop(String step, Danger danger) {}
