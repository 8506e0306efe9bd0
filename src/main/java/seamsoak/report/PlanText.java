package seamsoak.report;

import seamsoak.plan.Advice;
import seamsoak.unit.UnitSystem;

/** All that is said of a billet, the answer first. */
public record PlanText(Advice advice, UnitSystem units) {
  public String page() {
    Shown shown = new Shown(units);
    SoakText soak = new SoakText(advice, units);
    ScheduleText schedule = new ScheduleText(advice, units);
    LinesText lines = new LinesText(shown);
    BilletText billet = new BilletText(advice, shown);
    return new Page()
        .say(advice.billet())
        .then(soak.answer())
        .then(lines.now(advice.soak().lines(), advice.soak().crossings()))
        .then(soak.options())
        .then(new Page().table(lines.faded(advice.history())).toString())
        .then(new CarbonText(advice).page())
        .then(new Page().table(billet.sizes()).toString())
        .then(billet.preform())
        .then(schedule.heats())
        .then(schedule.more())
        .then(soak.more())
        .then(billet.defaults())
        .toString();
  }
}
