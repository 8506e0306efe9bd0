package seamsoak.words;

import java.util.stream.Collectors;
import seamsoak.schedule.Check;

/** What to look for, each check as a part of a sentence. */
record CheckWords(Amounts amounts) {
  private static final Sayings<CheckWords, Check, String> ALL =
      new Sayings<CheckWords, Check, String>(Check.class)
          .of(Check.Look.class, CheckWords::of)
          .of(Check.Color.class, CheckWords::of)
          .of(Check.Magnet.class, CheckWords::of)
          .of(Check.MagnetBelow.class, CheckWords::of)
          .of(Check.TestPiece.class, CheckWords::of)
          .of(Check.Coupons.class, (w, c) -> new UnknownMakeWords(w.amounts.units()).coupons(c))
          .of(Check.FinishGrinding.class, CheckWords::of)
          .complete();

  String says(Check check) {
    return ALL.say(this, check);
  }

  private String of(Check.Look check) {
    return switch (check) {
      case COLD_FILE_BITES ->
          "when it is cold a file bites; if the file skates it is hard: anneal it before anything"
              + " else";
      case BLACK_BEFORE_STEEL -> "black in shade before it touches steel or concrete";
      case CRACKS_AND_SEAMS -> "edges and ends for cracks and open seams";
      case THERMOCOUPLE_IN_KILN ->
          "a thermocouple beside the work, in a wrap or a light reducing fire";
      case THERMOCOUPLE_IN_FIRE ->
          "a thermocouple beside the work; count from when its color matches the fire";
      case NO_RED -> "no red in shade before the next heat";
      case EVEN_COLOR -> "color even through the section before you count";
      case NEVER_ABOVE -> "never above that heat: no color brighter than a dull red in shade";
      case STILL_MAGNETIC -> "a magnet still pulls; where it lets go it was too hot";
      case FILE_BITES -> "a file bites everywhere";
      case BOTH_FACES_ALIKE -> "measure both faces: as much off one as off the other";
      case FILE_FINDS_SKIN -> "a file bites alike all over; where it digs in, skin is left";
      case LIGHT_LINE ->
          "under a loupe: a light line is steel short of carbon; a black gap that holds etchant or"
              + " catches a needle is an open seam";
      case GRAY_BAND -> "a faint gray band may be pearlite: hardened steel tells better";
      case STRAIGHT -> "straight along spine and edge before and after; straighten now, not later";
      case DULL_RED_THROUGHOUT -> "the same dull red from edge to spine";
      case WATER_CRACKS ->
          "water and brine crack blades: no sharp inside corner, no scratch across the edge, edge"
              + " not thin yet";
      case FILE_SKATES ->
          "as soon as it can be held: a new file skates along the edge and a scriber leaves no"
              + " scratch; a soft spot is skin left on, or a slow quench";
      case GRAY_SILK -> "a test piece hardened alongside, broken before the tempers: gray silk";
      case NO_PINGING -> "no pinging; a piece that pings has cracked";
      case THERMOMETER -> "a thermometer beside the blade, not the oven's own";
      case FILE_BARELY_BITES -> "a file begins to bite, barely";
    };
  }

  private String of(Check.Color check) {
    return "color " + String.join(" or ", check.words()) + ", by which table you ask";
  }

  private String of(Check.Magnet check) {
    return check.steels().stream()
        .map(
            s ->
                s.steel()
                    + s.where()
                        .map(b -> " from " + amounts.between(b.lowC(), b.highC()))
                        .orElse(" does not pull at any such heat"))
        .collect(
            Collectors.joining(
                ", ", "the magnet lets go on the way up, ", ": far below this heat"));
  }

  private String of(Check.MagnetBelow check) {
    return "the last of the magnet's pull goes about "
        + amounts.apart(check.kelvin())
        + " below this heat: it tells when to watch, not when to quench";
  }

  private String of(Check.TestPiece check) {
    return "break a test piece hardened from "
        + amounts.heat(check.hardenC())
        + ": the fracture is like gray silk; if it is grainy, one more cycle";
  }

  private String of(Check.FinishGrinding check) {
    return (check.softMetres() < StepWords.NOTHING_METRES
            ? "finish grinding has no soft skin left to take off"
            : "finish grinding takes off the last "
                + amounts.length(check.softMetres())
                + " of soft skin")
        + "; keep it so cool that no color runs";
  }
}
