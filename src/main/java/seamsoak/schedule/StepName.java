package seamsoak.schedule;

/**
 * Names a step within a schedule.
 *
 * @param kind of step
 * @param number from 1 where there are several of it, 0 for the only one
 */
public record StepName(StepKind kind, int number) {
  /** Of the only step of its kind. */
  static StepName only(StepKind kind) {
    return new StepName(kind, 0);
  }

  /** As answers show it, such as {@code refine 1}. */
  public String words() {
    return number == 0 ? kind.word() : kind.word() + " " + number;
  }
}
