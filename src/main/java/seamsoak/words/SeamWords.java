package seamsoak.words;

import seamsoak.carbon.SeamName;
import seamsoak.state.CrossingReport;
import seamsoak.state.Joints;
import seamsoak.state.SeamProfile;

/** Names of seams. */
public final class SeamWords {
  private SeamWords() {}

  /** Such as {@code restack 4 side by side}: in JSON, and what a sighting may be said to be of. */
  public static String name(Joints joints) {
    return switch (joints.way()) {
      case UNLIKE -> "layers " + String.join(" | ", joints.steels());
      case LIKE -> "layers of " + joints.steels().get(0);
      case SIDE_BY_SIDE -> joints.made() + " side by side";
      case ONE_ON_ANOTHER -> joints.made() + " one on another";
      case IN_A_ROW -> joints.made().toString();
    };
  }

  /** As a smith says it, such as {@code restack joints (step 4), side by side}. */
  public static String says(Joints joints) {
    return switch (joints.way()) {
      case UNLIKE, LIKE -> name(joints);
      case SIDE_BY_SIDE -> says(joints.made()) + ", side by side";
      case ONE_ON_ANOTHER -> says(joints.made()) + ", one on another";
      case IN_A_ROW -> says(joints.made());
    };
  }

  /** All that one step made, such as {@code tile joints (step 11)}. */
  public static String says(SeamName made) {
    return switch (made.kind()) {
      case LAYERS -> "layers";
      case RESTACK -> "restack joints (step " + made.step() + ")";
      case TILES -> "tile joints (step " + made.step() + ")";
    };
  }

  /** How much carbon is missing at what one step made. */
  public static String missing(SeamName made, double percent) {
    return says(made) + ": about " + Amounts.percent(percent) + " % carbon missing";
  }

  /** Two that meet. */
  public static String cross(CrossingReport c) {
    String first = says(c.first());
    return first + (first.contains(",") ? ", cross " : " cross ") + says(c.second());
  }

  public static String moment(SeamProfile.Moment moment) {
    return switch (moment) {
      case BEFORE -> "before";
      case AFTER_SOAK -> "after the soak";
      case AFTER_SCHEDULE -> "after the schedule";
    };
  }
}
