package seamsoak.pairing;

import java.util.List;
import java.util.Optional;
import seamsoak.state.Progress;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;

/**
 * Many pairs at once.
 *
 * @param steels every steel in it
 * @param pairs each with the check that decides, and what practice says
 * @param matrix the same steels, every one against every other
 */
public record PairList(List<Steel> steels, List<Row> pairs, PairMatrix matrix) {
  public PairList {
    steels = List.copyOf(steels);
    pairs = List.copyOf(pairs);
  }

  /** One pair, as JSON has it; the note of practice is blank where there is none. */
  public record Row(
      String first,
      String second,
      Rating rating,
      String check,
      String title,
      String practice,
      String standing) {
    static Row of(PairMatrix.Cell cell, Optional<Practice> said) {
      return new Row(
          cell.first(),
          cell.second(),
          cell.rating(),
          cell.check(),
          cell.title(),
          said.map(Practice::note).orElse(""),
          said.map(p -> p.standing().words()).orElse(""));
    }
  }

  /** The pairings that smiths use or ask about, and a matrix of their steels. */
  public static PairList ofPractice(
      PairCheck check, PairTable practice, SteelTable table, Progress progress) {
    List<Steel> steels =
        table.steels().stream()
            .filter(
                s ->
                    practice.pairs().stream()
                        .anyMatch(p -> p.first().equals(s.id()) || p.second().equals(s.id())))
            .toList();
    List<PairSteel> known = steels.stream().map(check::steel).toList();
    List<Row> rows =
        practice.pairs().stream()
            .map(
                p ->
                    Row.of(
                        PairMatrix.cell(
                            check.of(
                                named(known, p.first()),
                                named(known, p.second()),
                                PairAdvisor.usual(Optional.of(p)))),
                        Optional.of(p)))
            .toList();
    return new PairList(steels, rows, PairMatrix.of(check, practice, known, progress));
  }

  /** Every pair of a list of steels. */
  public static PairList of(
      PairCheck check, PairTable practice, List<Steel> steels, Progress progress) {
    PairMatrix matrix =
        PairMatrix.of(check, practice, steels.stream().map(check::steel).toList(), progress);
    List<Row> rows =
        matrix.pairs().stream()
            .map(c -> Row.of(c, practice.of(grade(steels, c.first()), grade(steels, c.second()))))
            .toList();
    return new PairList(steels, rows, matrix);
  }

  private static String grade(List<Steel> steels, String called) {
    return steels.stream().filter(s -> s.id().equals(called)).findFirst().orElseThrow().key();
  }

  private static PairSteel named(List<PairSteel> steels, String id) {
    return steels.stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }
}
