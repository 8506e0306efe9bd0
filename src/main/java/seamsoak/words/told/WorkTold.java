package seamsoak.words.told;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Heat;
import seamsoak.billet.HeatDone;
import seamsoak.billet.HeatDone.Held;
import seamsoak.billet.HeatDone.Logged;
import seamsoak.billet.Now;
import seamsoak.billet.Step;
import seamsoak.billet.StepDone;
import seamsoak.state.WorkReport;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;

/** What was done so far, as JSON tells it. */
public final class WorkTold {
  private WorkTold() {}

  /** {@code now} and {@code done} of an answer. */
  public static Map<String, Object> members(WorkReport work) {
    Map<String, Object> now = now(work.now(), work.left());
    now.put("lines", work.metal().lines());
    now.put("crossings", work.metal().crossings());
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("now", now);
    all.put("done", work.done().stream().map(WorkTold::done).toList());
    all.put("soaked", work.soaked());
    return all;
  }

  /** How far the work has come, by the steps that are left. */
  public static Map<String, Object> now(Now now, List<Step> left) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("step", now.step().mark().number());
    told.put("heat", now.heats());
    told.put("do", now.step().name());
    told.put("stepDone", now.stepDone());
    told.put("left", left.stream().map(s -> s.mark().number()).toList());
    return told;
  }

  /** One thing that counts as done. */
  public static Map<String, Object> done(Now.Done done) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("step", done.step().mark().number());
    told.put("do", done.step().name());
    told.put("heat", done.heat() == 0 ? null : done.heat());
    told.put("on", on(done).map(LocalDate::toString).orElse(null));
    told.put("atC", done.planned().map(h -> hottest(done, h).celsius()).orElse(null));
    told.put("minutes", done.planned().map(h -> held(done, h).minutes()).orElse(null));
    told.put("from", from(done));
    return told;
  }

  private static Optional<LocalDate> on(Now.Done done) {
    return done.done()
        .map(HeatDone::on)
        .orElseGet(() -> done.step().mark().done().flatMap(StepDone::on));
  }

  private static Temperature hottest(Now.Done done, Heat planned) {
    HeatDone.How how = how(done);
    if (how instanceof Logged logged) {
      return logged.curve().hottest();
    }
    return how instanceof Held held ? held.at() : planned.at();
  }

  private static TimeSpan held(Now.Done done, Heat planned) {
    HeatDone.How how = how(done);
    if (how instanceof Logged logged) {
      return new TimeSpan(logged.curve().curve().seconds());
    }
    return how instanceof Held held ? held.hold() : planned.hold();
  }

  private static HeatDone.How how(Now.Done done) {
    return done.done().map(HeatDone::how).orElseGet(HeatDone.AsPlanned::new);
  }

  /** Where it is known from: a curve, what was noted, or only that something later was done. */
  private static String from(Now.Done done) {
    if (how(done) instanceof Logged logged) {
      return "curve " + logged.curve().name();
    }
    return done.stated() ? "noted" : "taken as planned";
  }
}
