package seamsoak.cli;

import java.io.Console;
import java.lang.reflect.InvocationTargetException;

/** Whether somebody reads along. */
final class Terminal {
  private Terminal() {}

  /** Java 22 and later have a console even where the answer goes to a file, and can tell. */
  static boolean here() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException | IllegalAccessException | InvocationTargetException e) {
      return true;
    }
  }
}
