package seamsoak.support;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import seamsoak.cli.Commands;
import seamsoak.cli.Terminal;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue;

/**
 * A command line that was run.
 *
 * @param code its exit code
 * @param out what it printed
 * @param err what it said beside
 * @param seconds what it computed, not what it waited
 */
public record Ran(int code, String out, String err, double seconds) {
  public static Ran run(String... args) {
    return run(new Terminal(false, Optional::empty), args);
  }

  /** With somebody reading along. */
  public static Ran onTerminal(String... args) {
    return run(new Terminal(true, Optional::empty), args);
  }

  /** With somebody who types these lines when asked. */
  public static Ran answered(List<String> answers, String... args) {
    Iterator<String> left = answers.iterator();
    return run(
        new Terminal(true, () -> left.hasNext() ? Optional.of(left.next()) : Optional.empty()),
        args);
  }

  private static Ran run(Terminal terminal, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    double start = ComputingTime.seconds();
    int code = Commands.run(terminal, new PrintWriter(out), new PrintWriter(err), args);
    return new Ran(code, out.toString(), err.toString(), ComputingTime.seconds() - start);
  }

  JsonValue json() {
    return JsonTree.parse("answer", out);
  }

  /** A number by its path, such as {@code first.seamCarbonPct}. */
  public double number(String path) {
    return ((JsonValue.NumberValue) at(path)).value();
  }

  public String text(String path) {
    return ((JsonValue.TextValue) at(path)).text();
  }

  public List<JsonValue> list(String path) {
    return ((JsonValue.ListValue) at(path)).items();
  }

  public JsonValue at(String path) {
    JsonValue value = json();
    for (String name : path.split("\\.")) {
      value =
          value instanceof JsonValue.ListValue list
              ? list.items().get(Integer.parseInt(name))
              : member(value, name);
    }
    return value;
  }

  public List<String> names(String path) {
    JsonValue value = path.isEmpty() ? json() : at(path);
    return List.copyOf(((JsonValue.ObjectValue) value).members().keySet());
  }

  private static JsonValue member(JsonValue value, String name) {
    JsonValue.Member member = ((JsonValue.ObjectValue) value).members().get(name);
    if (member == null) {
      throw new AssertionError("no member '" + name + "' in " + value);
    }
    return member.value();
  }
}
