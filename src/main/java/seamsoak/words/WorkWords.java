package seamsoak.words;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import seamsoak.billet.Heat;
import seamsoak.billet.HeatDone;
import seamsoak.billet.HeatDone.Held;
import seamsoak.billet.HeatDone.Logged;
import seamsoak.billet.LoggedCurve;
import seamsoak.billet.Now;
import seamsoak.billet.Step;
import seamsoak.billet.StepDone;
import seamsoak.billet.Twist;
import seamsoak.state.WorkReport;
import seamsoak.unit.Length;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;

/** What was done so far, and what is left of a billet file. */
public record WorkWords(UnitSystem units) {
  /** Where the work stands, and what comes next. */
  public String now(WorkReport work) {
    return now(work.now(), work.left());
  }

  /** The same by the steps that are left, the one under way first. */
  public String now(Now now, List<Step> left) {
    return "Now: " + stands(now) + ". " + next(now, left);
  }

  private static String stands(Now now) {
    int of = now.step().times();
    return now.stepDone()
        ? now.step().title() + " is done"
        : now.heats()
            + " of "
            + of
            + " heats of "
            + now.step().title()
            + (now.heats() == 1 ? " is done" : " are done");
  }

  private String next(Now now, List<Step> left) {
    if (left.isEmpty()) {
      return "Nothing of the file is left to do.";
    }
    Step next = left.get(0);
    boolean goesOn = next == now.step();
    int heat = goesOn ? now.heats() + 1 : 1;
    List<String> all = new ArrayList<>();
    all.add(goesOn ? "its heat " + heat : next.title());
    if (!goesOn && !cameOut(next).isEmpty()) {
      all.add(cameOut(next));
    }
    if (!next.heats().isEmpty()) {
      Heat planned = next.heat(heat);
      all.add(held(planned.at().format(units), planned.hold()));
    }
    return "Next: " + String.join(", ", all) + ".";
  }

  /** All that counts as done: first what the file says, then what follows from it. */
  public List<String> done(WorkReport work) {
    List<String> all = new ArrayList<>();
    for (Now.Done d : work.done()) {
      if (d.done().isPresent()) {
        all.add(heat(d, d.done().get()));
      }
      if (d.heat() <= 1 && d.step().mark().done().isPresent()) {
        all.add(step(d.step()));
      }
    }
    List<String> taken = taken(work.done());
    if (!taken.isEmpty()) {
      all.add("Taken as done as planned, since later work was done: " + String.join("; ", taken));
    }
    return all;
  }

  /** Steps and heats of which the file says nothing, though something after them was done. */
  public static List<String> taken(List<Now.Done> done) {
    Map<Step, TreeSet<Integer>> open = new LinkedHashMap<>();
    done.stream()
        .filter(d -> !d.stated())
        .forEach(d -> open.computeIfAbsent(d.step(), s -> new TreeSet<>()).add(d.heat()));
    List<String> all = new ArrayList<>();
    open.forEach(
        (step, heats) -> {
          boolean whole = heats.size() == Math.max(1, step.times());
          String which =
              heats.size() == 1
                  ? "heat " + heats.first()
                  : "heats " + heats.first() + " to " + heats.last();
          all.add(step.title() + (whole ? "" : ", " + which));
        });
    return all;
  }

  /** How a stay in the fire went, of which the file says so. */
  public String heat(Now.Done done) {
    return heat(done, done.done().orElseThrow());
  }

  private String heat(Now.Done done, HeatDone how) {
    String title = done.step().title();
    String which = done.step().times() == 1 ? title : title + ", heat " + done.heat();
    return which + on(how.on()) + ": " + how(how.how(), done.planned().orElseThrow());
  }

  private String how(HeatDone.How how, Heat planned) {
    if (how instanceof Held held) {
      return held(held.at().format(units), held.hold())
          + " (planned "
          + held(planned.at().format(units), planned.hold())
          + ")";
    }
    if (how instanceof Logged logged) {
      LoggedCurve curve = logged.curve();
      return "by the curve '"
          + curve.name()
          + "', "
          + new TimeSpan(curve.curve().seconds()).format(units)
          + " in the fire, "
          + curve.hottest().format(units)
          + " at the most";
    }
    return "as planned";
  }

  private String held(String at, TimeSpan hold) {
    return at + " for " + hold.format(units);
  }

  /** How a step came out, of which the file says so. */
  public String step(Step step) {
    StepDone done = step.mark().done().orElseThrow();
    String came = cameOut(step);
    String meant = cameOut(done.planned());
    return step.title()
        + on(done.on())
        + ": "
        + (came.equals(meant) ? "as planned" : came + " (planned " + meant + ")");
  }

  /** What can come out otherwise than planned; empty where nothing can be measured. */
  private String cameOut(Step step) {
    return switch (step.kind()) {
      case DRAW -> section(((Step.Draw) step).thickness(), Optional.of(((Step.Draw) step).width()));
      case PRESS -> section(((Step.Press) step).thickness(), ((Step.Press) step).width());
      case ROLL -> section(((Step.Roll) step).thickness(), Optional.empty());
      case GRIND -> ((Step.Grind) step).depth().format(units) + " deep";
      case UNJACKET -> ((Step.Unjacket) step).depthTaken().format(units) + " deep";
      case TWIST -> Amounts.plain(((Twist) step).turns()) + " turns";
      case RESTACK ->
          ((Step.Restack) step).across() + " across by " + ((Step.Restack) step).high() + " high";
      case TILE -> "slices of " + ((Step.Tile) step).slice().format(units);
      case WELD, SOAK, ANNEAL, NORMALIZE, REFINE, RELIEVE, HARDEN, TEMPER, COOL -> "";
    };
  }

  private String section(Length thickness, Optional<Length> width) {
    return thickness.format(units)
        + " thick"
        + width.map(w -> " by " + w.format(units) + " wide").orElse("");
  }

  private static String on(Optional<LocalDate> day) {
    return day.map(d -> " on " + d).orElse("");
  }
}
