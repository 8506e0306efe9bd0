package seamsoak.soak;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.state.CrossingReport;
import seamsoak.state.LineReport;
import seamsoak.state.Shows;
import seamsoak.steel.Element;
import seamsoak.unit.Length;

/**
 * What else a smith should know about a soak.
 *
 * @param celsius that the minutes of lines and crossings are told for
 */
record SoakNotes(
    Billet billet,
    List<LineReport> lines,
    List<CrossingReport> crossings,
    double celsius,
    SoakSamples possible) {
  /** Share of the histories that may be left out without a word. */
  private static final double MOST_LEFT_OUT = 0.05;

  /** A line this much finer than any carbon line can be is worth a second look; judgement. */
  private static final double CLEARLY_FINER = 0.5;

  /**
   * All of them, most important first.
   *
   * @param seen what comes of what the smith saw
   * @param unless what to know where nothing is recommended
   * @param dominant what sways the minutes most
   */
  List<SoakNote> all(Optional<SoakNote> seen, List<SoakNote> unless, Optional<Input> dominant) {
    List<SoakNote> all = new ArrayList<>(unknownMakes());
    seen.ifPresent(all::add);
    tooFine().ifPresent(all::add);
    all.addAll(unless);
    all.add(gone());
    lastToClear().ifPresent(all::add);
    leftOut().ifPresent(all::add);
    if (billet.visible().stated()) {
      all.add(SoakNote.Plain.VISIBLE_DECIDES_NOTHING);
    }
    if (!billet.oldWords().isEmpty()) {
      all.add(new SoakNote.OldWords(billet.oldWords()));
    }
    leastWidth().ifPresent(all::add);
    // nobody can know better at the forge how fast carbon moves
    dominant.filter(i -> i != Input.MOBILITY).map(SoakNote.Narrower::new).ifPresent(all::add);
    if (!lines.isEmpty()) {
      all.add(SoakNote.Plain.STATES);
    }
    all.add(SoakNote.Plain.TEST_ETCH);
    return List.copyOf(all);
  }

  private List<SoakNote> unknownMakes() {
    return billet.stack().steels().stream()
        .flatMap(s -> s.make().stream())
        .distinct()
        .<SoakNote>map(
            m ->
                new SoakNote.CarbonUnknown(
                    m.id(),
                    m.grades(),
                    m.limits(Element.C).min().orElse(0),
                    m.limits(Element.C).max().orElseThrow()))
        .toList();
  }

  private SoakNote gone() {
    return possible.count() == 0
        ? SoakNote.Plain.NO_HISTORIES
        : new SoakNote.Gone(
            possible.count(),
            possible.goneAlreadyPct().orElseThrow(),
            possible.goneBySchedulePct().orElseThrow());
  }

  /** Where a line stays longest, if that is at a crossing. */
  private Optional<SoakNote> lastToClear() {
    Optional<CrossingReport> crossing =
        crossings.stream()
            .filter(c -> c.shows().filter(Shows::inBlade).isPresent())
            .max(Comparator.comparingDouble(c -> minutes(c.minutes())));
    Optional<LineReport> line =
        lines.stream()
            .filter(l -> l.shows().filter(Shows::inBlade).isPresent())
            .max(Comparator.comparingDouble(l -> minutes(l.minutes())));
    boolean last =
        minutes(crossing.flatMap(CrossingReport::minutes))
            >= line.flatMap(LineReport::minutes).orElse(0.0);
    return crossing.filter(c -> last).map(c -> new SoakNote.LastToClear(c, line, celsius));
  }

  private static double minutes(Optional<Double> taken) {
    return taken.orElse(Double.POSITIVE_INFINITY);
  }

  /** A history that cannot be walked counts as one that was not; many are worth a word. */
  private Optional<SoakNote> leftOut() {
    int asked = possible.count() + possible.leftOut();
    return possible.leftOut() > MOST_LEFT_OUT * asked
        ? Optional.of(new SoakNote.LeftOut(possible.leftOut(), asked))
        : Optional.empty();
  }

  private Optional<SoakNote> leastWidth() {
    return lines.stream()
        .filter(l -> l.narrowestMm().isPresent() && !l.boundary())
        .min(Comparator.comparingDouble(l -> l.narrowestMm().orElseThrow()))
        .map(SoakNote.LeastWidth::new);
  }

  private Optional<SoakNote> tooFine() {
    return Sightings.of(billet).all().stream()
        .filter(s -> s.seen().width().isPresent())
        .flatMap(s -> lines.stream().flatMap(l -> tooFine(s, l).stream()))
        .findFirst();
  }

  private static Optional<SoakNote> tooFine(Sightings.Sighting s, LineReport line) {
    Length width = s.seen().width().orElseThrow();
    return line.narrowestMm()
        .filter(least -> Looking.isMeant(s.seen().where(), line.joints()))
        .filter(least -> width.millimetres() < CLEARLY_FINER * least)
        .map(least -> new SoakNote.TooFine(s.step(), width, least));
  }
}
