package seamsoak.state;

import java.util.stream.IntStream;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.CarbonLaw;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.carbon.Zones;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.hardening.AsQuenchedHardness;
import seamsoak.property.phase.PhaseLines;

/**
 * What the fire has taken from the outer faces of a piece. Forging thins what lies on the flats and
 * spreads what lies on the sides, so each is told by itself.
 *
 * @param flats the faces across the thickness, which become those of a blade; the worse of the two
 * @param sides the faces across the width, where its edge and its spine will be
 */
public record Skin(Face flats, Face sides) {
  /** Share of its due at which a steel's skin is said to end. */
  private static final double ENDS_AT = 0.9;

  /** Sound metal this thick ends a skin; a trace of carbide at a boundary does not, m. */
  private static final double SOUND_METRES = 50e-6;

  /**
   * A face.
   *
   * @param jacketMetres of jacket on it
   * @param metres below the jacket, to 90 % of its due
   * @param softMetres below the jacket, to where a quench makes it hard enough; none where its
   *     steel never hardens
   */
  public record Face(double jacketMetres, double metres, double softMetres) {
    /** What has to come off before it can be a blade's, m. */
    public double offMetres() {
      return jacketMetres + softMetres;
    }

    private Face orWorse(Face other) {
      return new Face(
          Math.max(jacketMetres, other.jacketMetres),
          Math.max(metres, other.metres),
          Math.max(softMetres, other.softMetres));
    }
  }

  public static Skin of(Workpiece piece, AsQuenchedHardness hardness) {
    return new Skin(
        worse(piece, piece.thickness(), hardness), worse(piece, piece.width(), hardness));
  }

  /**
   * Of faces that were changed by themselves.
   *
   * @param piece whose jacket may be on them
   * @param flat the metal under a flat, from the face to the middle
   * @param side the same under a side
   */
  public static Skin of(Workpiece piece, Strip flat, Strip side, AsQuenchedHardness hardness) {
    return new Skin(face(piece, flat, hardness), face(piece, side, hardness));
  }

  private static Face worse(Workpiece piece, SectionLine line, AsQuenchedHardness hardness) {
    return line.skins().stream()
        .map(s -> face(piece, s, hardness))
        .reduce(Face::orWorse)
        .orElseThrow();
  }

  private static Face face(Workpiece piece, Strip fromFace, AsQuenchedHardness hardness) {
    double jacket = piece.jacketMetres(fromFace);
    Strip below = jacket > 0 ? fromFace.ground(jacket) : fromFace;
    double metres = depth(below, ENDS_AT);
    return new Face(jacket, metres, soft(below, metres, piece, hardness));
  }

  /**
   * How much more carbon than the mean of all steels the one has that has most: the one that cuts.
   */
  private static double richest(Workpiece piece) {
    double mean = piece.body().percent(piece.coreRatio());
    double most =
        StageReport.layers(piece).stream()
            .mapToDouble(StageReport.LayerCarbon::meanPct)
            .max()
            .orElse(mean);
    return mean > 0 ? Math.max(1, most / mean) : 1;
  }

  /**
   * Depth below the face at which a steel has a share of its due again, m. Its due is the carbon it
   * came with, or what the core's activity would give it if that is less: a soft layer is no skin.
   */
  public static double depth(Strip skin, double share) {
    double activity = coreActivity(skin);
    double depth = 0;
    double found = 0;
    double before = Double.NaN;
    double middleBefore = 0;
    for (int i = 0; i < skin.cells(); i++) {
      double due = due(skin.metal(i), activity);
      double here = due > 0 ? skin.percent(i) / due : 1;
      double middle = depth + 0.5 * skin.metres(i);
      if (here < share) {
        found = Double.NaN;
      } else if (Double.isNaN(found)) {
        found = middleBefore + (middle - middleBefore) * (share - before) / (here - before);
      }
      depth += skin.metres(i);
      if (!Double.isNaN(found) && depth - found > SOUND_METRES) {
        return found;
      }
      before = here;
      middleBefore = middle;
    }
    return Double.isNaN(found) ? depth : found;
  }

  /**
   * Depth of metal that would harden with its due and is too soft for an edge as quenched, m.
   * Layers that never harden are passed over: they lack no carbon. Where the line runs through the
   * mean of all steels, the one that has most of it is asked.
   *
   * @param within depth of the skin, beyond which nothing is missing
   */
  private static double soft(
      Strip skin, double within, Workpiece piece, AsQuenchedHardness hardness) {
    double activity = coreActivity(skin);
    double richest = richest(piece);
    boolean others =
        IntStream.range(0, skin.cells())
            .mapToObj(skin::metal)
            .distinct()
            .anyMatch(m -> !ownHeat(m) && hardens(m, m.percent(m.startRatio()), hardness));
    double depth = 0;
    double soft = 0;
    double before = Double.NaN;
    double middleBefore = 0;
    for (int i = 0; i < skin.cells() && depth < within; i++) {
      Metal metal = skin.metal(i);
      double middle = depth + 0.5 * skin.metres(i);
      depth += skin.metres(i);
      double more = metal.equals(piece.body()) ? richest : 1;
      double due = more * due(metal, activity);
      if (!hardens(metal, due, hardness) || others && ownHeat(metal)) {
        continue;
      }
      double over = hardness.martensiteHrc(more * skin.percent(i)) - hardness.enoughHrc(due);
      if (over < 0) {
        soft = depth;
      } else if (before < 0) {
        soft = middleBefore + (middle - middleBefore) * before / (before - over);
      }
      if (over >= 0 && depth - soft > SOUND_METRES) {
        break;
      }
      before = over;
      middleBefore = middle;
    }
    return Math.min(soft, within);
  }

  private static boolean hardens(Metal metal, double duePct, AsQuenchedHardness hardness) {
    return metal.law().phases().filter(PhaseLines::alwaysAustenite).isEmpty()
        && hardness.hardens(duePct);
  }

  /**
   * Whether a steel hardens from a heat that none of the others stands, and so stays soft beside
   * them. By itself its skin is told by its carbon as of any: from its own heat hardly any carbide
   * is left undissolved in metal that lacks so much.
   */
  private static boolean ownHeat(Metal metal) {
    return metal.law().phases().stream().anyMatch(p -> !QuenchedSteel.reaches(p.steel()));
  }

  private static double due(Metal metal, double activity) {
    double even = metal.law().at(CarbonLaw.COMPARED_AT_KELVIN).ratioAt(activity);
    return metal.percent(Math.min(metal.startRatio(), even));
  }

  private static double coreActivity(Strip skin) {
    int core = core(skin);
    return skin.metal(core).law().at(CarbonLaw.COMPARED_AT_KELVIN).activity(skin.ratio(core));
  }

  /**
   * Beyond the last seam, half-way to the end or there, where more carbon is; a single cell of
   * carbide at a boundary is not the core.
   */
  private static int core(Strip skin) {
    int[] zones = Zones.of(skin);
    int from = zones[zones.length - 2];
    int end = skin.cells() - 1;
    int middle = from + skin.part(from, skin.cells()).middleCell();
    return skin.ratio(end) >= skin.ratio(middle) ? end : middle;
  }
}
