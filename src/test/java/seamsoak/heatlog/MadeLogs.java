package seamsoak.heatlog;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Logs as loggers and kiln controllers write them, each from a course that is known. They were made
 * before there was a reader, so that it could not be made for it; none is a format of any product.
 */
final class MadeLogs {
  private static final Charset WINDOWS = Charset.forName("windows-1252");
  private static final LocalDateTime AFTERNOON = LocalDateTime.of(2026, 11, 20, 14, 3, 7);
  private static final LocalDateTime LATE = LocalDateTime.of(2026, 11, 30, 23, 41, 12);

  private MadeLogs() {}

  static List<MadeLog> all() {
    return Stream.of(clocks(), shapes(), channels(), faults(), questions())
        .flatMap(List::stream)
        .toList();
  }

  /** The ways to tell the time. */
  private static List<MadeLog> clocks() {
    TrueHeat forge = TrueHeat.FORGE;
    return List.of(
        read(
            "ISO date and time, commas",
            forge,
            utf8(
                "Date and time,Temperature (°C)\n"
                    + rows(forge, 10, (i, t) -> clock("yyyy-MM-dd HH:mm:ss", i * 10) + "," + t))),
        read(
            "ISO 8601 with T and zone, fractions of a second",
            forge,
            utf8(
                "timestamp,value_degC\n"
                    + rows(
                        forge,
                        5,
                        (i, t) -> clock("yyyy-MM-dd'T'HH:mm:ss", i * 5) + ".250+01:00," + t))),
        read(
            "12-hour clock over noon, Fahrenheit",
            forge,
            utf8(
                "Date,Time,Bar (°F)\n"
                    + rows(
                        forge,
                        10,
                        1,
                        (i, t) ->
                            at(
                                    LocalDateTime.of(2026, 11, 20, 11, 40, 0),
                                    "MM/dd/yy,hh:mm:ss a",
                                    i * 10)
                                + ","
                                + fahrenheit(t)))),
        read(
            "time alone, over midnight, byte order mark",
            forge,
            utf8(
                "\uFEFFTime,Temp C\r\n"
                    + rows(forge, 15, (i, t) -> at(LATE, "HH:mm:ss", i * 15) + "," + t)
                        .replace("\n", "\r\n"))),
        read(
            "day before month, over the end of November",
            forge,
            utf8(
                "Datum;Zeit;Temperatur [°C]\n"
                    + rows(
                        forge,
                        20,
                        (i, t) -> at(LATE, "dd/MM/yy;HH:mm:ss", i * 20) + ";" + comma(t)))),
        read(
            "month and day that can be mistaken, over midnight",
            forge,
            utf8(
                "when,deg C\n"
                    + rows(
                        forge,
                        20,
                        (i, t) ->
                            at(
                                    LocalDateTime.of(2026, 12, 11, 23, 30, 0),
                                    "dd-MM-yy HH:mm:ss",
                                    i * 20)
                                + ","
                                + t))),
        read(
            "minutes only, six rows in each",
            forge,
            utf8("Time,Temp (C)\n" + rows(forge, 10, (i, t) -> clock("HH:mm", i * 10) + "," + t))),
        read(
            "newest first, record numbers",
            forge,
            utf8(
                "Rec,Date,Time,Temp (°C)\n"
                    + reversed(
                        rows(
                            forge,
                            10,
                            (i, t) ->
                                (i + 1) + "," + clock("dd.MM.yyyy,HH:mm:ss", i * 10) + "," + t)))),
        read(
            "seconds since the start",
            TrueHeat.SHORT,
            utf8("Elapsed [s],Kiln [°C]\n" + rows(TrueHeat.SHORT, 2, (i, t) -> i * 2 + ".0," + t))),
        read(
            "hours since the start",
            TrueHeat.KILN,
            utf8(
                "Time (h)\tTemp (°C)\n"
                    + rows(
                        TrueHeat.KILN,
                        60,
                        (i, t) -> String.format(Locale.ROOT, "%.4f\t%s", i / 60.0, t)))),
        read(
            "elapsed as hours, minutes and seconds",
            TrueHeat.KILN,
            utf8(
                "Elapsed,Celsius\n"
                    + rows(
                        TrueHeat.KILN,
                        30,
                        (i, t) ->
                            String.format(
                                Locale.ROOT,
                                "%d:%02d:%02d,%s",
                                i / 120,
                                i / 2 % 60,
                                i % 2 * 30,
                                t)))),
        read(
            "epoch seconds",
            forge,
            utf8("t,temp_c\n" + rows(forge, 10, (i, t) -> (1795183387L + i * 10) + "," + t))),
        read(
            "epoch milliseconds",
            forge,
            utf8(
                "ts;temperature_celsius\n"
                    + rows(forge, 4, (i, t) -> (1795183387123L + i * 4000L) + ";" + t))),
        read(
            "days of a spreadsheet",
            forge,
            utf8(
                "Date,T (°C)\n"
                    + rows(
                        forge,
                        10,
                        (i, t) ->
                            String.format(
                                Locale.ROOT, "%.8f,%s", 46346.5855 + i * 10 / 86400.0, t)))),
        read(
            "a start and an interval before the rows",
            forge,
            utf8(
                "Start;2026-11-20 14:03:07\nInterval;10 s\nNo;T1 °C\n"
                    + rows(forge, 10, (i, t) -> (i + 1) + ";" + comma(t)))));
  }

