package seamsoak.page;

import java.net.InetAddress;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import seamsoak.data.Fault;
import seamsoak.page.fire.Clock;
import seamsoak.page.fire.Invitation;
import seamsoak.page.fire.PhonesView;
import seamsoak.page.fire.QrSvg;
import seamsoak.page.fire.ShopAddress;
import seamsoak.words.PageWords;
import seamsoak.words.fire.PhoneWords;

/**
 * Phones in the shop: off at each start; on, they come in at an address that the smith has chosen,
 * one by one, until it is switched off, the program ends, or twelve hours are over.
 */
final class Phones implements AutoCloseable {
  /** Where the bench looks after them. */
  static final String PLACE = "/phones";

  static final long MOST_HOURS = 12;
  private static final String JOIN = "/join";
  private static final Pattern DESK = Pattern.compile("/d/([0-9]{1,9})/([a-z.]{1,20})");

  /** What a phone may look at. */
  private static final Set<String> LOOKED =
      Set.of("fire", "fire.news", EtchPages.PLACE, EtchPages.PICTURE, "card");

  /** What a phone may send. */
  private static final Set<String> SENT = Set.of("fire.enter", "fire.timer", "fire.undo");

  private static final int FIRST_PORT = 20_000;
  private static final int PORTS = 20_000;

  private final Path folder;
  private final Desks desks;
  private final FirePages fire;
  private final DeskPages pages;
  private final Presence presence;
  private final Clock clock;
  private On on;

  /** While they may come in. */
  private static final class On {
    final Listener listener;
    final Gate gate;
    final long since;
    Invitation invitation;
    int phones;

    On(Listener listener, Gate gate, Invitation invitation, long since) {
      this.listener = listener;
      this.gate = gate;
      this.invitation = invitation;
      this.since = since;
    }
  }

  Phones(
      Path folder, Desks desks, FirePages fire, DeskPages pages, Presence presence, Clock clock) {
    this.folder = folder;
    this.desks = desks;
    this.fire = fire;
    this.pages = pages;
    this.presence = presence;
    this.clock = clock;
  }

  synchronized boolean areOn() {
    return on != null;
  }

  /** Lets all out when their time is over. */
  synchronized void expire() {
    if (on != null && clock.nanos() - on.since >= TimeUnit.HOURS.toNanos(MOST_HOURS)) {
      off();
    }
  }

  private synchronized void off() {
    if (on != null) {
      Listener listener = on.listener;
      on = null;
      listener.close();
    }
  }

  @Override
  public void close() {
    off();
  }

  Answer looked() {
    return Pages.phones(200, view(""));
  }

  /** Nothing where there is no such address. */
  Optional<Answer> posted(Asked asked) {
    switch (asked.path()) {
      case PLACE + "/on" -> {
        Optional<ShopAddress> chosen =
            ShopAddress.all().stream()
                .filter(a -> a.shown().equals(asked.field("address")))
                .findFirst();
        if (chosen.isEmpty() || !on(chosen.get().address())) {
          return Optional.of(Pages.phones(409, view(PhoneWords.CANNOT_LISTEN)));
        }
      }
      case PLACE + "/another" -> another();
      case PLACE + "/off" -> off();
      default -> {
        return Optional.empty();
      }
    }
    return Optional.of(Answer.see(PLACE));
  }

  private synchronized boolean on(InetAddress address) {
    if (on != null) {
      return true;
    }
    try {
      Listener listener = Listener.open(address, port());
      Gate gate = new Gate(listener.authority(), JOIN, clock::nanos);
      on = new On(listener, gate, invitation(), clock.nanos());
      listener.serve(new Door(on));
      return true;
    } catch (Fault nothingListens) {
      return false;
    }
  }

  /** The same at each start, if it is free: what a phone has kept it has kept for that address. */
  private int port() {
    return FIRST_PORT + Math.floorMod(folder.toString().hashCode(), PORTS);
  }

  private Invitation invitation() {
    return new Invitation(Seal.secret(), clock::nanos);
  }

  private synchronized void another() {
    if (on != null) {
      on.invitation = invitation();
    }
  }

