package seamsoak.cli;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Option;

/** What the command line says of something done or seen; what it means is for the reader to say. */
final class RecordOptions {
  private static final Pattern LOOK =
      Pattern.compile("\\s*(.+?)\\s*:\\s*([^:,]+?)\\s*(?:,\\s*(.+?)\\s*)?");

  static final String CAME =
      "--set is a key of the step and a value, such as depth=0.020in, once each";
  static final String LOOKS =
      "--seen is where, a colon and how it looked, perhaps a comma and how wide, such as \"tile:"
          + " faint, 1/32 in\"";

  @Option(
      names = "--step",
      paramLabel = "N",
      description = "Number of the step; on a terminal the first that is not done is offered.")
  Integer step;

  @Option(
      names = "--heat",
      paramLabel = "M",
      description =
          "Which heat of the step, counted from 1 through all of them: of 3 and then 2 alike, the"
              + " last is 5. Those before it count as done as planned unless they are recorded.")
  Integer heat;

  @Option(
      names = "--at",
      paramLabel = "T",
      description = "Temperature of that heat, such as 2270F; as planned unless given.")
  String at;

  @Option(
      names = "--for",
      paramLabel = "TIME",
      description = "Time in it, such as 7min; as planned unless given.")
  String time;

  @Option(
      names = "--set",
      paramLabel = "KEY=VALUE",
      description =
          "How the step came out where not as planned, by its own keys, such as depth=0.020in; may"
              + " be given several times. The whole step is then done.")
  private List<String> set = List.of();

  @Option(
      names = "--seen",
      paramLabel = "\"WHERE: LOOK[, WIDTH]\"",
      description =
          "What was seen after the step: where as the answers name it, then none, faint or plain,"
              + " then how wide if it was measured.")
  String seen;

  @Option(
      names = "--etched",
      paramLabel = "STATE",
      completionCandidates = States.class,
      description = "State it was etched in: as-cooled, annealed or hardened.")
  String etched;

  @Option(
      names = "--with",
      paramLabel = "ETCHANT",
      description = "What it was etched in, such as \"ferric chloride, 5 min\".")
  String with;

  @Option(
      names = "--on",
      paramLabel = "DATE",
      description = "Day, such as 2026-11-20; none is written unless given.")
  String on;

  @Option(
      names = "--replace",
      description = "Write over what is recorded of that heat or step already.")
  boolean replace;

  /** For a shell to complete. */
  static final class States implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return List.of("as-cooled", "annealed", "hardened").iterator();
    }
  }

  /** Whether anything is said at all. */
  boolean areEmpty() {
    return step == null && heat == null && !sayHow() && !sayEtch() && on == null && !replace;
  }

  /** Whether it is said how it went, so that nothing of that is asked. */
  boolean sayHow() {
    return at != null || time != null || !set.isEmpty() || seen != null;
  }

  /** Whether it is said how something was etched. */
  boolean sayEtch() {
    return etched != null || with != null;
  }

  /** Whether it is said how a step came out. */
  boolean saysCame() {
    return !set.isEmpty();
  }

  /** Whether they are about what was seen and nothing else. */
  boolean onlySeen() {
    return seen != null && heat == null && at == null && time == null && set.isEmpty();
  }

  /** Whether they are about how a step came out and not about one of its heats. */
  boolean onlyStep() {
    return !set.isEmpty() && heat == null && at == null && time == null;
  }

  /** How a heat went, as far as it is said. */
  Map<String, String> how() {
    Map<String, String> how = new LinkedHashMap<>();
    Optional.ofNullable(at).ifPresent(value -> how.put("at", value.strip()));
    Optional.ofNullable(time).ifPresent(value -> how.put("for", value.strip()));
    return how;
  }

  /** How the step came out; empty where it is none of the form. */
  Optional<Map<String, String>> came() {
    Map<String, String> came = new LinkedHashMap<>();
    for (String entry : set) {
      int equals = entry.indexOf('=');
      if (equals < 1
          || came.put(entry.substring(0, equals).strip(), entry.substring(equals + 1).strip())
              != null) {
        return Optional.empty();
      }
    }
    return Optional.of(came);
  }

  /** What was seen by the keys of the file; empty where it is none of the form. */
  Optional<Map<String, String>> look() {
    Map<String, String> look = new LinkedHashMap<>();
    if (seen != null) {
      Matcher m = LOOK.matcher(seen);
      if (!m.matches()) {
        return Optional.empty();
      }
      look.put("where", m.group(1));
      look.put("line", m.group(2));
      Optional.ofNullable(m.group(3)).ifPresent(width -> look.put("width", width));
      Optional.ofNullable(etched).ifPresent(state -> look.put("etched", state.strip()));
      Optional.ofNullable(with).ifPresent(etchant -> look.put("with", etchant.strip()));
    }
    return Optional.of(look);
  }

  /** The option that a key of the file is from. */
  static String of(String field) {
    String key = field.substring(field.lastIndexOf('.') + 1);
    boolean seen = field.contains(".seen");
    return switch (key) {
      case "on", "etched", "with", "at", "for" -> "--" + key;
      default -> seen ? "--seen" : "--set";
    };
  }
}
