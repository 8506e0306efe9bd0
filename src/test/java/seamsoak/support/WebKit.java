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
import java.util.Base64;
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
public final class WebKit implements ByGestures {
  private static final Duration PATIENCE = Duration.ofSeconds(PATIENCE_SECONDS);

  /** Without it the row of buttons above a page keeps the window wider than a phone. */
  private static final String NARROW = "entry, button { font-size: 1px; padding: 0; }\n";

  /** Of the page, and of what the window has around it. */
  private static final String SIZES =
      "[innerWidth, innerHeight, outerWidth - innerWidth, outerHeight - innerHeight].join(' ')";

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

  public static WebKit open(Path folder) throws Exception {
    int port;
    try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      port = free.getLocalPort();
    }
    Path toolkit = Files.createDirectories(folder.resolve(".config/gtk-3.0"));
    Files.writeString(toolkit.resolve("gtk.css"), NARROW);
    WebKit web = new WebKit(port);
    try {
      String display = web.display(folder);
      web.start(folder, display, List.of("WebKitWebDriver", "--host=127.0.0.1", "--port=" + port));
      Map<String, Object> options =
          Map.of("binary", browser().orElseThrow().toString(), "args", List.of("--automation"));
      Map<String, Object> wanted =
          Map.of(
              "capabilities", Map.of("alwaysMatch", Map.of("webkitgtk:browserOptions", options)));
      ObjectValue opened = (ObjectValue) web.opened(wanted);
      web.session =
          "/session/" + ((JsonValue.TextValue) opened.members().get("sessionId").value()).text();
      return web;
    } catch (Exception e) {
      web.close();
      throw e;
    }
  }

  /** A screen of its own, the first that is free. */
  private String display(Path folder) throws IOException {
    ProcessBuilder builder =
        new ProcessBuilder(
            "Xvfb", "-displayfd", "1", "-screen", "0", "1400x1000x24", "-nolisten", "tcp");
    builder.environment().put("HOME", folder.toString());
    Process process = builder.redirectError(ProcessBuilder.Redirect.DISCARD).start();
    processes.add(process);
    return ":" + process.inputReader().readLine();
  }

  private void start(Path folder, String display, List<String> command) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("DISPLAY", display);
    builder.environment().put("WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS", "1");
    builder.environment().put("HOME", folder.toString());
    builder.environment().put("XDG_RUNTIME_DIR", folder.toString());
    builder.environment().put("LIBGL_ALWAYS_SOFTWARE", "1");
    processes.add(
        builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start());
  }

  /** The driver takes its time to listen. */
  private JsonValue opened(Map<String, ?> wanted) throws Exception {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (true) {
      try {
        return call("/session", wanted);
      } catch (IOException | AssertionError notYet) {
        if (System.nanoTime() > end) {
          throw notYet;
        }
        Thread.sleep(200);
      }
    }
  }

  private JsonValue call(String path, Map<String, ?> body) throws Exception {
    return send(path, "POST", JsonWriter.write(body));
  }

  private JsonValue get(String path) throws Exception {
    return send(path, "GET", "");
  }

  private JsonValue send(String path, String method, String body) throws Exception {
    HttpResponse<String> answer =
        client.send(
            HttpRequest.newBuilder(URI.create(driver + path))
                .timeout(PATIENCE)
                .method(
                    method,
                    body.isEmpty()
                        ? HttpRequest.BodyPublishers.noBody()
                        : HttpRequest.BodyPublishers.ofString(body))
                .build(),
            HttpResponse.BodyHandlers.ofString());
    if (answer.statusCode() != 200) {
      throw new AssertionError(path + " " + answer.body());
    }
    return ((ObjectValue) JsonTree.parse("driver", answer.body())).members().get("value").value();
  }

  @Override
  public void size(int width, int height) throws Exception {
    String wanted = width + " " + height;
    long end = System.nanoTime() + PATIENCE.toNanos();
    String[] now = ask(SIZES).split(" ");
    while (!wanted.equals(now[0] + " " + now[1])) {
      if (System.nanoTime() > end) {
        throw new AssertionError("no window of " + wanted + ": " + String.join(" ", now));
      }
      // what there is around the page is right only once the window stands still
      int wider = width + Integer.parseInt(now[2]);
      int higher = height + Integer.parseInt(now[3]);
      call(session + "/window/rect", Map.of("width", wider, "height", higher));
      Thread.sleep(200);
      now = ask(SIZES).split(" ");
    }
  }

  @Override
  public void go(String address) throws Exception {
    call(session + "/url", Map.of("url", address));
  }

  @Override
  public String ask(String expression) throws Exception {
    JsonValue value =
        call(
            session + "/execute/sync",
            Map.of(
                "script",
                "return (async () => String(await (" + expression + ")))()",
                "args",
                List.of()));
    return value instanceof JsonValue.TextValue text ? text.text() : "";
  }

  private String element(String selector) throws Exception {
    ObjectValue found =
        (ObjectValue)
            call(session + "/element", Map.of("using", "css selector", "value", selector));
    return ((JsonValue.TextValue) found.members().values().iterator().next().value()).text();
  }

  @Override
  public void act(Map<String, Object> actions) throws Exception {
    call(session + "/actions", actions);
  }

  @Override
  public void choose(String selector, Path file) throws Exception {
    call(session + "/element/" + element(selector) + "/value", Map.of("text", file.toString()));
  }

  @Override
  public byte[] picture() throws Exception {
    JsonValue value = get(session + "/screenshot");
    return Base64.getDecoder().decode(((JsonValue.TextValue) value).text());
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
