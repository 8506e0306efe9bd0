package seamsoak.billet.file;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Step;
import seamsoak.data.Fault;
import seamsoak.data.Mistake;
import seamsoak.data.Place;
import seamsoak.property.Correlations;

/**
 * A billet into whose file something was recorded, before the file is written.
 *
 * @param billet as it is by that
 * @param text of the file
 * @param later what is planned and can no longer be done
 */
public record Recorded(Billet billet, String text, List<Mistake> later) {
  public Recorded {
    later = List.copyOf(later);
  }

  /**
   * What was done must be possible, unless the billet was not before: {@link Fault} where it is
   * not, or where the file cannot be read any more.
   *
   * @param before the file as it was
   * @param written with what is recorded
   * @param done number of the step that it is about
   */
  public static Recorded of(
      Path file,
      WorkBook before,
      WorkBook written,
      int done,
      Names names,
      Correlations correlations) {
    Billet after = BilletReader.read(file, written.text(), names);
    List<Mistake> mistakes = walk(after, correlations).map(Fault::mistakes).orElse(List.of());
    Billet was = BilletReader.read(file, before.text(), names);
    if (mistakes.isEmpty() || walk(was, correlations).isPresent()) {
      return new Recorded(after, written.text(), List.of());
    }
    List<Place> places = after.steps().stream().skip(done).map(Step::place).toList();
    if (!mistakes.stream().map(Mistake::place).allMatch(places::contains)) {
      throw new Fault(
          mistakes.stream()
              .map(
                  m ->
                      new Mistake(
                          m.place(), m.field(), m.found(), m.expected() + "; nothing was written"))
              .toList());
    }
    return new Recorded(after, written.text(), mistakes);
  }

  private static Optional<Fault> walk(Billet billet, Correlations correlations) {
    try {
      new BilletWalk(new Shop(correlations, Assumptions.USUAL, Resolution.SAMPLE)).walk(billet);
      return Optional.empty();
    } catch (Fault fault) {
      return Optional.of(fault);
    }
  }
}
