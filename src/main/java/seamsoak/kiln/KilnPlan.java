package seamsoak.kiln;

import java.util.List;
import java.util.stream.Collectors;
import seamsoak.safety.Stop;

/**
 * One kiln for several billets.
 *
 * @param billets in the order in which they were given
 * @param kilnC the hottest that the kiln goes
 * @param loads in the order of the work
 * @param apart why some steps do not share one
 * @param remarks what else to know
 */
public record KilnPlan(
    List<Billet> billets, double kilnC, List<Load> loads, List<Apart> apart, List<Remark> remarks) {
  public KilnPlan {
    billets = List.copyOf(billets);
    loads = List.copyOf(loads);
    apart = List.copyOf(apart);
    remarks = List.copyOf(remarks);
  }

  /**
   * A billet.
   *
   * @param file as it was given
   * @param name that it has
   * @param clears whether its lines do
   * @param stops why its work must not be done as written
   */
  public record Billet(String file, String name, boolean clears, List<Stop> stops) {}

  /** The answer. */
  public enum Verdict {
    TOGETHER,
    IN_PART,
    NOT_TOGETHER
  }

  /** What else to know. */
  public enum Remark {
    /** A file says that there is no kiln. */
    NO_KILN,
    /** The files do not agree on how hot the kiln goes. */
    KILNS_DIFFER,
    /** One is hard already, and its tempers come first. */
    HARD_ALREADY,
    /** Something comes hot from the anvil into the kiln. */
    FROM_THE_ANVIL,
    /** One bath takes more than one blade. */
    SAME_BATH,
    /** Not all are hardened in one load, so that some wait hard for their temper. */
    HARD_AND_WAITING,
    /** The kiln has to fall far between the quench and the temper. */
    SLOW_TO_TEMPER
  }

  /** Kinds of steps that more than one billet has are all shared, some are, or none. */
  public Verdict verdict() {
    long together = loads.stream().filter(Load::together).count();
    boolean parted = loads.stream().flatMap(l -> l.out().stream()).anyMatch(KilnPlan::parts);
    return together == 0 ? Verdict.NOT_TOGETHER : parted ? Verdict.IN_PART : Verdict.TOGETHER;
  }

  private static boolean parts(Load.Out out) {
    return out.why() == Load.Why.OWN_LOAD;
  }

  /** How often the kiln would be run for each billet by itself. */
  public int alone() {
    return loads.stream().mapToInt(l -> l.pieces().size()).sum();
  }

  /** Whether the work of all may go ahead. */
  public boolean goesAhead() {
    return billets.stream().allMatch(b -> b.clears() && b.stops().isEmpty());
  }

  /** The names of billets. */
  public String names(List<Integer> which) {
    return which.stream().map(i -> billets.get(i).name()).collect(Collectors.joining(", "));
  }
}
