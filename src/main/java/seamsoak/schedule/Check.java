package seamsoak.schedule;

import java.util.List;
import java.util.Optional;
import seamsoak.pairing.MayBe;

/** What a smith can look for at a step. */
public sealed interface Check {
  /** Those without a number. */
  enum Look implements Check {
    COLD_FILE_BITES,
    BLACK_BEFORE_STEEL,
    CRACKS_AND_SEAMS,
    THERMOCOUPLE_IN_KILN,
    THERMOCOUPLE_IN_FIRE,
    NO_RED,
    EVEN_COLOR,
    NEVER_ABOVE,
    STILL_MAGNETIC,
    FILE_BITES,
    BOTH_FACES_ALIKE,
    FILE_FINDS_SKIN,
    LIGHT_LINE,
    GRAY_BAND,
    STRAIGHT,
    DULL_RED_THROUGHOUT,
    WATER_CRACKS,
    FILE_SKATES,
    GRAY_SILK,
    NO_PINGING,
    THERMOMETER,
    FILE_BARELY_BITES;
  }

  /** Its color, in all the words that tables have for it. */
  record Color(List<String> words) implements Check {}

  /** Where each steel lets go of the magnet on the way up. */
  record Magnet(List<Release> steels) implements Check {
    /** Where a steel does, or never held it. */
    public record Release(String steel, Optional<Between> where) {}

    /** A range of temperature. */
    public record Between(double lowC, double highC) {}
  }

  /** How far below the heat the last of the magnet's pull goes. */
  record MagnetBelow(double kelvin) implements Check {}

  /** A piece hardened and broken. */
  record TestPiece(double hardenC) implements Check {}

  /**
   * Coupons to harden first, of stock of unknown make.
   *
   * @param reckonedAs the grade whose heat is taken
   * @param hardenC from where to where it may harden
   */
  record Coupons(String stock, String reckonedAs, MayBe.Span hardenC) implements Check {}

  /** The soft skin that the heats since grinding have left on the flats. */
  record FinishGrinding(double softMetres) implements Check {}
}
