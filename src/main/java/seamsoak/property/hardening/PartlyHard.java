package seamsoak.property.hardening;

/**
 * Steel of which only part became martensite: by Vickers hardness it lies between the two, and a
 * temper softens the martensite only, since what did not harden was formed hotter than any temper.
 *
 * @param conversion Rockwell against Vickers
 * @param fullHrc hardness where all is martensite, untempered
 * @param softHrc hardness of what did not harden
 * @param quenchedHrc hardness as quenched
 */
public record PartlyHard(AstmE140 conversion, double fullHrc, double softHrc, double quenchedHrc) {

  /** Hardness after a temper. */
  public double tempered(double fullTemperedHrc) {
    if (softHrc >= fullTemperedHrc) {
      return Math.min(quenchedHrc, fullTemperedHrc);
    }
    double soft = conversion.vickers(softHrc);
    return conversion.hrc(soft + share() * (conversion.vickers(fullTemperedHrc) - soft));
  }

  /** What the martensite has to be tempered to for a hardness of the whole. */
  public double wanted(double hrc) {
    double soft = conversion.vickers(softHrc);
    return share() == 0
        ? fullHrc
        : Math.min(fullHrc, conversion.hrc(soft + (conversion.vickers(hrc) - soft) / share()));
  }

  /** Share of martensite, from 0 to 1. */
  private double share() {
    double soft = conversion.vickers(softHrc);
    double full = conversion.vickers(fullHrc);
    return full <= soft
        ? 1
        : Math.max(0, Math.min(1, (conversion.vickers(quenchedHrc) - soft) / (full - soft)));
  }
}
