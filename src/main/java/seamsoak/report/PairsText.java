package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import seamsoak.pairing.PairList;
import seamsoak.pairing.PairMatrix;
import seamsoak.unit.UnitSystem;
import seamsoak.words.pair.PairsWords;

/** Many pairs: a list with reasons, a matrix with a letter for each pair, or lines of CSV. */
public record PairsText(PairList list) {
  private static final int MOST_COLUMNS = 62;

  /** So many lines of a matrix leave room for the rest. */
  private static final int MOST_LINES = 16;

  /** The list of pairings; at once, those of each rating in one paragraph. */
  public Answer pairs() {
    Table table =
        Columns.of(list.pairs(), UnitSystem.BOTH)
            .words("first", PairList.Row::first)
            .words("second", PairList.Row::second)
            .words("rating", r -> r.rating().word())
            .words("decided by", PairList.Row::title)
            .captioned("");
    Chapter counts = Chapter.of("answer").words(words().counts());
    return new Answer(
        List.of(counts, Chapter.of("pairs", "Pairs").table(table)),
        List.of(
            counts.words(words().byRating()), rest("--full also shows which check decides each.")));
  }

  private PairsWords words() {
    return new PairsWords(list);
  }

  private static Chapter rest(String words) {
    return Chapter.of("rest").words(words);
  }

  /** The matrix. */
  public Answer matrix() {
    PairMatrix m = list.matrix();
    Chapter counts = Chapter.of("answer").words(words().counts());
    if (m.steels().size() > MOST_COLUMNS) {
      return Answer.of(
          List.of(counts.words("Too many steels for a matrix on a terminal: ask for --csv.")));
    }
    int name = m.steels().stream().mapToInt(String::length).max().orElse(0);
    boolean numbered = 2 * m.steels().size() + name > Page.WIDTH - 4 || name > 12;
    int width = numbered ? Math.min(name, 12) : name;
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < m.steels().size(); i++) {
      StringBuilder line = new StringBuilder("  ");
      line.append(pad(cut(m.steels().get(i), width), width)).append(' ');
      for (int j = 0; j < i; j++) {
        line.append(numbered ? "" : " ").append(m.at(i, j).letter());
      }
      line.append(numbered ? "" : " ").append('\\');
      lines.add(line.toString());
    }
    List<Chapter> all =
        List.of(
            counts,
            Chapter.of("matrix").with(new Part.Lines(lines)),
            Chapter.of("key").words(words().key()));
    return lines.size() <= MOST_LINES
        ? Answer.of(all)
        : new Answer(
            all, List.of(counts, rest("--full shows the matrix, and --out DIR writes a chart.")));
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  private static String cut(String name, int width) {
    return name.length() <= width ? name : name.substring(0, width - 1) + "~";
  }

  /** One line a pair, with a header. */
  public String csv() {
    StringBuilder text = new StringBuilder("first,second,rating,check,title,practice,standing\n");
    for (PairList.Row row : list.pairs()) {
      text.append(
              String.join(
                  ",",
                  quoted(row.first()),
                  quoted(row.second()),
                  row.rating().word(),
                  row.check(),
                  quoted(row.title()),
                  quoted(row.practice()),
                  quoted(row.standing())))
          .append('\n');
    }
    return text.toString();
  }

  private static String quoted(String cell) {
    return cell.matches("[^,\"\\r\\n]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
