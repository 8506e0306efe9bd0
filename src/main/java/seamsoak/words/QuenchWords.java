package seamsoak.words;

import java.util.Comparator;
import java.util.stream.Collectors;
import seamsoak.property.hardening.Quenchant;
import seamsoak.schedule.Task.FirstTemper;
import seamsoak.schedule.Task.Harden;
import seamsoak.unit.TimeSpan;

/** Of the quench and the tempers there is more to say than of other steps. */
record QuenchWords(Amounts amounts, Harden task) {
  String doing() {
    return "Hold at "
        + heat(task.celsius())
        + ", then quench in "
        + task.quenchant()
        + (task.bath() == Quenchant.Kind.AIR ? "" : " at " + heat(task.bathC()))
        + afterwards();
  }

  /** What follows the quench itself; in a hot bath the steel is still soft. */
  private String afterwards() {
    return switch (task.bath()) {
      case SALT ->
          "; take it out as soon as it is even and let it cool in still air: only then does it"
              + " harden";
      case PLATES -> ", closed on both flat faces, until a hand can bear it";
      default -> "";
    };
  }

  String why() {
    return windows() + "; " + hold() + ". " + quench();
  }

  private String windows() {
    return task.windows().stream()
        .map(
            w ->
                w.steel()
                    + (w.bySheet() ? " hardens from " : " hardens, by its carbon, from ")
                    + amounts.between(w.lowC(), w.highC()))
        .collect(Collectors.joining(", "));
  }

  private String hold() {
    return TimeSpan.ofMinutes(task.minutes()).format(amounts.units())
        + (task.carbide()
            ? " lets enough carbide dissolve and no more"
            : " makes it even and dissolves the carbide of the pearlite")
        + (task.minutes() < task.wantedMinutes() - 0.5
            ? ", though "
                + TimeSpan.ofMinutes(task.wantedMinutes()).format(amounts.units())
                + " in a kiln would do it better: in a forge the skin runs ahead the longer it"
                + " stays"
            : "");
  }

  private String quench() {
    return "To be hard throughout, the middle has to fall from "
        + heat(800)
        + " to "
        + heat(500)
        + "; "
        + task.quenchant()
        + " does it in about "
        + seconds(task.takesSeconds())
        + " s. "
        + task.steels().stream().map(QuenchWords::speed).collect(Collectors.joining(". "));
  }

  private static String speed(Harden.InTheQuench s) {
    return s.steel()
        + " allows "
        + seconds(s.allowsSeconds())
        + " s: "
        + switch (s.middle()) {
          case YES ->
              Amounts.format(
                  "hard throughout, about %.0f HRC at a thin edge and %.0f HRC in the middle",
                  s.edgeHrc(), s.coreHrc());
          case PERHAPS ->
              Amounts.format(
                  "a thin edge about %.0f HRC, the spine nearly throughout, %.0f HRC at its face and"
                      + " %.0f HRC in its middle. Try a test piece",
                  s.edgeHrc(), s.faceHrc(), s.coreHrc());
          case NO ->
              Amounts.format(
                  "a thin edge about %.0f HRC, the spine softer, %.0f HRC at its face and %.0f HRC in"
                      + " its middle",
                  s.edgeHrc(), s.faceHrc(), s.coreHrc());
        };
  }

  private static String seconds(double s) {
    return Amounts.format(s < 10 ? "%.1f" : "%.0f", s);
  }

  private String heat(double celsius) {
    return amounts.heat(celsius);
  }

  /** Why the first temper is as hot as it is. */
  static String tempers(FirstTemper t) {
    String steels =
        t.steels().stream()
            .map(
                s ->
                    s.steel()
                        + s.hrc()
                            .map(
                                h ->
                                    Amounts.format(
                                        " comes from %.0f to about %.0f HRC", h.from(), h.to()))
                            .orElse(
                                !s.ownHeat()
                                    ? " stays soft"
                                    : s.partly()
                                        ? " is hard from this heat in part at most"
                                        : " is soft from this heat"))
            .collect(Collectors.joining(", "));
    return Amounts.format(
            "for %.0f HRC at the thin edge: %d x %.0f h, ", t.wantedHrc(), t.times(), t.hours())
        + steels
        + t.steels().stream()
            .flatMap(s -> s.hrc().stream())
            .max(Comparator.comparingDouble(FirstTemper.Hrc::giveOrTake))
            .map(h -> Amounts.format("; give or take %.0f", h.giveOrTake()))
            .orElse("");
  }
}
