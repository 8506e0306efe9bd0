package seamsoak.property.correlation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import seamsoak.data.CsvTable;
import seamsoak.data.Fault;
import seamsoak.source.Range;
import seamsoak.steel.Element;

/**
 * The analyses that a regression speaks for, read from its row.
 *
 * @param all ranges of its elements, in the order of the row
 * @param caps the content that an element counts as beyond it
 */
record Ranges(List<Range> all, Map<Element, Double> caps) {
  static Ranges of(CsvTable.Row row) {
    List<Range> all = new ArrayList<>();
    for (String part : row.list("ranges")) {
      if (part.equals("low alloy")) {
        all.addAll(LowAlloy.ranges());
      } else {
        String[] words = words(row, "ranges", part, 3);
        all.add(
            Correlation.range(
                element(row, "ranges", words[0]),
                number(row, "ranges", words[1]),
                number(row, "ranges", words[2])));
      }
    }
    Map<Element, Double> caps = new EnumMap<>(Element.class);
    for (String part : row.list("capped")) {
      if (part.equals("alloying")) {
        alloying(all).forEach(r -> caps.put(element(row, "ranges", r.quantity()), r.high()));
      } else {
        String[] words = words(row, "capped", part, 2);
        caps.put(element(row, "capped", words[0]), number(row, "capped", words[1]));
      }
    }
    return new Ranges(all, caps);
  }

  /** Those of the elements besides carbon. */
  List<Range> alloying() {
    return alloying(all);
  }

  private static List<Range> alloying(List<Range> all) {
    return all.stream().filter(r -> !r.quantity().equals(Element.C.symbol())).toList();
  }

  private static String[] words(CsvTable.Row row, String column, String part, int count) {
    String[] words = part.split(" ");
    if (words.length != count) {
      throw fault(row, column, part);
    }
    return words;
  }

  private static Element element(CsvTable.Row row, String column, String symbol) {
    return Element.of(symbol).orElseThrow(() -> fault(row, column, symbol));
  }

  private static double number(CsvTable.Row row, String column, String word) {
    try {
      double value = Double.parseDouble(word);
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // told below
    }
    throw fault(row, column, word);
  }

  private static Fault fault(CsvTable.Row row, String column, String found) {
    return new Fault(
        row.place(column),
        "'" + Fault.shown(found) + "' in column " + column,
        "write a list such as C 0 0.6; Mn 0 2 (ranges) or alloying; Ni 3 (capped)");
  }
}
