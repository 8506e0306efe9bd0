package seamsoak.page;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import seamsoak.data.Fault;
import seamsoak.data.Place;
import seamsoak.words.PageWords;

/**
 * Listens at an address of this machine that no other can reach, one of its own where the system
 * has such: a browser keeps ports of one address less apart than addresses.
 */
final class Listener implements AutoCloseable {
  /** What is done with what was asked. */
  interface Door {
    /** What to answer before anything that was sent along is read; nothing where it may come in. */
    Optional<Answer> refuse(Asked head);

    Answer answer(Asked asked);
  }

  /** What a page may send along. */
  static final int MOST_BYTES = 256 << 10;

  /** What it may where it brings the log of a heat. */
  static final int MOST_LOG_BYTES = 20 << 20;

  private static final int MOST_THREADS = 200;
  private static final int MOST_TARGET = 2048;
  private static final long IDLE_SECONDS = 30;
  private static final int LAST_SECONDS = 1;

  private final HttpServer server;
  private final AtomicInteger answering = new AtomicInteger();
  private final ThreadPoolExecutor threads;

  private Listener(HttpServer server) {
    this.server = server;
    // one slow sender takes a thread until its time is up, so there are many, and none waits
    this.threads =
        new ThreadPoolExecutor(
            0,
            MOST_THREADS,
            IDLE_SECONDS,
            TimeUnit.SECONDS,
            new SynchronousQueue<>(),
            Listener::thread,
            new ThreadPoolExecutor.DiscardPolicy());
    server.setExecutor(threads);
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "page");
    thread.setDaemon(true);
    return thread;
  }

  /** The server reads them once, when the first is made. */
  private static void settings() {
    System.setProperty("sun.net.httpserver.nodelay", "true");
    System.setProperty("sun.net.httpserver.maxReqTime", "5");
    System.setProperty("sun.net.httpserver.maxReqHeaders", "60");
    System.setProperty("sun.net.httpserver.maxReqHeaderSize", "16384");
  }

  /**
   * Takes a place to listen at; {@link Fault} when the port is taken.
   *
   * @param port 0 for any
   */
  static Listener open(int port) {
    settings();
    try {
      return new Listener(bound(port));
    } catch (BindException e) {
      throw new Fault(
          Place.of("--port " + port), "something else listens there", "give another port or none");
    } catch (IOException e) {
      throw new Fault(
          Place.of("the page"),
          "this machine lets nothing listen (" + e.getMessage() + ")",
          "check its network settings");
    }
  }

  /**
   * The same at an address of this machine that others can reach; {@link Fault} where nothing can
   * listen.
   *
   * @param port that is wanted; any other where it is taken
   */
  static Listener open(InetAddress address, int port) {
    settings();
    try {
      return new Listener(server(address.getAddress(), port));
    } catch (IOException taken) {
      try {
        return new Listener(server(address.getAddress(), 0));
      } catch (IOException e) {
        throw new Fault(Place.of(address.getHostAddress()), "nothing can listen there", "");
      }
    }
  }

  private static HttpServer bound(int port) throws IOException {
    byte[] own = new byte[4];
    new SecureRandom().nextBytes(own);
    own[0] = 127;
    try {
      return server(own, port);
    } catch (BindException e) {
      return server(new byte[] {127, 0, 0, 1}, port);
    }
  }

  private static HttpServer server(byte[] address, int port) throws IOException {
    return HttpServer.create(new InetSocketAddress(InetAddress.getByAddress(address), port), 0);
  }

  int port() {
    return server.getAddress().getPort();
  }

  /** Address and port, as a browser calls the place. */
  String authority() {
    return server.getAddress().getAddress().getHostAddress() + ":" + port();
  }

  void serve(Door door) {
    server.createContext("/", exchange -> handle(exchange, door));
    server.start();
  }

  private void handle(HttpExchange exchange, Door door) {
    answering.incrementAndGet();
    try (exchange) {
      Answer answer;
      try {
        answer = answer(exchange, door);
      } catch (RuntimeException e) {
        answer = Pages.told(500, PageWords.SOMETHING_BROKE);
      }
      send(exchange, answer);
    } catch (IOException e) {
      // the browser has left
    } finally {
      answering.decrementAndGet();
    }
  }

  private static Answer answer(HttpExchange exchange, Door door) throws IOException {
    Asked head;
    try {
      head = head(exchange);
    } catch (IllegalArgumentException e) {
      return plain(400, "This cannot be read.");
    }
    Optional<Answer> refused = door.refuse(head);
    if (refused.isPresent()) {
      return refused.get().with("Connection", "close");
    }
    if (!head.isPost()) {
      return door.answer(head);
    }
    int most = most(head);
    byte[] body = exchange.getRequestBody().readNBytes(most + 1);
    if (body.length > most) {
      return plain(413, "This is too much.").with("Connection", "close");
    }
    Asked asked;
    try {
      Optional<String> boundary = boundary(head);
      asked =
          boundary.isPresent()
              ? head.with(Multipart.of(body, boundary.get()))
              : head.with(Asked.fields(new String(body, StandardCharsets.UTF_8)));
    } catch (IllegalArgumentException e) {
      return plain(400, "This cannot be read.");
    }
    return door.answer(asked);
  }

  private static Optional<String> boundary(Asked head) {
    List<String> type = head.all("content-type");
    return type.size() == 1 ? Multipart.boundary(type.get(0)) : Optional.empty();
  }

  /** How much may be sent along: files only where there is a place for one. */
  static int most(Asked head) {
    return head.path().endsWith(LogPages.PLACE) && boundary(head).isPresent()
        ? MOST_LOG_BYTES
        : MOST_BYTES;
  }

  private static Asked head(HttpExchange exchange) {
    URI target = exchange.getRequestURI();
    String path = target.getRawPath();
    if (target.toString().length() > MOST_TARGET
        || target.getRawAuthority() != null
        || path == null
        || !path.startsWith("/")) {
      throw new IllegalArgumentException("no path of ours");
    }
    return Asked.of(
        exchange.getRequestMethod(),
        path,
        Asked.fields(target.getRawQuery()),
        exchange.getRequestHeaders());
  }

  static Answer plain(int status, String sentence) {
    return Answer.of(
        status, "text/plain; charset=utf-8", sentence.getBytes(StandardCharsets.UTF_8));
  }

  private static void send(HttpExchange exchange, Answer answer) throws IOException {
    Seal.HEADERS.forEach(exchange.getResponseHeaders()::set);
    answer.headers().forEach(exchange.getResponseHeaders()::set);
    boolean bare = exchange.getRequestMethod().equals("HEAD") || answer.body().length == 0;
    exchange.sendResponseHeaders(answer.status(), bare ? -1 : answer.body().length);
    if (!bare) {
      exchange.getResponseBody().write(answer.body());
    }
  }

  @Override
  public void close() {
    letFinish();
    server.stop(0);
    threads.shutdownNow();
  }

  /**
   * What is being answered is answered; the server's own way to wait always takes the whole time.
   */
  private void letFinish() {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(LAST_SECONDS);
    try {
      while (answering.get() > 0 && System.nanoTime() < end) {
        Thread.sleep(10);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
