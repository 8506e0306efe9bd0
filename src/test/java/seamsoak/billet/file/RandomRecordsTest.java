package seamsoak.billet.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.billet.Billet;
import seamsoak.billet.Heat;
import seamsoak.billet.HeatDone;
import seamsoak.billet.Seen;
import seamsoak.billet.Step;
import seamsoak.billet.StepDone;
import seamsoak.data.DataFolder;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue;
import seamsoak.data.UserFile;
import seamsoak.steel.SteelTable;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;

/**
 * A thousand records at random in files full of comments: what is read back is what was written,
 * the rest of the file says what it said, its comments stand in their order, and all of it can be
 * taken back. An ordinary build does some of them.
 */
@Tag("slow")
@Tag("long")
class RandomRecordsTest {
  private static final int RECORDS = 50;
  private static final int FILES = Boolean.getBoolean("long") ? 20 : 2;
  private static final Pattern COMMENT = Pattern.compile("<[0-9]+>");
  private static final Pattern GAP = Pattern.compile("(?<=[\"}\\]0-9],|[\\[{])(?=\\s)|(?=[\\]}])");

  private final Names names = Names.of(SteelTable.load(DataFolder.packed()), DataFolder.packed());
  private SplittableRandom random;

  @TempDir private Path folder;

  /** What should be in a file: texts by step and heat, by step, and looks by step. */
  private record Expected(
      Map<String, String> heats, Map<Integer, String> steps, Map<Integer, List<String>> looks) {
    Expected copy() {
      Map<Integer, List<String>> all = new HashMap<>();
      looks.forEach((step, list) -> all.put(step, List.copyOf(list)));
      return new Expected(new HashMap<>(heats), new HashMap<>(steps), all);
    }
  }

  private record State(byte[] bytes, Expected expected) {}

  @Test
  void whatIsRecordedIsReadAndNothingElseIsChanged() throws Exception {
    long first = Boolean.getBoolean("long") ? System.nanoTime() : 1;
    int records = 0;
    for (long seed = first; seed < first + FILES; seed++) {
      random = new SplittableRandom(seed);
      try {
        records += oneFile();
      } catch (AssertionError | RuntimeException e) {
        throw new AssertionError("seed " + seed + ": " + e.getMessage(), e);
      }
    }
    System.out.println("Recorded at random: " + records + " times in " + FILES + " files");
  }

  private int oneFile() throws Exception {
    String name = List.of("mosaic.json", "san-mai.json").get(random.nextInt(2));
    String start = commented(Files.readString(Path.of("alloy-data/billets", name)));
    Path file = Files.writeString(folder.resolve(name), start);
    List<String> comments = comments(start);
    String plan = plan(start);
    Deque<State> states = new ArrayDeque<>();
    Expected expected = new Expected(new HashMap<>(), new HashMap<>(), new HashMap<>());
    for (int i = 0; i < RECORDS; i++) {
      UserFile read = UserFile.read(name, file);
      if (!states.isEmpty() && random.nextInt(6) == 0) {
        read.undo();
        State last = states.pop();
        assertArrayEquals(last.bytes(), Files.readAllBytes(file));
        expected = last.expected();
        continue;
      }
      states.push(new State(Files.readAllBytes(file), expected));
      expected = expected.copy();
      ToRecord wanted = any(billet(file, read.text()), expected);
      String text = wanted.into(WorkBook.of(name, read.text())).text();
      if (text.equals(read.text())) {
        states.pop(); // recorded just so already: nothing is written, nothing to take back
      }
      read.write(text, wanted.title());
      String written = Files.readString(file);
      assertEquals(comments, comments(written));
      assertEquals(plan, plan(written));
      assertEquals(expected, found(billet(file, written)), written);
    }
    while (!states.isEmpty()) {
      UserFile.read(name, file).undo();
      assertArrayEquals(states.pop().bytes(), Files.readAllBytes(file));
    }
    Files.delete(folder.resolve(name + ".before"));
    return RECORDS;
  }

  private Billet billet(Path file, String text) {
    return BilletReader.read(file, text, names);
  }

