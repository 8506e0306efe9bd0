package seamsoak.schedule.demand;

/** Whether a section hardens: to its middle in a quench, or when it is left in still air. */
public enum Hardens {
  NO,
  /** Not surely: a quench comes near it, still air might do it in part. */
  PERHAPS,
  YES
}
