package seamsoak.heatlog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import seamsoak.data.Fault;
import seamsoak.data.ForeignText;

/**
 * Logs put together at random from the ways to write one: none is misread in silence. What a
 * reading said that a spike or an open couple took the place of, no reader can know: there the
 * truth is the straight line between its neighbours.
 */
@Tag("long")
class AnyLogTest {
  private static final int LOGS = Boolean.getBoolean("long") ? 3000 : 100;
  private static final double PLANNED = 1100;

  private final CarbonRate rate = new Heats().rate();

  /** One way to write a log, drawn by a seed. */
  private static final class Pen {
    private final SplittableRandom random;
    private final TrueHeat course;
    private final char delimiter;
    private final boolean comma;
    private final String unit;
    private final int clock;
    private final int seconds;
    private final LocalDateTime start;
    private final BitSet lost = new BitSet();

    Pen(long seed) {
      random = new SplittableRandom(seed);
      course = one(TrueHeat.FORGE, TrueHeat.FORGE, TrueHeat.SHORT, TrueHeat.KILN);
      delimiter = one(',', ';', '\t', '|');
      comma = random.nextInt(3) == 0;
      unit = one("C", "C", "F", "F", "K", "");
      clock = random.nextInt(12);
      seconds = one(1, 2, 5, 10, 15);
      start =
          LocalDateTime.of(2026, 1, 1, 0, 0, 0)
              .plusDays(random.nextInt(365))
              .plusSeconds(random.nextInt(86400));
    }

    @SafeVarargs
    private <T> T one(T... of) {
      return of[random.nextInt(of.length)];
    }

    /** Quoted where its decimal comma would part it. */
    private String number(double value, int decimals) {
      String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
      text = comma ? text.replace('.', ',') : text;
      return text.indexOf(delimiter) >= 0 ? "\"" + text + "\"" : text;
    }

    private String timeHead() {
      return switch (clock) {
        case 0 -> "Date" + delimiter + "Time";
        case 1, 2, 3, 4 -> one("Time", "Timestamp", "Datum/Zeit", "when");
        case 5 -> one("Time", "Uhrzeit", "Clock");
        case 6 -> "Time [s]";
        case 7 -> one("Elapsed (min)", "t/min", "Minutes");
        case 8 -> one("Epoch", "unix", "ts");
        case 9 -> "No" + delimiter + "Time";
        case 10 -> "Time";
        default -> "Time";
      };
    }

    private String time(int row) {
      LocalDateTime at = start.plusSeconds((long) row * seconds);
      return switch (clock) {
        case 0 -> at(at, "dd.MM.yyyy") + delimiter + at(at, "HH:mm:ss");
        case 1 -> at(at, "MM/dd/yyyy HH:mm:ss");
        case 2 -> at(at, "yyyy-MM-dd'T'HH:mm:ss") + "Z";
        case 3 -> at(at, "d-MMM-yy h:mm:ss a");
        case 4 -> at(at, "yyyy/MM/dd HH:mm:ss") + ".500";
        case 5 -> at(at, "HH:mm:ss");
        case 6 -> number(row * seconds, one(0, 0, 1));
        case 7 -> number(row * seconds / 60.0, 3);
        case 8 -> Long.toString(1_790_000_000L + (long) row * seconds);
        case 9 -> row + "" + delimiter + at(at, "HH:mm:ss");
        case 10 -> number(row * seconds, 0);
        default -> at(at, "hh:mm:ss");
      };
    }

    private static String at(LocalDateTime time, String form) {
      return time.format(DateTimeFormatter.ofPattern(form, Locale.US));
    }

    private double reading(double celsius) {
      return switch (unit) {
        case "F" -> celsius * 1.8 + 32;
        case "K" -> celsius + 273.15;
        default -> celsius;
      };
    }

    private String name(String what) {
      return what
          + switch (unit) {
            case "" -> "";
            case "K" -> " [K]";
            default -> one(" (°%s)", " [%s]", " %s", " deg %s", "_%s").formatted(unit);
          };
    }

