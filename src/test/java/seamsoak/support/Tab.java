package seamsoak.support;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue;
import seamsoak.data.JsonValue.ListValue;
import seamsoak.data.JsonValue.ObjectValue;

/** A window of a headless Chromium that is worked as a person does, through its debugging port. */
public final class Tab implements Screen.Printing {
  private static final Map<String, Integer> KEYS =
      Map.of("Tab", 9, "Enter", 13, "Escape", 27, " ", 32, "ArrowDown", 40, "ArrowUp", 38);

  private final Process process;
  private final List<String> requests = new CopyOnWriteArrayList<>();
  private final Wire wire;

  private Tab(Process process, URI debugger) throws Exception {
    this.process = process;
    this.wire =
        new Wire(
            debugger,
            (event, whole) -> {
              if (event.equals("Network.requestWillBeSent")) {
                requests.add(whole);
              }
            });
    wire.call("Page.enable", Map.of());
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
            if (Wire.text(page, "type").equals("page")) {
              return URI.create(Wire.text(page, "webSocketDebuggerUrl"));
            }
          }
        }
      }
      Thread.sleep(50);
    }
    throw new AssertionError("the browser opened no window");
  }

  /** Makes the window so large; a phone's may be narrower than any window. */
  @Override
  public void size(int width, int height) throws Exception {
    wire.call(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  /** Whether scripts of pages run. */
  public void scripts(boolean run) throws Exception {
    wire.call("Emulation.setScriptExecutionDisabled", Map.of("value", !run));
  }

  @Override
  public void go(String address) throws Exception {
    wire.call("Page.navigate", Map.of("url", address));
    until("document.readyState === 'complete' && location.href !== 'about:blank'");
  }

  @Override
  public String ask(String expression) throws Exception {
    ObjectValue said =
        wire.call(
            "Runtime.evaluate",
            Map.of(
                "expression",
                "(async () => String(await (" + expression + ")))()",
                "awaitPromise",
                true,
                "returnByValue",
                true));
    if (Wire.member(said, "exceptionDetails") != null) {
      throw new IllegalStateException(expression + " threw " + said);
    }
    return Wire.text(Wire.member(said, "result"), "value");
  }

  /** Runs a script in the page, as none of the page's own. */
  public void run(String script) throws Exception {
    wire.call("Runtime.evaluate", Map.of("expression", script));
  }

  @Override
  public void press(String key) throws Exception {
    press(key, 0);
  }

  @Override
  public void pressBack(String key) throws Exception {
    press(key, 8);
  }

  private void press(String key, int modifiers) throws Exception {
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
    wire.call("Input.dispatchKeyEvent", event);
    event.put("type", "keyUp");
    event.remove("text");
    wire.call("Input.dispatchKeyEvent", event);
  }

  @Override
  public void touch(double x, double y) throws Exception {
    for (String type : new String[] {"mousePressed", "mouseReleased"}) {
      Map<String, Object> event = new LinkedHashMap<>();
      event.put("type", type);
      event.put("x", x);
      event.put("y", y);
      event.put("button", "left");
      event.put("clickCount", 1);
      wire.call("Input.dispatchMouseEvent", event);
    }
  }

  @Override
  public void choose(String selector, Path file) throws Exception {
    ObjectValue document =
        (ObjectValue) Wire.member(wire.call("DOM.getDocument", Map.of()), "root");
    double root = ((JsonValue.NumberValue) Wire.member(document, "nodeId")).value();
    ObjectValue found =
        wire.call("DOM.querySelector", Map.of("nodeId", (int) root, "selector", selector));
    double node = ((JsonValue.NumberValue) Wire.member(found, "nodeId")).value();
    wire.call(
        "DOM.setFileInputFiles", Map.of("files", List.of(file.toString()), "nodeId", (int) node));
  }

  /** All that is asked for from now on, whole with what is sent along, as the browser tells it. */
  public List<String> requests() throws Exception {
    wire.call("Network.enable", Map.of());
    return requests;
  }

  /** Whether the network is there. */
  public void network(boolean there) throws Exception {
    wire.call("Network.enable", Map.of());
    wire.call(
        "Network.emulateNetworkConditions",
        Map.of("offline", !there, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
  }

  /** Stops all that a page does, as a phone in a pocket does, or lets it go on. */
  public void frozen(boolean stop) throws Exception {
    wire.call("Page.setWebLifecycleState", Map.of("state", stop ? "frozen" : "active"));
  }

  @Override
  public void type(String text) throws Exception {
    ask("document.activeElement.select && document.activeElement.select()");
    wire.call("Input.insertText", Map.of("text", text));
  }

  @Override
  public byte[] picture() throws Exception {
    return Base64.getDecoder()
        .decode(Wire.text(wire.call("Page.captureScreenshot", Map.of("format", "png")), "data"));
  }

  @Override
  public byte[] paper(double width, double height) throws Exception {
    Map<String, Object> how = Map.of("paperWidth", width, "paperHeight", height);
    return Base64.getDecoder().decode(Wire.text(wire.call("Page.printToPDF", how), "data"));
  }

  @Override
  public void close() throws IOException {
    try {
      wire.goodbye("Browser.close");
      if (!process.waitFor(10, TimeUnit.SECONDS)) {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    wire.close();
  }
}
