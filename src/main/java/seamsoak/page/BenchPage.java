package seamsoak.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import seamsoak.billet.Step;
import seamsoak.page.form.Bench;
import seamsoak.page.form.Proof;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;
import seamsoak.words.PageWords;

/**
 * What the bench shows.
 *
 * @param desk its id
 * @param name of the billet's file
 * @param number of the text
 * @param saved whether the file has it so
 * @param undo whether there is something to undo
 * @param redo whether there is something to redo
 * @param notice what came of the last change, if that was not what was wanted
 * @param conflict whether another hand has changed the file
 * @param bench the fields
 * @param made the billet as laid and after each step
 * @param answer nothing while something has to be mended
 * @param steels to choose from
 * @param shop what is the smith's own shop's; empty where nothing was entered of it
 * @param takesShop whether some of that is otherwise here
 */
record BenchPage(
    String desk,
    String name,
    int number,
    boolean saved,
    boolean undo,
    boolean redo,
    String notice,
    boolean conflict,
    Bench.View bench,
    List<Proof.Made> made,
    Answers.View answer,
    List<Named> steels,
    String shop,
    boolean takesShop) {
  /** A name of a steel as smiths use it, with its analysis. */
  record Named(String name, String analysis) {}

  int faults() {
    return bench.faults().size() + bench.others().size();
  }

  /** What numbers without a unit mean. */
  String units() {
    return PageWords.units(bench.units());
  }

  List<String> kinds() {
    return Stream.of(Step.Kind.values()).map(Step.Kind::word).toList();
  }

  /** Every name that finds a steel and that a person would type. */
  static List<Named> steels(SteelTable table) {
    List<Named> all = new ArrayList<>();
    for (Steel steel : table.steels()) {
      String analysis = steel.analysis().format();
      all.add(new Named(steel.id(), analysis));
      steel.aliases().stream()
          .filter(a -> !a.equals(steel.id()))
          .forEach(a -> all.add(new Named(a, steel.id() + ": " + analysis)));
    }
    return List.copyOf(all);
  }
}
