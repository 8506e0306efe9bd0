package seamsoak.face;

import java.util.ArrayList;
import java.util.List;
import seamsoak.billet.Billet;
import seamsoak.billet.Stack;
import seamsoak.billet.Stage;
import seamsoak.billet.Step;
import seamsoak.billet.Turn;
import seamsoak.billet.Workpiece;
import seamsoak.data.Fault;

/**
 * Where in the stack the metal of each point came from: the steps undone one by one, by what they
 * do and the sizes that the walk has found.
 *
 * @param tops how deep in the stack each layer begins, and behind them its end, m
 * @param undone what undoes each step that moves metal, the last one first
 * @param tilings how often tiles were laid
 * @param turnings how often every other piece was turned
 * @param turnedAfterTiling by step that laid tiles, the last one first, how often after it
 */
record Whence(
    double[] tops, Undo[] undone, int tilings, int turnings, List<Integer> turnedAfterTiling) {

  /** Takes a point to where it lay before a step. */
  private interface Undo {
    void of(Spot spot);
  }

  /** How much longer, wider and thicker the metal was before it was forged. */
  private record Forging(double longer, double wider, double thicker) implements Undo {
    @Override
    public void of(Spot spot) {
      spot.along *= longer;
      spot.across *= wider;
      spot.up *= thicker;
    }

    Forging before(Forging later) {
      return new Forging(longer * later.longer, wider * later.wider, thicker * later.thicker);
    }
  }

  /** Through the steps that a walk has done. */
  static Whence of(Billet billet, List<Stage> stages) {
    List<Undo> undone = new ArrayList<>();
    List<Integer> after = new ArrayList<>();
    int turnings = 0;
    for (int i = stages.size() - 1; i > 0; i--) {
      Step step = billet.steps().get(i - 1);
      Workpiece was = stages.get(i - 1).piece();
      Workpiece is = stages.get(i).piece();
      switch (step.kind()) {
        case DRAW, PRESS, ROLL -> forged(undone, forging(was, is, stages.get(i).scaledMetres()));
        case WELD -> {
          if (i == 1) {
            forged(undone, layersWelded(was, is));
          }
        }
        case RESTACK -> {
          Step.Restack restack = (Step.Restack) step;
          undone.add(restack(restack, welded(stages, i)));
          turnings += restack.turnTaken() == Turn.ALTERNATE ? 1 : 0;
        }
        case TILE -> {
          undone.add(tiles(((Step.Tile) step).angle().radians(), welded(stages, i)));
          after.add(turnings);
        }
        case TWIST -> throw twisted(step);
        // what takes metal off both sides alike leaves all else where it was
        case GRIND, UNJACKET, SOAK, ANNEAL, NORMALIZE, REFINE, RELIEVE, HARDEN, TEMPER, COOL -> {}
      }
    }
    return new Whence(
        tops(billet.stack()),
        undone.toArray(Undo[]::new),
        after.size(),
        turnings,
        List.copyOf(after));
  }

  private static double[] tops(Stack stack) {
    double[] tops = new double[stack.layers() + 1];
    for (int i = 0; i < stack.layers(); i++) {
      tops[i + 1] = tops[i] + stack.thickness(i).metres();
    }
    return tops;
  }

  private static Fault twisted(Step step) {
    return new Fault(
        step.place(),
        "the face cannot be drawn after "
            + step.title()
            + ", since a twisted bar has another pattern at every depth",
        "ask for it after a step before that");
  }

  /** Where the metal of a point came from. */
  void find(Spot spot, double along, double across, double up) {
    spot.begin(along, across, up);
    for (Undo step : undone) {
      step.of(spot);
    }
    double depth = tops[tops.length - 1] / 2 - spot.up;
    int layer = 0;
    while (layer < tops.length - 2 && depth >= tops[layer + 1]) {
      layer++;
    }
    spot.layer = layer;
    spot.inLayer =
        Math.max(0, Math.min(1, (depth - tops[layer]) / (tops[layer + 1] - tops[layer])));
  }

  /** What scale has eaten meanwhile was not stretched: half of it went before, half after. */
  private static Forging forging(Workpiece was, Workpiece is, double scaledMetres) {
    double eaten = was.jacket().isPresent() ? 0 : scaledMetres;
    double thinner =
        stretch(was.bodySize().thicknessMetres(), is.bodySize().thicknessMetres(), eaten);
    double narrower = stretch(was.bodySize().widthMetres(), is.bodySize().widthMetres(), eaten);
    return new Forging(thinner * narrower, 1 / narrower, 1 / thinner);
  }

  /** Forgings with nothing between them that moves metal are undone as one. */
  private static void forged(List<Undo> undone, Forging forging) {
    int last = undone.size() - 1;
    if (last >= 0 && undone.get(last) instanceof Forging later) {
      undone.set(last, forging.before(later));
    } else {
      undone.add(forging);
    }
  }

  private static double stretch(double before, double after, double eaten) {
    return (after + eaten) / (before - eaten);
  }

  /** The piece once what a step has laid together is welded: scale eats the faces before that. */
  private static Workpiece welded(List<Stage> stages, int step) {
    return stages.get(Math.min(step + 1, stages.size() - 1)).piece();
  }

  /** Scale eats every face of the layers, so all of them thin alike. */
  private static Forging layersWelded(Workpiece was, Workpiece is) {
    double thinner = is.bodySize().thicknessMetres() / was.bodySize().thicknessMetres();
    return new Forging(1, 1, 1 / thinner);
  }

  /** Pieces counted from the left and from the top, each cut from the next length of the bar. */
  private static Undo restack(Step.Restack step, Workpiece is) {
    int across = step.across();
    int high = step.high();
    double wide = is.bodySize().widthMetres() / across;
    double thick = is.bodySize().thicknessMetres() / high;
    double pitch = is.size().lengthMetres() + step.kerfTaken().metres();
    Turn turn = step.turnTaken();
    return spot -> {
      int i = index(spot.across / wide + across / 2.0, across);
      int k = index(high / 2.0 - spot.up / thick, high);
      spot.across -= (i + 0.5 - across / 2.0) * wide;
      spot.up += (k + 0.5 - high / 2.0) * thick;
      spot.along += (i * high + k + 0.5 - across * high / 2.0) * pitch;
      boolean odd = (i + high - 1 - k) % 2 == 1;
      switch (turn) {
        case NONE -> {}
        case ALL -> spot.turn();
        case ALTERNATE -> {
          spot.mayTurn(odd);
          if (odd) {
            spot.turn();
          }
        }
      }
    };
  }

  private static int index(double place, int count) {
    return Math.max(0, Math.min(count - 1, (int) place));
  }

  /** Bars leaning one on the next. */
  private static Undo tiles(double radians, Workpiece is) {
    double sin = StrictMath.sin(radians);
    double cos = StrictMath.cos(radians);
    int count = is.tiles().orElseThrow().count();
    double thick = Profile.period(is.inner().get(0));
    double pitch = is.tiles().orElseThrow().bar().pitchMetres();
    return spot -> {
      double place = (spot.along * sin + spot.up * cos) / thick + count / 2.0;
      double tile = Math.floor(place);
      double above = place - tile;
      double middle = (tile + 0.5 - count / 2.0) * thick / sin;
      double along = (spot.along - middle) * cos - spot.up * sin;
      spot.tiled(1 - above);
      spot.along = along + (tile + 0.5 - count / 2.0) * pitch;
      spot.up = (above - 0.5) * thick;
    };
  }
}
