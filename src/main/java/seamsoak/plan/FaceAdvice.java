package seamsoak.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Blade;
import seamsoak.billet.Seen.Etched;
import seamsoak.billet.Shop;
import seamsoak.billet.Step;
import seamsoak.billet.Workpiece;
import seamsoak.face.FaceField;
import seamsoak.face.FacePicture;
import seamsoak.face.FaceSize;
import seamsoak.state.CrossingReport;
import seamsoak.state.Etch;
import seamsoak.state.LineReport;
import seamsoak.state.SeamPlace;
import seamsoak.state.SeamProfile.Moment;

/**
 * The shown face of a billet at one time, etched in one state.
 *
 * @param billet its name
 * @param moment when
 * @param step the last step of the file before it; none after a soak or a schedule
 * @param etched how
 * @param piece the metal
 * @param field steel and carbon on the face
 * @param etches by state, what an etch makes of them in the likely case
 * @param shop the settings
 * @param blade what it becomes
 */
public record FaceAdvice(
    String billet,
    Moment moment,
    Optional<Step> step,
    Etched etched,
    Workpiece piece,
    FaceField field,
    Map<Etched, Etch> etches,
    Shop shop,
    Blade blade) {

  /** Etched in another state. */
  public FaceAdvice etched(Etched state) {
    return new FaceAdvice(billet, moment, step, state, piece, field, etches, shop, blade);
  }

  private Etch etch() {
    return etches.get(etched);
  }

  /** Its lines in that state. */
  public List<LineReport> lines() {
    return LineReport.of(piece, etch());
  }

  /** Where they cross. */
  public List<CrossingReport> crossings() {
    return CrossingReport.of(SeamPlace.of(piece), etch());
  }

  /** As much as a screen shows, a whole blade where one is stated. */
  public FaceSize size() {
    return FaceSize.of(field, blade.length().map(l -> l.metres()).orElse(0.0));
  }

  /** As it looks, with the grain of the metal. */
  public FacePicture picture(FaceSize size) {
    return FacePicture.of(field, shop, etch(), size, true);
  }
}
