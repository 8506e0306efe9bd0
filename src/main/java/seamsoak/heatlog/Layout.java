package seamsoak.heatlog;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import seamsoak.data.Fault;
import seamsoak.data.ForeignRows;
import seamsoak.data.ForeignText;
import seamsoak.data.Place;

/**
 * How a log is laid out: found from its beginning and from rows all over it.
 *
 * @param file name as the user wrote it
 * @param content rows, without a line that names the delimiter
 * @param delimiter between cells
 * @param width cells of a row of readings
 * @param firstLine where the readings begin, from 1
 * @param names of the columns, as many as the width
 * @param preamble what stands before the head, line by line
 * @param sample some rows of readings
 */
record Layout(
    String file,
    String content,
    char delimiter,
    int width,
    long firstLine,
    List<String> names,
    List<String> preamble,
    List<List<String>> sample) {
  private static final String DELIMITERS = "\t;|,";
  private static final Pattern NAMED = Pattern.compile("(?i)\"?sep=(.)\"?\\r?\\n");

  /** A comma that parts columns and a decimal comma may come as often. */
  private static final double AS_OFTEN = 0.9;

  private static final int MOST_HEADS = 3;
  private static final int MOST_CELLS = 1000;

  static Layout of(ForeignText text) {
    Matcher named = NAMED.matcher(text.content());
    boolean first = named.lookingAt();
    String content = first ? text.content().substring(named.end()) : text.content();
    String sample = LogSample.of(content);
    char delimiter = first ? named.group(1).charAt(0) : delimiter(text.file(), sample);
    List<ForeignRows.Row> rows = ForeignRows.of(text.file(), sample, delimiter);
    int width = commonWidth(rows);
    if (width > MOST_CELLS) {
      throw new Fault(
          Place.of(text.file()),
          "its rows have " + width + " cells",
          "a log has some columns and many rows");
    }
    return of(text.file(), content, delimiter, width, rows);
  }

  /** Where others part as many rows as a comma does, the comma is decimal. */
  private static char delimiter(String file, String sample) {
    Map<Character, Integer> rows = new HashMap<>();
    for (char d : DELIMITERS.toCharArray()) {
      rows.put(d, partedRows(ForeignRows.of(file, sample, d)));
    }
    char best = ',';
    for (char d : DELIMITERS.toCharArray()) {
      double needed = best == ',' && d != ',' ? AS_OFTEN * rows.get(best) : rows.get(best);
      if (rows.get(d) > 0 && rows.get(d) >= needed) {
        best = rows.get(d) > rows.get(best) || best == ',' ? d : best;
      }
    }
    return best;
  }

  private static int partedRows(List<ForeignRows.Row> rows) {
    return widths(rows).entrySet().stream()
        .filter(w -> w.getKey() > 1)
        .mapToInt(Map.Entry::getValue)
        .max()
        .orElse(0);
  }

  private static Map<Integer, Integer> widths(List<ForeignRows.Row> rows) {
    Map<Integer, Integer> widths = new HashMap<>();
    rows.forEach(r -> widths.merge(r.cells().size(), 1, Integer::sum));
    return widths;
  }

  private static int commonWidth(List<ForeignRows.Row> rows) {
    return widths(rows).entrySet().stream()
        .max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(Map.Entry::getKey))
        .orElseThrow()
        .getKey();
  }

  private static Layout of(
      String file, String content, char delimiter, int width, List<ForeignRows.Row> rows) {
    List<ForeignRows.Row> wide = rows.stream().filter(r -> r.cells().size() == width).toList();
    String usual = usual(wide.stream().map(ForeignRows.Row::cells).toList());
    int first = 0;
    while (first < rows.size() && !isLike(rows.get(first), width, usual)) {
      first++;
    }
    if (first >= Math.min(rows.size(), LogSample.FIRST_LINES)
        || usual.chars().noneMatch(c -> c == Kind.NUMBER.letter())) {
      throw new Fault(
          Place.of(file),
          "no rows of readings are found in it",
          "give a log with a row for each reading: a time and temperatures, parted by commas,"
              + " semicolons or tabs");
    }
    List<List<String>> heads = heads(rows.subList(0, first), delimiter, usual, file);
    List<String> preamble =
        rows.subList(0, first - heads.size()).stream()
            .map(r -> String.join(" ", r.cells()).strip())
            .toList();
    List<List<String>> sample =
        rows.subList(first, rows.size()).stream()
            .map(ForeignRows.Row::cells)
            .filter(c -> c.size() == width)
            .toList();
    return new Layout(
        file,
        content,
        delimiter,
        width,
        rows.get(first).line(),
        names(heads, width),
        preamble,
        sample);
  }

  /** What a cell is, at a glance. */
  private enum Kind {
    NUMBER('n'),
    CLOCK('t'),
    TEXT('x'),
    BLANK('-');

    private final char letter;

    Kind(char letter) {
      this.letter = letter;
    }

    char letter() {
      return letter;
    }

    static Kind of(String cell) {
      if (cell.isBlank()) {
        return BLANK;
      }
      if (ClockText.parse(cell).isPresent()) {
        return CLOCK;
      }
      boolean number =
          !Double.isNaN(NumberText.parse(cell, DecimalMark.DOT))
              || !Double.isNaN(NumberText.parse(cell, DecimalMark.COMMA));
      return number ? NUMBER : TEXT;
    }
  }

  private static String pattern(List<String> cells) {
    StringBuilder pattern = new StringBuilder();
    cells.forEach(c -> pattern.append(Kind.of(c).letter()));
    return pattern.toString();
  }

  /** What most rows hold, column by column. */
  private static String usual(List<List<String>> rows) {
    List<String> patterns = rows.stream().map(Layout::pattern).toList();
    int width = patterns.get(0).length();
    char[] usual = new char[width];
    for (int c = 0; c < width; c++) {
      int[] counts = new int[128];
      for (String p : patterns) {
        counts[p.charAt(c)]++;
      }
      // a couple that is open most of the time still reads numbers
      usual[c] =
          counts[Kind.NUMBER.letter()] > 0
                  && counts[Kind.CLOCK.letter()] == 0
                  && counts['n'] * 20 > rows.size()
              ? 'n'
              : (char) largest(counts);
    }
    return new String(usual);
  }

  private static int largest(int[] counts) {
    int best = 0;
    for (int i = 1; i < counts.length; i++) {
      best = counts[i] > counts[best] ? i : best;
    }
    return best;
  }

  /** The first number or time, and all times, stand where they usually do; others may be open. */
  private static boolean isLike(ForeignRows.Row row, int width, String usual) {
    if (row.cells().size() != width) {
      return false;
    }
    String pattern = pattern(row.cells());
    int wanted = 0;
    int found = 0;
    for (int c = 0; c < width; c++) {
      if ("nt".indexOf(usual.charAt(c)) >= 0) {
        boolean same = pattern.charAt(c) == usual.charAt(c);
        if (!same && (wanted == 0 || usual.charAt(c) == 't')) {
          return false;
        }
        wanted++;
        found += same ? 1 : 0;
      }
    }
    return 2 * found >= wanted;
  }

  /** The rows of names above the readings: one, and those above it while all below is units. */
  private static List<List<String>> heads(
      List<ForeignRows.Row> above, char delimiter, String usual, String file) {
    int width = usual.length();
    int filled = usual.stripTrailing().replaceFirst("-+$", "").length();
    List<List<String>> heads = new ArrayList<>();
    for (int i = above.size() - 1; i >= 0 && heads.size() < MOST_HEADS; i--) {
      List<String> cells = above.get(i).cells();
      boolean fits = cells.size() >= filled && cells.stream().skip(width).allMatch(String::isBlank);
      boolean needed = heads.stream().allMatch(Layout::isUnits);
      if (!fits || !needed || pattern(cells).indexOf('t') >= 0) {
        if (i == above.size() - 1
            && delimiter == ','
            && cells.size() > 1
            && cells.size() < filled) {
          throw new Fault(
              new Place(file, (int) above.get(i).line(), 0),
              "the head has "
                  + cells.size()
                  + " names and the rows below it have "
                  + width
                  + " cells",
              "part columns by semicolons or tabs where numbers have a decimal comma");
        }
        break;
      }
      heads.add(0, cells);
    }
    return heads;
  }

  private static boolean isUnits(List<String> cells) {
    long named = cells.stream().filter(c -> !c.isBlank()).count();
    return 2 * cells.stream().filter(HeadWords::isUnit).count() >= named;
  }

  private static List<String> names(List<List<String>> heads, int width) {
    String[] names = new String[width];
    Arrays.fill(names, "");
    for (List<String> head : heads) {
      for (int c = 0; c < Math.min(width, head.size()); c++) {
        names[c] = (names[c] + " " + head.get(c).strip().replaceAll("\\s+", " ")).strip();
      }
    }
    return List.of(names);
  }

  /** What a column is called: by its number where it has no name. */
  String title(int column) {
    return names.get(column).isEmpty() ? "column " + (column + 1) : names.get(column);
  }

  /** An interval between rows that stands before the head, s. */
  Optional<Double> interval() {
    Pattern stated =
        Pattern.compile(
            "(?i).*\\b(interval\\w*|rate|period|takt|intervall\\w*|every|cycle)\\b[^0-9]*"
                + "([0-9]+(?:[.,][0-9]+)?)\\s*(ms|s|sec|secs|seconds?|min|minutes?|h)\\b.*");
    return preamble.stream()
        .map(stated::matcher)
        .filter(Matcher::matches)
        .map(
            m ->
                Double.parseDouble(m.group(2).replace(',', '.'))
                    * HeadWords.timeUnit("[" + m.group(3) + "]").orElseThrow().seconds())
        .filter(s -> s > 0)
        .findFirst();
  }
}
