package seamsoak.cli;

import java.io.Console;
import java.lang.reflect.InvocationTargetException;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Who reads along, and may be asked.
 *
 * @param watched whether somebody does
 * @param answers gives the next line that is typed; nothing when there will be no more
 */
public record Terminal(boolean watched, Supplier<Optional<String>> answers) {
  /** The one that the program was started from. */
  static Terminal here() {
    Console console = System.console();
    return new Terminal(
        console != null && isTerminal(console), () -> Optional.ofNullable(console.readLine()));
  }

  /** Java 22 and later have a console even where the answer goes to a file, and can tell. */
  private static boolean isTerminal(Console console) {
    try {
      return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException | IllegalAccessException | InvocationTargetException e) {
      return true;
    }
  }
}
