package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.support.Ran;
import seamsoak.support.Sha256;

/**
 * The folder that runs without Java, moved to another place and started with an empty environment,
 * as the image profile makes and tries it.
 */
@Timeout(300)
class ImageIT {
  private static final Path MADE = Path.of("target/image");
  private static final String DEMO = "alloy-data/billets/mosaic.json";

  @TempDir private static Path elsewhere;

  private static Path folder;

  @BeforeAll
  static void moved() throws Exception {
    folder = elsewhere.resolve("moved here/seamsoak");
    Files.createDirectories(folder.getParent());
    try (Stream<Path> all = Files.list(MADE)) {
      Path packed = all.filter(f -> f.toString().endsWith(".tar.gz")).findFirst().orElseThrow();
      Process tar =
          new ProcessBuilder("tar", "-xzf", packed.toString(), "-C", folder.getParent().toString())
              .inheritIO()
              .start();
      assertEquals(0, tar.waitFor());
    }
  }

  private record Said(int code, String out, String err) {}

  private static ProcessBuilder builder(Path in, Map<String, String> environment, String... args) {
    List<String> command = new ArrayList<>();
    command.add(folder.resolve("bin/seamsoak").toString());
    command.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(command).directory(in.toFile());
    builder.environment().clear();
    builder.environment().putAll(environment);
    return builder;
  }

  private static Said run(Map<String, String> environment, String... args) throws Exception {
    Path out = Files.createTempFile(elsewhere, "said", ".out");
    Path err = Files.createTempFile(elsewhere, "said", ".err");
    Process process =
        builder(folder, environment, args)
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    assertTrue(process.waitFor(200, TimeUnit.SECONDS), "it ends");
    return new Said(process.exitValue(), Files.readString(out), Files.readString(err));
  }

  private static Said run(String... args) throws Exception {
    return run(Map.of(), args);
  }

  /** The same words as from the jar, but for how the program is called. */
  @Test
  void theMainJobIsAnsweredAsByTheJar() throws Exception {
    Said said = run("soak", DEMO, "--samples", "4", "--units", "metric");
    assertEquals("", said.err());
    assertEquals(0, said.code());
    Ran jar = Ran.run("soak", DEMO, "--samples", "4", "--units", "metric");
    assertEquals(jar.out().replace(Program.CALL, "seamsoak"), said.out());
  }

  @Test
  void chartsAndReportAreTheSameBytes() throws Exception {
    Said said = run("plan", DEMO, "--samples", "2", "--out", "charts");
    assertEquals("", said.err());
    assertEquals(0, said.code());
    Path jar = elsewhere.resolve("by the jar");
    Ran.run("plan", DEMO, "--samples", "2", "--out", jar.toString());
    for (String file : List.of("schedule.svg", "soak.svg", "seam.svg", "kiln.csv")) {
      assertArrayEquals(
          Files.readAllBytes(jar.resolve(file)),
          Files.readAllBytes(folder.resolve("charts").resolve(file)),
          file);
    }
  }

  @Test
  void exitCodesAndStreams() throws Exception {
    Said help = run("--help");
    assertEquals(0, help.code());
    assertTrue(help.out().contains("Usage: seamsoak COMMAND"), help.out());
    assertFalse(help.out().contains("java -jar"), help.out());
    assertTrue(run("--version").out().matches("seamsoak [0-9][0-9.]+\n"), run("--version").out());
    Said wrong = run("soak");
    assertEquals(2, wrong.code());
    assertEquals("", wrong.out());
    Said none = run("soak", "nothing.json");
    assertEquals(3, none.code());
    assertTrue(none.err().startsWith("nothing.json"), none.err());
    assertFalse(run("completion").out().contains("\nseamsoak()"), "the name is there already");
  }

  /** Java refuses to start with this option where the archive does not fit it. */
  @Test
  void theClassesLieReadyWhereverTheFolderLies() throws Exception {
    Said said = run(Map.of("JAVA_TOOL_OPTIONS", "-Xshare:on"), "steels", "1084");
    assertEquals(0, said.code(), said.err());
    byte[] archive = Files.readAllBytes(archive());
    assertTrue(
        new String(archive, StandardCharsets.ISO_8859_1).contains("seamsoak/cli/Main"),
        "our own classes are in it");
  }

  private static Path archive() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(f -> f.endsWith("classes.jsa")).findFirst().orElseThrow();
    }
  }

  @Test
  void thePageOpensAndEnds() throws Exception {
    Map<String, String> state =
        Map.of("JAVA_TOOL_OPTIONS", "-Dseamsoak.state=" + elsewhere.resolve("state"));
    // the path has a space in it, which this variable would part
    assertFalse(elsewhere.toString().contains(" "));
    Process page = builder(folder, state, "page", "--no-browser").start();
    try (BufferedReader out = page.inputReader(StandardCharsets.UTF_8)) {
      String link = out.readLine().replaceFirst("The page: ", "");
      HttpResponse<String> in = get(link, "");
      assertEquals(303, in.statusCode());
      String cookie = in.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
      HttpResponse<String> shelf = get(link.replaceFirst("/in.*", "/"), cookie);
      assertEquals(200, shelf.statusCode());
      assertTrue(shelf.body().contains("Seamsoak"), shelf.body());
    } finally {
      page.destroy();
      assertTrue(page.waitFor(30, TimeUnit.SECONDS), "Ctrl-C ends it");
    }
  }

  private static HttpResponse<String> get(String address, String cookie) throws Exception {
    HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address));
    return HttpClient.newHttpClient()
        .send(
            (cookie.isEmpty() ? request : request.header("Cookie", cookie)).build(),
            HttpResponse.BodyHandlers.ofString());
  }

  @Test
  void licensesTravelAlongAndSumsAreRight() throws Exception {
    for (String file : List.of("LICENSE", "NOTICE", "licenses/LGPL-2.1.txt")) {
      assertTrue(Files.size(folder.resolve(file)) > 0, file);
    }
    List<String> sums = Files.readAllLines(MADE.resolve("SHA256SUMS"));
    assertTrue(sums.stream().anyMatch(s -> s.endsWith(".cdx.json")), sums.toString());
    for (String line : sums) {
      assertEquals(line, Sha256.line(MADE.resolve(line.split("  ")[1])));
    }
  }
}
