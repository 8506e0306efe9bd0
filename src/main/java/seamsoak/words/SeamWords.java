package seamsoak.words;

import seamsoak.carbon.SeamName;
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

  /** All that one step made, such as {@code restack 4}. */
  public static String name(SeamName made) {
    return switch (made.kind()) {
      case LAYERS -> "layers";
      case RESTACK -> "restack " + made.step();
      case TILES -> "tile " + made.step();
    };
  }

  public static String moment(SeamProfile.Moment moment) {
    return switch (moment) {
      case BEFORE -> "before";
      case AFTER_SOAK -> "after the soak";
      case AFTER_SCHEDULE -> "after the schedule";
    };
  }
}
