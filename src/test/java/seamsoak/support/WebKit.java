package seamsoak.support;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.JsonWriter;

/**
 * A window of WebKit, the engine of many phones, worked through its driver on a screen of its own.
 */
public final class WebKit implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  private final List<Process> processes = new ArrayList<>();
  private final HttpClient client = HttpClient.newHttpClient();
  private final String driver;
  private String session = "";

  private WebKit(int port) {
    this.driver = "http://127.0.0.1:" + port;
  }

  /** Whether all that it takes is there. */
  public static boolean installed() {
    return found("WebKitWebDriver").isPresent()
        && found("Xvfb").isPresent()
        && browser().isPresent();
  }

  private static Optional<Path> found(String program) {
    return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":"))
        .map(dir -> Path.of(dir, program))
        .filter(Files::isExecutable)
        .findFirst();
  }

  private static Optional<Path> browser() {
    try (Stream<Path> files =
        Files.find(Path.of("/usr/lib"), 4, (p, a) -> p.endsWith("MiniBrowser"))) {
      return files.sorted().reduce((first, last) -> last);
    } catch (IOException | java.io.UncheckedIOException none) {
      return Optional.empty();
    }
  }

  public static WebKit open(Path folder, int screen) throws Exception {
    int port;
    try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      port = free.getLocalPort();
    }
    WebKit web = new WebKit(port);
    try {
      web.start(
          folder,
          screen,
          List.of("Xvfb", ":" + screen, "-screen", "0", "800x900x24", "-nolisten", "tcp"));
      web.start(folder, screen, List.of("WebKitWebDriver", "--host=127.0.0.1", "--port=" + port));
      Map<String, Object> options =
          Map.of("binary", browser().orElseThrow().toString(), "args", List.of("--automation"));
      Map<String, Object> wanted =
          Map.of(
              "capabilities", Map.of("alwaysMatch", Map.of("webkitgtk:browserOptions", options)));
      ObjectValue opened = (ObjectValue) web.patiently(() -> web.call("/session", wanted));
      web.session =
          "/session/" + ((JsonValue.TextValue) opened.members().get("sessionId").value()).text();
      return web;
    } catch (Exception e) {
      web.close();
      throw e;
    }
  }

  private void start(Path folder, int screen, List<String> command) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("DISPLAY", ":" + screen);
    builder.environment().put("WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS", "1");
    builder.environment().put("HOME", folder.toString());
    builder.environment().put("XDG_RUNTIME_DIR", folder.toString());
    builder.environment().put("LIBGL_ALWAYS_SOFTWARE", "1");
    processes.add(
        builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start());
  }

  private interface Try {
    JsonValue get() throws Exception;
  }

  private JsonValue patiently(Try what) throws Exception {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (true) {
      try {
        return what.get();
      } catch (IOException | AssertionError notYet) {
        if (System.nanoTime() > end) {
          throw new AssertionError(
              notYet.getMessage() + (session.isEmpty() ? "" : ask("document.body.innerText")),
              notYet);
        }
        Thread.sleep(200);
      }
    }
  }

  private JsonValue call(String path, Map<String, Object> body)
      throws IOException, InterruptedException {
    HttpResponse<String> answer =
        client.send(
            HttpRequest.newBuilder(URI.create(driver + path))
                .timeout(PATIENCE)
                .POST(HttpRequest.BodyPublishers.ofString(JsonWriter.write(body)))
                .build(),
            HttpResponse.BodyHandlers.ofString());
    if (answer.statusCode() != 200) {
      throw new AssertionError(path + " " + answer.body());
    }
    return ((ObjectValue) JsonTree.parse("driver", answer.body())).members().get("value").value();
  }

  public void go(String address) throws Exception {
    call(session + "/url", Map.of("url", address));
  }

  /** What an expression gives, as text. */
  public String ask(String expression) throws Exception {
    JsonValue value =
        call(
            session + "/execute/sync",
            Map.of("script", "return String(" + expression + ")", "args", List.of()));
    return value instanceof JsonValue.TextValue text ? text.text() : "";
  }

  /** Waits until an expression is true. */
  public void until(String expression) throws Exception {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < end) {
      try {
        if (ask(expression).equals("true")) {
          return;
        }
      } catch (AssertionError between) {
        // one page has left, and the next is not there yet
      }
      Thread.sleep(100);
    }
    throw new AssertionError("never: " + expression + "\n" + ask("document.body.innerText"));
  }

  private String element(String selector) throws Exception {
    ObjectValue found =
        (ObjectValue)
            call(session + "/element", Map.of("using", "css selector", "value", selector));
    return ((JsonValue.TextValue) found.members().values().iterator().next().value()).text();
  }

  /** Taps what is there, once it can be. */
  public void tap(String selector) throws Exception {
    patiently(() -> call(session + "/element/" + element(selector) + "/click", Map.of()));
  }

  public void type(String selector, String text) throws Exception {
    Map<String, Object> keys = new LinkedHashMap<>();
    keys.put("text", text);
    call(session + "/element/" + element(selector) + "/value", keys);
  }

  @Override
  public void close() {
    try {
      if (!session.isEmpty()) {
        client.send(
            HttpRequest.newBuilder(URI.create(driver + session))
                .timeout(Duration.ofSeconds(10))
                .DELETE()
                .build(),
            HttpResponse.BodyHandlers.discarding());
      }
    } catch (IOException gone) {
      // then its processes go
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    for (int i = processes.size() - 1; i >= 0; i--) {
      List<ProcessHandle> all = new ArrayList<>(processes.get(i).descendants().toList());
      all.add(processes.get(i).toHandle());
      all.forEach(ProcessHandle::destroy);
      processes.get(i).onExit().completeOnTimeout(null, 5, TimeUnit.SECONDS).join();
      all.forEach(ProcessHandle::destroyForcibly);
    }
  }
}
