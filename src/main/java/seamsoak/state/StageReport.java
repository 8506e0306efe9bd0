package seamsoak.state;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.property.hardening.AsQuenchedHardness;
import seamsoak.source.Caution;

/**
 * The billet after a step.
 *
 * @param step number of the step, 0 for the stack
 * @param kind such as {@code weld}
 * @param lengthMm outer size, jacket included
 * @param widthMm outer size
 * @param thicknessMm outer size
 * @param cellAspect length over width of the pattern's cell as it is looked at
 * @param lines at every set of seams and boundaries of layers
 * @param crossings where seams of two directions cross
 * @param layers carbon of each steel
 * @param skinMm depth of the skin on the flats, to 90 % of the core's carbon
 * @param sideSkinMm the same on the sides
 * @param softMm depth on the flats that no quench makes hard enough for an edge
 * @param sideSoftMm the same on the sides
 * @param faceCarbonPct carbon at the face across the thickness, wt%
 * @param scaledMm metal that scale took off a face in this step
 * @param remarks what to know of this step
 * @param heats what its heats do that they should not, worst first
 * @param cautions dangers of this step
 */
public record StageReport(
    int step,
    String kind,
    double lengthMm,
    double widthMm,
    double thicknessMm,
    double cellAspect,
    List<LineReport> lines,
    List<CrossingReport> crossings,
    List<LayerCarbon> layers,
    double skinMm,
    double sideSkinMm,
    double softMm,
    double sideSoftMm,
    double faceCarbonPct,
    double scaledMm,
    List<Stage.Remark> remarks,
    List<HeatRisk> heats,
    List<Caution> cautions) {

  /**
   * Carbon of one steel.
   *
   * @param steel its name
   * @param meanPct mean over its layers, wt%
   */
  public record LayerCarbon(String steel, double meanPct) {}

  public static StageReport of(
      Stage stage,
      Etch etch,
      AsQuenchedHardness hardness,
      List<HeatRisk> heats,
      List<Caution> cautions) {
    Workpiece p = stage.piece();
    Skin skin = Skin.of(p, hardness);
    List<SeamPlace> places = SeamPlace.of(p);
    return new StageReport(
        stage.step(),
        stage.kind(),
        p.size().lengthMetres() * 1e3,
        p.size().widthMetres() * 1e3,
        p.size().thicknessMetres() * 1e3,
        p.cellAspect(),
        LineReport.of(places, etch),
        CrossingReport.of(places, etch),
        layers(p),
        skin.flats().metres() * 1e3,
        skin.sides().metres() * 1e3,
        skin.flats().softMetres() * 1e3,
        skin.sides().softMetres() * 1e3,
        p.thickness().parts().get(0).percent(0),
        stage.scaledMetres() * 1e3,
        stage.remarks(),
        heats,
        cautions);
  }

  /** Mean carbon of each steel over its layers; of the body where there are none. */
  public static List<LayerCarbon> layers(Workpiece p) {
    Map<Metal, double[]> sums = new LinkedHashMap<>();
    p.inner().stream()
        .filter(l -> l.kind() == SectionLine.Kind.LAYERS && l.isWelded() && isUnlike(l.strip()))
        .forEach(l -> add(sums, l.strip(), l.share()));
    if (sums.isEmpty()) {
      return List.of(new LayerCarbon(p.body().name(), p.body().percent(p.coreRatio())));
    }
    List<LayerCarbon> all = new ArrayList<>();
    sums.forEach((m, s) -> all.add(new LayerCarbon(m.name(), m.percent(s[1] / s[0]))));
    return List.copyOf(all);
  }

  private static boolean isUnlike(Strip pair) {
    return !pair.metal(0).equals(pair.metal(pair.cells() - 1));
  }

  private static void add(Map<Metal, double[]> sums, Strip strip, double share) {
    for (int i = 0; i < strip.cells(); i++) {
      double[] s = sums.computeIfAbsent(strip.metal(i), m -> new double[2]);
      s[0] += share * strip.metres(i);
      s[1] += share * strip.metres(i) * strip.ratio(i);
    }
  }
}
