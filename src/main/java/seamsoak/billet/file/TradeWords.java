package seamsoak.billet.file;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;

/**
 * Words that a smith may use where a file has another, as {@code trade-words.csv} has them, each
 * with what to write.
 *
 * @param means by the key of the file under which it is written, then by the word
 */
record TradeWords(Map<String, Map<String, String>> means) {
  /** Reads {@code trade-words.csv}. */
  static TradeWords load(DataFolder data) {
    Map<String, Map<String, String>> means = new HashMap<>();
    for (CsvTable.Row row : data.csv("trade-words.csv").rows()) {
      for (String column : new String[] {"key", "words", "means"}) {
        if (row.text(column).isEmpty()) {
          throw new Fault(row.place(column), "the " + column + " is blank", "each line has one");
        }
      }
      Map<String, String> words = means.computeIfAbsent(row.text("key"), key -> new HashMap<>());
      for (String word : row.list("words")) {
        if (words.put(plain(word), row.text("means")) != null) {
          throw new Fault(row.place("words"), "'" + word + "' stands twice", "once is enough");
        }
      }
    }
    return new TradeWords(means);
  }

  /** What to write under a key in place of a word, if it is one of the trade. */
  Optional<String> means(String key, String word) {
    return Optional.ofNullable(means.getOrDefault(key, Map.of()).get(plain(word)));
  }

  /** A word however it is capitalized and joined. */
  static String plain(String word) {
    return word.strip().toLowerCase(Locale.ROOT).replaceAll("[-_\\s]+", " ");
  }
}