  /** Delimiters, decimal marks, encodings, heads. */
  private static List<MadeLog> shapes() {
    TrueHeat forge = TrueHeat.FORGE;
    IntFunction<String> day = s -> clock("dd.MM.yyyy;HH:mm:ss", s);
    return List.of(
        read(
            "windows-1252, semicolons, decimal comma, dots for thousands",
            forge,
            ("Messstelle: Ofen 3\nBeginn: 20.11.2026\n\nDatum;Zeit;Temperatur °C\n"
                    + rows(forge, 10, (i, t) -> day.apply(i * 10) + ";" + thousands(t, '.', ',')))
                .getBytes(WINDOWS)),
        read(
            "UTF-16 with mark, tabs",
            forge,
            ("\uFEFFNo.\tDate\tTime\tT [°C]\r\n"
                    + rows(
                            forge,
                            10,
                            (i, t) ->
                                (i + 1) + "\t" + clock("yyyy/MM/dd\tHH:mm:ss", i * 10) + "\t" + t)
                        .replace("\n", "\r\n"))
                .getBytes(StandardCharsets.UTF_16LE)),
        read(
            "UTF-16 big end first without mark",
            forge,
            ("Time;°C\n" + rows(forge, 10, (i, t) -> clock("HH:mm:ss", i * 10) + ";" + comma(t)))
                .getBytes(StandardCharsets.UTF_16BE)),
        read(
            "a line that names the delimiter, names and units in two rows",
            forge,
            utf8(
                "sep=;\nTime;Furnace;Door\ns;°C;0/1\n"
                    + rows(forge, 10, (i, t) -> i * 10 + ";" + t + ";" + (i > 238 ? 1 : 0)))),
        read(
            "quoted cells with thousands",
            forge,
            utf8(
                "\"Time\",\"Temp (°C)\"\n"
                    + rows(
                        forge,
                        10,
                        (i, t) ->
                            "\""
                                + clock("HH:mm:ss", i * 10)
                                + "\",\""
                                + thousands(t, ',', '.')
                                + "\""))),
        read(
            "quoted cells with a decimal comma",
            forge,
            utf8(
                "\"Heure\",\"Température (°C)\"\n"
                    + rows(
                        forge,
                        10,
                        (i, t) -> "\"" + clock("HH:mm:ss", i * 10) + "\",\"" + comma(t) + "\""))),
        read(
            "units in the cells",
            forge,
            utf8(
                "Time,Reading\n"
                    + rows(forge, 10, (i, t) -> clock("HH:mm:ss", i * 10) + "," + t + " °C"))),
        read(
            "lines before the head, comments, trailing delimiters, events and an end",
            forge,
            utf8(
                "# exported\nSerial,0012345\nFirmware,3.1\nChannels,1\nRate,10 s\n\n"
                    + "Time,Temp (°C),\n"
                    + rows(
                        forge,
                        10,
                        (i, t) ->
                            clock("HH:mm:ss", i * 10)
                                + ","
                                + t
                                + ","
                                + (i % 77 == 5
                                    ? "\nEVENT " + clock("HH:mm:ss", i * 10) + " door open"
                                    : i % 91 == 3 ? "\n\n* marker,3,set,by,hand,,," : ""))
                    + "END,360 records\n")),
        read(
            "kelvin, and the couple's type in the head",
            forge,
            utf8(
                "Time [min],T1 (type K) [K]\n"
                    + rows(
                        forge,
                        10,
                        2,
                        (i, t) ->
                            String.format(
                                Locale.ROOT,
                                "%.4f,%.2f",
                                i / 6.0,
                                Double.parseDouble(t) + 273.15)))),
        read(
            "no head at all but a unit in each cell",
            forge,
            utf8(rows(forge, 10, (i, t) -> clock("HH:mm:ss", i * 10) + ";" + comma(t) + "C"))));
  }

