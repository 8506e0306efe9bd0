package seamsoak.page.fire;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.billet.Heat;
import seamsoak.billet.Now;
import seamsoak.billet.Seen;
import seamsoak.billet.Step;
import seamsoak.billet.file.ToRecord;
import seamsoak.billet.file.WorkBook;
import seamsoak.page.form.Proof;
import seamsoak.plan.Advice;
import seamsoak.plan.ToDo;
import seamsoak.report.ShopCard;
import seamsoak.state.Joints;
import seamsoak.state.StageReport;
import seamsoak.unit.UnitSystem;
import seamsoak.words.CardWords;
import seamsoak.words.SeamWords;
import seamsoak.words.Sentence;
import seamsoak.words.SoakAnswerWords;
import seamsoak.words.StageWords;
import seamsoak.words.fire.FireWords;
import seamsoak.words.fire.SoakedWords;

/**
 * What is shown of a billet at the fire, by what is known of it.
 *
 * @param text of its file
 * @param advice as far as it is known
 * @param whole whether nothing more will be known
 */
public record FireViews(
    Billet billet, String text, Optional<Advice> advice, boolean whole, UnitSystem units) {
  private FireWords words() {
    return new FireWords(units);
  }

  /** All that is to be done. */
  public List<ToDo> toDo() {
    return ToDo.of(billet, advice, words().shown());
  }

  /** One of what is to be done. */
  public FireView.Task task(List<ToDo> all, int look) {
    ToDo work = all.get(look);
    Optional<ToDo> next = look + 1 < all.size() ? Optional.of(all.get(look + 1)) : Optional.empty();
    // what is advised is entered in its turn; what is in the file may be, and all before it counts
    boolean turn =
        work instanceof ToDo.OfFile
            || whole && all.subList(0, look).stream().noneMatch(ToDo::canBeRecorded);
    return work instanceof ToDo.OfFile f
        ? ofFile(f, next)
        : advised((ToDo.Advised) work, next, turn && work.canBeRecorded());
  }

  private FireView.Task ofFile(ToDo.OfFile work, Optional<ToDo> next) {
    Step step = work.step();
    Optional<Heat> heat = FireWords.planned(work);
    Optional<StageReport> stage =
        advice.stream()
            .flatMap(a -> a.history().stream())
            .filter(s -> s.step() == step.mark().number())
            .findFirst();
    List<String> cautions = new ArrayList<>();
    stage.ifPresent(
        s -> {
          s.heats()
              .forEach(
                  r -> cautions.add(Sentence.ended(Sentence.capital(StageWords.heat(r, units)))));
          s.cautions().forEach(c -> cautions.add(c.said(units)));
        });
    return new FireView.Task(
        words().title(work),
        heat.map(h -> words().first(h.at().celsius())).orElse(""),
        heat.map(h -> words().second(h.at().celsius())).orElse(""),
        heat.map(h -> words().time(h.hold().minutes())).orElse(""),
        heat.map(h -> h.hold().minutes()).orElse(0.0),
        "",
        words().doing(work),
        words().then(work, next),
        cautions,
        List.of(),
        step.mark().number(),
        work.heat(),
        heat.map(h -> alike(step, work.heat())).orElse(0),
        step.name(),
        "",
        true,
        false,
        work.heat() == step.times() ? measured(step) : List.of());
  }

  /** The last heat of a step that is planned as one is. */
  private static int alike(Step step, int heat) {
    int before = 0;
    for (Heat h : step.heats()) {
      if (heat <= before + h.times()) {
        return before + h.times();
      }
      before += h.times();
    }
    return heat;
  }

  private List<FireView.Measured> measured(Step step) {
    WorkBook book = WorkBook.of(billet.name(), text);
    return ToRecord.measured(step.kind()).stream()
        .map(
            key ->
                new FireView.Measured(
                    key, Sentence.capital(key), book.planned(step, key).orElse("")))
        .toList();
  }

  private FireView.Task advised(ToDo.Advised work, Optional<ToDo> next, boolean entered) {
    Advice known = advice.orElseThrow();
    int index = known.schedule().steps().indexOf(work.first());
    ShopCard.Entry card = ShopCard.of(known, units).steps().get(index);
    List<String> cautions = new ArrayList<>();
    if (!card.refused().isEmpty()) {
      cautions.add(card.refused());
    }
    work.first().cautions().forEach(c -> cautions.add(c.said(units)));
    return new FireView.Task(
        words().title(work),
        card.temperature(),
        card.other(),
        card.time(),
        work.first().holdMinutes().orElse(0.0),
        FireWords.rise(known.schedule(), work.first(), units),
        SoakedWords.first(known, work.first()) + Sentence.ended(card.doing()),
        words().then(work, next),
        cautions,
        card.checks(),
        billet.steps().size() + 1,
        work.first().temperatureC().isPresent() ? 1 : 0,
        1,
        work.written().map(w -> w.get("do").toString()).orElse(""),
        Recorder.planId(work),
        entered,
        work.isTestEtch(),
        work.written().filter(w -> w.containsKey("depth")).stream()
            .map(w -> new FireView.Measured("depth", "Depth", w.get("depth").toString()))
            .toList());
  }

  /** The steps that are not done, to say up to which they are. */
  public List<FireView.Choice> steps(List<ToDo> all) {
    return all.stream()
        .filter(ToDo.OfFile.class::isInstance)
        .map(ToDo.OfFile.class::cast)
        .map(
            f ->
                new FireView.Choice(
                    "" + f.step().mark().number(), Sentence.capital(f.step().title())))
        .toList();
  }

  /**
   * What may be looked at by now; nothing where nothing is done that could be.
   *
   * @param made the billet as laid and after each step
   * @param tap on its drawing, if there was one
   */
  public Optional<FireView.Etch> etch(List<Proof.Made> made, Optional<Tapped> tap) {
    Optional<Now> now = Now.of(billet.steps());
    if (advice.isEmpty()
        || now.filter(n -> n.step().mark().number() == 1 && !n.stepDone()).isPresent()) {
      return Optional.empty();
    }
    Step after = Recorder.lookedAfter(billet.steps());
    Map<String, Joints> where = new LinkedHashMap<>();
    advice.get().history().stream()
        .filter(s -> s.step() == after.mark().number())
        .findFirst()
        .map(StageReport::lines)
        .orElse(List.of())
        .forEach(line -> where.putIfAbsent(SeamWords.name(line.joints()), line.joints()));
    Optional<Proof.Made> drawn =
        Optional.of(after.mark().number()).filter(n -> n < made.size()).map(made::get);
    Optional<Joints> chosen =
        tap.flatMap(t -> drawn.flatMap(d -> t.among(List.copyOf(where.values()), d.figure())));
    return Optional.of(
        new FireView.Etch(
            after.title(),
            where.entrySet().stream()
                .map(e -> new FireView.Choice(e.getKey(), says(e.getValue())))
                .toList(),
            drawn.map(d -> Tapped.drawing(d.figure())).orElse(null),
            drawn.map(Proof.Made::notes).orElse(List.of()),
            chosen.map(SeamWords::name).orElse(""),
            tap.map(t -> chosen.map(c -> FireWords.tapped(says(c))).orElse(FireWords.NO_SEAM))
                .orElse("")));
  }

  private static String says(Joints joints) {
    return Sentence.capital(SeamWords.says(joints));
  }

  public FireView.Answer answer() {
    if (advice.isEmpty()) {
      return new FireView.Answer(FireWords.PLANNING, "", "", List.of(), List.of(), List.of());
    }
    Advice a = advice.get();
    ShopCard card = ShopCard.of(a, units);
    CardWords words = new CardWords(a, units);
    List<String> brief = new SoakAnswerWords(a.soak(), units).brief();
    List<String> notes = new ArrayList<>();
    if (card.stops().isEmpty()) {
      notes.addAll(brief.subList(1, brief.size()));
    }
    notes.removeIf(n -> words.second().endsWith(n));
    new SoakedWords(units).says(a).ifPresent(notes::add);
    a.soak()
        .evidence()
        .flatMap(e -> e.nextLook())
        .filter(s -> s == Seen.Etched.AS_COOLED) // an annealed one is told with the test etch
        .ifPresent(s -> notes.add(FireWords.ETCH_NOW));
    List<String> conflicts = new ArrayList<>(card.heats());
    conflicts.addAll(card.conflicts());
    return new FireView.Answer(
        whole ? "" : FireWords.LIKELY,
        words.answer(),
        words.second(),
        notes,
        card.stops(),
        conflicts);
  }
}