  private synchronized PhonesView view(String notice) {
    if (on == null) {
      List<ShopAddress> all = ShopAddress.all();
      String none = all.isEmpty() ? PhoneWords.NO_ADDRESS : "";
      return new PhonesView(all, "", "", "", "", 0, "", notice.isEmpty() ? none : notice);
    }
    String link = "http://" + on.listener.authority() + JOIN + "?k=" + on.invitation.key();
    boolean open = on.invitation.isOpen();
    long left = MOST_HOURS * 60 - TimeUnit.NANOSECONDS.toMinutes(clock.nanos() - on.since);
    return new PhonesView(
        List.of(),
        on.listener.authority(),
        open ? link : "",
        open ? on.invitation.code() : "",
        open ? QrSvg.of(link, "The link below, for a camera") : "",
        on.phones,
        LocalTime.now().plusMinutes(left).format(DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT)),
        notice);
  }

  /** What phones are answered. */
  private final class Door implements Listener.Door {
    private final On mine;

    Door(On mine) {
      this.mine = mine;
    }

    @Override
    public Optional<Answer> refuse(Asked head) {
      expire();
      if (isOver()) {
        return Optional.of(Pages.told(403, PhoneWords.NOT_IN));
      }
      return mine.gate
          .refuse(head)
          .map(
              a ->
                  a.status() == 403 && head.all("cookie").isEmpty() && !head.isPost()
                      ? Pages.told(403, PhoneWords.NOT_IN)
                      : a);
    }

    private boolean isOver() {
      synchronized (Phones.this) {
        return on != mine;
      }
    }

    @Override
    public Answer answer(Asked asked) {
      presence.came(asked.path().endsWith("news"));
      if (asked.path().equals(JOIN)) {
        return asked.isPost() ? join(asked) : joining(asked.query().getOrDefault("k", ""));
      }
      if (asked.path().equals("/") && !asked.isPost()) {
        return Pages.guests(desks.all().stream().map(d -> new Named(d.id(), d.name())).toList());
      }
      Matcher desk = DESK.matcher(asked.path());
      if (!desk.matches() || !(asked.isPost() ? SENT : LOOKED).contains(desk.group(2))) {
        return Pages.told(403, PhoneWords.MAY_NOT);
      }
      try {
        return desks
            .find(desk.group(1))
            .flatMap(d -> atDesk(d, desk.group(2), asked))
            .orElseGet(() -> Pages.told(404, PageWords.NOTHING_THERE));
      } catch (IllegalArgumentException e) {
        return Pages.told(400, PageWords.NOT_UNDERSTOOD);
      }
    }

    private Optional<Answer> atDesk(Desk desk, String what, Asked asked) {
      return FirePages.has(what)
          ? fire.answer(desk, what, asked, true)
          : pages.looked(desk, what, asked.query());
    }

    private Answer joining(String key) {
      return mine.invitation.state(key) == Invitation.Came.IN
          ? Pages.join(200, key, "")
          : told(mine.invitation.state(key));
    }

    private Answer join(Asked asked) {
      synchronized (Phones.this) {
        Invitation.Came came = mine.invitation.tried(asked.field("k"), asked.field("code"));
        if (came == Invitation.Came.WRONG_CODE) {
          return Pages.join(403, asked.field("k"), PhoneWords.WRONG_CODE);
        }
        if (came != Invitation.Came.IN) {
          return told(came);
        }
        mine.phones++;
        return Answer.see("/").with("Set-Cookie", mine.gate.admit());
      }
    }

    private Answer told(Invitation.Came came) {
      return switch (came) {
        case USED -> Pages.told(410, PhoneWords.USED);
        case OLD -> Pages.told(410, PhoneWords.OLD);
        case TOO_OFTEN -> Pages.told(403, PhoneWords.TOO_OFTEN);
        case WRONG_CODE, WRONG_KEY, IN -> Pages.told(403, PhoneWords.WRONG_KEY);
      };
    }
  }

  /** A billet that is open at the computer. */
  record Named(String desk, String name) {}
}
