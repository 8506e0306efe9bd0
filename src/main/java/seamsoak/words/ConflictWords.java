package seamsoak.words;

import java.util.List;
import java.util.stream.Collectors;
import seamsoak.schedule.demand.Conflict;
import seamsoak.steel.HeatTreatment;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.UnitSystem;
import seamsoak.words.ConflictWords.Sentences;

/** What the steels do not agree on, each with what to do about it. */
public record ConflictWords(UnitSystem units) {
  private static final Sayings<ConflictWords, Conflict, Sentences> ALL =
      new Sayings<ConflictWords, Conflict, Sentences>(Conflict.class)
          .of(Conflict.UnknownMade.class, ConflictWords::of)
          .of(Conflict.DisputedSheets.class, ConflictWords::of)
          .of(Conflict.JacketOn.class, ConflictWords::of)
          .of(Conflict.StainlessJacket.class, ConflictWords::of)
          .of(Conflict.HardAndSoftInAir.class, ConflictWords::of)
          .of(Conflict.NoKiln.class, ConflictWords::of)
          .of(Conflict.BeyondFormulas.class, ConflictWords::of)
          .of(Conflict.NothingHardens.class, ConflictWords::of)
          .of(Conflict.TooThin.class, ConflictWords::of)
          .of(Conflict.TooNarrow.class, ConflictWords::of)
          .of(Conflict.NoCommonHeat.class, ConflictWords::of)
          .of(Conflict.HeatOutsideSheet.class, ConflictWords::of)
          .of(Conflict.FerriteLeft.class, ConflictWords::of)
          .of(Conflict.SoftLayer.class, ConflictWords::of)
          .of(Conflict.NoBathWillDo.class, (w, c) -> w.bath().of(c))
          .of(Conflict.FlatForPlates.class, (w, c) -> w.bath().of(c))
          .of(Conflict.SoftEdge.class, (w, c) -> w.bath().of(c))
          .of(Conflict.SoftMiddle.class, (w, c) -> w.bath().of(c))
          .of(Conflict.SoftSeam.class, (w, c) -> w.bath().of(c))
          .of(Conflict.DeepBesideShallow.class, (w, c) -> w.bath().of(c))
          .of(Conflict.HardnessOutOfReach.class, (w, c) -> w.bath().of(c))
          .of(Conflict.TemperParts.class, (w, c) -> w.bath().of(c))
          .complete();

  /**
   * A conflict in words; neither sentence has a capital or a full stop.
   *
   * @param about such as {@code normalizing}, {@code hardening heat}
   * @param says what is the matter
   * @param todo what to do about it
   */
  public record Sentences(String about, String says, String todo) {
    /** Both as sentences. */
    public List<String> inFull() {
      return List.of(Sentence.capital(Sentence.ended(says)), "Do: " + Sentence.ended(todo));
    }
  }

  public Sentences said(Conflict conflict) {
    return ALL.say(this, conflict);
  }

  private Sentences of(Conflict.UnknownMade c) {
    UnknownMakeWords words = new UnknownMakeWords(units);
    return new Sentences(
        "stock of unknown make", words.says(c.mayBe()), "first of all: " + words.first(c.mayBe()));
  }

  private Sentences of(Conflict.DisputedSheets c) {
    return c.dispute().never()
        ? new Sentences(
            c.dispute().matter(),
            c.steel() + " must not be normalized: its sheets say to " + c.dispute().one(),
            "this schedule anneals it instead and "
                + (c.cycled()
                    ? "refines the others below where it changes"
                    : "leaves the cycles out, since the others are not refined below where it changes")
                + "; follow its own sheet for the hardening")
        : new Sentences(
            c.dispute().matter(),
            "the sheets of "
                + c.steel()
                + " disagree: "
                + c.dispute().one()
                + "; or "
                + c.dispute().other(),
            c.dispute().ofNormalizing()
                ? "this schedule takes the careful side: no cooling in air from above the critical"
                    + " range, slowly cooled cycles and an anneal; a sheet from whoever sold the"
                    + " bar comes before it"
                : "keep to where they agree, or to the cooler one");
  }

  private Sentences of(Conflict.JacketOn c) {
    return new Sentences(
        "jacket",
        "the jacket of " + c.steel() + " is still on the billet, and it makes no edge",
        "take it off before anything is hardened; this schedule keeps it on through the fires, which"
            + " saves the body from scale but not from losing carbon to the sheet, and grinds it off"
            + " with the skin below it");
  }

  private Sentences of(Conflict.StainlessJacket c) {
    return new Sentences(
        "jacket",
        "a jacket of "
            + c.steel()
            + " clashes with "
            + list(c.steels().subList(1, c.steels().size()))
            + ": its chromium oxide keeps it from welding shut in the open"
            + (c.tears() ? ", and it shrinks so much more that it tears loose on cooling" : ""),
        "take bare mild sheet; stainless does as foil that lines a can and is peeled off");
  }

  private Sentences of(Conflict.HardAndSoftInAir c) {
    return new Sentences(
        "cooling in air",
        list(c.hard())
            + (c.surely()
                ? c.hard().size() > 1 ? " harden" : " hardens"
                : " may harden, at least in part,")
            + " in still air in this section, while "
            + list(c.soft())
            + " stays soft: it swells as the other does not, and the welds are sheared",
        "cool it as slowly as the schedule says each time, and never lay it hard overnight");
  }

