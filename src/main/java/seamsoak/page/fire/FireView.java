package seamsoak.page.fire;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import seamsoak.words.fire.FireWords;

/**
 * What is shown at the fire.
 *
 * @param desk id of the billet's desk
 * @param name of the billet
 * @param file by which what is entered names the billet
 * @param number of the text
 * @param mark is another whenever something here is
 * @param id for what is entered by the next form that is sent
 * @param guest whether it is shown on a phone that was let in
 * @param saved whether what is entered goes into the file at once
 * @param notice what came of what was sent last, if that is to be told
 * @param ask what somebody has to decide; null for nothing
 * @param begun whether the file says how far the work has come
 * @param task what is shown of what is to be done; null where nothing is left
 * @param look which of what is to be done that is, from 0 for what comes next
 * @param list all that is to be done, in a few words each
 * @param steps the steps of the file that are not done, to say how far it is
 * @param hold what is being counted; null for nothing
 * @param etch what may be looked at; null where nothing can be yet
 * @param answer as far as it is known
 * @param changed what came of the entry before, as far as that was not planned
 * @param last what can be taken back; blank for nothing
 */
public record FireView(
    String desk,
    String name,
    String file,
    int number,
    String mark,
    String id,
    boolean guest,
    boolean saved,
    String notice,
    Ask ask,
    boolean begun,
    Task task,
    int look,
    List<String> list,
    List<Choice> steps,
    Counted hold,
    Etch etch,
    Answer answer,
    List<String> changed,
    String last) {

  /**
   * Something that was sent and may be written over what is there.
   *
   * @param sentence what is there and what was sent
   * @param fields to be sent once more
   */
  public record Ask(String sentence, Map<String, String> fields) {}

  /** One of several. */
  public record Choice(String value, String label) {}

  /**
   * A hold that is being counted.
   *
   * @param left ms, below zero when it is over
   * @param goneMillis how long it has been counted
   * @param end when it is over, by the computer's clock
   * @param gone how long it has been counted, in words
   * @param told what is left, in words
   * @param own whether it is that of what is shown
   * @param jumped whether the computer's clock went ahead meanwhile
   */
  public record Counted(
      String title,
      long left,
      long goneMillis,
      String end,
      String gone,
      String told,
      boolean own,
      boolean jumped) {
    private static final DateTimeFormatter OF_DAY =
        DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    /**
     * @param task that is shown; null where nothing is to do
     */
    public static Counted of(Hold h, Task task) {
      Instant end = Instant.ofEpochMilli(h.endMillis());
      return new Counted(
          h.title(),
          h.leftMillis(),
          h.goneMillis(),
          OF_DAY.format(end.atZone(ZoneId.systemDefault())),
          FireWords.clock(h.goneMillis()),
          FireWords.clock(h.leftMillis()),
          task != null && h.step() == task.step() && h.heat() == task.heat(),
          h.jumped());
    }
  }

  /**
   * Something to do.
   *
   * @param temperature in large letters; blank at the bench
   * @param other the same in the other unit
   * @param time in large letters
   * @param minutes the same as a number; 0 for no hold
   * @param rise how long it takes to come up
   * @param doing what to do
   * @param then what comes after
   * @param cautions the gravest first; those that count
   * @param checks what to look for
   * @param step number of the step in the file, or the one after the last
   * @param heat of it
   * @param alike the last heat of the step that is planned like it
   * @param kind as the file calls it
   * @param plan by which what is advised is known again
   * @param entered whether it can be entered now
   * @param measured what may be measured when it is done: key, label and plan
   */
  public record Task(
      String title,
      String temperature,
      String other,
      String time,
      double minutes,
      String rise,
      String doing,
      String then,
      List<String> cautions,
      List<String> checks,
      int step,
      int heat,
      int alike,
      String kind,
      String plan,
      boolean entered,
      boolean testEtch,
      List<Measured> measured) {}

  /** What may be measured. */
  public record Measured(String key, String label, String planned) {}

  /**
   * What may be looked at.
   *
   * @param after which step that is
   * @param where the seams, as the file calls them and as a smith does
   * @param drawing the section, to be tapped; null where there is none
   * @param notes to it
   * @param chosen of these by a tap; blank for none
   * @param said of that tap; blank where there was none
   */
  public record Etch(
      String after,
      List<Choice> where,
      Tapped.Drawing drawing,
      List<String> notes,
      String chosen,
      String said) {}

  /**
   * The answer by now.
   *
   * @param state how far it is known; blank where all of it is
   * @param headline what to do about the lines
   * @param second the same temperature in the other unit, and how sure
   * @param notes what comes of what was seen, where to look
   * @param stops why the work must not go on as planned
   * @param conflicts what the steels do not agree on
   */
  public record Answer(
      String state,
      String headline,
      String second,
      List<String> notes,
      List<String> stops,
      List<String> conflicts) {
    /** Where there is none, with why. */
    public static Answer none(String why) {
      return new Answer(why, "", "", List.of(), List.of(), List.of());
    }
  }
}
