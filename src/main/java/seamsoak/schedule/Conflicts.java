package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.schedule.ScheduleAdvice.Conflict;
import seamsoak.steel.Dispute;
import seamsoak.steel.HeatTreatment;

/**
 * What the steels of a billet, or their sheets, do not agree on before the blade is ground, each
 * with what to do about it.
 *
 * @param course the piece
 * @param guard how it has to be cooled after forging
 */
record Conflicts(Course course, Guard guard) {
  List<Conflict> all() {
    List<SteelNow> steels = course.steels();
    List<Conflict> all = new ArrayList<>();
    for (SteelNow s : steels) {
      for (Dispute d : s.steel().disputes()) {
        all.add(dispute(s, d));
      }
    }
    course
        .piece()
        .jacket()
        .filter(j -> BenchWork.jacketed(course.piece()))
        .map(j -> jacket(j.name()))
        .ifPresent(all::add);
    airAndSoft(steels).ifPresent(all::add);
    if (guard.way() != Guard.Way.AIR && !course.heats().kiln()) {
      all.add(
          new Conflict(
              "no kiln",
              names(steels),
              "a steel of it "
                  + (guard.slow() ? "hardens" : "may harden in part")
                  + " in air, and neither ash nor vermiculite is sure to be slow enough: L6 left in"
                  + " ash was found hard throughout",
              "have it annealed by someone with a kiln, or take steels that do not harden in air; the"
                  + " best that a fire can do is in the schedule"));
    }
    for (SteelNow s : steels) {
      if (s.hardens() && s.beyondFormulas()) {
        all.add(beyond(s));
      }
    }
    if (steels.stream().noneMatch(SteelNow::hardens)) {
      all.add(
          new Conflict(
              "nothing hardens",
              names(steels),
              "no steel of it has the carbon to harden",
              "the schedule ends with the cycles; for a blade put a high-carbon steel at the edge"));
    }
    return all;
  }

  private static Conflict jacket(String steel) {
    return new Conflict(
        "jacket",
        List.of(steel),
        "the jacket of " + steel + " is still on the billet, and it makes no edge",
        "take it off before anything is hardened; this schedule keeps it on through the fires, which"
            + " saves the body from scale but not from losing carbon to the sheet, and grinds it off"
            + " with the skin below it");
  }

  private static Conflict dispute(SteelNow s, Dispute d) {
    return d.never()
        ? new Conflict(
            d.matter(),
            List.of(s.id()),
            s.id() + " must not be normalized: its sheets say to " + d.one(),
            "this schedule anneals it instead and leaves the cycles out; follow its own sheet for"
                + " the hardening")
        : new Conflict(
            d.matter(),
            List.of(s.id()),
            "the sheets of " + s.id() + " disagree: " + d.one() + "; or " + d.other(),
            d.matter().equals(Dispute.NORMALIZING)
                ? "this schedule takes the careful side: no cooling in air from above the critical"
                    + " range, kiln-cooled cycles and a full anneal; a sheet from whoever sold the"
                    + " bar comes before it"
                : "keep to where they agree, or to the cooler one");
  }

  private Conflict beyond(SteelNow s) {
    HeatTreatment sheet = s.steel().heatTreatment();
    Optional<HardeningHeat> other = HardeningHeat.of(course.steels(), Optional.empty());
    String apart =
        other
            .filter(h -> sheet.harden().filter(r -> r.lowC() > h.celsius()).isPresent())
            .map(
                h ->
                    "no heat suits them all: "
                        + s.id()
                        + " hardens from "
                        + sheet.harden().map(course::between).orElse("")
                        + ", "
                        + BladeConflicts.windows(course, h.windows())
                        + "; and ")
            .orElse("");
    return new Conflict(
        "beyond the formulas",
        List.of(s.id()),
        apart
            + "no formula here reaches as much alloy as "
            + s.id()
            + " has, so its hardening and tempers are not worked out",
        (other.isPresent()
                ? "this schedule is for the others, and leaves "
                    + s.id()
                    + " soft; if that is what has to cut, go by its own sheet"
                : "go by its own sheet")
            + sheet.harden().map(r -> ": harden from " + course.between(r)).orElse("")
            + sheet.quench().map(q -> " in " + q).orElse("")
            + sheet.temper().map(r -> ", temper at " + course.between(r)).orElse("")
            + other
                .map(
                    h ->
                        ", which coarsens "
                            + String.join(
                                ", ", h.windows().stream().map(w -> w.steel().id()).toList()))
                .orElse(""));
  }

  private Optional<Conflict> airAndSoft(List<SteelNow> steels) {
    List<String> hard = new ArrayList<>();
    List<String> soft = new ArrayList<>();
    boolean all = true;
    double celsius = Cycles.normalizeCelsius(steels);
    for (SteelNow s : steels) {
      Hardens air = s.inAir(course.heats().section(), celsius, course.grainNumber());
      (air == Hardens.NO ? soft : hard).add(s.id());
      all &= air != Hardens.PERHAPS;
    }
    return hard.isEmpty() || soft.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Conflict(
                "cooling in air",
                names(steels),
                String.join(", ", hard)
                    + (all
                        ? hard.size() > 1 ? " harden" : " hardens"
                        : " may harden, at least in part,")
                    + " in still air in this section, while "
                    + String.join(", ", soft)
                    + " stays soft: it swells as the other does not, and the welds are sheared",
                "cool it as slowly as the schedule says each time, and never lay it hard overnight"));
  }

  private static List<String> names(List<SteelNow> steels) {
    return steels.stream().map(SteelNow::id).toList();
  }
}
