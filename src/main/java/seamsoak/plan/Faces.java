package seamsoak.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import seamsoak.billet.Billet;
import seamsoak.billet.Seen.Etched;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Step;
import seamsoak.billet.Workpiece;
import seamsoak.face.FaceField;
import seamsoak.schedule.ScheduleAdvisor;
import seamsoak.soak.ToCome;
import seamsoak.state.Etch;
import seamsoak.state.EtchBand;
import seamsoak.state.SeamProfile.Moment;

/**
 * The shown face of a billet, now and later.
 *
 * @param stages of its steps
 * @param toCome what an etch shows of it in each state
 */
record Faces(Billet billet, List<Stage> stages, Shop shop, ToCome toCome) {
  /** After these the metal of a blade lies elsewhere in the bar. */
  private static final Set<Step.Kind> LAID_ANEW =
      Set.of(Step.Kind.RESTACK, Step.Kind.TILE, Step.Kind.TWIST);

  /** As it is at the end of its steps, before others; a blade lies there that they leave there. */
  FaceAdvice before(List<Step> others, Etched etched) {
    FaceAdvice now = now(etched);
    return others.stream().map(Step::kind).anyMatch(LAID_ANEW::contains) ? now.withoutBlade() : now;
  }

  /** As it is at the end of its steps. */
  private FaceAdvice now(Etched etched) {
    return face(Moment.BEFORE, end(), etched, toCome.asCooled());
  }

  /** As it is, after the soak if there is one, and in the finished blade. */
  List<FaceAdvice> all(ScheduleAdvisor.Run run) {
    if (run.cycled().isEmpty() || !FaceField.isFlat(billet) || end().hasLooseFaces()) {
      return List.of();
    }
    List<FaceAdvice> all = new ArrayList<>(List.of(now(Etched.AS_COOLED)));
    run.soaked()
        .ifPresent(s -> all.add(face(Moment.AFTER_SOAK, s.piece(), Etched.AS_COOLED, s.etch())));
    all.add(face(Moment.AFTER_SCHEDULE, run.cycled().get(), Etched.HARDENED, toCome.asCooled()));
    return List.copyOf(all);
  }

  private Workpiece end() {
    return stages.get(stages.size() - 1).piece();
  }

  private FaceAdvice face(Moment moment, Workpiece piece, Etched etched, EtchBand asCooled) {
    return new FaceAdvice(
        billet.name(),
        moment,
        moment == Moment.BEFORE
            ? Optional.of(billet.steps().get(stages.size() - 2))
            : Optional.empty(),
        etched,
        FaceField.of(billet, stages, piece, shop),
        Map.of(
            Etched.AS_COOLED, likely(asCooled),
            Etched.ANNEALED, likely(toCome.annealed()),
            Etched.HARDENED, likely(toCome.finished())),
        shop,
        billet.blade(),
        Optional.empty());
  }

  private Etch likely(EtchBand band) {
    return band.at(shop.assumptions().ferritePlace());
  }
}
