package seamsoak.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Blade;
import seamsoak.billet.Exposure;
import seamsoak.billet.Seen.Etched;
import seamsoak.billet.Shop;
import seamsoak.billet.Step;
import seamsoak.carbon.Edge;
import seamsoak.face.BladeOutline;
import seamsoak.face.EdgeLines;
import seamsoak.face.FaceField;
import seamsoak.face.FacePicture;
import seamsoak.face.FaceSize;
import seamsoak.heat.HeatCurve;
import seamsoak.soak.SoakAdvisor;
import seamsoak.state.CrossingReport;
import seamsoak.state.Etch;
import seamsoak.state.LineReport;
import seamsoak.state.SeamPlace;
import seamsoak.state.SeamProfile.Moment;
import seamsoak.unit.Length;

/**
 * The shown face of a billet at one time, etched in one state.
 *
 * @param billet its name
 * @param moment when
 * @param step the last step of the file before it; none after a soak or a schedule
 * @param etched how
 * @param field steel and carbon on the face
 * @param etches by state, what an etch makes of them in the likely case
 * @param shop the settings
 * @param blade what it becomes
 * @param tip from the left end of the bar to the tip of the blade, if stated
 */
public record FaceAdvice(
    String billet,
    Moment moment,
    Optional<Step> step,
    Etched etched,
    FaceField field,
    Map<Etched, Etch> etches,
    Shop shop,
    Blade blade,
    Optional<Length> tip) {

  private static final double SAME_METRES = 1e-9;

  /** Etched in another state. */
  public FaceAdvice etched(Etched state) {
    return new FaceAdvice(billet, moment, step, state, field, etches, shop, blade, tip);
  }

  /**
   * The finished blade, had the piece been held at a heat first. The cycles and the hardening heat,
   * which take a little more of the lines, are left out.
   */
  public FaceAdvice soaked(double celsius, double minutes, Exposure outside) {
    HeatCurve curve = SoakAdvisor.curve(celsius, 60 * minutes);
    FaceField after =
        field.after(p -> p.heated(curve, shop.edge(outside), Edge.SEALED, shop.solver()).piece());
    return new FaceAdvice(
        billet,
        Moment.AFTER_SOAK,
        Optional.empty(),
        Etched.HARDENED,
        after,
        etches,
        shop,
        blade,
        tip);
  }

  private Etch etch() {
    return etches.get(etched);
  }

  /** Its lines in that state. */
  public List<LineReport> lines() {
    return LineReport.of(field.piece(), etch());
  }

  /** Where they cross. */
  public List<CrossingReport> crossings() {
    return CrossingReport.of(SeamPlace.of(field.piece()), etch());
  }

  /** As much as a screen shows, a whole blade where one is stated. */
  public FaceSize size() {
    return FaceSize.of(field, blade.length().map(l -> l.metres()).orElse(0.0));
  }

  /** As it looks, with the grain of the metal and the outline of the blade. */
  public FacePicture picture(FaceSize size) {
    FacePicture bare = metal(size);
    return outline().map(o -> bare.with(o, field.isPlan())).orElse(bare);
  }

  /** The same without the outline, as a photograph of the bar has none. */
  public FacePicture metal(FaceSize size) {
    return FacePicture.of(field, shop, etch(), size, true);
  }

  /** Where the blade lies; empty where none is stated. */
  private Optional<BladeOutline> outline() {
    boolean stated = blade.width().isPresent() || blade.length().isPresent();
    return stated
        ? Optional.of(BladeOutline.of(field, blade, 1e-3 * size().acrossMm(), tip))
        : Optional.empty();
  }

  /** The lines on its edge. */
  public Optional<EdgeLines> edge() {
    return outline().map(o -> EdgeLines.of(field, o, lines()));
  }

  /** Whether it makes a difference where along the bar the blade lies. */
  public boolean hasPlaceForTip() {
    return field.isPlan() && outline().isPresent();
  }

  /** Whether the bar is long enough for the blade where its tip is stated to lie. */
  public boolean holdsBlade() {
    return outline().stream().allMatch(o -> o.heel() <= field.acrossMetres() / 2 + SAME_METRES);
  }

  /** Of a bar that no blade lies in yet: it is cut and laid anew before it becomes one. */
  FaceAdvice withoutBlade() {
    return new FaceAdvice(
        billet, moment, step, etched, field, etches, shop, Blade.UNSTATED, Optional.empty());
  }

  /** With the tip of the blade so far from the left end of the bar. */
  public FaceAdvice at(Length fromEnd) {
    return new FaceAdvice(
        billet, moment, step, etched, field, etches, shop, blade, Optional.of(fromEnd));
  }
}
