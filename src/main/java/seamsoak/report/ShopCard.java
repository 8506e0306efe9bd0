package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import seamsoak.advice.Advice;
import seamsoak.advice.ScheduleAdvice.Segment;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;

/**
 * What hangs at the forge: the answer, and one entry for each step of the schedule.
 *
 * @param stops why the work must not be done as written
 * @param caution the gravest of the first step
 * @param answer in large letters
 * @param second the same temperature in the other unit, and the band
 * @param why the reason
 * @param steps in order
 */
record ShopCard(
    List<String> stops,
    String caution,
    String answer,
    String second,
    String why,
    List<Entry> steps) {

  /**
   * A step.
   *
   * @param id its anchor in the page
   * @param name such as {@code refine 1}
   * @param cautions those that arise here first, worst first
   * @param repeated how many arose at an earlier step
   * @param temperature in the shop's unit
   * @param other in the other unit
   * @param time how long
   * @param rise how long the rise takes, empty without one
   * @param then what follows the hold
   * @param check what to look for
   */
  record Entry(
      String id,
      String name,
      List<String> cautions,
      int repeated,
      String temperature,
      String other,
      String time,
      String rise,
      String then,
      String check) {
    /** The one caution that has room on the card. */
    Optional<String> gravest() {
      return cautions.stream().findFirst();
    }
  }

  static ShopCard of(Advice advice, UnitSystem units) {
    String caution =
        advice.schedule().segments().stream()
            .flatMap(s -> s.cautions().stream())
            .findFirst()
            .orElse("");
    List<Entry> steps = entries(advice, caution, new Shown(units));
    SoakText words = new SoakText(advice, units);
    return advice
        .soak()
        .recommended()
        .filter(r -> r.minutes() > 0)
        .map(
            r ->
                new ShopCard(
                    advice.hardStops(),
                    caution,
                    "Soak at "
                        + first(r.temperatureC(), units)
                        + " for "
                        + new Shown(units).time(r.minutes()),
                    second(r.temperatureC(), units) + "; possible: " + words.band(r),
                    SoakText.capital(r.reason()) + ".",
                    steps))
        .orElseGet(() -> new ShopCard(advice.hardStops(), caution, words.soak(), "", "", steps));
  }

  private static List<Entry> entries(Advice advice, String above, Shown shown) {
    Map<String, List<Segment>> steps = new LinkedHashMap<>();
    advice
        .schedule()
        .segments()
        .forEach(s -> steps.computeIfAbsent(s.step(), k -> new ArrayList<>()).add(s));
    Set<String> said = new LinkedHashSet<>(List.of(above));
    List<Entry> entries = new ArrayList<>();
    steps.forEach(
        (name, parts) -> entries.add(entry(entries.size() + 1, name, parts, said, shown)));
    return List.copyOf(entries);
  }

  private static Entry entry(
      int number, String name, List<Segment> parts, Set<String> said, Shown shown) {
    Segment main = part(parts, "hold").orElse(parts.get(parts.size() - 1));
    Set<String> all = new LinkedHashSet<>();
    parts.forEach(p -> all.addAll(p.cautions()));
    List<String> fresh = all.stream().filter(c -> !said.contains(c)).toList();
    said.addAll(all);
    List<String> checks =
        parts.stream().map(Segment::check).filter(c -> !c.isBlank()).distinct().toList();
    return new Entry(
        "step-" + number,
        name,
        fresh,
        all.size() - fresh.size(),
        first(main.toC(), shown.units()),
        second(main.toC(), shown.units()),
        shown.time(main.minutes()),
        part(parts, "rise").map(s -> shown.time(s.minutes())).orElse(""),
        part(parts, "cool")
            .map(
                s ->
                    s.cool() + ", " + shown.time(s.minutes()) + " to " + shown.temperature(s.toC()))
            .orElse(""),
        String.join("; ", checks));
  }

  private static Optional<Segment> part(List<Segment> parts, String kind) {
    return parts.stream().filter(s -> s.kind().equals(kind)).findFirst();
  }

  private static String first(double celsius, UnitSystem units) {
    return degrees(celsius, units == UnitSystem.METRIC ? UnitSystem.METRIC : UnitSystem.US);
  }

  private static String second(double celsius, UnitSystem units) {
    return degrees(celsius, units == UnitSystem.METRIC ? UnitSystem.US : UnitSystem.METRIC);
  }

  private static String degrees(double celsius, UnitSystem unit) {
    return Temperature.ofCelsius(celsius).format(unit).replace(" ", " °");
  }
}
