package seamsoak.heatlog;

/**
 * The thermocouple that wrote a log.
 *
 * @param wire its type and class
 * @param used whether it was used hot before
 */
public record Couple(Thermocouple wire, boolean used) {

  /** As a billet file has it, such as {@code K standard, used}. */
  public String written() {
    return wire.type() + " " + wire.grade() + (used ? ", used" : ", new");
  }
}
