package seamsoak.heatlog;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import seamsoak.data.Fault;
import seamsoak.data.ForeignText;
import seamsoak.data.Place;

/** Reads logs of loggers and kiln controllers, and asks where they can be read in two ways. */
public final class LogReader {
  /** A channel that never gets there was not in the fire, in either scale. */
  private static final double HOT = 450;

  /** No fire for steel is hotter: a higher reading is in Fahrenheit, C. */
  private static final double HOTTEST_CELSIUS = 1450;

  private static final double COLDEST_SHOP_KELVIN = 250;

  /** A number below that can be meant in thousands. */
  private static final double THOUSANDS = 3;

  private static final Pattern SAYS_CELSIUS =
      Pattern.compile("(?i).*(\\bcelsius\\b|°\\s*c\\b|\\b(unit\\w*|scale)\\W+(deg)?c\\b).*");
  private static final Pattern SAYS_FAHRENHEIT =
      Pattern.compile("(?i).*(\\bfahrenheit\\b|°\\s*f\\b|\\b(unit\\w*|scale)\\W+(deg)?f\\b).*");

  private final ForeignText text;
  private final LogAnswers answers;
  private final Layout layout;
  private final List<Column> columns;
  private final List<LogQuestion> open = new ArrayList<>();

  private LogReader(ForeignText text, LogAnswers answers) {
    this.text = text;
    this.answers = answers;
    this.layout = Layout.of(text);
    this.columns = IntStream.range(0, layout.width()).mapToObj(i -> Column.of(layout, i)).toList();
  }

  /** Reads a log; {@link Fault} where it is none. */
  public static LogReading read(ForeignText text, LogAnswers answers) {
    return new LogReader(text, answers).read();
  }

  private LogReading read() {
    TimeFinder.Found time = new TimeFinder(layout, columns, answers).find();
    time.question().ifPresent(open::add);
    List<Column> channels = channels(time.used());
    Optional<Column> column = chosen(channels);
    Optional<Scale> scale = column.flatMap(c -> scale(c, channels));
    Optional<DecimalMark> mark = column.flatMap(this::mark);
    if (!open.isEmpty()) {
      return new LogReading.Asks(open);
    }
    Column read = column.orElseThrow();
    Gathering.Kept kept =
        Gathering.of(layout, time.source().orElseThrow(), read.index(), mark.orElseThrow());
    Readings readings = Readings.of(TimeAxis.of(text.file(), kept), scale.orElseThrow());
    if (readings.seconds().length < 2) {
      throw new Fault(
          Place.of(text.file()),
          "'" + Fault.shown(read.name()) + "' holds fewer than two readings",
          "choose another column");
    }
    return new LogReading.Read(
        text.file(),
        text.sha256(),
        read.name(),
        scale.orElseThrow(),
        channels.stream().filter(c -> c != read).map(Column::name).toList(),
        kept.events(),
        readings);
  }

  /** The columns that may be the piece's temperature. */
  private List<Column> channels(List<Integer> used) {
    List<Column> numbers =
        columns.stream()
            .filter(c -> c.kind() == Column.Kind.NUMBER && !used.contains(c.index()))
            .filter(c -> HeadWords.timeUnit(c.name()).isEmpty() || !c.isCount())
            .filter(c -> !HeadWords.isNoReading(c.name()))
            .toList();
    List<Column> read = numbers.stream().filter(c -> !HeadWords.isSetPoint(c.name())).toList();
    if (read.isEmpty()) {
      throw new Fault(
          Place.of(text.file()),
          numbers.isEmpty()
              ? "no column of temperatures is found in it"
              : "it holds the set point alone",
          "give a log of what a thermocouple read");
    }
    List<Column> scaled = read.stream().filter(c -> scaleSaid(c, read).isPresent()).toList();
    List<Column> may = scaled.isEmpty() ? read : scaled;
    List<Column> hot = may.stream().filter(c -> c.highest() * thousands(c) > HOT).toList();
    return hot.isEmpty() ? may : hot;
  }

  private double thousands(Column c) {
    return c.doubtfulMark() && c.highest() < THOUSANDS ? 1000 : 1;
  }

