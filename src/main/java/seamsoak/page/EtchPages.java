package seamsoak.page;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import seamsoak.billet.Billet;
import seamsoak.billet.Seen.Etched;
import seamsoak.billet.Step;
import seamsoak.chart.GrayPng;
import seamsoak.data.Fault;
import seamsoak.page.fire.EtchView;
import seamsoak.page.fire.FireView;
import seamsoak.page.fire.FireViews;
import seamsoak.page.fire.Recorder;
import seamsoak.page.form.Kit;
import seamsoak.plan.FaceAdvice;
import seamsoak.plan.PlanAdvisor;
import seamsoak.soak.Sightings;
import seamsoak.unit.UnitSystem;
import seamsoak.words.PageWords;
import seamsoak.words.Sentence;
import seamsoak.words.fire.FireWords;

/**
 * The face of a billet as it is by now, to lay the photograph of a test etch beside. The photograph
 * is the browser's alone: nothing here takes one.
 */
final class EtchPages {
  static final String PLACE = "fire.etch";
  static final String PICTURE = "fire.png";

  private static final long PATIENCE_MILLIS = 10_000;

  private final Kit kit;
  private final Work work;
  private final Map<String, Drawn> drawn = new ConcurrentHashMap<>();

  /** The face last worked out at a desk: one picture or another of it is asked for again. */
  private record Drawn(int number, FaceAdvice face) {}

  EtchPages(Kit kit, Work work) {
    this.kit = kit;
    this.work = work;
  }

  /** Nothing where there is no such address. */
  Answer looked(Desk desk, String what, Map<String, String> query) {
    Desk.Now now = desk.now();
    Optional<Billet> billet = now.proof().sound();
    if (billet.isEmpty()) {
      return Pages.toMend(desk, FireWords.TO_MEND);
    }
    return what.equals(PICTURE)
        ? picture(desk, now, billet.get(), query)
        : page(desk, now, billet.get());
  }

  private Answer page(Desk desk, Desk.Now now, Billet billet) {
    UnitSystem units = kit.units(billet);
    Work.Known known;
    try {
      known =
          work.more(desk.id(), now.number(), billet, Work.Stage.NONE, kit.cases(), PATIENCE_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Pages.told(503, PageWords.ENDED);
    }
    FireViews views = new FireViews(billet, now.text(), known.advice(), known.isWhole(), units);
    FireView.Etch etch = views.etch(now.proof().made(), Optional.empty()).orElse(null);
    EtchView.Computed computed = null;
    String why = etch == null ? FireWords.NOTHING_TO_LOOK_AT : "";
    if (etch != null) {
      try {
        computed =
            EtchView.computed(face(desk, now, billet, left(billet)), "rev=" + now.number(), units);
      } catch (Fault fault) {
        why = Sentence.ended(Sentence.capital(fault.mistakes().get(0).found()));
      }
    }
    return Pages.etch(
        new EtchView(
            desk.id(),
            desk.name(),
            desk.file(),
            Seal.secret(),
            EtchView.unit(units),
            etch,
            computed,
            why));
  }

  private static Etched left(Billet billet) {
    return Sightings.left(Recorder.lookedAfter(billet.steps()));
  }

  private Answer picture(Desk desk, Desk.Now now, Billet billet, Map<String, String> query) {
    Etched state =
        Optional.of(query.getOrDefault("etched", ""))
            .filter(e -> !e.isEmpty())
            .map(e -> Etched.valueOf(e.toUpperCase(Locale.ROOT).replace('-', '_')))
            .orElseGet(() -> left(billet));
    try {
      FaceAdvice face = face(desk, now, billet, state);
      return Answer.of(
          200, "image/png", GrayPng.of(face.metal(EtchView.size(face)), face.billet(), ""));
    } catch (Fault fault) {
      return Pages.told(404, PageWords.NO_FACE);
    }
  }

  private FaceAdvice face(Desk desk, Desk.Now now, Billet billet, Etched state) {
    return drawn
        .compute(
            desk.id(),
            (id, had) ->
                had != null && had.number() == now.number()
                    ? had
                    : new Drawn(now.number(), walked(billet, state)))
        .face()
        .etched(state);
  }

  private FaceAdvice walked(Billet billet, Etched state) {
    Step after = Recorder.lookedAfter(billet.steps());
    return new PlanAdvisor(kit.correlations(), kit.cautions(), kit.cases())
        .face(billet, after.mark().number(), Optional.of(state));
  }
}
