package seamsoak.plan;

import java.util.List;
import seamsoak.billet.Default;
import seamsoak.billet.OldWord;
import seamsoak.safety.Stop;
import seamsoak.state.StageReport;

/**
 * What a billet file comes to before anything is advised.
 *
 * @param billet its name
 * @param history the billet after each step, up to one that cannot be done
 * @param hardStops why the work must not be done as written, empty if it may
 * @param assumed because the file does not say it
 * @param oldWords that the file says otherwise than one would today
 */
public record BilletCheck(
    String billet,
    List<StageReport> history,
    List<Stop> hardStops,
    List<Default> assumed,
    List<OldWord> oldWords) {}
