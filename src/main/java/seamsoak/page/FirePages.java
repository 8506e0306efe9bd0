package seamsoak.page;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import seamsoak.billet.Billet;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.heatlog.LogSettings;
import seamsoak.page.fire.Clock;
import seamsoak.page.fire.Entry;
import seamsoak.page.fire.FireView;
import seamsoak.page.fire.FireViews;
import seamsoak.page.fire.Hold;
import seamsoak.page.fire.Holds;
import seamsoak.page.fire.Recorder;
import seamsoak.page.fire.Tapped;
import seamsoak.page.fire.Twice;
import seamsoak.page.form.Kit;
import seamsoak.plan.Advice;
import seamsoak.plan.ToDo;
import seamsoak.unit.UnitSystem;
import seamsoak.words.PageWords;
import seamsoak.words.fire.FireWords;
import seamsoak.words.fire.MissWords;

/** A billet at the fire: what is to be done next, the clock, and what is entered. */
final class FirePages {
  /** A clock that jumped rings nothing: it is found by looking. */
  private static final long LOOK_NANOS = TimeUnit.SECONDS.toNanos(5);

  private final Kit kit;
  private final Work work;
  private final Holds holds;
  private final Bell bell;
  private final LogPages logs;
  private final EtchPages etches;
  private final Map<String, Missed> missed = new ConcurrentHashMap<>();

  /** The last answers that were known to their end. */
  private final Map<String, Advice> whole = new ConcurrentHashMap<>();

  /** A plan that something was entered against, and the number of the text that came of it. */
  private record Missed(Advice before, int step, int number) {}

  private FirePages(Kit kit, Work work, Holds holds, Bell bell, LogPages logs) {
    this.bell = bell;
    this.kit = kit;
    this.work = work;
    this.holds = holds;
    this.logs = logs;
    this.etches = new EtchPages(kit, work);
  }

  /**
   * @param state where holds are kept
   * @param bell rung when one is otherwise, and by whoever else is
   */
  static FirePages of(Kit kit, Work work, DataFolder data, Path state, Bell bell) {
    Path kept = state.resolve("holds.json");
    Holds holds = new Holds(Clock.SYSTEM, Mine.read(kept), text -> kept(kept, text, bell));
    return new FirePages(kit, work, holds, bell, new LogPages(kit, LogSettings.load(data)));
  }

  private static void kept(Path file, String text, Bell bell) {
    Mine.write(file, text);
    bell.ring();
  }

  /** Whether a clock runs. */
  boolean isCounting() {
    return holds.areRunning();
  }

  /** Whether an address of a desk is one of these. */
  static boolean has(String what) {
    return what.equals("fire") || what.startsWith("fire.");
  }

  /**
   * Nothing where there is no such address.
   *
   * @param guest whether it is a phone that was let in
   */
  Optional<Answer> answer(Desk desk, String what, Asked asked, boolean guest) {
    if (!asked.isPost()) {
      return switch (what) {
        case "fire" -> Optional.of(page(200, desk, asked.query(), guest, "", null));
        case "fire.log" -> guest ? Optional.empty() : Optional.of(logs.looked(desk));
        case "fire.news" -> Optional.of(news(desk, asked.query()));
        case EtchPages.PLACE, EtchPages.PICTURE ->
            Optional.of(etches.looked(desk, what, asked.query()));
        default -> Optional.empty();
      };
    }
    try {
      return switch (what) {
        case "fire.enter" -> Optional.of(enter(desk, asked.form(), guest));
        case "fire.log" -> guest ? Optional.empty() : Optional.of(logs.posted(desk, asked));
        case "fire.timer" -> Optional.of(timer(desk, asked));
        case "fire.undo" -> {
          desk.takeBack(asked.field("last"));
          yield Optional.of(see(desk));
        }
        default -> Optional.empty();
      };
    } catch (Fault fault) {
      return Optional.of(page(409, desk, Map.of(), guest, DeskPages.sentence(fault), null));
    }
  }

  private static Answer see(Desk desk) {
    return Answer.see("/d/" + desk.id() + "/fire");
  }

  private Optional<Work.Known> known(Desk desk, Desk.Now now) {
    return now.proof().sound().map(b -> known(desk, now, b));
  }

  private Work.Known known(Desk desk, Desk.Now now, Billet billet) {
    Work.Known known = work.known(desk.id(), now.number(), billet);
    if (known.stage() == Work.Stage.BAND) {
      known.advice().ifPresent(a -> whole.put(desk.id(), a));
    }
    return known;
  }

  private FireViews views(Desk.Now now, Billet billet, Work.Known known) {
    UnitSystem units = kit.units(billet);
    return new FireViews(billet, now.text(), known.advice(), known.isWhole(), units);
  }

  private Answer enter(Desk desk, Map<String, String> form, boolean guest) {
    Optional<Hold> hold = holds.of(desk.file());
    Entry entry = Entry.of(Hold.told(form, hold));
    if (!entry.billet().equals(desk.file())) {
      return page(
          409, desk, Map.of(), guest, FireWords.otherBillet(entry.billet(), desk.name()), null);
    }
    Optional<Advice> before = Optional.ofNullable(whole.get(desk.id()));
    Recorder.Done[] done = new Recorder.Done[1];
    try {
      desk.record(
          entry.id(),
          now -> {
            done[0] = recorded(desk, now, entry);
            return new Desk.Written(done[0].recorded().text(), done[0].title());
          });
    } catch (Twice twice) {
      FireView.Ask ask = twice.mayReplace() ? new FireView.Ask(twice.getMessage(), form) : null;
      return page(409, desk, Map.of(), guest, twice.getMessage(), ask);
    }
    if (done[0] != null) {
      hold.filter(h -> h.step() <= entry.step()).ifPresent(h -> holds.end(desk.file()));
      missed.remove(desk.id());
      if (!done[0].planned() && before.isPresent()) {
        missed.put(desk.id(), new Missed(before.get(), done[0].step(), desk.now().number()));
      }
    }
    return see(desk);
  }

