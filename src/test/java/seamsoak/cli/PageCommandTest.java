package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.support.Child;
import seamsoak.support.Ran;

/** The command that opens the page: it stays until it is ended. */
@Tag("slow")
@Timeout(120)
class PageCommandTest {
  private static final Pattern LINK = Pattern.compile("http://127\\.[0-9.]+:[0-9]+/in\\?t=[\\w-]+");

  @TempDir private Path folder;

  static List<String> examples() {
    return Ran.run("page", "--help")
        .out()
        .lines()
        .map(String::strip)
        .filter(l -> l.startsWith(Program.CALL + " page"))
        .filter(l -> !l.contains("["))
        .map(l -> l.substring(Program.CALL.length() + 1))
        .distinct()
        .toList();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleOpensThePage(String example) throws Exception {
    Files.createDirectory(folder.resolve("my-billets"));
    Path billets = Files.createDirectories(folder.resolve("alloy-data/billets"));
    Files.copy(Path.of("alloy-data/billets/mosaic.json"), billets.resolve("mosaic.json"));
    List<String> args = new ArrayList<>(List.of(example.split(" ")));
    args.add("--no-browser");
    opens(args.stream().distinct().toList());
  }

  @Test
  void asJsonTooWithNothingElse() throws Exception {
    String said = opens(List.of("page", "--no-browser", "--json"));
    assertTrue(said.startsWith("{") && said.endsWith("}\n"), said);
    assertTrue(said.contains("\"command\" : \"page\""), said);
  }

  /** Without a word the page is what is meant, where somebody watches. */
  @Test
  void noArgumentsOnATerminalOpenThePage() throws Exception {
    System.setProperty("seamsoak.state", folder.resolve("state").toString());
    StringWriter out = new StringWriter();
    Thread run =
        new Thread(
            () ->
                Commands.run(
                    new Terminal(true, Optional::empty),
                    new PrintWriter(out),
                    new PrintWriter(new StringWriter())));
    run.start();
    try {
      for (int i = 0; i < 300 && !out.toString().contains("Ctrl-C"); i++) {
        Thread.sleep(100);
      }
      assertTrue(out.toString().startsWith("The page: http://127."), out.toString());
    } finally {
      run.interrupt();
      run.join(30_000);
      System.clearProperty("seamsoak.state");
    }
  }

  private Child start(List<String> args) throws IOException {
    return Child.start(
        folder, List.of("-Dseamsoak.state=" + folder.resolve("state")), "seamsoak.cli.Main", args);
  }

  /** Runs it until its link was opened; what it said. */
  private String opens(List<String> args) throws Exception {
    Child child = start(args);
    try {
      String link = link(child);
      HttpResponse<String> in = get(link, "");
      assertEquals(303, in.statusCode());
      String cookie = in.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
      HttpResponse<String> page = get(link.replaceFirst("/in.*", "/"), cookie);
      if (page.statusCode() == 303) { // to the billet that it was opened with
        String desk = page.headers().firstValue("Location").orElseThrow();
        page = get(link.replaceFirst("/in.*", desk), cookie);
      }
      assertEquals(200, page.statusCode());
      assertEquals("", child.said());
      return Files.readString(child.out());
    } finally {
      child.process().destroy();
      assertTrue(child.process().waitFor(30, TimeUnit.SECONDS), "Ctrl-C ends it");
    }
  }

  /** However soon after a change it is told to end, the change is kept. */
  @Test
  void whatWasChangedAMomentAgoOutlivesTheEnd() throws Exception {
    List<String> args = List.of("page", "--no-browser");
    Child child = start(args);
    String link = link(child);
    String address = link.replaceFirst("/in.*", "");
    String cookie =
        get(link, "").headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
    HttpRequest begin =
        HttpRequest.newBuilder(URI.create(address + "/new"))
            .header("Cookie", cookie)
            .header("Origin", address)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString("pattern=three-layers&name=mine"))
            .build();
    HttpClient.newHttpClient().send(begin, HttpResponse.BodyHandlers.discarding());
    child.process().destroy();
    assertTrue(child.process().waitFor(30, TimeUnit.SECONDS));
    try (Stream<Path> kept = Files.walk(folder)) {
      assertEquals(
          1,
          kept.filter(f -> f.getParent().endsWith("drafts"))
              .filter(f -> f.toString().endsWith(".json"))
              .count());
    }
  }

  private static String link(Child child) throws IOException, InterruptedException {
    for (int i = 0; i < 600; i++) {
      Matcher link = LINK.matcher(Files.readString(child.out()));
      if (link.find()) {
        return link.group();
      }
      assertTrue(child.process().isAlive(), child.said());
      Thread.sleep(100);
    }
    throw new AssertionError("no link: " + child.said());
  }

  private static HttpResponse<String> get(String address, String cookie) throws Exception {
    HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address));
    if (!cookie.isEmpty()) {
      request.header("Cookie", cookie);
    }
    return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  @Test
  void whatIsWrongIsSaidAndNothingOpens() {
    Ran port = Ran.run("page", "--port", "70000", "--no-browser");
    assertEquals(2, port.code());
    assertTrue(port.err().contains("--port: '70000' is no port"), port.err());
    Ran gone = Ran.run("page", "--folder", folder.resolve("none").toString(), "--no-browser");
    assertEquals(3, gone.code());
    assertTrue(gone.err().contains("no such folder"), gone.err());
    assertEquals("", gone.out());
  }
}
