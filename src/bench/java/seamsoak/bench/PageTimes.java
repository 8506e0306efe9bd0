package seamsoak.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What the page takes by the clock, from a command that starts it, as a browser asks: medians. Given
 * that command and how often.
 */
final class PageTimes {
  private static final Pattern REV = Pattern.compile("name=\"rev\" value=\"([0-9]+)\"");
  private static final Pattern STAGE = Pattern.compile("data-stage=\"([A-Z]+)\"");
  private static final Map<String, List<Double>> TOOK = new TreeMap<>();

  private final HttpClient client =
      HttpClient.newBuilder()
          .followRedirects(HttpClient.Redirect.ALWAYS)
          .cookieHandler(new CookieManager())
          .build();
  private final URI page;

  private PageTimes(URI page) {
    this.page = page;
  }

  public static void main(String[] args) throws Exception {
    int times = Integer.parseInt(args[0]);
    List<String> command = new ArrayList<>(List.of(args).subList(1, args.length));
    Path folder = Files.createTempDirectory("page-times");
    command.addAll(List.of("page", "--no-browser", "--folder", folder.toString()));
    for (int i = 0; i < 5; i++) {
      started(command, folder, 0);
    }
    started(command, folder, times);
    TOOK.forEach(
        (what, all) -> {
          List<Double> sorted = all.stream().sorted().toList();
          System.out.printf(
              Locale.ROOT,
              "| %s | %d | %.3f | %.3f |%n",
              what,
              all.size(),
              sorted.get(sorted.size() / 2),
              sorted.get(sorted.size() - 1));
        });
  }

  private static void started(List<String> command, Path folder, int edits) throws Exception {
    long start = System.nanoTime();
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("XDG_STATE_HOME", folder.resolve("state").toString());
    Process process = builder.redirectError(ProcessBuilder.Redirect.DISCARD).start();
    try (BufferedReader out = process.inputReader(StandardCharsets.UTF_8)) {
      PageTimes page = new PageTimes(URI.create(out.readLine().replaceFirst(".* ", "")));
      page.get("");
      took("1 first page after the command", start);
      if (edits > 0) {
        page.edits(edits);
      }
    } finally {
      process.destroy();
      process.waitFor();
    }
  }

  private static void took(String what, long start) {
    TOOK.computeIfAbsent(what, k -> new ArrayList<>()).add((System.nanoTime() - start) / 1e9);
  }

  private void edits(int times) throws Exception {
    String bench = post("/new", "pattern=mosaic&units=us&name=");
    whole(bench);
    for (int i = 0; i < times; i++) {
      int rev = rev(bench);
      // another hardness, in turns: all is reckoned anew
      String edit = "rev=" + rev + "&" + coded("blade.hardness") + "=" + coded((58 + i % 3) + " HRC");
      long start = System.nanoTime();
      bench = post("/d/1/edit", edit);
      took("2 faults and drawings after an edit", start);
      rev = rev(bench);
      answer(rev, "NONE");
      took("3 likely answer", start);
      if (i % 2 == 0) {
        answer(rev, "MIDDLE");
        took("4 with its band", start);
      } else {
        // an edit while the band is reckoned
        Thread.sleep(100);
        start = System.nanoTime();
        bench = post("/d/1/edit", "rev=" + rev + "&" + coded("blade.hardness") + "=61+HRC");
        answer(rev(bench), "NONE");
        took("5 likely answer to an edit that stops a band", start);
        answer(rev(bench), "MIDDLE");
      }
    }
  }

  /** Held until more than a stage is known. */
  private void answer(int rev, String stage) throws Exception {
    String has = stage;
    while (has.equals(stage) || has.isEmpty()) {
      Matcher m = STAGE.matcher(get("/d/1/answer?rev=" + rev + "&stage=" + stage + "&done=0"));
      has = m.find() ? m.group(1) : "";
    }
  }

  private void whole(String bench) throws Exception {
    answer(rev(bench), "NONE");
    answer(rev(bench), "MIDDLE");
  }

  private static int rev(String bench) {
    Matcher m = REV.matcher(bench);
    if (!m.find()) {
      throw new IllegalStateException("no bench: " + bench.substring(0, Math.min(2000, bench.length())));
    }
    return Integer.parseInt(m.group(1));
  }

  private static String coded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private String get(String target) throws IOException, InterruptedException {
    return said(HttpRequest.newBuilder(target.isEmpty() ? page : page.resolve(target)));
  }

  private String post(String target, String form) throws IOException, InterruptedException {
    return said(
        HttpRequest.newBuilder(page.resolve(target))
            .header("Origin", page.getScheme() + "://" + page.getAuthority())
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(form)));
  }

  private String said(HttpRequest.Builder request) throws IOException, InterruptedException {
    HttpResponse<String> reply = client.send(request.build(), BodyHandlers.ofString());
    if (reply.statusCode() != 200) {
      throw new IllegalStateException(reply.statusCode() + " " + reply.body());
    }
    return reply.body();
  }
}
