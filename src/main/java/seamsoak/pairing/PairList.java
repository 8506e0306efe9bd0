package seamsoak.pairing;

import java.util.ArrayList;
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

  /** One pair; the note of practice is blank where there is none. */
  public record Row(PairMatrix.Cell cell, String practice, String standing) {}

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
    List<Row> rows = new ArrayList<>();
    for (Practice p : practice.pairs()) {
      PairSetting setting = PairAdvisor.setting(PairAdvisor.Asked.NOTHING, Optional.of(p));
      rows.add(
          new Row(
              PairMatrix.cell(
                  check, check.of(named(known, p.first()), named(known, p.second()), setting)),
              p.note(),
              p.standing().words()));
    }
    return new PairList(steels, rows, matrix(check, practice, known, progress));
  }

  /** Every pair of a list of steels. */
  public static PairList of(
      PairCheck check, PairTable practice, List<Steel> steels, Progress progress) {
    PairMatrix matrix =
        matrix(check, practice, steels.stream().map(check::steel).toList(), progress);
    List<Row> rows =
        matrix.pairs().stream()
            .map(
                c -> {
                  Optional<Practice> said =
                      practice.of(grade(steels, c.first()), grade(steels, c.second()));
                  return new Row(
                      c,
                      said.map(Practice::note).orElse(""),
                      said.map(p -> p.standing().words()).orElse(""));
                })
            .toList();
    return new PairList(steels, rows, matrix);
  }

  private static PairMatrix matrix(
      PairCheck check, PairTable practice, List<PairSteel> steels, Progress progress) {
    return PairMatrix.of(
        check,
        steels,
        (a, b) -> PairAdvisor.setting(PairAdvisor.Asked.NOTHING, practice.of(a, b)),
        (done, of) -> progress.at("Checking steel", done, of));
  }

  private static String grade(List<Steel> steels, String called) {
    return steels.stream().filter(s -> s.id().equals(called)).findFirst().orElseThrow().grade();
  }

  private static PairSteel named(List<PairSteel> steels, String id) {
    return steels.stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }
}
