package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import seamsoak.support.Screen;

/** A page of somebody else, open in the browser in which the smith's is. */
final class ForeignPage implements AutoCloseable {
  private static final String HTML =
      """
      <!DOCTYPE html><title>evil</title>
      <iframe id="f" name="f"></iframe>
      <form id="a" target="f" method="post" action="%1$s/end"></form>
      <form id="b" target="f" method="post" action="%1$s%2$s/drop"></form>
      <img id="i" src="%1$s%2$s/billet.json">
      <script>
      document.getElementById('a').submit();
      document.getElementById('b').submit();
      const tries = ['%1$s/', '%1$s%2$s/billet.json'].map(u => fetch(u, {credentials: 'include'})
        .then(r => 'read ' + r.status, () => 'refused'));
      tries.push(fetch('%1$s%2$s/drop', {method: 'POST', mode: 'no-cors', credentials: 'include'})
        .then(r => r.type, () => 'refused'));
      Promise.all(tries).then(t => document.title = t.join());
      </script>
      """;

  private final HttpServer server;
  private final List<String> cookies = new CopyOnWriteArrayList<>();

  /** Served from an address of this machine, at a port of its own. */
  ForeignPage(String host, String target, String desk) throws IOException {
    server = HttpServer.create(new InetSocketAddress(InetAddress.getByName(host), 0), 0);
    byte[] bytes = HTML.formatted(target, desk).getBytes(StandardCharsets.UTF_8);
    server.createContext(
        "/",
        e -> {
          cookies.addAll(e.getRequestHeaders().getOrDefault("Cookie", List.of()));
          e.getResponseHeaders().set("Content-Type", "text/html");
          e.sendResponseHeaders(200, bytes.length);
          e.getResponseBody().write(bytes);
          e.close();
        });
    server.start();
  }

  /** It is looked at, and all that it tries fails. */
  void isKeptOut(Screen screen) throws Exception {
    screen.go(
        "http:/" + server.getAddress().getAddress() + ":" + server.getAddress().getPort() + "/");
    screen.until("document.title.includes(',')");
    String tried = screen.ask("document.title");
    assertTrue(tried.startsWith("refused,refused,"), tried);
    Thread.sleep(500);
  }

  /** What it was sent of cookies that are not its own. */
  List<String> cookies() {
    return cookies;
  }

  @Override
  public void close() {
    server.stop(0);
  }
}
