package seamsoak.billet.file;

import java.util.List;
import java.util.Locale;
import seamsoak.data.JsonValue.NumberValue;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.data.Nearest;

/** One of some words, however it is capitalized and joined. */
record Choice<E extends Enum<E>>(List<E> choices) implements Reader<E> {
  @Override
  public E read(Entry entry) {
    List<String> words = words();
    return choices.get(words.indexOf(word(entry, words)));
  }

  List<String> words() {
    return choices.stream().map(Choice::word).toList();
  }

  /** How a choice is written: {@code DRY_ICE} as {@code dry ice}. */
  static String word(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String word(Entry entry, List<String> words) {
    String all = "it is one of " + String.join(", ", words);
    String written =
        entry.value() instanceof TextValue text
            ? text.text()
            : entry.value() instanceof NumberValue number ? number.digits() : "";
    String word = TradeWords.plain(written);
    if (words.contains(word)) {
      return word;
    }
    throw entry.refused(
        entry
            .reading()
            .names()
            .trade()
            .means(entry.name(), word)
            .or(
                () ->
                    Nearest.to(word, words)
                        .or(() -> words.stream().filter(w -> among(w, word)).findFirst())
                        .map(w -> "did you mean '" + w + "'?"))
            .orElse(all));
  }

  /** Whether a word is one of several that were written. */
  private static boolean among(String word, String written) {
    return List.of(written.split(" ")).contains(word);
  }
}
