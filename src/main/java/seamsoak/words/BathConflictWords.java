package seamsoak.words;

import seamsoak.schedule.demand.Conflict;
import seamsoak.words.ConflictWords.Sentences;

/** What does not fit in the quench and in the tempers, each with what to do about it. */
record BathConflictWords(Amounts amounts) {
  Sentences of(Conflict.NoBathWillDo c) {
    return new Sentences(
        "quenchant",
        c.mayCrack()
            ? String.join(", ", c.steels())
                + (c.steels().size() > 1 ? " are" : " is")
                + " not for a bath as fast as water, whose crack may show only in the tempers, and of "
                + String.join(", ", c.atHand())
                + " nothing gentler hardens an edge"
            : "in " + String.join(", ", c.atHand()) + " not even a thin edge hardens",
        "get oil before anything is hardened: this schedule is for "
            + c.instead()
            + " at "
            + amounts.heat(c.celsius())
            + ", a few liters for a blade; a fast quench oil is better still");
  }

  Sentences of(Conflict.FlatForPlates c) {
    return new Sentences(
        "quenchant",
        c.bath() + " cool only what they touch, so they harden a flat blade and no bevels",
        "leave the blade flat until it is hard and grind the bevels after the tempers, wet and cool;"
            + " or get oil");
  }

  Sentences of(Conflict.SoftEdge c) {
    return new Sentences(
        "soft edge",
        Amounts.format(
            "even a thin edge of %s comes out of %s at about %.0f HRC, where it could be %.0f",
            c.steel(), c.bath(), c.edgeHrc(), c.fullHrc()),
        "move the blade briskly in the bath and try a test piece; for more take a faster oil, or a"
            + " steel that hardens more deeply, or one that keeps more of its carbon");
  }

  Sentences of(Conflict.SoftMiddle c) {
    return new Sentences(
        "quench speed",
        Amounts.format(
            "the middle of %s will not harden in this section: to be hard throughout it has to fall"
                + " from %s to %s within %.1f s, and it takes about %.1f s in %s, so it stays at"
                + " about %.0f HRC, while a thin edge comes out at about %.0f",
            c.steel(),
            amounts.heat(800),
            amounts.heat(500),
            c.allowsSeconds(),
            c.takesSeconds(),
            c.bath(),
            c.coreHrc(),
            c.edgeHrc()),
        c.water()
            ? "it is hard throughout where it is no thicker than about "
                + thickness(c)
                + "; a hard skin over a tough middle is what serves a hammer or an ax"
            : "for a blade be content: the edge cuts, and a softer spine is tough. Where the spine has"
                + " to be hard too, keep it under "
                + thickness(c)
                + ", or take a steel that hardens more deeply; a faster bath cracks it");
  }

  /** Where it is hard throughout, and where it may be. */
  private String thickness(Conflict.SoftMiddle c) {
    return amounts.length(c.throughMetres())
        + " (to "
        + amounts.length(c.nearlyMetres())
        + " it may be: a test piece tells)";
  }

  Sentences of(Conflict.SoftSeam c) {
    return new Sentences(
        "soft seams",
        Amounts.format(
            "the middle of %s may harden in %s where a seam with %.2f %% carbon for %.2f does not:"
                + " to be hard that has to fall from %s to %s within %.1f s, and it takes about %.1f s,"
                + " so some of it turns to pearlite, which is soft and etches dark, not white",
            c.steel(),
            c.bath(),
            c.seamPct(),
            c.pct(),
            amounts.heat(800),
            amounts.heat(500),
            c.allowsSeconds(),
            c.takesSeconds()),
        "clear the lines before: a dark line in the hardened blade says what a white one says in the"
            + " soft one, that carbon is missing there");
  }

  Sentences of(Conflict.DeepBesideShallow c) {
    return new Sentences(
        "depth of hardening",
        c.deep().steel()
            + " hardens far more deeply than "
            + c.shallow().steel()
            + ": out of "
            + c.bath()
            + " "
            + inBath(c.deep())
            + ", "
            + inBath(c.shallow()),
        (c.water()
                ? "water is the bath of both, and no faster one, such as brine, for the sake of the"
                    + " middle"
                : "the deeper one says what bath: no faster one for the sake of the other, which"
                    + " would crack it")
            + ". The edge is as hard as told; in the spine hard and soft layers swell apart, so"
            + " temper within the hour, and pair steels of like depth where the spine counts");
  }

  Sentences of(Conflict.HardnessOutOfReach c) {
    if (c.ovenC().isPresent()) {
      return new Sentences(
          "hardness",
          Amounts.format(
              "%.0f HRC at the edge wants a hotter temper than an oven holds, and no forge holds one"
                  + " for hours: from %s it comes to about %.0f",
              c.wantedHrc(), amounts.heat(c.ovenC().get()), c.comesToHrc()),
          "have it tempered by someone with a kiln; harder than asked it is the more brittle");
    }
    boolean quench = c.quenchedHrc() < c.wantedHrc();
    return new Sentences(
        "hardness",
        quench
            ? Amounts.format(
                "%.0f HRC at the edge cannot be had: it comes out of the quench at about %.0f, and"
                    + " out of the tempers at about %.0f",
                c.wantedHrc(), c.quenchedHrc(), c.comesToHrc())
            : Amounts.format(
                "%.0f HRC at the edge cannot be had within the tempers its sheet allows: it comes to"
                    + " about %.0f",
                c.wantedHrc(), c.comesToHrc()),
        c.comesToHrc() < c.wantedHrc()
            ? "be content with that, or put a steel with more carbon at the edge"
            : "temper hotter in small steps on a test piece, watching what its sheet says of"
                + " brittleness");
  }

  Sentences of(Conflict.TemperParts c) {
    return new Sentences(
        "temper",
        Amounts.format(
            "the same temper leaves %s at about %.0f HRC and %s at about %.0f",
            c.steel(), c.edgeHrc(), c.steels().get(1), c.otherHrc()),
        "the edge decides; where both lie in the edge it wears unevenly, which some want");
  }

  private static String inBath(Conflict.InBath b) {
    return Amounts.format(
        "%s comes at about %.0f HRC at a thin edge and %.0f in the middle",
        b.steel(), b.edgeHrc(), b.coreHrc());
  }
}
