package seamsoak.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Asks on a terminal, again and again until an answer can be used.
 *
 * @param ended what to throw when there will be no more answers
 */
record Questions(Terminal terminal, PrintWriter err, Supplier<RuntimeException> ended) {
  /**
   * One answer.
   *
   * @param offered what an empty line means
   * @param wrong says what is wrong with an answer, if anything is
   */
  String ask(String question, String offered, Function<String, Optional<String>> wrong) {
    while (true) {
      err.print(question + (offered.isEmpty() ? ": " : " [" + offered + "]: "));
      err.flush();
      String typed = terminal.answers().get().orElseThrow(this::end).strip();
      String answer = typed.isEmpty() ? offered : typed;
      Optional<String> fault = wrong.apply(answer);
      if (fault.isEmpty()) {
        return answer;
      }
      err.println(fault.get() + (fault.get().endsWith("?") ? "" : "."));
    }
  }

  private RuntimeException end() {
    err.println();
    return ended.get();
  }
}
