package seamsoak.page;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import seamsoak.billet.Billet;
import seamsoak.data.Fault;
import seamsoak.page.form.Bench;
import seamsoak.page.form.Editing;
import seamsoak.page.form.Kit;
import seamsoak.plan.Advice;
import seamsoak.report.AnswerPage;
import seamsoak.trace.Trace;
import seamsoak.words.PageWords;
import seamsoak.words.Sentence;
import seamsoak.words.beside.WhatIfWords;

/** What is looked at of a billet: bench, answer, card, file. */
final class DeskPages {
  static final long HELD_MILLIS = 20_000;

  /** A browser without the script is better answered soon: it asks again by itself. */
  private static final long SOON_MILLIS = 1_500;

  private final Kit kit;
  private final Work work;
  private final Answers answers;
  private final MyShop shop;
  private final List<BenchPage.Named> steels;

  DeskPages(Kit kit, Work work, Answers answers, MyShop shop) {
    this.shop = shop;
    this.kit = kit;
    this.work = work;
    this.answers = answers;
    this.steels = BenchPage.steels(kit.steels());
  }

  static String sentence(Fault fault) {
    return fault.mistakes().stream()
        .map(m -> Sentence.ended(Sentence.capital(m.expected().isEmpty() ? m.found() : m.said())))
        .collect(Collectors.joining(" "));
  }

  Optional<Answer> looked(Desk desk, String what, Map<String, String> query) {
    return switch (what) {
      case "" -> Optional.of(bench(200, desk, "", false));
      case "answer" -> Optional.of(answer(desk, query));
      case "news" -> Optional.of(news(desk, query));
      case "card" -> Optional.of(answered(desk, (now, page) -> sheet(page.sheet())));
      case "billet.json" -> Optional.of(file(desk));
      case "face.png" -> Optional.of(face(desk, query));
      case "kiln.csv" -> Optional.of(answered(desk, this::program));
      case "sources" -> Optional.of(answered(desk, (now, page) -> sources(desk, now, page)));
      default -> Optional.empty();
    };
  }

  Answer bench(int status, Desk desk, String notice, boolean conflict) {
    Desk.Now now = desk.now();
    Optional<Answers.View> answer =
        now.proof()
            .sound()
            .map(b -> view(desk, now, b, work.known(desk.id(), now.number(), b), ""));
    Editing editing = desk.editing(now);
    List<String> others = shop.differs(editing);
    BenchPage page =
        new BenchPage(
            desk.id(),
            desk.name(),
            now.number(),
            now.isSaved(),
            !now.history().back().isEmpty(),
            !now.history().forth().isEmpty(),
            notice,
            conflict,
            Bench.of(editing, now.proof(), kit),
            now.proof().made(),
            answer.orElse(null),
            steels,
            PageWords.ofShop(shop.there(), others),
            !others.isEmpty());
    return Pages.bench(status, page);
  }

  private Answers.View view(
      Desk desk, Desk.Now now, Billet billet, Work.Known known, String soakAt) {
    return answers.view(now.number(), billet, known, soakAt, desk.kept());
  }

  /** What is to become of plan A: a whole answer is kept as it, it is taken back or forgotten. */
  Answer keep(Desk desk, Map<String, String> form) {
    switch (form.getOrDefault("how", "")) {
      case "keep" -> {
        Desk.Now now = desk.now();
        Optional<Advice> whole =
            now.proof()
                .sound()
                .map(b -> work.known(desk.id(), now.number(), b))
                .filter(k -> k.stage() == Work.Stage.BAND)
                .flatMap(Work.Known::advice);
        boolean shown = Asked.number(form.get("rev")).filter(n -> n == now.number()).isPresent();
        if (whole.isEmpty() || !shown) {
          return bench(409, desk, PageWords.CHANGED_ELSEWHERE, false);
        }
        desk.keep(Optional.of(new Desk.Kept(now.number(), now.text(), whole.get())));
      }
      case "back" -> desk.kept().ifPresent(k -> desk.becomes(k.text()));
      case "forget" -> desk.keep(Optional.empty());
      default -> throw new IllegalArgumentException("no button of ours");
    }
    return Answer.see("/d/" + desk.id());
  }

