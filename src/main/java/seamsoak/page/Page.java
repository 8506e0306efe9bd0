package seamsoak.page;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.Place;
import seamsoak.page.fire.Clock;
import seamsoak.page.form.Kit;
import seamsoak.page.form.Starts;
import seamsoak.property.Correlations;
import seamsoak.report.AnswerPage;
import seamsoak.report.Colophon;
import seamsoak.steel.SteelTable;
import seamsoak.unit.UnitSystem;
import seamsoak.words.PageWords;

/** The page while it is open, and what each of its addresses does. */
public final class Page implements AutoCloseable {
  private static final Pattern DESK = Pattern.compile("/d/([0-9]{1,9})(?:/([a-z.]{1,20}))?");

  private static final String NEWS = "/news";
  private static final String SHOP = "/shop";

  private final Listener listener;
  private final Gate gate;
  private final Shelf shelf;
  private final Desks desks;
  private final Sketches sketches;
  private final MyShop shop;
  private final Pairing pairing;
  private final OneKiln kiln;
  private final Work work;
  private final DeskPages pages;
  private final DeskForms forms;
  private final FirePages fire;
  private final Phones phones;
  private final Kit kit;
  private final Running running;
  private final Presence presence = new Presence(System::nanoTime);
  private final AtomicReference<String> first = new AtomicReference<>();
  private final CountDownLatch ended = new CountDownLatch(1);

  /**
   * What a page is opened with.
   *
   * @param folder with the billets
   * @param state where is kept what was not saved, and where the page runs
   * @param units of answers; those of each billet unless given
   * @param cases tried for how sure an answer is
   * @param port 0 for any
   */
  public record Setting(
      DataFolder data,
      Correlations correlations,
      SteelTable steels,
      Path folder,
      Path state,
      Optional<UnitSystem> units,
      int cases,
      int port,
      Colophon colophon) {
    /** Where state is kept unless a test has another place for it. */
    public static Path usualState() {
      return Mine.folder();
    }

    private Running running() {
      return Running.of(state, folder);
    }
  }

  private Page(Setting setting) {
    Bell bell = new Bell();
    this.kit =
        Kit.of(
            setting.data(),
            setting.correlations(),
            setting.steels(),
            setting.units(),
            setting.cases());
    this.shelf = new Shelf(setting.folder());
    this.desks =
        new Desks(setting.folder(), kit, new Drafts(setting.state().resolve("drafts")), bell);
    this.sketches = new Sketches(shelf, desks, kit);
    this.shop = new MyShop(setting.state().resolve("shop.json"), kit);
    this.pairing = new Pairing(kit);
    this.kiln = new OneKiln(shelf, desks, kit);
    this.work = new Work(kit, bell);
    this.pages = new DeskPages(kit, work, new Answers(kit, setting.colophon()), shop);
    this.forms = new DeskForms(desks, work, pages, shop);
    this.fire = FirePages.of(kit, work, setting.data(), setting.state(), bell);
    this.phones = new Phones(setting.folder(), desks, fire, pages, presence, Clock.SYSTEM);
    this.running = setting.running();
    this.listener = Listener.open(setting.port());
    this.gate = new Gate(listener.authority(), System::nanoTime);
  }

  /**
   * A fresh link to a page that runs on the folder already, if one does.
   *
   * @param billet to be laid on the bench there; blank for none
   */
  public static Optional<String> linkOfRunning(Setting setting, String billet) {
    return setting.running().link(billet);
  }

  /** Begins to listen; {@link Fault} where that cannot be done. */
  public static Page open(Setting setting) {
    Page page = new Page(setting);
    page.shelf.files();
    page.listener.serve(page.new Door());
    page.running.is(page.address(), page.gate.own());
    return page;
  }

  /**
   * Lays a billet on a bench, which is what the smith sees first.
   *
   * @param name of its file in the folder, which need not be there yet
   */
  public void lay(String name) {
    Desk desk =
        shelf.files().contains(name) ? desks.open(name) : blank(name.replaceFirst("\\.json$", ""));
    first.set("/d/" + desk.id());
  }

  /** Where it is, for this machine's browsers. */
  public String address() {
    return "http://" + listener.authority() + "/";
  }

  /** A link that lets in one browser within a minute. */
  public String link() {
    return gate.link();
  }

  /** Waits until the smith has ended it, or has been gone for long with nothing left to save. */
  public void await() throws InterruptedException {
    while (!ended.await(Presence.LOOK_SECONDS, TimeUnit.SECONDS)) {
      if (presence.isGone() && !desks.hasUnsaved() && !isUsed()) {
        return;
      }
    }
  }

  /** Whether a clock runs or phones may come in. */
  private boolean isUsed() {
    phones.expire();
    return fire.isCounting() || phones.areOn();
  }

  @Override
  public void close() {
    ended.countDown();
    phones.close();
    running.ends(gate.own());
    listener.close();
    work.close();
    desks.close();
  }

  private Desk blank(String name) {
    return begin(name, Starts.of("nothing", shop.isMetric(), name, kit.book()));
  }

  /** With what the shop has. */
  private Desk begin(String name, String text) {
    return desks.begin(name, shop.into(text));
  }

