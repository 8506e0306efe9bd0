package seamsoak.heatlog;

/** Units a log counts time in. */
public enum TimeUnit {
  MILLISECONDS(1e-3),
  SECONDS(1),
  MINUTES(60),
  HOURS(3600),
  DAYS(86400);

  private final double seconds;

  TimeUnit(double seconds) {
    this.seconds = seconds;
  }

  double seconds() {
    return seconds;
  }
}
