package seamsoak.billet;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import seamsoak.data.Place;
import seamsoak.unit.Angle;
import seamsoak.unit.Length;

/** One thing done to the billet, as the file says it; what is not stated is empty. */
public sealed interface Step
    permits Step.Weld,
        Step.Draw,
        Step.Press,
        Step.Roll,
        Step.Grind,
        Step.Restack,
        Step.Tile,
        Step.Unjacket,
        Twist,
        Step.Treat,
        Step.Harden,
        Step.Cool {
  Mark mark();

  /**
   * What steps there are. A switch over it without a default does not compile until it says what a
   * new one does.
   */
  enum Kind {
    WELD,
    DRAW,
    PRESS,
    ROLL,
    GRIND,
    RESTACK,
    TILE,
    UNJACKET,
    TWIST,
    SOAK,
    ANNEAL,
    NORMALIZE,
    REFINE,
    RELIEVE,
    HARDEN,
    TEMPER,
    COOL;

    /** Its word in the file. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** Whether it is a heat treatment, meant to change the structure and not the shape. */
    public boolean treats() {
      return switch (this) {
        case ANNEAL, NORMALIZE, REFINE, RELIEVE, HARDEN, TEMPER -> true;
        case WELD, DRAW, PRESS, ROLL, GRIND, RESTACK, TILE, UNJACKET, TWIST, SOAK, COOL -> false;
      };
    }
  }

  Kind kind();

  /** Its word in the file, such as {@code weld}. */
  default String name() {
    return kind().word();
  }

  default Place place() {
    return mark().place();
  }

  /** Number and name, such as {@code step 1 weld}. */
  default String title() {
    return "step " + mark().number() + " " + name();
  }

  /** Its heats; none for work at the bench. */
  default List<Heat> heats() {
    return List.of();
  }

  /** What the outer faces meet in its heats, if stated. */
  default Optional<Exposure> outside() {
    return Optional.empty();
  }

  /** The exposure stated, or the default. */
  default Exposure outsideTaken() {
    return outside().orElse(Defaults.OUTSIDE);
  }

  /** How it cools after one of its heats: as stated, or as is usual for its kind. */
  default Cooling coolTaken(Heat heat) {
    return heat.cool().orElse(Defaults.cool(kind()));
  }

  /** One of its heats, counted from 1 through all that are alike. */
  default Heat heat(int number) {
    return heats().stream()
        .flatMap(h -> Collections.nCopies(h.times(), h).stream())
        .skip(number - 1)
        .findFirst()
        .orElseThrow();
  }

  /** How often it goes into the fire. */
  default int times() {
    return heats().stream().mapToInt(Heat::times).sum();
  }

  /** Faces are joined in the first heat, at {@code faces} until then. */
  record Weld(
      Mark mark,
      List<Heat> heats,
      Optional<Exposure> faces,
      Optional<Exposure> outside,
      Optional<Can> can)
      implements Step {
    @Override
    public Kind kind() {
      return Kind.WELD;
    }

    public Weld {
      heats = List.copyOf(heats);
    }

    /** The exposure stated, or the default. */
    public Exposure facesTaken() {
      return faces.orElse(Defaults.FACES);
    }
  }

  /** Forging to a section. */
  record Draw(
      Mark mark, Length thickness, Length width, List<Heat> heats, Optional<Exposure> outside)
      implements Step {
    @Override
    public Kind kind() {
      return Kind.DRAW;
    }

    public Draw {
      heats = List.copyOf(heats);
    }
  }

  /** Pressing to a thickness; without a width it spreads equally in length and width. */
  record Press(
      Mark mark,
      Length thickness,
      Optional<Length> width,
      List<Heat> heats,
      Optional<Exposure> outside)
      implements Step {
    @Override
    public Kind kind() {
      return Kind.PRESS;
    }

    public Press {
      heats = List.copyOf(heats);
    }
  }

  /** Rolling to a thickness at constant width. */
  record Roll(Mark mark, Length thickness, List<Heat> heats, Optional<Exposure> outside)
      implements Step {
    @Override
    public Kind kind() {
      return Kind.ROLL;
    }

    public Roll {
      heats = List.copyOf(heats);
    }
  }

  /** Taking a depth off every outer face. */
  record Grind(Mark mark, Length depth) implements Step {
    @Override
    public Kind kind() {
      return Kind.GRIND;
    }
  }

  /** Cutting the length into pieces and stacking them. */
  record Restack(Mark mark, int across, int high, Optional<Turn> turn, Optional<Length> kerf)
      implements Step {
    @Override
    public Kind kind() {
      return Kind.RESTACK;
    }

    /** The turn stated, or the default. */
    public Turn turnTaken() {
      return turn.orElse(Defaults.TURN);
    }

    /** The kerf stated, or the default. */
    public Length kerfTaken() {
      return kerf.orElse(Defaults.KERF);
    }
  }

  /**
   * Slicing the bar at an angle and laying the slices flat.
   *
   * @param angle between the cut and the bar's length
   * @param slice thickness square to the cut
   * @param grind depth taken off the faces that will meet, if stated
   * @param kerf width of the cut, if stated
   * @param count how many slices; when not stated, as many as the bar gives
   */
  record Tile(
      Mark mark,
      Angle angle,
      Length slice,
      Optional<Length> grind,
      Optional<Length> kerf,
      OptionalInt count,
      Optional<Jacket> jacket)
      implements Step {
    @Override
    public Kind kind() {
      return Kind.TILE;
    }

    /** The depth stated, or the default. */
    public Length grindTaken() {
      return grind.orElse(Defaults.TILE_GRIND);
    }

    /** The kerf stated, or the default. */
    public Length kerfTaken() {
      return kerf.orElse(Defaults.KERF);
    }
  }

  /** Grinding the jacket off, and a depth of the metal below it. */
  record Unjacket(Mark mark, Optional<Length> depth) implements Step {
    @Override
    public Kind kind() {
      return Kind.UNJACKET;
    }

    /** The depth stated, or the default. */
    public Length depthTaken() {
      return depth.orElse(Defaults.UNJACKET_DEPTH);
    }
  }

  /** A heat treatment: heats, each cooled from; which one is its kind. */
  record Treat(Kind kind, Mark mark, List<Heat> heats, Optional<Exposure> outside) implements Step {
    public Treat {
      heats = List.copyOf(heats);
    }
  }

  /**
   * Heating to harden, and the quench.
   *
   * @param in what it is quenched in
   */
  record Harden(Mark mark, List<Heat> heats, Bath in, Optional<Exposure> outside) implements Step {
    @Override
    public Kind kind() {
      return Kind.HARDEN;
    }

    public Harden {
      heats = List.copyOf(heats);
    }
  }

  record Cool(Mark mark, Cooling in) implements Step {
    @Override
    public Kind kind() {
      return Kind.COOL;
    }
  }
}
