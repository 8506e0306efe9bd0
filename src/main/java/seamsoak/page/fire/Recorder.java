package seamsoak.page.fire;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import seamsoak.billet.Heat;
import seamsoak.billet.Now;
import seamsoak.billet.Step;
import seamsoak.billet.file.BilletReader;
import seamsoak.billet.file.Names;
import seamsoak.billet.file.Recorded;
import seamsoak.billet.file.ToRecord;
import seamsoak.billet.file.WorkBook;
import seamsoak.data.Fault;
import seamsoak.data.Place;
import seamsoak.plan.ToDo;
import seamsoak.property.Correlations;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;
import seamsoak.words.WorkWords;
import seamsoak.words.fire.FireWords;

/**
 * Writes what was entered into the text of a billet, as the command {@code record} does.
 *
 * @param file whose text it is
 * @param today the day that is written beside
 * @param units of amounts that are told by how far they are off
 */
public record Recorder(
    Path file, Names names, Correlations correlations, LocalDate today, UnitSystem units) {
  /**
   * What comes of an entry.
   *
   * @param title short, for whoever takes it back
   * @param step number of the step that it is about
   * @param planned whether all went as planned
   */
  public record Done(String title, int step, boolean planned, Recorded recorded) {}

  /** A book and the step in it that is meant. */
  private record Meant(WorkBook book, Step step) {}

  /**
   * {@link Fault} where the file would make no sense with it; {@link Twice} where somebody has to
   * decide.
   *
   * @param advised what is to be done after the file, as far as it is known
   */
  public Done record(String text, Entry entry, List<ToDo> advised) {
    WorkBook before = WorkBook.of(file.toString(), text);
    Meant meant = meant(before, entry, advised);
    ToRecord wanted = wanted(meant, entry);
    WorkBook written = wanted.into(meant.book());
    if (wanted.isIn(meant.book()) && !entry.replace() && !written.text().equals(text)) {
      throw new Twice(
          FireWords.twice(
              wanted.title(), recorded(meant.step(), entry.heat()), said(wanted, meant)),
          true);
    }
    return new Done(
        wanted.title(),
        meant.step().mark().number(),
        wanted.how().isEmpty() && wanted.came().isEmpty() && wanted.seen().isEmpty(),
        Recorded.of(file, before, written, meant.step().mark().number(), names, correlations));
  }

  private List<Step> steps(WorkBook book) {
    return BilletReader.read(file, book.text(), names).steps();
  }

  private Meant meant(WorkBook book, Entry entry, List<ToDo> advised) {
    List<Step> steps = steps(book);
    if (entry.what() == Entry.What.LOOK) {
      return new Meant(book, lookedAfter(steps));
    }
    if (entry.step() <= steps.size() && entry.step() > 0) {
      Step step = steps.get(entry.step() - 1);
      boolean fits =
          entry.what() == Entry.What.UP_TO
              || step.name().equals(entry.kind())
                  && entry.heat() <= step.times()
                  && entry.heat() > 0 == step.times() > 0;
      if (!fits) {
        throw otherPlan();
      }
      return new Meant(book, step);
    }
    Map<String, Object> step =
        advised.stream()
            .filter(t -> t instanceof ToDo.Advised && t.canBeRecorded())
            .map(ToDo.Advised.class::cast)
            .findFirst()
            .filter(a -> entry.step() == steps.size() + 1 && planId(a).equals(entry.plan()))
            .flatMap(ToDo.Advised::written)
            .orElseThrow(Recorder::otherPlan);
    WorkBook more = book.append(step);
    return new Meant(more, steps(more).get(steps.size()));
  }

  private static Twice otherPlan() {
    return new Twice(FireWords.OTHER_PLAN, false);
  }

  /** By which a step that is advised is known again, with all of its amounts. */
  public static String planId(ToDo.Advised advised) {
    return Integer.toHexString(advised.written().map(Map::toString).orElse("").hashCode());
  }

  /** The step after which somebody looks: the last that is done, or of all. */
  public static Step lookedAfter(List<Step> steps) {
    return Now.of(steps)
        .map(n -> n.step().mark().number() - (n.stepDone() ? 0 : 1))
        .map(done -> steps.get(Math.max(0, done - 1)))
        .orElseGet(() -> steps.get(steps.size() - 1));
  }

  private ToRecord wanted(Meant meant, Entry e) {
    Step step = meant.step();
    OptionalInt none = OptionalInt.empty();
    Optional<String> on = Optional.of(today.toString());
    return switch (e.what()) {
      case UP_TO -> new ToRecord(step, none, Map.of(), true, Map.of(), Map.of(), on);
      case LOOK ->
          new ToRecord(
              step,
              none,
              Map.of(),
              Now.of(steps(meant.book())).isEmpty(),
              Map.of(),
              withUnits(e.filled("", List.of("where", "line", "width", "etched", "with"))),
              on);
      case DONE -> {
        // what is typed counts, whichever button was pressed
        Map<String, String> came = withUnits(e.filled("came.", ToRecord.measured(step.kind())));
        yield new ToRecord(
            step,
            e.heat() == 0 ? none : OptionalInt.of(e.heat()),
            e.heat() == 0 ? Map.of() : how(step.heat(e.heat()), e),
            e.heat() == 0 || !came.isEmpty(),
            came,
            Map.of(),
            on);
      }
    };
  }

  /**
   * A bare number takes the unit that is shown beside it, whether or not the file has one of its
   * own.
   */
  private Map<String, String> withUnits(Map<String, String> typed) {
    boolean metric = units == UnitSystem.METRIC;
    Map<String, String> all = new LinkedHashMap<>();
    typed.forEach(
        (key, value) -> {
          String unit =
              switch (key) {
                case "at" -> metric ? " C" : " F";
                case "for" -> " min";
                case "thickness", "width", "depth" -> metric ? " mm" : " in";
                default -> "";
              };
          all.put(key, value.matches("[0-9][0-9.,/ -]*") ? value + unit : value);
        });
    return all;
  }

  /** How a heat went: as it was told, or by how far it was off. */
  private Map<String, String> how(Heat planned, Entry e) {
    Map<String, String> how = withUnits(e.filled("", List.of("at", "for")));
    Optional.of(e.value("hotter"))
        .filter(v -> !v.isEmpty())
        .ifPresent(v -> how.put("at", hotter(planned.at(), v)));
    Optional.of(e.value("longer"))
        .filter(v -> !v.isEmpty())
        .ifPresent(v -> how.put("for", longer(planned.hold(), v)));
    return how;
  }

  private String hotter(Temperature planned, String by) {
    boolean metric = units == UnitSystem.METRIC;
    String number = by.replaceFirst("\\s*°?\\s*[FCK]$", "");
    boolean celsius = by.matches(".*[CK]$") || metric && !by.endsWith("F");
    double off = number(number, by, "100 F or -50 F");
    double kelvin = celsius ? off : off / 1.8;
    return new Temperature(Math.max(1, planned.kelvin() + kelvin)).format(units);
  }

  private String longer(TimeSpan planned, String by) {
    double minutes = number(by.replaceFirst("\\s*min$", ""), by, "5 min or -2 min");
    double all = planned.minutes() + minutes;
    if (all <= 0) {
      throw new Fault(
          Place.of("longer"), "'" + Fault.shown(by) + "' leaves no time in the fire", "");
    }
    return TimeSpan.ofMinutes(all).format(units);
  }

  private static double number(String text, String typed, String example) {
    String plain = text.strip().replace(',', '.').replace('\u2212', '-');
    if (!plain.matches("[+-]?[0-9]{1,4}(\\.[0-9]{1,2})?")) {
      throw new Fault(
          Place.of("missed"), "'" + Fault.shown(typed) + "' is no amount", "such as " + example);
    }
    return Double.parseDouble(plain);
  }

  /** What is recorded of it, in words. */
  private String recorded(Step step, int heat) {
    WorkWords words = new WorkWords(units);
    if (heat > 0) {
      int before = 0;
      for (Heat alike : step.heats()) {
        int index = heat - 1 - before;
        if (index >= 0 && index < alike.done().size()) {
          return words.heat(
              new Now.Done(step, heat, Optional.of(alike), Optional.of(alike.done().get(index))));
        }
        before += alike.times();
      }
    }
    return step.mark().done().isPresent() ? words.step(step) : "";
  }

  private String said(ToRecord wanted, Meant meant) {
    try {
      Step step = steps(wanted.into(meant.book())).get(meant.step().mark().number() - 1);
      return recorded(step, wanted.heat().orElse(0));
    } catch (Fault fault) {
      return FireWords.held(
          wanted.how().getOrDefault("at", ""), wanted.how().getOrDefault("for", ""));
    }
  }
}
