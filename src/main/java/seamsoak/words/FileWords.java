package seamsoak.words;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import seamsoak.billet.OldWord;

/** What is said of how a billet file is written. */
public final class FileWords {
  private FileWords() {}

  /** Old words that are understood, each kind once with the lines that have it. */
  public static List<String> old(List<OldWord> words) {
    return Stream.of(OldWord.Kind.values())
        .flatMap(
            kind -> {
              List<Integer> lines =
                  words.stream().filter(w -> w.kind() == kind).map(w -> w.place().line()).toList();
              return lines.isEmpty() ? Stream.empty() : Stream.of(lines(lines) + ": " + of(kind));
            })
        .toList();
  }

  public static String old(OldWord word) {
    return old(List.of(word)).get(0);
  }

  private static String lines(List<Integer> lines) {
    return (lines.size() == 1 ? "Line " : "Lines ")
        + lines.stream().map(String::valueOf).collect(Collectors.joining(", "));
  }

  private static String of(OldWord.Kind kind) {
    return switch (kind) {
      case SEAMS -> "\"seams\" is an old word and still understood; write \"where\".";
      case CLEAR -> "a line that is \"clear\" is taken as plain to see; write \"plain\".";
      case EDGE ->
          "a steel under \"edge\" is taken as the one that cuts; write it under \"cuts\", since"
              + " \"edge\" is how thick the edge is.";
    };
  }
}