  private Sentences of(Conflict.NoKiln c) {
    return new Sentences(
        "no kiln",
        "a steel of it "
            + (c.surely() ? "hardens" : "may harden in part")
            + " in air, and neither ash nor vermiculite is sure to be slow enough: L6 left in ash was"
            + " found hard throughout",
        "have it annealed by someone with a kiln, or take steels that do not harden in air; the best"
            + " that a fire can do is in the schedule");
  }

  private Sentences of(Conflict.BeyondFormulas c) {
    HeatTreatment sheet = c.sheet();
    String apart =
        c.apart()
            ? "no heat suits them all: "
                + c.steel()
                + " hardens from "
                + sheet.harden().map(this::between).orElse("")
                + ", "
                + windows(c.others())
                + "; and "
            : "";
    String own =
        c.others().isEmpty()
            ? "go by its own sheet"
            : "this schedule is for the others, and leaves "
                + c.steel()
                + (c.partly() ? " hard in part at most" : " soft")
                + "; if that is what has to cut, go by its own sheet";
    String coarsens =
        c.others().isEmpty()
            ? ""
            : ", which coarsens " + list(c.others().stream().map(Conflict.Window::steel).toList());
    return new Sentences(
        "beyond the formulas",
        apart
            + "no formula here reaches as much alloy as "
            + c.steel()
            + " has, so its hardening and tempers are not worked out",
        own
            + sheet.harden().map(r -> ": harden from " + between(r)).orElse("")
            + sheet.quench().map(q -> " in " + q.words()).orElse("")
            + sheet.temper().map(r -> ", temper at " + between(r)).orElse("")
            + coarsens);
  }

  private Sentences of(Conflict.NothingHardens c) {
    return new Sentences(
        "nothing hardens",
        "no steel of it has the carbon to harden",
        "the schedule ends with the cycles; for a blade put a high-carbon steel at the edge");
  }

  private Sentences of(Conflict.TooThin c) {
    return new Sentences(
        "grinding allowance",
        "the billet is too thin for the blade: "
            + amounts().length(c.offMetres())
            + " of what would stay soft has to come off each flat, and with that off "
            + amounts().length(c.leftMetres())
            + " is left",
        "leave the next billet thicker, cover it in the fire, or make the blade thinner; soft skin"
            + " left on does not hold an edge");
  }

  private Sentences of(Conflict.TooNarrow c) {
    return new Sentences(
        "grinding allowance",
        "the billet is too narrow for the blade: "
            + amounts().length(c.offMetres())
            + " of what would stay soft has to come off each side, and with that off "
            + amounts().length(c.leftMetres())
            + " is left",
        "take all of the side at the edge down to hard metal, and make the blade narrower; a spine"
            + " may keep some of it");
  }

  private Sentences of(Conflict.NoCommonHeat c) {
    return new Sentences(
        "hardening heat",
        "no heat suits them all: " + windows(c.windows()),
        amounts().heat(c.celsius())
            + " is right for "
            + c.edge()
            + " at the edge, as near the others as it allows; harden and break a test piece, and"
            + " next time pair steels that share a range");
  }

  private Sentences of(Conflict.HeatOutsideSheet c) {
    return new Sentences(
        "hardening heat",
        amounts().heat(c.celsius()) + " lies outside the published range of " + c.steel(),
        "its carbon has moved since, and with it the heat it needs; try a test piece");
  }

  private Sentences of(Conflict.FerriteLeft c) {
    return new Sentences(
        "ferrite left",
        Amounts.format(
            "%s leaves at least %.0f %% ferrite in %s, which is all austenite only from about %s:"
                + " expect %.0f to %.0f HRC with soft spots, not %.0f",
            amounts().heat(c.celsius()),
            c.ferritePct(),
            c.steel(),
            amounts().heat(c.ac3C()),
            c.hrc().low(),
            c.hrc().high(),
            c.fullHrc().value()),
        "keep it away from the edge, or harden hotter where the other steels allow it; a hold of ten"
            + " minutes and more brings it down to that share, not below");
  }

  private Sentences of(Conflict.SoftLayer c) {
    return new Sentences(
        "soft layer",
        c.never()
            ? c.steel() + " does not harden at any heat"
            : Amounts.format(
                "%s will not harden%s: it has %.2f %% carbon by then",
                c.steel(),
                c.ownHeat().map(r -> " below the heat of its own sheet, " + between(r)).orElse(""),
                c.carbonPct()),
        c.inTheEdge()
            ? "in so many layers it lies in the edge too, stays soft there and wears first; where the"
                + " edge must be hard, lay a core of "
                + c.edge()
                + " through it, or put a steel with more carbon in its place"
            : "keep it away from the edge: grind so that "
                + c.edge()
                + " is what cuts, and test with a file there");
  }

  private BathConflictWords bath() {
    return new BathConflictWords(amounts());
  }

  private Amounts amounts() {
    return new Amounts(units);
  }

  private static String list(List<String> steels) {
    return String.join(", ", steels);
  }

  /** From where to where each steel hardens. */
  private String windows(List<Conflict.Window> windows) {
    return windows.stream()
        .map(w -> w.steel() + " from " + amounts().between(w.lowC(), w.highC()))
        .collect(Collectors.joining(", "));
  }

  private String between(TemperatureRange range) {
    return amounts().between(range.lowC(), range.highC());
  }
}
