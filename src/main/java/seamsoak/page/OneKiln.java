package seamsoak.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.billet.file.BilletReader;
import seamsoak.data.Fault;
import seamsoak.data.Place;
import seamsoak.data.UserFile;
import seamsoak.kiln.KilnAdvisor;
import seamsoak.page.form.Kit;
import seamsoak.plan.PlanAdvisor;
import seamsoak.report.AnswerPage;
import seamsoak.report.KilnText;
import seamsoak.state.Progress;
import seamsoak.unit.UnitSystem;
import seamsoak.words.kiln.OneKilnWords;

/** One kiln for the billets that were ticked on the shelf. */
final class OneKiln {
  /** Begins the names of fields that say which billets. */
  private static final String BILLET = "b";

  private final Shelf shelf;
  private final Desks desks;
  private final Kit kit;

  /**
   * What is shown.
   *
   * @param faults why there is no answer
   * @param pieces of it
   */
  record View(List<String> faults, List<AnswerPage.Piece> pieces) {}

  OneKiln(Shelf shelf, Desks desks, Kit kit) {
    this.shelf = shelf;
    this.desks = desks;
    this.kit = kit;
  }

  /** Answers one question at a time, since it takes a processor. */
  synchronized View of(Map<String, String> asked) {
    List<String> files =
        asked.entrySet().stream()
            .filter(e -> e.getKey().matches(BILLET + "[0-9]{1,3}"))
            .map(Map.Entry::getValue)
            .toList();
    if (files.size() < 2 || files.size() > KilnAdvisor.MOST) {
      return new View(List.of(OneKilnWords.tick(KilnAdvisor.MOST)), List.of());
    }
    List<KilnAdvisor.Given> given = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (String file : files) {
      try {
        given.add(given(file));
      } catch (Fault fault) {
        faults.add(DeskPages.sentence(fault));
      }
    }
    return faults.isEmpty()
        ? new View(
            List.of(),
            new KilnText(KilnAdvisor.advise(kit.correlations(), given), units(given)).pieces())
        : new View(faults, List.of());
  }

  private KilnAdvisor.Given given(String file) {
    String text = text(file); // first, since it is what knows the file: the name may be anything
    Billet billet = BilletReader.read(shelf.folder().resolve(file), text, kit.names());
    // what was seen weighs the cases, so that they have to be tried; else the likely one is enough
    int cases = billet.steps().stream().allMatch(s -> s.mark().seen().isEmpty()) ? 0 : kit.cases();
    PlanAdvisor advisor = new PlanAdvisor(kit.correlations(), kit.cautions(), cases);
    return new KilnAdvisor.Given(file, billet, advisor.advise(billet, Progress.NONE));
  }

  /** As it is on the bench, or else in the folder. */
  private String text(String file) {
    Optional<Desk> desk = desks.of(file);
    return desk.isPresent() ? desk.get().now().history().now().text() : readable(file).text();
  }

  private UserFile readable(String file) {
    if (!shelf.files().contains(file)) {
      throw new Fault(Place.of(Fault.shown(file)), OneKilnWords.NOT_THERE, "");
    }
    return Desks.read(shelf.folder().resolve(file));
  }

  private UnitSystem units(List<KilnAdvisor.Given> given) {
    return kit.asked().or(() -> KilnAdvisor.units(given)).orElse(UnitSystem.BOTH);
  }
}
