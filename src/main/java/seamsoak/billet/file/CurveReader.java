package seamsoak.billet.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import seamsoak.billet.LoggedCurve;
import seamsoak.billet.LoggedCurve.Gap;
import seamsoak.billet.LoggedCurve.Point;
import seamsoak.billet.LoggedCurve.Tip;
import seamsoak.data.Fault;
import seamsoak.data.Faults;
import seamsoak.data.Nearest;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;

/** Reads the curves of real heats, and which of them a heat names. */
final class CurveReader {
  /** A straight-lined log of a long day has some hundred. */
  private static final int MOST_POINTS = 5000;

  private static final int MOST_GAPS = 500;
  private static final double LONGEST_MINUTES = 48 * 60;
  private static final double COLDEST_CELSIUS = -50;
  private static final double HOTTEST_CELSIUS = 1600;

  private static final Reader<Double> MINUTES = Values.number(0, LONGEST_MINUTES);

  private static final Key<Optional<String>> FILE =
      Key.optional("file", "\"run.csv\"", Values.TEXT);
  private static final Key<Optional<String>> SHA256 =
      Key.optional("sha256", "\"9f86d081884c7d65...\"", Values.TEXT);
  private static final Key<Optional<String>> COLUMN = Key.optional("column", "\"T2\"", Values.TEXT);
  private static final Key<Optional<Tip>> TIP =
      Key.optional("tip", "\"steel\"", Values.choice(Tip.class));
  private static final Key<Optional<String>> COUPLE =
      Key.optional("couple", "\"K standard, used\"", Values.TEXT);
  private static final Key<Optional<TimeSpan>> LOADED =
      Key.optional("loaded", "\"4 min\"", Quantities::time);
  private static final Key<Optional<TimeSpan>> OUT =
      Key.optional("out", "\"41 min\"", Quantities::time);
  private static final Key<List<Double>> TIMES =
      Key.required("minutes", "[0, 3.5]", new ListOf<>(MOST_POINTS, MINUTES));
  private static final Key<List<Double>> HEATS =
      Key.required(
          "celsius",
          "[21, 850]",
          new ListOf<>(MOST_POINTS, Values.number(COLDEST_CELSIUS, HOTTEST_CELSIUS)));
  private static final Key<List<Gap>> GAPS =
      Key.or(List.of(), "gaps", "[[12, 13.5]]", new ListOf<>(MOST_GAPS, CurveReader::gap));

  static final Form<LoggedCurve> CURVE =
      new Form<>(
          List.of(FILE, SHA256, COLUMN, TIP, COUPLE, LOADED, OUT, TIMES, HEATS, GAPS),
          CurveReader::curve);

  private CurveReader() {}

  /** Each by its name; a faulty one keeps its name, so that no heat is told that there is none. */
  static Map<String, Optional<LoggedCurve>> curves(Entry entry, Faults faults) {
    Map<String, Optional<LoggedCurve>> all = new LinkedHashMap<>();
    faults
        .tried(entry::object)
        .ifPresent(
            object ->
                object
                    .members()
                    .keySet()
                    .forEach(
                        name ->
                            all.put(
                                name,
                                faults.tried(() -> CURVE.read(entry.member(name).orElseThrow())))));
    return all;
  }

  /** The curve that a heat names. */
  static LoggedCurve named(Entry entry) {
    String name = Values.text(entry);
    Map<String, Optional<LoggedCurve>> all = entry.reading().curves();
    if (!all.containsKey(name)) {
      throw entry.refused(
          Nearest.to(name, all.keySet())
              .map(near -> "did you mean '" + near + "'?")
              .orElse("it should be one of the names under curves"));
    }
    // a curve that could not be read has been told of where it stands
    return all.get(name).orElseThrow(() -> new Fault(List.of()));
  }

  private static Gap gap(Entry entry) {
    List<Double> ends = new ListOf<>(2, MINUTES).read(entry);
    if (ends.size() != 2 || ends.get(0) >= ends.get(1)) {
      throw entry.fault("a gap has no beginning and end", "write it as [12, 13.5], in minutes");
    }
    return new Gap(60 * ends.get(0), 60 * ends.get(1));
  }

  private static LoggedCurve curve(Fields f) {
    List<Double> minutes = f.get(TIMES);
    List<Double> celsius = f.get(HEATS);
    if (minutes.size() != celsius.size() || minutes.size() < 2) {
      throw f.at(HEATS)
          .fault(
              "there are " + minutes.size() + " minutes and " + celsius.size() + " celsius",
              "a curve has as many of both, at least two");
    }
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < minutes.size(); i++) {
      if (i > 0 && minutes.get(i) <= minutes.get(i - 1)) {
        throw f.at(TIMES)
            .fault("minutes do not go up at entry " + (i + 1), "each is later than the one before");
      }
      points.add(new Point(60 * minutes.get(i), Temperature.ofCelsius(celsius.get(i)).kelvin()));
    }
    LoggedCurve curve =
        new LoggedCurve(
            f.object().name(),
            points,
            f.get(GAPS),
            f.get(LOADED),
            f.get(OUT),
            new LoggedCurve.Origin(
                f.get(FILE), f.get(SHA256), f.get(COLUMN), f.get(TIP), f.get(COUPLE)));
    if (curve.curve().segments().isEmpty()) {
      throw f.object()
          .fault("the metal was never in while it was read", "loaded comes before out, in minutes");
    }
    return curve;
  }

  /** That a curve is there which no heat names. */
  static Optional<Fault> unused(Entry curves, List<LoggedCurve> used) {
    List<String> names = used.stream().map(LoggedCurve::name).toList();
    List<String> idle =
        curves.object().members().keySet().stream().filter(n -> !names.contains(n)).toList();
    return IntStream.range(0, Math.min(1, idle.size()))
        .mapToObj(
            i ->
                curves
                    .member(idle.get(i))
                    .orElseThrow()
                    .fault(
                        "no heat names the curve '" + Fault.shown(idle.get(i)) + "'",
                        "name it in the done of a heat, or take it out"))
        .findFirst();
  }
}