  private Recorder.Done recorded(Desk desk, Desk.Now now, Entry entry) {
    Optional<Billet> billet = now.proof().sound();
    UnitSystem units = billet.map(kit::units).orElse(UnitSystem.US);
    List<ToDo> toDo = billet.map(b -> views(now, b, known(desk, now, b)).toDo()).orElse(List.of());
    return new Recorder(
            desk.path(),
            kit.names(),
            kit.correlations(),
            LocalDate.now(ZoneId.systemDefault()),
            units == UnitSystem.METRIC ? units : UnitSystem.US)
        .record(now.text(), entry, toDo);
  }

  private Answer timer(Desk desk, Asked asked) {
    String billet = desk.file();
    switch (asked.field("act")) {
      case "start" -> {
        String minutes = asked.field("minutes");
        String title = asked.field("title");
        int step = Asked.number(asked.field("step")).orElseThrow(IllegalArgumentException::new);
        int heat = Asked.number(asked.field("heat")).orElseThrow(IllegalArgumentException::new);
        if (!minutes.matches("[0-9]{1,4}(\\.[0-9]{1,9})?") || title.length() > 200) {
          throw new IllegalArgumentException("no time");
        }
        boolean counted =
            holds.of(billet).filter(h -> h.step() == step && h.heat() == heat).isPresent();
        if (!counted) { // two who press it at once start one clock
          holds.begin(billet, step, heat, title, Double.parseDouble(minutes));
        }
      }
      case "more" -> holds.longer(billet, 1);
      case "stop" -> holds.end(billet);
      default -> throw new IllegalArgumentException("no act of ours");
    }
    return see(desk);
  }

  private String mark(Desk desk, Desk.Now now, Optional<Work.Known> known) {
    return now.mark()
        + "-"
        + known.map(k -> k.stage() + (k.failed().isEmpty() ? "" : "x")).orElse("faults")
        + "-"
        + holds.changes();
  }

  /** Held until something is otherwise than the browser has it, or for a while. */
  private Answer news(Desk desk, Map<String, String> query) {
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(DeskPages.held(query));
    String had = query.getOrDefault("mark", "");
    try {
      while (true) {
        long heard = bell.rung();
        Desk.Now now = desk.now();
        Optional<Hold> hold = holds.of(desk.file());
        String mark = mark(desk, now, known(desk, now));
        long left = end - System.nanoTime();
        if (left <= 0 || !mark.equals(had)) {
          Answer answer = mark.equals(had) ? Answer.nothing() : Listener.plain(200, mark);
          return hold.map(
                  h ->
                      answer
                          .with("X-Left", "" + h.leftMillis())
                          .with("X-Gone", "" + h.goneMillis()))
              .orElse(answer);
        }
        bell.await(heard, Math.min(left, LOOK_NANOS));
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Pages.told(503, PageWords.ENDED);
    }
  }

  private Answer page(
      int status,
      Desk desk,
      Map<String, String> asked,
      boolean guest,
      String notice,
      FireView.Ask ask) {
    Desk.Now now = desk.now();
    Optional<Billet> billet = now.proof().sound();
    if (billet.isEmpty()) {
      return Pages.toMend(desk, notice.isEmpty() ? FireWords.TO_MEND : notice);
    }
    Work.Known known = known(desk, now, billet.get());
    FireViews views = views(now, billet.get(), known);
    List<ToDo> toDo = views.toDo();
    FireWords words = new FireWords(kit.units(billet.get()));
    int look = Math.min(Asked.number(asked.get("look")).orElse(0), Math.max(0, toDo.size() - 1));
    FireView.Task task = toDo.isEmpty() ? null : views.task(toDo, look);
    FireView view =
        new FireView(
            desk.id(),
            desk.name(),
            desk.file(),
            now.number(),
            mark(desk, now, Optional.of(known)),
            Seal.secret(),
            guest,
            now.isSaved(),
            notice,
            ask,
            ToDo.isBegun(billet.get()),
            task,
            look,
            toDo.stream().map(words::brief).toList(),
            views.steps(toDo),
            holds.of(desk.file()).map(h -> FireView.Counted.of(h, task)).orElse(null),
            views.etch(now.proof().made(), Tapped.of(asked)).orElse(null),
            known.failed().isEmpty() ? views.answer() : FireView.Answer.none(known.failed()),
            changed(desk, now, known, billet.get()),
            desk.last().orElse(""));
    return Pages.fire(status, view);
  }

  private List<String> changed(Desk desk, Desk.Now now, Work.Known known, Billet billet) {
    Missed m = missed.get(desk.id());
    if (m == null || m.number() != now.number() || known.advice().isEmpty()) {
      return List.of();
    }
    return known.isWhole()
        ? new MissWords(m.before(), known.advice().get(), kit.units(billet)).said(m.step())
        : List.of(FireWords.PLANNING);
  }
}
