package seamsoak.page.fire;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.billet.LoggedCurve.Tip;
import seamsoak.data.Fault;
import seamsoak.data.ForeignText;
import seamsoak.data.Place;
import seamsoak.heat.Section;
import seamsoak.heatlog.DecimalMark;
import seamsoak.heatlog.HeatAdvisor;
import seamsoak.heatlog.HeatQuery;
import seamsoak.heatlog.LogAnswers;
import seamsoak.heatlog.LogQuestion;
import seamsoak.heatlog.LogReader;
import seamsoak.heatlog.LogReading;
import seamsoak.heatlog.LogSettings;
import seamsoak.heatlog.RealHeat;
import seamsoak.heatlog.Scale;
import seamsoak.heatlog.TimeUnit;
import seamsoak.unit.Length;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;

/**
 * A log of a heat that was dropped, and what was answered beside it.
 *
 * @param text of it
 * @param told answers by the words of their questions
 */
public record LogDrop(ForeignText text, Map<String, String> told) {
  /** What can be told beside a log. */
  public static final List<String> KEYS =
      List.of(
          "column",
          "unit",
          "time_unit",
          "interval",
          "decimal",
          "tip",
          "couple",
          "section",
          "loaded",
          "removed");

  private static final int FIRST_ROWS = 6;

  public LogDrop {
    told = Map.copyOf(told);
  }

  /** With what a form answers besides. */
  public LogDrop with(Map<String, String> form) {
    Map<String, String> all = new LinkedHashMap<>(told);
    for (String key : KEYS) {
      if (form.containsKey(key)) {
        all.put(key, form.get(key).strip());
      }
    }
    all.values().removeIf(String::isEmpty);
    return new LogDrop(text, all);
  }

  /** As it begins, for whoever has to say what is in it. */
  public String rows() {
    return String.join("\n", text.content().lines().limit(FIRST_ROWS).toList());
  }

  private Optional<String> said(String key) {
    return Optional.ofNullable(told.get(key));
  }

  /** What it leaves open; {@link Fault} where it is no log, or an answer makes no sense. */
  public List<LogQuestion> open(HeatQuery query) {
    List<LogQuestion> open = new ArrayList<>();
    if (reading() instanceof LogReading.Asks asks) {
      open.addAll(asks.questions());
    }
    open.addAll(HeatAdvisor.open(query));
    return open;
  }

  private LogReading reading() {
    return LogReader.read(
        text,
        new LogAnswers(
            said("column"),
            said("unit").map(u -> word(Scale.class, u)),
            said("time_unit").map(u -> word(TimeUnit.class, u)),
            said("interval").map(t -> span("interval", t).seconds()),
            said("decimal").map(d -> word(DecimalMark.class, d))));
  }

  private static <E extends Enum<E>> E word(Class<E> type, String word) {
    return Enum.valueOf(type, word.toUpperCase(Locale.ROOT));
  }

  private static TimeSpan span(String key, String text) {
    try {
      return TimeSpan.parse(text, UnitSystem.METRIC);
    } catch (IllegalArgumentException e) {
      throw new Fault(Place.of(key), e.getMessage(), "");
    }
  }

  /**
   * What is known of the heat beside its log.
   *
   * @param plannedC at which it was planned
   */
  public HeatQuery query(Billet billet, LogSettings settings, double plannedC) {
    UnitSystem bare = billet.units().orElse(billet.stack().units());
    return new HeatQuery(
        billet.stack().steels().get(0),
        true,
        Optional.of(plannedC),
        said("tip").map(t -> word(Tip.class, t)),
        said("couple")
            .map(
                c ->
                    settings
                        .find(c)
                        .orElseThrow(
                            () ->
                                new Fault(
                                    Place.of("couple"),
                                    "'" + Fault.shown(c) + "' is no thermocouple",
                                    "write its type, one of "
                                        + String.join(", ", settings.types())
                                        + ", and its class and past where known"))),
        said("section").map(t -> section(t, bare)),
        said("loaded").map(t -> span("loaded", t).minutes()),
        said("removed").map(t -> span("removed", t).minutes()),
        Optional.empty());
  }

  private static Section section(String text, UnitSystem bare) {
    try {
      String[] two = text.split(",|\\bby\\b|\\bx\\b", 2);
      Length first = Length.parse(two[0].strip(), bare);
      Length second = two.length == 1 ? first : Length.parse(two[1].strip(), bare);
      return new Section(first.metres(), second.metres());
    } catch (IllegalArgumentException e) {
      throw new Fault(Place.of("section"), e.getMessage(), "");
    }
  }

  /** What it was worth, where nothing is open. */
  public RealHeat heat(HeatAdvisor advisor, HeatQuery query) {
    LogReading.Read read = (LogReading.Read) reading();
    double last = read.readings().lastSeconds() / 60;
    double from = query.loadedMinute().orElse(0.0);
    if (from >= last || query.removedMinute().filter(to -> to <= from).isPresent()) {
      throw new Fault(
          Place.of("loaded"),
          "the piece was not in while the log ran, which is " + Math.round(last) + " min long",
          "");
    }
    return advisor.of(read, query);
  }
}
