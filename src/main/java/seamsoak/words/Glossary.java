package seamsoak.words;

/** The words of an answer as a smith says them. One thing goes by one word everywhere. */
public enum Glossary {
  SEAM("seam", "where two pieces were welded together"),
  JOINTS("joints", "all seams that one step made, such as the tile joints (step 11)"),
  LINE("line", "what an etch brings up along a seam where carbon is missing: a bright band"),
  KNOT("knot", "where two seams cross: it is brighter than either line"),
  MISSING("missing", "how much less carbon there is at a seam than far from it"),
  CONTRAST("contrast", "how far a line stands out from the metal beside it"),
  SHOWS("shows", "an eye can find the line on the etched face: its contrast is 1 or more"),
  LIKELY("likely case", "all as the file says: half of all billets need less than that, half more"),
  CASE("case", "the same billet with heats, times, grinding and steels a little off, as it may be"),
  BAND("low to high", "eight of ten cases lie between these two"),
  SOAK("soak", "a long stay at heat, so that carbon evens out across the seams"),
  SKIN("skin", "the outer metal with less than nine tenths of the core's carbon"),
  SOFT("soft", "that part of the skin which lacks the carbon to harden: grind it off"),
  FLATS("flats", "the wide faces, which become the blade's; the sides are the narrow ones"),
  LOST("lost", "metal that turns to scale on each face"),
  GRAIN("grain", "ASTM grain number: a large one is fine, a small one is coarse"),
  AC1("Ac1", "where a steel begins to turn to austenite on the way up"),
  FULL("full", "where it has all turned: Ac3, or Accm of a steel with much carbon"),
  MS("Ms", "where it begins to harden on the way down"),
  DISSOLVED("dissolved", "carbon that the heat has taken up: only that hardens, carbides do not"),
  REFINE("refine", "a short heat just past full, then cooling: it makes the grain fine"),
  FITS("fits", "two steels that no check warns of"),
  WATCH("watch", "they can be welded and hardened together with care"),
  CLASH("clash", "something will go wrong; no care helps as it stands");

  private final String word;
  private final String meaning;

  Glossary(String word, String meaning) {
    this.word = word;
    this.meaning = meaning;
  }

  public String word() {
    return word;
  }

  public String meaning() {
    return meaning;
  }
}
