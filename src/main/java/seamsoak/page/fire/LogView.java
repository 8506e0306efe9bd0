package seamsoak.page.fire;

import java.util.List;
import seamsoak.words.fire.LogWords;

/**
 * What is shown of a log that was dropped.
 *
 * @param desk id of the billet's desk
 * @param name of the billet
 * @param file by which what is entered names the billet
 * @param id for what is entered
 * @param notice what is wrong, if anything
 * @param log its name; blank while there is none
 * @param rows as it begins
 * @param questions that it leaves open
 * @param told answers that were given, to be given once more
 * @param heats it may have been, and which is most likely
 * @param heat that is meant
 * @param worth what it was worth; nothing while something is open
 * @param svg its curve
 * @param recorded whether something is recorded of that heat
 */
public record LogView(
    String desk,
    String name,
    String file,
    String id,
    String notice,
    String log,
    String rows,
    List<LogWords.Question> questions,
    List<LogWords.Choice> told,
    List<LogWords.Choice> heats,
    String heat,
    List<String> worth,
    String svg,
    boolean recorded) {}
