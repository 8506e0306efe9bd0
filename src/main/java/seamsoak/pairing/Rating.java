package seamsoak.pairing;

import java.util.Locale;

/** How well two steels go together, best first. */
public enum Rating {
  FITS,
  WATCH,
  CLASH;

  /** The word in tables and answers. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The worse of two. */
  public Rating or(Rating other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