    MadeLog log() {
      List<String> rows = new ArrayList<>();
      int decimals = one(0, 1, 2);
      boolean set = random.nextInt(3) == 0;
      boolean power = random.nextInt(3) == 0;
      boolean cold = random.nextInt(4) == 0 && !unit.isEmpty();
      boolean spikes = random.nextInt(3) == 0;
      boolean open = random.nextInt(3) == 0;
      String mark = one("", "----", "OL", "NaN", "open");
      for (int i = 0; i * seconds <= course.minutes() * 60; i++) {
        double celsius = course.celsius(i * seconds / 60.0) + random.nextDouble() - 0.5;
        boolean spike = spikes && random.nextInt(80) == 0;
        String read = number(reading(spike ? one(0.0, 1372.0, 1300.0) : celsius), decimals);
        boolean gone = open && random.nextInt(50) == 0;
        read = gone ? mark : read;
        lost.set(i, spike || gone);
        rows.add(
            time(i)
                + (set ? delimiter + number(reading(1121), 0) : "")
                + delimiter
                + read
                + (cold ? delimiter + number(reading(24.5), 1) : "")
                + (power ? delimiter + "" + random.nextInt(100) : ""));
      }
      if (random.nextInt(4) == 0) {
        Collections.reverse(rows);
      }
      StringBuilder text = new StringBuilder();
      for (int i = random.nextInt(4); i > 0; i--) {
        text.append(one("Logger 12", "Serial" + delimiter + "00123", "# made", "")).append('\n');
      }
      text.append(timeHead())
          .append(set ? delimiter + name("Setpoint") : "")
          .append(delimiter)
          .append(name(one("Temp", "T1", "Kiln", "Istwert")))
          .append(cold ? delimiter + name("Junction") : "")
          .append(power ? delimiter + "Output %" : "")
          .append('\n');
      text.append(String.join(one("\n", "\r\n"), rows));
      text.append(one("", "\n", "\nEND\n"));
      Charset charset =
          one(StandardCharsets.UTF_8, Charset.forName("windows-1252"), StandardCharsets.UTF_16LE);
      return new MadeLog(
          text.substring(0, Math.min(300, text.length())).replace("\n", " / "),
          text.toString().getBytes(charset),
          course,
          Set.of(),
          Map.of());
    }

    /** What the heat was worth, where rows are lost at the cooler or the hotter of their ends. */
    double worth(CarbonRate rate, DoubleBinaryOperator end) {
      int rows = (int) (course.minutes() * 60 / seconds) + 1;
      double sum = 0;
      int from = 0;
      for (int to = lost.nextClearBit(1); to < rows; to = lost.nextClearBit(to + 1)) {
        double a = from * seconds / 60.0;
        double b = to * seconds / 60.0;
        double level = end.applyAsDouble(course.celsius(a), course.celsius(b));
        sum +=
            to == from + 1
                ? course.worth(rate::at, PLANNED, a, b)
                : (b - a) * rate.at(level) / rate.at(PLANNED);
        from = to;
      }
      return sum;
    }
  }

  @Test
  void noneIsMisreadInSilence() {
    int read = 0;
    int asked = 0;
    List<String> wrong = new ArrayList<>();
    for (long seed = 1; seed <= LOGS; seed++) {
      Pen pen = new Pen(seed);
      MadeLog log = pen.log();
      try {
        LogReading reading =
            LogReader.read(ForeignText.of("any.csv", log.bytes()), LogAnswers.NONE);
        if (reading instanceof LogReading.Read r) {
          read++;
          double low = pen.worth(rate, Math::min);
          double high = pen.worth(rate, Math::max);
          double worth =
              Credit.minutes(
                  LogCurve.of(r.readings()).heat(LogCurve.InGaps.COOLER_END), rate, PLANNED);
          if (worth < 0.995 * low || worth > 1.005 * high) {
            wrong.add(seed + ": " + worth + " for " + low + " to " + high + ", " + log.name());
          }
        } else {
          asked++;
        }
      } catch (Fault e) {
        wrong.add(seed + ": " + e.getMessage() + ", " + log.name());
      }
    }
    assertEquals("", String.join("\n", wrong));
    assertTrue(read > LOGS / 2, read + " read");
    assertTrue(asked > LOGS / 10, asked + " asked");
  }
}