  /** More than one channel. */
  private static List<MadeLog> channels() {
    TrueHeat forge = TrueHeat.FORGE;
    TrueHeat kiln = TrueHeat.KILN;
    return List.of(
        read(
            "set point, power and humidity beside the reading",
            kiln,
            utf8(
                "Time;Setpoint °C;Actual °C;Output %;Humidity %\n"
                    + rows(
                        kiln,
                        60,
                        (i, t) ->
                            clock("HH:mm:ss", i * 60)
                                + ";"
                                + (i < 169 ? 25 + 5 * i : i < 199 ? 870 : i < 320 ? 1062 : 0)
                                + ";"
                                + comma(t)
                                + ";"
                                + (i < 320 ? 40 + i % 17 : 0)
                                + ";"
                                + (38 + i % 3)))),
        read(
            "set point before the reading, short names",
            kiln,
            utf8(
                "h:m;SP1 [C];PV1 [C];OP1\n"
                    + rows(
                        kiln,
                        60,
                        (i, t) ->
                            String.format(Locale.ROOT, "%d:%02d", i / 60, i % 60)
                                + ";"
                                + (i < 169 ? 25 + 5 * i : i < 199 ? 870 : 1062)
                                + ";"
                                + comma(t)
                                + ";0,"
                                + (10 + i % 80)))),
        read(
            "a cold junction beside the couple",
            forge,
            utf8(
                "Time,Couple (°C),Junction (°C)\n"
                    + rows(
                        forge,
                        10,
                        (i, t) -> clock("HH:mm:ss", i * 10) + "," + t + "," + one(24 + i / 90.0)))),
        asked(
            "three hot channels",
            Set.of("column"),
            Map.of("column", "T2"),
            forge,
            utf8(
                "Time,T1 (°C),T2 (°C),T3 (°C)\n"
                    + rows(
                        forge,
                        10,
                        (i, t) ->
                            clock("HH:mm:ss", i * 10)
                                + ","
                                + one(forge.elsewhere(1.02, 12).celsius(i / 6.0))
                                + ","
                                + t
                                + ","
                                + one(forge.elsewhere(0.9, 5).celsius(i / 6.0))))),
        read(
            "eight hours at 1 Hz, whole degrees",
            kiln,
            utf8(
                "Time,Temp (°C)\n"
                    + rows(
                        kiln, 1, 0, (i, t) -> at(AFTERNOON, "yyyy-MM-dd HH:mm:ss", i) + "," + t))));
  }

  /** What goes wrong while a log is written. */
  private static List<MadeLog> faults() {
    TrueHeat forge = TrueHeat.FORGE;
    return List.of(
        read(
            "seven minutes missing within the hold",
            forge,
            utf8(
                "Time,Temp (°C)\n"
                    + rows(forge, 10, (i, t) -> clock("HH:mm:ss", i * 10) + "," + t)
                        .lines()
                        .filter(
                            line ->
                                !(line.compareTo("14:29:00") > 0 && line.compareTo("14:36:00") < 0))
                        .collect(Collectors.joining("\n")))),
        read(
            "spikes of one and two readings, up and down",
            forge,
            utf8(
                "Time,Temp (°C)\n"
                    + rows(
                        forge,
                        5,
                        (i, t) ->
                            clock("HH:mm:ss", i * 5)
                                + ","
                                + switch (i % 97) {
                                  case 40 -> "1372.0";
                                  case 41 -> i % 2 == 0 ? "1372.0" : t;
                                  case 77 -> "0.0";
                                  case 15 -> "-200.0";
                                  case 60 -> one(Double.parseDouble(t) + 65);
                                  default -> t;
                                }))),
        read(
            "an open couple, for one row and for half a minute",
            forge,
            utf8(
                "Time,Temp (°C)\n"
                    + rows(
                        forge,
                        10,
                        (i, t) ->
                            clock("HH:mm:ss", i * 10)
                                + ","
                                + (i % 50 == 12
                                    ? "----"
                                    : i % 70 == 30
                                        ? "OL"
                                        : i >= 150 && i < 153
                                            ? "NaN"
                                            : i == 200 ? "open" : i == 201 ? "" : t)))),
        read(
            "the same moment twice",
            forge,
            utf8(
                "Time,Temp (°C)\n"
                    + rows(
                        forge,
                        10,
                        (i, t) ->
                            clock("HH:mm:ss", i * 10)
                                + ","
                                + t
                                + (i % 40 == 7
                                    ? "\n" + clock("HH:mm:ss", i * 10) + "," + t
                                    : "")))),
        read(
            "rows at uneven times",
            forge,
            utf8(
                "Time (s),Temp (°C)\n"
                    + IntStream.range(0, 720)
                        .map(i -> i * 5 + (i * 7919) % 4)
                        .mapToObj(s -> s + "," + one(forge.celsius(s / 60.0)))
                        .collect(Collectors.joining("\n")))));
  }

