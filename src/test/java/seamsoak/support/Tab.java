package seamsoak.support;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue;
import seamsoak.data.JsonValue.ListValue;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.JsonWriter;

/** A window of a headless Chromium that is worked as a person does, through its debugging port. */
public final class Tab implements AutoCloseable {
  private static final long PATIENCE_SECONDS = 60;
  private static final Map<String, Integer> KEYS =
      Map.of("Tab", 9, "Enter", 13, "Escape", 27, " ", 32, "ArrowDown", 40, "ArrowUp", 38);

  private final Process process;
  private final Map<Integer, CompletableFuture<ObjectValue>> waiting = new ConcurrentHashMap<>();
  private final List<String> requests = new CopyOnWriteArrayList<>();
  private final AtomicInteger last = new AtomicInteger();
  private final WebSocket socket;
  private int presses;

  private Tab(Process process, URI debugger) throws Exception {
    this.process = process;
    this.socket =
        HttpClient.newHttpClient()
            .newWebSocketBuilder()
            .buildAsync(debugger, new Ear())
            .get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    call("Page.enable", Map.of());
  }

  /** The browser, where there is one. */
  public static Optional<Path> installed() {
    return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":"))
        .flatMap(dir -> Stream.of("chromium", "chromium-browser").map(n -> Path.of(dir, n)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** Opens an empty one. */
  public static Tab open(Path program, Path folder, int width, int height) throws Exception {
    Path profile = folder.resolve("tab-profile");
    Process process =
        new ProcessBuilder(
                program.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--hide-scrollbars",
                "--remote-debugging-port=0",
                "--user-data-dir=" + profile,
                "--window-size=" + width + "," + height,
                "about:blank")
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      Tab tab = new Tab(process, debugger(profile.resolve("DevToolsActivePort")));
      tab.size(width, height);
      return tab;
    } catch (Exception e) {
      process.destroyForcibly();
      throw e;
    }
  }

  private static URI debugger(Path portFile) throws Exception {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    while (System.nanoTime() < end) {
      if (Files.exists(portFile) && Files.readString(portFile).contains("\n")) {
        String port = Files.readString(portFile).lines().findFirst().orElseThrow();
        HttpResponse<String> list =
            HttpClient.newHttpClient()
                .send(
                    HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/json/list"))
                        .build(),
                    HttpResponse.BodyHandlers.ofString());
        if (JsonTree.parse("list", list.body()) instanceof ListValue pages) {
          for (JsonValue page : pages.items()) {
            if (text(page, "type").equals("page")) {
              return URI.create(text(page, "webSocketDebuggerUrl"));
            }
          }
        }
      }
      Thread.sleep(50);
    }
    throw new AssertionError("the browser opened no window");
  }

  private final class Ear implements WebSocket.Listener {
    private final StringBuilder heard = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean end) {
      heard.append(data);
      if (end) {
        ObjectValue said = (ObjectValue) JsonTree.parse("browser", heard.toString());
        if (text(said, "method").equals("Network.requestWillBeSent")) {
          requests.add(heard.toString());
        }
        heard.setLength(0);
        if (said.members().containsKey("id")) {
          int id = (int) ((JsonValue.NumberValue) said.members().get("id").value()).value();
          Optional.ofNullable(waiting.remove(id)).ifPresent(w -> w.complete(said));
        }
      }
      from.request(1);
      return null;
    }
  }

  private ObjectValue call(String method, Map<String, Object> params) throws Exception {
    int id = last.incrementAndGet();
    CompletableFuture<ObjectValue> answer = new CompletableFuture<>();
    waiting.put(id, answer);
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("id", id);
    all.put("method", method);
    all.put("params", params);
    socket.sendText(JsonWriter.write(all), true).get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    ObjectValue said = answer.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    if (!(member(said, "result") instanceof ObjectValue result)) {
      throw new AssertionError(method + ": " + said);
    }
    return result;
  }

  private static JsonValue member(JsonValue object, String key) {
    JsonValue.Member member = ((ObjectValue) object).members().get(key);
    return member == null ? null : member.value();
  }

  private static String text(JsonValue object, String key) {
    JsonValue value = member(object, key);
    return value instanceof JsonValue.TextValue text ? text.text() : "";
  }

  /** Makes the window so large; a phone's may be narrower than any window. */
  public void size(int width, int height) throws Exception {
    call(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  /** Whether scripts of pages run. */
  public void scripts(boolean run) throws Exception {
    call("Emulation.setScriptExecutionDisabled", Map.of("value", !run));
  }

  public void go(String address) throws Exception {
    call("Page.navigate", Map.of("url", address));
    until("document.readyState === 'complete' && location.href !== 'about:blank'");
  }

  /** What an expression gives, as text; promises are waited for. */
  public String ask(String expression) throws Exception {
    ObjectValue said =
        call(
            "Runtime.evaluate",
            Map.of(
                "expression",
                "(async () => String(await (" + expression + ")))()",
                "awaitPromise",
                true,
                "returnByValue",
                true));
    if (member(said, "exceptionDetails") != null) {
      throw new IllegalStateException(expression + " threw " + said);
    }
    return text(member(said, "result"), "value");
  }

  /** Runs a script in the page, as none of the page's own. */
  public void run(String script) throws Exception {
    call("Runtime.evaluate", Map.of("expression", script));
  }

  /** Waits until an expression is true. */
  public void until(String expression) throws Exception {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    while (System.nanoTime() < end) {
      try {
        if (ask(expression).equals("true")) {
          return;
        }
      } catch (IllegalStateException | AssertionError between) {
        // one page has left, and the next is not there yet
      }
      Thread.sleep(30);
    }
    throw new AssertionError("never: " + expression + "\n" + ask("document.body.innerText"));
  }

  /** How many keys were pressed and texts typed. */
  public int presses() {
    return presses;
  }

  /** Presses a key such as {@code Tab}. */
  public void press(String key) throws Exception {
    press(key, 0);
  }

  /** With the shift key held. */
  public void pressBack(String key) throws Exception {
    press(key, 8);
  }

  private void press(String key, int modifiers) throws Exception {
    presses++;
    Map<String, Object> event = new LinkedHashMap<>();
    event.put("type", "keyDown");
    event.put("key", key);
    event.put("code", key.equals(" ") ? "Space" : key);
    event.put("windowsVirtualKeyCode", KEYS.get(key));
    event.put("modifiers", modifiers);
    if (key.equals("Enter")) {
      event.put("text", "\r");
    } else if (key.equals(" ")) {
      event.put("text", " ");
    }
    call("Input.dispatchKeyEvent", event);
    event.put("type", "keyUp");
    event.remove("text");
    call("Input.dispatchKeyEvent", event);
  }

  /** Taps the middle of what a selector finds, once it has been brought into view. */
  public void tap(String selector) throws Exception {
    tap(selector, 0.5, 0.5);
  }

  /** The same at a place in it, from its upper left corner, of its size. */
  public void tap(String selector, double across, double down) throws Exception {
    String found = "document.querySelector(" + JsonWriter.write(selector).strip() + ")";
    until(found + " !== null");
    ask(found + ".scrollIntoView({ block: 'center' })");
    String at =
        "(r => (r.left + r.width * %s) + ' ' + (r.top + r.height * %s))".formatted(across, down);
    String[] middle = ask(at + "(" + found + ".getBoundingClientRect())").split(" ");
    for (String type : new String[] {"mousePressed", "mouseReleased"}) {
      Map<String, Object> event = new LinkedHashMap<>();
      event.put("type", type);
      event.put("x", Double.valueOf(middle[0]));
      event.put("y", Double.valueOf(middle[1]));
      event.put("button", "left");
      event.put("clickCount", 1);
      call("Input.dispatchMouseEvent", event);
    }
  }

  /** Chooses a file, as the system's own window would. */
  public void choose(String selector, Path file) throws Exception {
    ObjectValue document = (ObjectValue) member(call("DOM.getDocument", Map.of()), "root");
    double root = ((JsonValue.NumberValue) member(document, "nodeId")).value();
    ObjectValue found =
        call("DOM.querySelector", Map.of("nodeId", (int) root, "selector", selector));
    double node = ((JsonValue.NumberValue) member(found, "nodeId")).value();
    call("DOM.setFileInputFiles", Map.of("files", List.of(file.toString()), "nodeId", (int) node));
  }

  /** All that is asked for from now on, whole with what is sent along, as the browser tells it. */
  public List<String> requests() throws Exception {
    call("Network.enable", Map.of());
    return requests;
  }

  /** Whether the network is there. */
  public void network(boolean there) throws Exception {
    call("Network.enable", Map.of());
    call(
        "Network.emulateNetworkConditions",
        Map.of("offline", !there, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
  }

  /** Stops all that a page does, as a phone in a pocket does, or lets it go on. */
  public void frozen(boolean stop) throws Exception {
    call("Page.setWebLifecycleState", Map.of("state", stop ? "frozen" : "active"));
  }

  /** Types over whatever the field with the focus holds. */
  public void type(String text) throws Exception {
    presses++;
    ask("document.activeElement.select && document.activeElement.select()");
    call("Input.insertText", Map.of("text", text));
  }

  public byte[] picture() throws Exception {
    return Base64.getDecoder()
        .decode(text(call("Page.captureScreenshot", Map.of("format", "png")), "data"));
  }

  /** The page on paper, of the size that it asks for. */
  public byte[] paper() throws Exception {
    return paper(Map.of("preferCSSPageSize", true, "printBackground", true));
  }

  /** The same on paper of a size, in inches. */
  public byte[] paper(double width, double height) throws Exception {
    return paper(Map.of("paperWidth", width, "paperHeight", height));
  }

  private byte[] paper(Map<String, Object> how) throws Exception {
    return Base64.getDecoder().decode(text(call("Page.printToPDF", how), "data"));
  }

  @Override
  public void close() throws IOException {
    try {
      socket.sendText("{\"id\": 0, \"method\": \"Browser.close\"}", true);
      if (!process.waitFor(10, TimeUnit.SECONDS)) {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    socket.abort();
  }
}
