package seamsoak.support;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue;
import seamsoak.data.JsonValue.NumberValue;
import seamsoak.data.JsonValue.ObjectValue;

/** A window of a headless Firefox, worked through WebDriver BiDi on its remote port. */
public final class Firefox implements Screen.Printing, ByGestures {
  private static final double CM_PER_INCH = 2.54;

  /**
   * Nothing but this machine is spoken to: what is meant for others goes to a port that is none.
   */
  private static final String SETTINGS =
      """
      user_pref("network.proxy.type", 1);
      user_pref("network.proxy.http", "127.0.0.1");
      user_pref("network.proxy.http_port", 9);
      user_pref("network.proxy.ssl", "127.0.0.1");
      user_pref("network.proxy.ssl_port", 9);
      user_pref("browser.shell.checkDefaultBrowser", false);
      user_pref("browser.startup.page", 0);
      user_pref("datareporting.policy.dataSubmissionEnabled", false);
      user_pref("app.update.auto", false);
      user_pref("dom.ipc.processCount", 1);
      user_pref("dom.ipc.processPrelaunch.enabled", false);
      """;

  private final Process process;
  private final Wire wire;
  private final String context;

  private Firefox(Process process, URI address) throws Exception {
    this.process = process;
    this.wire = new Wire(address, (event, whole) -> {});
    wire.call("session.new", Map.of("capabilities", Map.of()));
    // in the first window the keys would go to where addresses are typed
    this.context = Wire.text(wire.call("browsingContext.create", Map.of("type", "tab")), "context");
  }

  /** The browser, where there is one. */
  public static Optional<Path> installed() {
    return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":"))
        .flatMap(dir -> Stream.of("firefox-esr", "firefox").map(n -> Path.of(dir, n)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** Opens an empty one. */
  public static Firefox open(Path program, Path folder) throws Exception {
    Path profile = Files.createDirectory(folder.resolve("profile"));
    Files.writeString(profile.resolve("user.js"), SETTINGS);
    ProcessBuilder builder =
        new ProcessBuilder(
            program.toString(),
            "--headless",
            "--no-remote",
            "--remote-debugging-port=0",
            "--profile",
            profile.toString(),
            "about:blank");
    builder.environment().put("HOME", folder.toString());
    Process process =
        builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
    try {
      return new Firefox(process, address(profile.resolve("WebDriverBiDiServer.json")));
    } catch (Exception | AssertionError e) {
      end(process);
      throw e;
    }
  }

  private static URI address(Path told) throws Exception {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    while (System.nanoTime() < end) {
      if (Files.exists(told) && Files.readString(told).contains("}")) {
        JsonValue port = Wire.member(JsonTree.parse("port", Files.readString(told)), "ws_port");
        return URI.create("ws://127.0.0.1:" + (int) ((NumberValue) port).value() + "/session");
      }
      Thread.sleep(50);
    }
    throw new AssertionError("the browser opened no port");
  }

  private ObjectValue call(String method, Map<String, ?> more) throws Exception {
    Map<String, Object> params = new LinkedHashMap<>(more);
    params.put("context", context);
    return wire.call(method, params);
  }

  @Override
  public void size(int width, int height) throws Exception {
    call(
        "browsingContext.setViewport",
        Map.of("viewport", Map.of("width", width, "height", height)));
  }

  @Override
  public void go(String address) throws Exception {
    ask("window.left = true");
    // to wait by the driver's own word would end at a frame in the page that is refused
    call("browsingContext.navigate", Map.of("url", address, "wait", "none"));
    until("!window.left && document.readyState === 'complete'");
  }

  private ObjectValue evaluated(String expression) throws Exception {
    ObjectValue said =
        wire.call(
            "script.evaluate",
            Map.of(
                "expression",
                expression,
                "target",
                Map.of("context", context),
                "awaitPromise",
                true,
                "userActivation",
                false));
    if (!(Wire.member(said, "result") instanceof ObjectValue result)) {
      throw new IllegalStateException(expression + " threw " + said);
    }
    return result;
  }

  @Override
  public String ask(String expression) throws Exception {
    return Wire.text(evaluated("(async () => String(await (" + expression + ")))()"), "value");
  }

  @Override
  public void act(Map<String, Object> actions) throws Exception {
    call("input.performActions", actions);
  }

  @Override
  public void choose(String selector, Path file) throws Exception {
    ObjectValue found = evaluated("document.querySelector('" + selector + "')");
    call(
        "input.setFiles",
        Map.of(
            "element",
            Map.of("sharedId", Wire.text(found, "sharedId")),
            "files",
            List.of(file.toString())));
  }

  @Override
  public byte[] picture() throws Exception {
    return bytes(call("browsingContext.captureScreenshot", Map.of()));
  }

  @Override
  public byte[] paper(double width, double height) throws Exception {
    return bytes(
        call(
            "browsingContext.print",
            Map.of("page", Map.of("width", width * CM_PER_INCH, "height", height * CM_PER_INCH))));
  }

  private static byte[] bytes(ObjectValue said) {
    return Base64.getDecoder().decode(Wire.text(said, "data"));
  }

  @Override
  public void close() {
    wire.goodbye("browser.close");
    end(process);
    wire.close();
  }

  private static void end(Process process) {
    try {
      process.waitFor(10, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    List<ProcessHandle> all = new ArrayList<>(process.descendants().toList());
    all.add(process.toHandle());
    all.forEach(ProcessHandle::destroyForcibly);
  }
}
