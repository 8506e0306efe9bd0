package seamsoak.support;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A headless Chromium, where there is one.
 *
 * @param program its file
 * @param folder to work in
 */
public record Browser(Path program, Path folder) {
  private static final Pattern POLICY =
      Pattern.compile("<meta http-equiv=\"Content-Security-Policy\"[^>]*>");
  private static final Pattern ANSWER =
      Pattern.compile("<pre id=\"answer-of-script\">(.*?)</pre>", Pattern.DOTALL);
  private static final int NARROWEST = 500;
  private static final int PATIENCE_SECONDS = 120;

  public static Optional<Path> installed() {
    return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":"))
        .flatMap(dir -> Stream.of("chromium", "chromium-browser").map(n -> Path.of(dir, n)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** A picture of the window. */
  public byte[] picture(Path page, int width, int height) throws Exception {
    Path png = folder.resolve("page.png");
    run(page, "--window-size=" + width + "," + height, "--screenshot=" + png);
    return Files.readAllBytes(png);
  }

  /** The page on paper; {@code size} as CSS has it. */
  public byte[] paper(Path page, String size) throws Exception {
    Path pdf = folder.resolve("page.pdf");
    String style = "<style>@page { size: " + size + " }</style></head>";
    run(open(page, "</head>", style), "--no-pdf-header-footer", "--print-to-pdf=" + pdf);
    return Files.readAllBytes(pdf);
  }

  /**
   * What a script says of a page. The page itself lets no script run, so this asks a copy without
   * its policy.
   *
   * @param script ends by calling {@code say} with a text
   */
  public String ask(Path page, int width, int height, String script) throws Exception {
    String say =
        "<script>function say(t) { const p = document.createElement('pre');"
            + " p.id = 'answer-of-script'; p.textContent = t; parent.document.body.append(p); }\n";
    Path open = open(page, "</body>", say + script + "</script></body>");
    String out =
        run(
            width < NARROWEST ? framed(open, width, height) : open,
            "--window-size=" + width + "," + height,
            "--virtual-time-budget=20000",
            "--dump-dom");
    Matcher m = ANSWER.matcher(out);
    if (!m.find()) {
      throw new AssertionError("the script said nothing: " + out.substring(out.length() - 500));
    }
    return m.group(1)
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&amp;", "&");
  }

  /** Windows have a least width; a frame in one may be as narrow as a phone. */
  private Path framed(Path page, int width, int height) throws IOException {
    String inside = Files.readString(page).replace("&", "&amp;").replace("\"", "&quot;");
    return Files.writeString(
        folder.resolve("framed.html"),
        String.format(
            Locale.ROOT,
            "<!DOCTYPE html><body><iframe width=\"%d\" height=\"%d\" frameborder=\"0\" srcdoc=\"%s\">"
                + "</iframe></body>",
            width,
            height,
            inside));
  }

  private Path open(Path page, String at, String instead) throws IOException {
    String html = POLICY.matcher(Files.readString(page)).replaceFirst("");
    int end = html.lastIndexOf(at);
    return Files.writeString(
        folder.resolve("open.html"),
        html.substring(0, end) + instead + html.substring(end + at.length()));
  }

  private String run(Path page, String... options) throws Exception {
    List<String> command =
        new ArrayList<>(
            List.of(
                program.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--hide-scrollbars",
                "--user-data-dir=" + folder.resolve("profile")));
    command.addAll(List.of(options));
    command.add(page.toUri().toString());
    Path out = folder.resolve("out.txt");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("the browser did not answer");
    }
    return Files.readString(out, StandardCharsets.UTF_8);
  }
}
