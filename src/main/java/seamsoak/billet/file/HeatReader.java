package seamsoak.billet.file;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Cooling;
import seamsoak.billet.Heat;
import seamsoak.billet.HeatDone;
import seamsoak.billet.LoggedCurve;
import seamsoak.billet.Step;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;

/** Reads the heats of a step, as planned and as done. */
final class HeatReader {
  private static final int MOST = 100;

  /** The day on which something was done or seen. */
  static final Key<Optional<LocalDate>> ON = Key.optional("on", "\"2026-11-20\"", Values::day);

  private static final Key<Optional<Temperature>> DONE_AT =
      Key.optional("at", new Key.Example("\"2140 F\"", "\"1170 C\""), Quantities::temperature);
  private static final Key<Optional<TimeSpan>> DONE_FOR =
      Key.optional("for", "\"4 min\"", Quantities::time);
  private static final Key<Optional<LoggedCurve>> CURVE =
      Key.optional("curve", "\"kiln 1\"", CurveReader::named);
  static final Form<HeatDone> DONE_FORM =
      new Form<>(List.of(ON, DONE_AT, DONE_FOR, CURVE), HeatReader::done);

  private static final Key<Temperature> AT =
      Key.required("at", new Key.Example("\"2100 F\"", "\"1150 C\""), Quantities::temperature);
  private static final Key<TimeSpan> FOR = Key.required("for", "\"3 min\"", Quantities::time);
  private static final Key<Integer> TIMES = Key.or(1, "times", "3", Values.count(1, MOST));
  private static final Key<Optional<TimeSpan>> RISE =
      Key.optional("rise", "\"5 min\"", Quantities::time);
  private static final Key<Optional<Cooling>> COOL =
      Key.optional("cool", "\"air\"", Values.choice(Cooling.class));
  private static final Key<List<HeatDone>> DONE =
      Key.or(
          List.of(),
          "done",
          "[{ \"at\": \"1170 C\", \"for\": \"4 min\" }]",
          new ListOf<>(0, MOST, "done", DONE_FORM));
  static final Form<Heat> HEAT =
      new Form<>(List.of(AT, FOR, TIMES, RISE, COOL, DONE), HeatReader::heat);

  private static final Reader<List<Heat>> LIST = new ListOf<>(MOST, "heat", HEAT);

  private HeatReader() {}

  /** The heats of a kind of step, with an example of its own. */
  static Key<List<Heat>> heats(Step.Kind kind) {
    return Key.required("heats", example(kind), LIST);
  }

  private static Key.Example example(Step.Kind kind) {
    return switch (kind) {
      case WELD -> example("2200 F", "1200 C", "5 min");
      case SOAK -> example("1900 F", "1040 C", "20 min");
      case ANNEAL -> example("1250 F", "675 C", "1 h");
      case NORMALIZE -> example("1600 F", "870 C", "10 min");
      case REFINE -> example("1500 F", "815 C", "5 min");
      case RELIEVE -> example("1200 F", "650 C", "1 h");
      case HARDEN -> example("1500 F", "815 C", "10 min");
      case TEMPER -> example("400 F", "205 C", "2 h");
      case DRAW, PRESS, ROLL, TWIST, GRIND, RESTACK, TILE, UNJACKET, COOL ->
          example("2100 F", "1150 C", "3 min");
    };
  }

  private static Key.Example example(String us, String metric, String time) {
    String heat = "[{ \"at\": \"%s\", \"for\": \"%s\" }]";
    return new Key.Example(heat.formatted(us, time), heat.formatted(metric, time));
  }

  private static Heat heat(Fields f) {
    int times = f.get(TIMES);
    int done = f.get(DONE).size();
    if (done > times) {
      throw f.at(DONE)
          .fault(
              "done has " + done + " entries and the heat is planned " + times + " times",
              "give at most one for each, or plan as many by times");
    }
    return new Heat(f.get(AT), f.get(FOR), times, f.get(RISE), f.get(COOL), f.get(DONE));
  }

  /** As planned, or at a heat for a time, or by a curve. */
  private static HeatDone done(Fields f) {
    Optional<Temperature> at = f.get(DONE_AT);
    Optional<TimeSpan> hold = f.get(DONE_FOR);
    if (at.isPresent() != hold.isPresent() || at.isPresent() && f.get(CURVE).isPresent()) {
      throw f.object()
          .fault(
              "it is not clear how the heat was done",
              "give at with for, or curve alone, or nothing where it went as planned");
    }
    HeatDone.How how =
        at.isPresent()
            ? new HeatDone.Held(at.get(), hold.get())
            : f.get(CURVE)
                .<HeatDone.How>map(HeatDone.Logged::new)
                .orElseGet(HeatDone.AsPlanned::new);
    return new HeatDone(f.get(ON), how);
  }
}
