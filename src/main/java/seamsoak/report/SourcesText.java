package seamsoak.report;

import java.util.List;
import seamsoak.trace.Trace;
import seamsoak.words.SourceWords;

/** What an answer rests on. */
public record SourcesText(Trace trace) {
  /** What stands below an answer; nothing when nobody asked for it. */
  public String page() {
    Chapter chapter =
        Chapter.of("sources", "Sources (temperatures in C, contents in wt%)")
            .terms(trace.entries().stream().map(SourcesText::term).toList());
    return chapter.parts().isEmpty() ? "" : "\n" + Chapter.page(List.of(chapter));
  }

  /** An entry, and what is said of it. */
  static Part.Term term(Trace.Entry e) {
    return new Part.Term(SourceWords.head(e), SourceWords.says(e));
  }
}
