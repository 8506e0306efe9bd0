package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Somebody who presses and types at random: nothing breaks, memory stays flat, and no answer is
 * given for a text that is gone. {@code -Dedits.seconds=3600} sets how long.
 */
@Tag("long")
@Timeout(7200)
class RandomEditsTest extends FormsOnly {
  private static final long SECONDS =
      Long.getLong("edits.seconds", Boolean.getBoolean("long") ? 3600 : 8);
  private static final Pattern FIELD = Pattern.compile("(?:id=\"at-[^\"]*\" )name=\"([^\"]+)\"");
  private static final Pattern ACT = Pattern.compile("name=\"act\" value=\"([^\"]+)\"");
  private static final Pattern REV = Pattern.compile("data-rev=\"([0-9]+)\"");
  private static final List<String> VALUES =
      List.of(
          "",
          "1",
          "2",
          "3/8",
          "0.25",
          "25 mm",
          "1150 C",
          "2100",
          "5 min",
          "1084",
          "15N20",
          "gas",
          "none",
          "all",
          "alternate",
          "-1",
          "1e9",
          "NaN",
          "\u2033",
          "<b>",
          "0",
          "999999",
          "1095",
          "covered",
          "sealed",
          "nonsense");

  private final long seed = Long.getLong("edits.seed", System.nanoTime());
  private final SplittableRandom random = new SplittableRandom(seed);

  @Test
  void nothingBreaksHoweverLongItGoesOn() throws Exception {
    String desk = begun("mosaic", "us", "random");
    assertTrue(smith.get(desk + "/answer?rev=1").body().contains("data-rev=\"1\""));
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS);
    long third = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS) / 3;
    long early = 0;
    int edits = 0;
    int answers = 0;
    Map<Integer, Integer> statuses = new LinkedHashMap<>();
    while (System.nanoTime() < end) {
      Visitor.Reply bench = smith.get(desk);
      assertEquals(200, bench.status(), told(bench));
      int number = Integer.parseInt(number(bench));
      if (random.nextInt(200) == 0 || bench.body().length() > 2_000_000) {
        smith.post(desk + "/drop", Map.of());
        desk = begun(random.nextBoolean() ? "mosaic" : "many-layers", "us", "");
        continue;
      }
      Visitor.Reply reply = smith.post(desk + "/edit", form(bench.body(), number));
      statuses.merge(reply.status(), 1, Integer::sum);
      assertTrue(List.of(303, 409, 400).contains(reply.status()), told(reply));
      edits++;
      if (random.nextInt(3) == 0) {
        int now = Integer.parseInt(number(smith.get(desk)));
        Visitor.Reply answer =
            smith.get(desk + "/answer?rev=" + now + (random.nextBoolean() ? "&soak=1050" : ""));
        assertEquals(200, answer.status(), told(answer));
        Matcher rev = REV.matcher(answer.body());
        if (rev.find()) {
          answers++;
          assertEquals(now, Integer.parseInt(rev.group(1)), "an answer to a text that is gone");
        }
      }
      if (early == 0 && System.nanoTime() > third) {
        early = used();
      }
    }
    long late = used();
    System.out.printf(
        "Random edits for %d s: %d edits %s, %d answers, memory %d MB after a third, %d MB at the"
            + " end%n",
        SECONDS, edits, statuses, answers, early >> 20, late >> 20);
    assertTrue(edits > 0);
    assertTrue(late - early < 64L << 20, (late - early >> 20) + " MB more, seed " + seed);
  }

  private String told(Visitor.Reply reply) {
    return "seed " + seed + ": " + reply.status() + " " + reply.head() + reply.body();
  }

  private static long used() throws InterruptedException {
    for (int i = 0; i < 3; i++) {
      System.gc();
      Thread.sleep(100);
    }
    Runtime r = Runtime.getRuntime();
    return r.totalMemory() - r.freeMemory();
  }

  private Map<String, String> form(String bench, int number) throws IOException {
    Map<String, String> form = new LinkedHashMap<>();
    // now and then as from a window that has not heard of the last changes
    form.put("rev", "" + Math.max(1, number - (random.nextInt(8) == 0 ? random.nextInt(3) : 0)));
    List<String> fields = all(FIELD, bench);
    List<String> acts = all(ACT, bench);
    if (random.nextInt(4) > 0 || acts.isEmpty()) {
      for (int i = random.nextInt(3); i >= 0; i--) {
        form.put(any(fields), any(VALUES));
      }
    } else {
      String act = any(acts);
      form.put("act", act);
      if (act.matches("step [0-9]+")) {
        form.put("new." + act.substring(5), any(List.of("weld", "draw", "grind", "soak", "tile")));
      }
    }
    // what cannot be mended blindly is taken back, or there would be no answers
    if (random.nextInt(10) < (bench.contains("to mend") ? 7 : 1)) {
      form.clear();
      form.put("rev", "" + number);
      form.put("act", "undo");
    }
    return form;
  }

  private <T> T any(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private static List<String> all(Pattern pattern, String html) {
    return new ArrayList<>(pattern.matcher(html).results().map(m -> m.group(1)).toList());
  }
}
