package seamsoak.words;

import java.util.List;
import java.util.Optional;
import seamsoak.unit.UnitSystem;

/** What the page says besides answers: why somebody is not let in, and what comes of a change. */
public final class PageWords {
  public static final String OTHER_HOST =
      "This address belongs to another name. Open the link that the program printed.";
  public static final String OTHER_METHOD = "This is neither looking at a page nor sending a form.";
  public static final String OTHER_PAGE =
      "This came from another page, so nothing was done. Type or paste the link that the program"
          + " printed.";
  public static final String NO_LENGTH = "What was sent does not say how long it is.";
  public static final String TOO_MUCH = "What was sent is too much for a page.";
  public static final String NO_FORM = "What was sent is no form.";
  public static final String NO_COOKIE =
      "This browser was not let in. Start the program again, and open the link that it prints.";
  public static final String WRONG_KEY =
      "This link is none of this run's. Start the program again, and open the link that it prints.";
  public static final String KEY_USED =
      "This link was used already; each opens the page once. The browser that used it is still let"
          + " in. If that was not yours, end the program.";
  public static final String KEY_OLD =
      "This link is older than a minute. Start the program again, and open the link that it"
          + " prints.";
  public static final String NOTHING_THERE = "There is nothing here.";
  public static final String CHANGED_ELSEWHERE =
      "The billet was changed in another window meanwhile, so that was not done. Here it is as it"
          + " is now.";
  public static final String NOT_UNDERSTOOD = "The page sent what cannot be done. Load it again.";
  public static final String SOMETHING_BROKE =
      "Something went wrong that should not have. What was typed before is kept.";
  public static final String ENDED =
      "The program has ended. Changes that were not saved are kept as drafts and shown when it is"
          + " started again.";

  /** The word of a file for what a shop has not. */
  public static final String NONE = "none";

  public static final String NEW_BILLET = "new billet";
  public static final String NOT_SAVED = "changes that are not saved";
  public static final String NO_ANSWER_YET =
      "There is no answer yet. Go back, mend what is to be mended, and wait for it.";
  public static final String FIRST_STEP = "There is no step yet: add the first.";

  public static final String NO_FACE = "No face of this billet can be drawn.";
  public static final String NO_PROGRAM =
      "There is no program for a kiln: the shop has none, or the work is refused as it is written.";
  public static final String NO_BILLET = "This is no billet: it is not in braces as a whole.";
  public static final String TOO_THIN = "The bar is thinner than one layer of each steel.";
  public static final String NOTHING_THICK = "It has to be thicker than nothing.";

  private PageWords() {}

  /** That a name is none of a steel. */
  public static String noSteel(String name, Optional<String> nearest) {
    return "There is no steel '"
        + name
        + "'; "
        + nearest
            .map(near -> "did you mean '" + near + "'?")
            .orElse("give one of the table or an analysis such as C0.84 Mn0.75.");
  }

  /** That there would be more layers than a stack may have. */
  public static String tooMany(int layers, int most) {
    return "The bar holds "
        + layers
        + " such layers, and "
        + most
        + " is the most; give thicker layers or a thinner bar.";
  }

  /** That a field holds something else by now. */
  public static String heldElsewhere(String label, String theirs, String mine) {
    return label
        + " was changed in another window to "
        + shown(theirs)
        + "; "
        + shown(mine)
        + " was not taken. Type it again if it should be.";
  }

  private static String shown(String value) {
    return value.isEmpty() ? "nothing" : "'" + value + "'";
  }

  /** What bare numbers mean. */
  public static String units(Optional<UnitSystem> units) {
    return units
        .map(
            u ->
                u == UnitSystem.METRIC
                    ? "Numbers without a unit are millimeters, Celsius and minutes; 1/4 in or 2100 F"
                        + " may be written too."
                    : "Numbers without a unit are inches, Fahrenheit and minutes; fractions, 16 ga,"
                        + " 25 mm or 1150 C may be written too.")
        .orElse("Sizes, temperatures and times are written with their units.");
  }

  /** Of a billet on the shelf. */
  public static String steps(String called, int steps, int done) {
    String count = steps == 1 ? "1 step" : steps + " steps";
    String far = done == 0 ? "nothing done yet" : done + " of them begun or done";
    return (called.isEmpty() ? "" : called + "; ") + count + ", " + far;
  }

  public static String unreadable(String why) {
    return "cannot be read: " + why;
  }

  public static String step(int number, String kind) {
    return "Step " + number + " " + kind;
  }

  /** What a field means, with an example. */
  public static String help(String meaning, String example) {
    return meaning + " For example " + example + ".";
  }

  /** That something has to be there. */
  public static String needed(String example) {
    return "This is needed, such as " + example + ".";
  }

  /**
   * What of a billet is the shop's.
   *
   * @param there what was entered of the shop
   * @param differs which of that the billet has otherwise
   */
  public static String ofShop(List<String> there, List<String> differs) {
    List<String> same = there.stream().filter(k -> !differs.contains(k)).toList();
    String taken = same.isEmpty() ? "" : "As in your shop: " + String.join(", ", same) + ".";
    String other =
        differs.isEmpty() ? "" : "Otherwise than in your shop: " + String.join(", ", differs) + ".";
    return (taken + " " + other).strip();
  }

  public static String badName() {
    return "A name has 1 to 80 letters, digits, blanks, dots, hyphens or underscores, and begins"
        + " with no dot.";
  }

  public static String taken(String name) {
    return "There is a billet named '" + name + "' already; choose another name.";
  }
}
