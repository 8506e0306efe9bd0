package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.support.Ran;

/** Two steels without a billet. */
@Timeout(120)
class PairingTest extends FormsOnly {
  private String asked(String first, String second, String layer, String other, String section)
      throws IOException {
    Visitor.Reply reply =
        smith.get(
            "/pair?first=%s&second=%s&layer=%s&other=%s&section=%s"
                .formatted(
                    encoded(first),
                    encoded(second),
                    encoded(layer),
                    encoded(other),
                    encoded(section)));
    assertEquals(200, reply.status());
    return reply.body();
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private static String words(String html) {
    return html.replaceAll("(?s)<style>.*?</style>|<datalist.*?</datalist>|<[^>]*>", " ")
        .replace("&#39;", "'")
        .replaceAll("\\s+", " ");
  }

  /** The same that the commands say, each sentence of it. */
  @Test
  void verdictAndCyclesAreThoseOfTheCommands() {
    try {
      String page = words(asked("1084", "15N20", "0.02 in", "", "1/4 in"));
      Ran pair = Ran.run("pair", "1084", "15N20", "--layer", "0.02in", "--section", "1/4in");
      Ran cycles =
          Ran.run(
              "schedule",
              "1084",
              "15N20",
              "--layer",
              "0.02in",
              "--section",
              "1/4in",
              "--units",
              "us");
      assertTrue(page.contains(pair.out().lines().findFirst().orElseThrow()), page);
      String first = cycles.out().replaceAll("\\s+", " ");
      String heats = first.substring(0, first.indexOf(". ") + 1);
      assertTrue(heats.startsWith("Normalize at "), heats);
      assertTrue(page.contains(heats), page);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void withoutSizesThereIsTheVerdictAlone() throws IOException {
    String page = words(asked("1084", "15N20", "", "", ""));
    assertTrue(page.contains("1084 with 15N20: fits."), page);
    assertFalse(page.contains("Normalize at"), page);
    assertTrue(words(asked("scrap", "1084", "", "", "")).contains("clash"));
    assertFalse(words(smith.get("/pair").body()).contains("mend"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1085x | 1095  | ''    | ''   | ''     | did you mean
          ''    | 1095  | ''    | ''   | ''     | This is needed
          1084  | 1095  | -3    | ''   | 1/4    | is negative
          1084  | 1095  | 0     | ''   | 1/4    | thicker than nothing
          1084  | 1095  | 0.02  | ''   | 0.01   | thinner than one layer
          1084  | 1095  | 1 um  | ''   | 1 in   | is the most
          1084  | 1095  | NaN   | ''   | 1/4    | write a length
          1084  | 1095  | ''    | 0.02 | 1/4    | This is needed
          1084  | 1095  | 1,5mm | ''   | 1/4    | ,
          C0.8  | C99   | ''    | ''   | ''     | C
          """)
  void whatIsWrongIsToldAtItsField(
      String first, String second, String layer, String other, String section, String told)
      throws IOException {
    String page = asked(first, second, layer, other, section);
    assertTrue(page.contains("aria-invalid=\"true\""), page);
    assertTrue(words(page).contains(told), words(page));
    assertFalse(page.contains("Normalize at"));
  }

  @Test
  void whatIsTypedIsNeverMarkup() throws IOException {
    String page = asked("<script>alert(1)</script>", "\"><b>", "<i>", "", "");
    assertFalse(page.contains("<script>alert"), page);
    assertFalse(page.contains("<b>"), page);
    assertFalse(page.contains("<i>"), page);
  }

  /** On to a billet in one action: what was asked stands on its bench, and it is sound. */
  @Test
  void aBilletOfTheTwoIsOneActionAway() throws IOException {
    String page = asked("1095", "75Ni8", "0.02 in", "0.03 in", "1/4 in");
    Map<String, String> sent = new LinkedHashMap<>();
    Matcher hidden =
        Pattern.compile("<input type=\"hidden\" name=\"([a-z]+)\" value=\"([^\"]*)\">")
            .matcher(page);
    while (hidden.find()) {
      sent.put(hidden.group(1), hidden.group(2));
    }
    assertEquals("10", sent.get("layers"), sent.toString());
    Visitor.Reply reply = smith.post("/new", sent);
    assertEquals(303, reply.status(), reply.body());
    assertEquals(303, smith.post("/new", sent).status(), "and once more, beside it");
    String bench = smith.get(reply.header("Location")).body();
    for (String value : List.of("1095", "75Ni8", "0.02 in", "0.03 in", "10")) {
      assertTrue(bench.contains("value=\"" + value + "\""), value);
    }
    assertFalse(words(bench).contains("to mend"), words(bench));
  }
}