  private Optional<Column> chosen(List<Column> channels) {
    if (answers.column().isPresent()) {
      String told = answers.column().get();
      Optional<Column> found = named(told, channels);
      if (found.isEmpty()) {
        open.add(new LogQuestion.WhichColumn(told(channels), Optional.of(told)));
      }
      return found;
    }
    if (channels.size() > 1) {
      open.add(new LogQuestion.WhichColumn(told(channels), Optional.empty()));
      return Optional.empty();
    }
    return Optional.of(channels.get(0));
  }

  private static List<LogQuestion.Channel> told(List<Column> channels) {
    return channels.stream().map(c -> new LogQuestion.Channel(c.name(), c.highest())).toList();
  }

  /** By its name, its name without the unit, or its number. */
  private static Optional<Column> named(String told, List<Column> channels) {
    String wanted = plain(told);
    return channels.stream()
        .filter(
            c ->
                plain(c.name()).equals(wanted)
                    || plain(c.name().replaceAll("[\\[({].*", "")).equals(wanted)
                    || Integer.toString(c.index() + 1).equals(wanted))
        .min(Comparator.comparing(c -> !plain(c.name()).equals(wanted)));
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }

  /** What the log says of the scale of a column; a bare letter may name one zone of several. */
  private Optional<Scale> scaleSaid(Column c, List<Column> all) {
    Optional<Scale> named = HeadWords.scale(c.name());
    if (named.isPresent() && HeadWords.isBareLetter(c.name())) {
      String stem = HeadWords.stem(c.name());
      long alike = all.stream().filter(o -> HeadWords.stem(o.name()).equals(stem)).count();
      named = alike > 1 ? Optional.empty() : named;
    }
    if (named.filter(s -> s == Scale.KELVIN).isPresent() && !isKelvin(c)) {
      named = Optional.empty();
    }
    return named.isPresent() ? named : c.scale();
  }

  private static boolean isKelvin(Column c) {
    return c.lowest() >= COLDEST_SHOP_KELVIN;
  }

  private Optional<Scale> scale(Column c, List<Column> channels) {
    if (answers.scale().isPresent()) {
      return answers.scale();
    }
    Optional<Scale> said = scaleSaid(c, channels);
    boolean doubtful =
        said.filter(s -> s == Scale.KELVIN).isPresent() && HeadWords.isDoubtfulKelvin(c.name());
    if (said.isPresent() && !doubtful && said.get().celsius(usualHighest(c)) <= HOTTEST_CELSIUS) {
      return said;
    }
    if (said.isEmpty()) {
      boolean celsius = layout.preamble().stream().anyMatch(l -> SAYS_CELSIUS.matcher(l).matches());
      boolean fahrenheit =
          layout.preamble().stream().anyMatch(l -> SAYS_FAHRENHEIT.matcher(l).matches());
      if (celsius != fahrenheit) {
        return Optional.of(celsius ? Scale.CELSIUS : Scale.FAHRENHEIT);
      }
    }
    Set<Scale> may = EnumSet.of(Scale.FAHRENHEIT);
    if (usualHighest(c) <= HOTTEST_CELSIUS) {
      may.add(Scale.CELSIUS);
    }
    if (isKelvin(c) && Scale.KELVIN.celsius(usualHighest(c)) <= HOTTEST_CELSIUS) {
      may.add(Scale.KELVIN);
    }
    if (may.size() == 1 && said.isEmpty()) {
      return may.stream().findFirst();
    }
    open.add(new LogQuestion.WhichScale(new LogQuestion.Channel(c.name(), usualHighest(c)), may));
    return Optional.empty();
  }

  /** The highest reading that is no spike. */
  private static double usualHighest(Column c) {
    boolean[] spikes = Spikes.in(c.values());
    double highest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < spikes.length; i++) {
      highest = spikes[i] ? highest : Math.max(highest, c.values()[i]);
    }
    return highest;
  }

  private Optional<DecimalMark> mark(Column c) {
    if (answers.mark().isPresent()) {
      return answers.mark();
    }
    if (thousands(c) == 1) {
      return Optional.of(c.mark());
    }
    String cell = layout.sample().get(layout.sample().size() / 2).get(c.index()).strip();
    open.add(new LogQuestion.WhichDecimals(c.name(), cell));
    return Optional.empty();
  }
}
