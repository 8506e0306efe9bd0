package seamsoak.report;

import java.util.List;

/** A piece of a section of the report. */
sealed interface Part {
  /** A paragraph. */
  record Words(String text) implements Part {}

  /** A heading within a section. */
  record Head(String text) implements Part {}

  /** Sentences as a list. */
  record Items(List<String> sentences) implements Part {}

  /** A chart as SVG, to be set as it is. */
  record Picture(String svg) implements Part {}

  /** A table. */
  record Grid(Table table) implements Part {}

  /** Words with what is said of each. */
  record Terms(List<Term> terms) implements Part {}

  /** A word, and sentences on it. */
  record Term(String word, List<String> said) {}
}
