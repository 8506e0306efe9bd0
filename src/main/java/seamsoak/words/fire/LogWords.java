package seamsoak.words.fire;

import java.util.List;
import seamsoak.heatlog.LogQuestion;
import seamsoak.heatlog.LogQuestion.WhichColumn;
import seamsoak.heatlog.LogQuestion.WhichDecimals;
import seamsoak.heatlog.LogQuestion.WhichScale;
import seamsoak.heatlog.LogQuestion.WhichTimeUnit;
import seamsoak.words.Amounts;

/** What a log leaves open, as a form asks it. */
public final class LogWords {
  /** An answer that can be chosen. */
  public record Choice(String value, String label) {}

  /**
   * A question.
   *
   * @param key of what answers it
   * @param choices none where it is typed
   */
  public record Question(String key, String asked, List<Choice> choices) {}

  private LogWords() {}

  public static Question of(LogQuestion q) {
    return switch (q.answer()) {
      case COLUMN ->
          new Question(
              "column",
              "Which of its temperatures is the piece's?",
              ((WhichColumn) q)
                  .channels().stream()
                      .map(
                          c ->
                              new Choice(
                                  c.name(), c.name() + ", up to " + Amounts.number(c.highest(), 0)))
                      .toList());
      case UNIT ->
          new Question(
              "unit",
              "In what are its temperatures? They go up to %s."
                  .formatted(Amounts.number(((WhichScale) q).channel().highest(), 0)),
              ((WhichScale) q)
                  .scales().stream()
                      .sorted()
                      .map(s -> new Choice(s.name(), capital(s.name())))
                      .toList());
      case TIME_UNIT ->
          new Question(
              "time_unit",
              "In what does '%s' count time, from %s to %s?"
                  .formatted(
                      ((WhichTimeUnit) q).column(),
                      ((WhichTimeUnit) q).first(),
                      ((WhichTimeUnit) q).last()),
              List.of(
                  new Choice("SECONDS", "seconds"),
                  new Choice("MINUTES", "minutes"),
                  new Choice("HOURS", "hours")));
      case INTERVAL ->
          new Question(
              "interval",
              "How far apart are its rows, such as 10 s? They have no time.",
              List.of());
      case DECIMAL ->
          new Question(
              "decimal",
              "What parts decimals in it, as in %s?".formatted(((WhichDecimals) q).cell()),
              List.of(new Choice("DOT", "a dot"), new Choice("COMMA", "a comma")));
      case TIP ->
          new Question(
              "tip",
              "Where was the tip of the couple?",
              List.of(
                  new Choice("STEEL", "in the piece"),
                  new Choice("SURFACE", "on its face"),
                  new Choice("AIR", "in the air of the kiln")));
      case LOADED ->
          new Question(
              "loaded",
              "When did the piece go in, from the log's first row, such as 4 min? 0 min if it was"
                  + " in.",
              List.of());
      case SECTION ->
          new Question(
              "section",
              "How thick was the piece, and how wide, such as 1 in by 1-1/2 in? It lags behind the"
                  + " air.",
              List.of());
    };
  }

  private static String capital(String word) {
    return word.substring(0, 1) + word.substring(1).toLowerCase(java.util.Locale.ROOT);
  }
}
