package seamsoak.support;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import seamsoak.data.JsonWriter;

/** What a hand does on a screen and an eye sees there, whichever browser draws it. */
public interface Screen extends AutoCloseable {
  long PATIENCE_SECONDS = 60;

  /** Makes the window so large. */
  void size(int width, int height) throws Exception;

  void go(String address) throws Exception;

  /** What an expression gives, as text; promises are waited for. */
  String ask(String expression) throws Exception;

  /** Taps a place of the window. */
  void touch(double x, double y) throws Exception;

  /** Presses a key such as {@code Tab}. */
  void press(String key) throws Exception;

  /** With the shift key held. */
  void pressBack(String key) throws Exception;

  /** Types over whatever the field with the focus holds. */
  void type(String text) throws Exception;

  /** Chooses a file, as the system's own window would. */
  void choose(String selector, Path file) throws Exception;

  byte[] picture() throws Exception;

  @Override
  void close() throws IOException;

  /** One that also puts a page on paper; a driver of WebKit does not. */
  interface Printing extends Screen {
    /** The page on paper of a size, in inches. */
    byte[] paper(double width, double height) throws Exception;
  }

  /** Waits until an expression is true. */
  default void until(String expression) throws Exception {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    while (System.nanoTime() < end) {
      try {
        if (ask(expression).equals("true")) {
          return;
        }
      } catch (IllegalStateException | AssertionError between) {
        // one page has left, and the next is not there yet
      }
      Thread.sleep(30);
    }
    throw new AssertionError("never: " + expression + "\n" + ask("document.body.innerText"));
  }

  /** Taps the middle of what a selector finds, once it has been brought into view. */
  default void tap(String selector) throws Exception {
    tap(selector, 0.5, 0.5);
  }

  /** The same at a place in it, from its upper left corner, of its size. */
  default void tap(String selector, double across, double down) throws Exception {
    String found = "document.querySelector(" + JsonWriter.write(selector).strip() + ")";
    until(found + " !== null");
    ask(found + ".scrollIntoView({ block: 'center' })");
    String at =
        "(r => (r.left + r.width * %s) + ' ' + (r.top + r.height * %s))".formatted(across, down);
    String[] place = ask(at + "(" + found + ".getBoundingClientRect())").split(" ");
    touch(Double.parseDouble(place[0]), Double.parseDouble(place[1]));
  }
}
