package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.support.Contract;
import seamsoak.support.HostileText;
import seamsoak.support.Ran;

/** What a log was worth, as a command. */
class HeatCommandTest {
  private static final String FORGE = "alloy-data/logs/forge.csv";
  private static final String KILN = "alloy-data/logs/kiln.csv";

  @TempDir private Path folder;

  @Test
  void theAnswerIsInJsonToo() {
    Ran ran = Ran.run("heat", FORGE, "--tip", "steel", "--planned", "1120C", "--json");
    assertEquals(0, ran.code(), ran.err());
    assertEquals("heat", ran.text("command"));
    assertEquals("Bar °C", ran.text("column"));
    double minutes = ran.number("creditMinutes");
    assertTrue(minutes > 25 && minutes < 35, minutes + " min");
    assertTrue(ran.number("creditLow") < minutes && minutes < ran.number("creditHigh"));
    assertEquals(1, ran.list("gaps").size());
    assertEquals(1, ran.number("spikes"));
    assertEquals(1, ran.number("openReadings"));
    assertEquals("", ran.err());
  }

  /**
   * It stands in the file as the heat that was done, all else keeps its bytes, and it goes back.
   */
  @Test
  void aHeatIsWrittenIntoTheBilletAndTakenBack() throws IOException {
    Path billet = folder.resolve("knife.json");
    Files.copy(Path.of("alloy-data/billets/mosaic.json"), billet);
    String before = Files.readString(billet);
    String[] into = {
      "heat", FORGE, "--tip", "steel", "--into", billet.toString(), "--step", "1", "--heat", "2"
    };
    Ran ran = Ran.run(into);
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("Written: " + billet), ran.out());
    String after = Files.readString(billet);
    assertTrue(after.contains("\"done\": [{}, { \"curve\": \"forge\" }]"), after);
    assertTrue(after.contains("\"tip\": \"steel\""), after);
    assertTrue(after.contains("// Invented: a pruning-knife"), "comments stay");
    Ran work = Ran.run("soak", billet.toString(), "--samples", "0", "--json");
    assertEquals(0, work.code(), work.err());
    Ran again = Ran.run(into);
    assertEquals(2, again.code(), again.err());
    assertTrue(again.err().contains("step 1 weld, heat 2 is recorded already"), again.err());
    assertEquals(after, Files.readString(billet));
    String[] over = Stream.concat(Stream.of(into), Stream.of("--replace")).toArray(String[]::new);
    assertEquals(2, Ran.run(over).code(), "nothing has changed");
    assertEquals(0, Ran.run("record", billet.toString(), "--undo").code());
    assertEquals(before, Files.readString(billet));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--step 1 | --step and --heat go with --into BILLET",
        "--into FILE | --into needs --step N",
        "--into FILE --step 99 | --step: the file has 15 steps, from 1 on",
        "--into FILE --step 0 | --step: '0' is no number of one; they are counted from 1",
        "--into FILE --step 3 | --step: step 3 grind has no heats",
        "--into FILE --step 1 | --heat M: step 1 weld has 3 heats",
        "--into FILE --step 1 --heat 4 | --heat: step 1 weld has 3 heats, from 1 on"
      })
  void whereItGoesHasToBeSaid(String options, String says) throws IOException {
    Path billet = folder.resolve("knife.json");
    Files.copy(Path.of("alloy-data/billets/mosaic.json"), billet);
    String line = "heat " + FORGE + " --tip steel " + options.replace("FILE", billet.toString());
    Ran ran = Ran.run(line.split(" "));
    assertEquals(2, ran.code(), ran.err());
    assertTrue(ran.err().contains(says), ran.err());
    assertEquals(
        Files.readString(Path.of("alloy-data/billets/mosaic.json")), Files.readString(billet));
  }

  /** A piece that lags behind the air is worth less than one that was the air. */
  @Test
  void aPieceInTheAirOfAKilnLags() {
    Ran air =
        Ran.run(
            "heat",
            KILN,
            "--column",
            "Right",
            "--tip",
            "air",
            "--loaded",
            "4min",
            "--section",
            "1in",
            "--planned",
            "1107C",
            "--json");
    Ran itself =
        Ran.run(
            "heat",
            KILN,
            "--column",
            "Right",
            "--tip",
            "steel",
            "--loaded",
            "4min",
            "--planned",
            "1107C",
            "--json");
    assertEquals(0, air.code(), air.err());
    assertTrue(air.number("creditMinutes") < itself.number("creditMinutes") - 4);
    assertEquals("fahrenheit", air.text("scale"));
  }

  /** Each question names the option that answers it, and only what is open is asked. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "heat alloy-data/logs/forge.csv | --tip",
        "heat alloy-data/logs/kiln.csv --tip steel | --column",
        "heat alloy-data/logs/kiln.csv --column Left --tip air --loaded 4min | --section",
        "heat alloy-data/logs/kiln.csv --column Left --tip air --section 1in | --loaded",
        "heat alloy-data/logs/kiln.csv --column Top --tip steel | 'Top'",
        "heat alloy-data/logs/forge.csv --tip steel --couple Q | is no thermocouple",
        "heat alloy-data/logs/forge.csv --tip steel --planned 500C | carbon hardly moves",
        "heat alloy-data/logs/forge.csv --tip steel --loaded 3h | after the log's end",
        "heat alloy-data/logs/forge.csv --tip steel --loaded 9min --removed 8min | --removed",
        "heat alloy-data/logs/forge.csv --tip steel --loaded 4:00 | --loaded",
        "heat alloy-data/logs/forge.csv --tip steel --unit X | --unit",
        "heat alloy-data/logs/forge.csv --tip fire | --tip",
        "heat alloy-data/logs/forge.csv --tip steel --png | --png needs --out",
        "heat | LOG.csv"
      })
  void whatIsOpenOrWrongIsOneSentence(String line, String words) {
    Ran ran = Contract.run(List.of(line.split(" ")));
    assertEquals(2, ran.code(), ran.out());
    assertTrue(ran.err().contains(words), ran.err());
    Contract.said(ran, "");
  }

  @Test
  void theChartIsWritten() throws Exception {
    Ran ran = Ran.run("heat", FORGE, "--tip", "steel", "--out", folder.resolve("o").toString());
    assertEquals(0, ran.code(), ran.err());
    Contract.wholeSet(folder.resolve("o"));
    String svg = Files.readString(folder.resolve("o/heat.svg"));
    assertTrue(svg.contains("readings left out"));
  }

  static Stream<String> hostile() {
    String rows = "<60*12:00:00,1100\\n>";
    return Stream.of(
        "",
        " \\n\\n",
        "\\0\\0\\0\\0",
        "\\x80\\x81\\xFF\\xFE",
        "Time,Temp (C)\\n",
        "Time,Temp (C)\\n" + rows,
        "Time,Temp (C)\\n<9*x,y\\n>",
        "<100000*a>",
        "<100000*a,>",
        "<2000*<500*1,>\\n>",
        "\"<1000*12:00,1100\\n>",
        "<1000*\"12:00,1100\\n>",
        "sep=",
        "sep=1\\n<99*21231\\n>",
        "Time;Temp (C)\\n<99*00:00:00;1e308\\n>",
        "s;C\\n0;NaN\\n1;Infinity\\n2;-Infinity\\n3;1100\\n4;1100\\n",
        "s;C\\n0;1100\\n1;1100\\n1e300;1100\\n",
        "s;C\\n-5;1100\\n1;-9999\\n2;1100\\n7;1100",
        "s;C\\n0;1100\\n999999999999;1100\\n",
        "s;C\\n0;-300\\n10;1100\\n20;1100\\n30;1100\\n",
        "s;C\\n3;1100\\n2;1100\\n1;1100\\n",
        "s;\\u202Eevil C\\n0;1100\\n10;1100\\n20;1100\\n",
        "s;<script>alert(1)</script> (C)\\n0;1100\\n10;1100\\n20;1100\\n",
        "Date;Time;C\\n99.99.9999;12:00:00;1100\\n98.99.9999;12:00:10;1100\\n",
        "{ 'name': 'a billet' }");
  }

  /** Whatever stands in it: an answer or one sentence. */
  @ParameterizedTest
  @MethodSource("hostile")
  void aHostileLogIsAnsweredOrRefused(String written) throws IOException {
    Path log = folder.resolve("log.csv");
    Files.write(log, HostileText.of(written).getBytes(StandardCharsets.ISO_8859_1));
    for (String tip : List.of("steel", "air")) {
      Ran ran =
          Contract.run(
              List.of(
                  "heat", log.toString(), "--tip", tip, "--loaded", "0.1s", "--section", "5mm"));
      Contract.said(ran, folder.toString());
    }
  }
}
