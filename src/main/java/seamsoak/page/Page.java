package seamsoak.page;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import seamsoak.words.PageWords;

/** What each address of the page does. */
public final class Page implements AutoCloseable {
  private final Listener listener;
  private final Gate gate;
  private final Shelf shelf;
  private final CountDownLatch ended = new CountDownLatch(1);

  private Page(Listener listener, Path folder) {
    this.listener = listener;
    this.gate = new Gate(listener.authority(), System::nanoTime);
    this.shelf = new Shelf(folder);
  }

  /**
   * Begins to listen.
   *
   * @param folder with the billets
   * @param port 0 for any
   */
  public static Page open(Path folder, int port) {
    Page page = new Page(Listener.open(port), folder);
    page.listener.serve(page.new Door());
    return page;
  }

  /** Where it is, for this machine's browsers. */
  public String address() {
    return "http://" + listener.authority() + "/";
  }

  /** A link that lets in one browser within a minute. */
  public String link() {
    return gate.link();
  }

  /** Waits until the smith has ended it. */
  public void await() throws InterruptedException {
    ended.await();
  }

  @Override
  public void close() {
    ended.countDown();
    listener.close();
  }

  private final class Door implements Listener.Door {
    @Override
    public Optional<Answer> refuse(Asked head) {
      return gate.refuse(head);
    }

    @Override
    public Answer answer(Asked asked) {
      return switch (asked.path()) {
        case Gate.IN -> gate.in(asked);
        case "/" -> Pages.shelf(shelf.view());
        default -> Pages.told(404, PageWords.NOTHING_THERE);
      };
    }
  }
}
