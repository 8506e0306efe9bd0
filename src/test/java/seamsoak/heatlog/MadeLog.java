package seamsoak.heatlog;

import java.util.Map;
import java.util.Set;

/**
 * A log that was made from a known course.
 *
 * @param name what is odd about it
 * @param bytes the file
 * @param course what really happened
 * @param asks options whose answers the file does not hold, so that a reader has to ask
 * @param answers what who made the heat would answer to any option
 */
record MadeLog(
    String name, byte[] bytes, TrueHeat course, Set<String> asks, Map<String, String> answers) {
  @Override
  public String toString() {
    return name;
  }
}