  private ToRecord any(Billet billet, Expected expected) {
    Step step = billet.steps().get(random.nextInt(billet.steps().size()));
    int number = step.mark().number();
    Optional<String> on =
        random.nextBoolean()
            ? Optional.empty()
            : Optional.of(LocalDate.of(2026, 1, 1).plusDays(random.nextInt(300)).toString());
    String day = on.orElse("");
    OptionalInt heat = OptionalInt.empty();
    Map<String, String> how = new LinkedHashMap<>();
    Map<String, String> came = new LinkedHashMap<>();
    Map<String, String> seen = new LinkedHashMap<>();
    boolean ended = false;
    int choice = random.nextInt(3);
    if (choice == 0) {
      String look = List.of("none", "faint", "plain").get(random.nextInt(3));
      seen.put("where", "layers");
      seen.put("line", look);
      expected.looks().merge(number, List.of(look + day), RandomRecordsTest::both);
    } else if (choice == 1 || step.heats().isEmpty()) {
      ended = true;
      List<String> keys = ToRecord.measured(step.kind());
      int thousandths = 10 + random.nextInt(90);
      if (!keys.isEmpty() && random.nextBoolean()) {
        came.put(keys.get(0), "0.0" + thousandths + (random.nextBoolean() ? "in" : " in"));
      }
      expected.steps().put(number, (came.isEmpty() ? "planned" : "0.0" + thousandths) + day);
    } else {
      heat = OptionalInt.of(1 + random.nextInt(step.times()));
      Heat planned = step.heat(heat.getAsInt());
      Temperature at = planned.at();
      TimeSpan hold = planned.hold();
      if (random.nextBoolean()) {
        int celsius = 1000 + random.nextInt(250);
        how.put("at", celsius + (random.nextBoolean() ? "C" : " C"));
        at = Temperature.ofCelsius(celsius);
      }
      if (random.nextBoolean()) {
        int minutes = 1 + random.nextInt(30);
        how.put("for", minutes + " min");
        hold = TimeSpan.ofMinutes(minutes);
      }
      asPlannedBefore(step, heat.getAsInt(), expected);
      String held =
          how.isEmpty() ? "planned" : Math.round(at.celsius()) + " " + Math.round(hold.seconds());
      expected.heats().put(number + "." + heat.getAsInt(), held + day);
    }
    return new ToRecord(step, heat, how, ended, came, seen, on);
  }

  /** Those alike before it in one entry of the file are filled in. */
  private static void asPlannedBefore(Step step, int heat, Expected expected) {
    int first = 1;
    for (Heat entry : step.heats()) {
      if (heat < first + entry.times()) {
        for (int i = first; i < heat; i++) {
          expected.heats().putIfAbsent(step.mark().number() + "." + i, "planned");
        }
        return;
      }
      first += entry.times();
    }
  }

  private static <T> List<T> both(List<T> a, List<T> b) {
    return Stream.concat(a.stream(), b.stream()).toList();
  }

  /** What a file says was done and seen, in the words of what is expected. */
  private static Expected found(Billet billet) {
    Expected found = new Expected(new HashMap<>(), new HashMap<>(), new HashMap<>());
    for (Step step : billet.steps()) {
      int number = step.mark().number();
      int before = 0;
      for (Heat heat : step.heats()) {
        for (int i = 0; i < heat.done().size(); i++) {
          found.heats().put(number + "." + (before + i + 1), told(heat.done().get(i)));
        }
        before += heat.times();
      }
      step.mark()
          .done()
          .ifPresent(done -> found.steps().put(number, came(step, done) + day(done.on())));
      for (Seen look : step.mark().seen()) {
        String line = look.line().name().toLowerCase(java.util.Locale.ROOT);
        found.looks().merge(number, List.of(line + day(look.on())), RandomRecordsTest::both);
      }
    }
    return found;
  }

  private static String told(HeatDone done) {
    String how =
        done.how() instanceof HeatDone.Held held
            ? Math.round(held.at().celsius()) + " " + Math.round(held.hold().seconds())
            : "planned";
    return how + day(done.on());
  }

  private static String came(Step step, StepDone done) {
    double is = measure(step);
    return is == measure(done.planned()) ? "planned" : "0.0" + Math.round(is / 25.4e-6);
  }

  private static double measure(Step step) {
    return switch (step.kind()) {
      case DRAW -> ((Step.Draw) step).thickness().metres();
      case PRESS -> ((Step.Press) step).thickness().metres();
      case ROLL -> ((Step.Roll) step).thickness().metres();
      case GRIND -> ((Step.Grind) step).depth().metres();
      case UNJACKET -> ((Step.Unjacket) step).depthTaken().metres();
      default -> 0;
    };
  }

  private static String day(Optional<LocalDate> on) {
    return on.map(LocalDate::toString).orElse("");
  }

  /** Comments wherever one may stand. */
  private String commented(String text) {
    StringBuilder all = new StringBuilder();
    String[] pieces = GAP.split(text.replaceAll("//[^\n]*", ""));
    for (int i = 0; i < pieces.length; i++) {
      all.append(pieces[i]);
      if (i < pieces.length - 1) {
        switch (random.nextInt(4)) {
          case 0 -> all.append("/* <").append(i).append("> */");
          case 1 -> all.append(" // <").append(i).append(">\n   ");
          case 2 -> all.append("\n   // <").append(i).append(">\n   ");
          default -> {}
        }
      }
    }
    return all.toString();
  }

  private static List<String> comments(String text) {
    return COMMENT.matcher(text).results().map(MatchResult::group).toList();
  }

  /** The values of a file without what was done and seen. */
  private static String plan(String text) {
    return plain(JsonTree.parse("plan.json", text)).toString();
  }

  private static Object plain(JsonValue value) {
    if (value instanceof JsonValue.ObjectValue object) {
      Map<String, Object> map = new LinkedHashMap<>();
      object.members().forEach((key, member) -> map.put(key, plain(member.value())));
      map.keySet().removeAll(List.of("done", "seen"));
      return map;
    }
    if (value instanceof JsonValue.ListValue list) {
      List<Object> all = new ArrayList<>();
      list.items().forEach(item -> all.add(plain(item)));
      return all;
    }
    return value instanceof JsonValue.TextValue text
        ? text.text()
        : ((JsonValue.NumberValue) value).digits();
  }
}