  /** What no reader can know. */
  private static List<MadeLog> questions() {
    TrueHeat forge = TrueHeat.FORGE;
    TrueHeat kiln = TrueHeat.KILN;
    return List.of(
        asked(
            "no unit of temperature",
            Set.of("unit"),
            Map.of("unit", "C"),
            forge,
            utf8("Time,Temp\n" + rows(forge, 10, (i, t) -> clock("HH:mm:ss", i * 10) + "," + t))),
        read(
            "no unit, but too hot for Celsius",
            forge,
            utf8(
                "Time,Temp\n"
                    + rows(forge, 10, (i, t) -> clock("HH:mm:ss", i * 10) + "," + fahrenheit(t)))),
        asked(
            "no unit of time",
            Set.of("time-unit"),
            Map.of("time-unit", "min"),
            kiln,
            utf8("Time,Temp (°C)\n" + rows(kiln, 30, (i, t) -> i / 2.0 + "," + t))),
        asked(
            "clock of two parts that may be minutes and seconds",
            Set.of("time-unit"),
            Map.of("time-unit", "min"),
            TrueHeat.SHORT,
            utf8(
                "Elapsed,Temp (°C)\n"
                    + rows(
                        TrueHeat.SHORT,
                        5,
                        (i, t) ->
                            String.format(Locale.ROOT, "%02d:%02d,%s", i / 12, i % 12 * 5, t)))),
        asked(
            "record numbers and no time",
            Set.of("interval"),
            Map.of("interval", "10 s"),
            forge,
            utf8("No,Temp (°C)\n" + rows(forge, 10, (i, t) -> (i + 1) + "," + t))),
        asked(
            "one column",
            Set.of("interval"),
            Map.of("interval", "10 s"),
            forge,
            utf8("Temp (°C)\n" + rows(forge, 10, (i, t) -> t))));
  }

  /** A row from its number and the temperature as written. */
  private interface Row {
    String of(int number, String celsius);
  }

  private static String rows(TrueHeat course, int seconds, Row row) {
    return rows(course, seconds, 1, row);
  }

  private static String rows(TrueHeat course, int seconds, int decimals, Row row) {
    SplittableRandom noise = new SplittableRandom(17);
    StringBuilder all = new StringBuilder();
    for (int i = 0; i * seconds <= course.minutes() * 60; i++) {
      double read = course.celsius(i * seconds / 60.0) + 0.6 * (noise.nextDouble() - 0.5);
      all.append(row.of(i, String.format(Locale.ROOT, "%." + decimals + "f", read))).append('\n');
    }
    return all.toString();
  }

  private static String reversed(String rows) {
    List<String> lines = new ArrayList<>(rows.lines().toList());
    Collections.reverse(lines);
    return String.join("\n", lines);
  }

  private static String clock(String pattern, int seconds) {
    return at(AFTERNOON, pattern, seconds);
  }

  private static String at(LocalDateTime start, String pattern, int seconds) {
    return start.plusSeconds(seconds).format(DateTimeFormatter.ofPattern(pattern, Locale.US));
  }

  private static String one(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private static String comma(String number) {
    return number.replace('.', ',');
  }

  private static String fahrenheit(String celsius) {
    return one(Double.parseDouble(celsius) * 1.8 + 32);
  }

  private static String thousands(String number, char group, char decimal) {
    return String.format(Locale.US, "%,.1f", Double.parseDouble(number))
        .replace(',', '\0')
        .replace('.', decimal)
        .replace('\0', group);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static MadeLog read(String name, TrueHeat course, byte[] bytes) {
    return new MadeLog(name, bytes, course, Set.of(), Map.of());
  }

  private static MadeLog asked(
      String name, Set<String> asks, Map<String, String> answers, TrueHeat course, byte[] bytes) {
    return new MadeLog(name, bytes, course, asks, answers);
  }
}
