package seamsoak.heatlog;

import java.util.List;

/** What comes of reading a log. */
public sealed interface LogReading {

  /** It leaves something open. */
  record Asks(List<LogQuestion> questions) implements LogReading {
    public Asks {
      questions = List.copyOf(questions);
    }
  }

  /**
   * It was read.
   *
   * @param file name as the user wrote it
   * @param sha256 of its bytes
   * @param column that was read
   * @param scale of its readings
   * @param others columns of temperatures that were not read
   * @param events rows passed over
   * @param readings in Celsius
   */
  record Read(
      String file,
      String sha256,
      String column,
      Scale scale,
      List<String> others,
      long events,
      Readings readings)
      implements LogReading {}
}