  private final class Door implements Listener.Door {
    @Override
    public Optional<Answer> refuse(Asked head) {
      return gate.refuse(head);
    }

    @Override
    public Answer answer(Asked asked) {
      presence.came(asked.path().endsWith("news"));
      Matcher desk = DESK.matcher(asked.path());
      if (desk.matches()) {
        String what = Optional.ofNullable(desk.group(2)).orElse("");
        return desks.find(desk.group(1)).map(d -> atDesk(d, what, asked)).orElseGet(Door::nothing);
      }
      return asked.isPost() ? posted(asked) : looked(asked);
    }

    private static Answer nothing() {
      return Pages.told(404, PageWords.NOTHING_THERE);
    }

    private Answer looked(Asked asked) {
      return switch (asked.path()) {
        case Gate.IN -> gate.in(asked);
        case Running.AGAIN -> again(asked.query().getOrDefault("file", ""));
        case NEWS -> news(asked.query());
        case SHOP -> Pages.myShop(200, shop.view(""));
        case "/sketch" ->
            sketches
                .of(asked.query().getOrDefault("file", ""))
                .map(svg -> Answer.of(200, "image/svg+xml", svg))
                .orElseGet(Door::nothing);
        case "/blank" -> DeskPages.sheet(AnswerPage.blankSheet());
        case "/pair" -> {
          UnitSystem bare = shop.isMetric() ? UnitSystem.METRIC : UnitSystem.US;
          yield Pages.pairing(pairing.of(asked.query(), bare), bare);
        }
        case "/kiln" -> Pages.oneKiln(kiln.of(asked.query()));
        case Phones.PLACE -> phones.looked();
        case "/" ->
            Optional.ofNullable(first.getAndSet(null))
                .map(Answer::see)
                .orElseGet(() -> shelf(200, ""));
        default -> nothing();
      };
    }

    /** The program was started once more: a link for whoever did. */
    private Answer again(String billet) {
      if (!billet.isEmpty()) {
        lay(billet);
      }
      return Listener.plain(200, gate.link());
    }

    /**
     * Held for a while, so that a window knows that the program is there, and it that there is one.
     */
    private Answer news(Map<String, String> query) {
      try {
        return ended.await(DeskPages.held(query), TimeUnit.MILLISECONDS)
            ? Pages.told(410, PageWords.ENDED)
            : Answer.nothing();
      } catch (InterruptedException e) {
        return Pages.told(503, PageWords.ENDED);
      }
    }

    private Answer posted(Asked asked) {
      try {
        return switch (asked.path()) {
          case Gate.IN -> gate.in(asked);
          case "/new" -> fresh(asked);
          case "/upload" -> brought(asked);
          case "/open" ->
              shelf.files().contains(asked.field("file"))
                      || desks.of(asked.field("file")).isPresent()
                  ? Answer.see("/d/" + desks.open(asked.field("file")).id())
                  : nothing();
          case SHOP -> changed(asked);
          case "/end" -> end();
          default -> phones.posted(asked).orElseGet(Door::nothing);
        };
      } catch (Fault fault) {
        return shelf(409, DeskPages.sentence(fault));
      } catch (IllegalArgumentException e) {
        return Pages.told(400, PageWords.NOT_UNDERSTOOD);
      }
    }

    private Answer fresh(Asked asked) {
      String wanted = asked.field("name").strip();
      String name = wanted.isEmpty() ? desks.free(PageWords.NEW_BILLET) : wanted;
      boolean metric = asked.field("units").equals("metric");
      String pattern = asked.field("pattern");
      String text =
          pattern.equals("two")
              ? Starts.ofTwo(asked::field, metric, name)
              : Starts.of(pattern, metric, name, kit.book());
      return Answer.see("/d/" + begin(name, text).id());
    }

    /** A billet from elsewhere, as text: what it holds is only ever read by the reader. */
    private Answer brought(Asked asked) {
      String text = asked.field("text");
      if (!(JsonTree.parse("the billet", text) instanceof ObjectValue)) {
        throw new Fault(Place.of("the billet"), PageWords.NO_BILLET, "");
      }
      String wanted = asked.field("name").strip();
      String name = desks.free(wanted.isEmpty() ? PageWords.NEW_BILLET : wanted);
      return Answer.see("/d/" + desks.begin(name, text).id());
    }

    private Answer shelf(int status, String notice) {
      return Pages.shelf(status, shelf.page(desks, shop.isMetric(), notice));
    }

    private Answer changed(Asked asked) {
      String refused = shop.change(Sent.of(asked.form()));
      return refused.isEmpty() ? Answer.see(SHOP) : Pages.myShop(409, shop.view(refused));
    }

    private Answer end() {
      ended.countDown();
      return Pages.told(200, PageWords.ENDED);
    }

    private Answer atDesk(Desk desk, String what, Asked asked) {
      try {
        if (FirePages.has(what)) {
          return fire.answer(desk, what, asked, false).orElseGet(Door::nothing);
        }
        return asked.isPost()
            ? forms.posted(desk, what, asked).orElseGet(Door::nothing)
            : pages.looked(desk, what, asked.query()).orElseGet(Door::nothing);
      } catch (IllegalArgumentException e) {
        return Pages.told(400, PageWords.NOT_UNDERSTOOD);
      }
    }
  }
}
