package seamsoak.unit;

/** To be completed: parse and format. */
public record TimeSpan(double seconds) {
  public static TimeSpan ofMinutes(double minutes) {
    return new TimeSpan(minutes * 60);
  }

  public double minutes() {
    return seconds / 60;
  }
}
