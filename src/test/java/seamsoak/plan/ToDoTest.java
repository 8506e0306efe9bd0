package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import seamsoak.billet.Billet;
import seamsoak.billet.Now;
import seamsoak.billet.Step;
import seamsoak.billet.file.ToRecord;
import seamsoak.billet.file.WorkBook;
import seamsoak.data.DataFolder;
import seamsoak.safety.CautionTable;
import seamsoak.state.Progress;
import seamsoak.support.Walks;
import seamsoak.unit.UnitSystem;

/** What is still to be done, and that doing it all leads to an end. */
class ToDoTest {
  private static Advice advise(Billet billet) {
    return new PlanAdvisor(Walks.CORRELATIONS, CautionTable.load(DataFolder.packed()), 0)
        .advise(billet, Progress.NONE);
  }

  private static List<ToDo> toDo(Billet billet) {
    return ToDo.of(billet, Optional.of(advise(billet)), UnitSystem.US);
  }

  private static String demo() throws Exception {
    return Files.readString(Path.of("alloy-data/billets/mosaic.json"));
  }

  @Test
  void aFileOfWhichNothingIsDoneIsAllToDo() throws Exception {
    Billet billet = Walks.billet(demo());
    assertFalse(ToDo.isBegun(billet));
    List<ToDo> all = toDo(billet);
    ToDo.OfFile first = (ToDo.OfFile) all.get(0);
    assertEquals("step 1 weld, heat 1", first.step().title() + ", heat " + first.heat());
    assertTrue(all.get(billet.steps().size()) instanceof ToDo.Advised);
  }

  /**
   * Each advised step is appended in its turn and done as planned: the plan always goes on after
   * it, asks for nothing twice, and ends.
   */
  @Test
  void whatIsAdvisedIsDoneOneByOneToTheEnd() throws Exception {
    String text = demo();
    WorkBook begun = WorkBook.of("b", text);
    Step last = Walks.billet(text).steps().get(14);
    text =
        new ToRecord(
                last, OptionalInt.empty(), Map.of(), true, Map.of(), Map.of(), Optional.empty())
            .into(begun)
            .text();
    List<Step.Kind> done = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      Billet billet = Walks.billet(text);
      Optional<ToDo> next = toDo(billet).stream().filter(ToDo::canBeRecorded).findFirst();
      if (next.isEmpty()) {
        break;
      }
      WorkBook book = WorkBook.of("b", text);
      int number = billet.steps().size();
      int heat = 1;
      if (next.get() instanceof ToDo.Advised a) {
        book = book.append(a.written().orElseThrow());
      } else {
        number--;
        heat = ((ToDo.OfFile) next.get()).heat();
      }
      Step step = Walks.billet(book.text()).steps().get(number);
      done.add(step.kind());
      boolean bench = step.heats().isEmpty();
      text =
          new ToRecord(
                  step,
                  bench ? OptionalInt.empty() : OptionalInt.of(heat),
                  Map.of(),
                  bench,
                  Map.of(),
                  Map.of(),
                  Optional.empty())
              .into(book)
              .text();
    }
    assertTrue(Now.of(Walks.billet(text).steps()).orElseThrow().stepDone(), text);
    assertEquals(1, done.stream().filter(k -> k == Step.Kind.HARDEN).count(), done.toString());
    assertEquals(2, done.stream().filter(k -> k == Step.Kind.TEMPER).count(), done.toString());
    assertEquals(Step.Kind.TEMPER, done.get(done.size() - 1), done.toString());
    assertTrue(done.size() < 20, done.toString());
  }
}
