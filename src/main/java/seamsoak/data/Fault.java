package seamsoak.data;

import java.util.List;
import java.util.stream.Collectors;
import seamsoak.unit.Printable;

/**
 * What is wrong with the user's data: each mistake where it stands, with what was found and what
 * was expected. The only exception of ours that reaches the command line (exit code 3).
 */
public final class Fault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private static final int SHOWN = 40;

  private final transient List<Mistake> mistakes;

  public Fault(Place place, String found, String expected) {
    this(List.of(new Mistake(place, "", found, expected)));
  }

  public Fault(List<Mistake> mistakes) {
    super(
        mistakes.stream().map(m -> m.place() + ": " + m.said()).collect(Collectors.joining("\n")));
    this.mistakes = List.copyOf(mistakes);
  }

  /** The user's text as a sentence may repeat it: printable, and cut when it is long. */
  public static String shown(String text) {
    return Printable.of(text, SHOWN);
  }

  /** In the order in which they were found. */
  public List<Mistake> mistakes() {
    return mistakes;
  }

  /** Where the first of them stands. */
  public Place place() {
    return mistakes.get(0).place();
  }
}