  /** Held until more is known than the browser has. */
  private Answer answer(Desk desk, Map<String, String> query) {
    boolean script = query.containsKey("stage");
    Work.Stage stage = Work.Stage.valueOf(query.getOrDefault("stage", Work.Stage.NONE.name()));
    int done = Asked.number(query.get("done")).orElse(0);
    Desk.Now now = desk.now();
    Optional<Billet> billet = now.proof().sound();
    if (billet.isEmpty()) {
      return Pages.answer(desk.name(), desk.id(), null, now.proof().mistakes().size());
    }
    try {
      Work.Known known =
          work.more(
              desk.id(),
              now.number(),
              billet.get(),
              stage,
              done,
              script ? HELD_MILLIS : SOON_MILLIS);
      boolean has = script && known.stage() == stage && !known.isWhole();
      Answers.View view =
          has
              ? answers.progress(now.number(), known)
              : view(desk, now, billet.get(), known, query.getOrDefault("soak", ""));
      return Pages.answer(desk.name(), desk.id(), view, 0);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Pages.told(503, PageWords.ENDED);
    }
  }

  /** How long a window that asks for news is to be held. */
  static long held(Map<String, String> query) {
    return "0".equals(query.get("hold")) ? 0 : HELD_MILLIS;
  }

  /** Held until the billet is changed in another window, or for a while. */
  private static Answer news(Desk desk, Map<String, String> query) {
    int number = Asked.number(query.get("rev")).orElse(0);
    try {
      return desk.isNewer(number, held(query))
          ? Listener.plain(200, "" + desk.now().number())
          : Answer.nothing();
    } catch (InterruptedException e) {
      return Pages.told(503, PageWords.ENDED);
    }
  }

  /** What is made of an answer as far as it is known. */
  private Answer answered(Desk desk, BiFunction<Desk.Now, AnswerPage, Answer> made) {
    Desk.Now now = desk.now();
    Optional<Billet> billet = now.proof().sound();
    Optional<Advice> advice = billet.flatMap(b -> work.known(desk.id(), now.number(), b).advice());
    return advice.isEmpty()
        ? Pages.told(404, PageWords.NO_ANSWER_YET)
        : made.apply(now, answers.page(billet.get(), advice.get()));
  }

  private Answer face(Desk desk, Map<String, String> query) {
    Desk.Now now = desk.now();
    return now.proof()
        .sound()
        .flatMap(
            b ->
                work.known(desk.id(), now.number(), b)
                    .advice()
                    .flatMap(
                        a ->
                            new LiveFace(a, b.soak().outsideTaken())
                                .of(query, new WhatIfWords(a.soak(), kit.units(b)))))
        .orElseGet(() -> Pages.told(404, PageWords.NO_FACE));
  }

  private Answer program(Desk.Now now, AnswerPage page) {
    return page.program()
        .map(csv -> Answer.of(200, "application/octet-stream", bytes(csv)).asFile("kiln.csv"))
        .orElseGet(() -> Pages.told(404, PageWords.NO_PROGRAM));
  }

  private Answer sources(Desk desk, Desk.Now now, AnswerPage page) {
    Trace trace = kit.tracer().ofSchedule(now.proof().sound().orElseThrow(), page.advice());
    return Pages.piece(desk.name(), "/d/" + desk.id(), page.rests(trace));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** A page to be printed, which lets in nothing but its own style. */
  static Answer sheet(byte[] html) {
    return Answer.of(200, "text/html; charset=utf-8", html)
        .with(Seal.POLICY, AnswerPage.sheetPolicy() + "; frame-ancestors 'none'");
  }

  private static Answer file(Desk desk) {
    return Answer.of(200, "application/octet-stream", bytes(desk.now().text()))
        .asFile("billet.json");
  }
}
