package seamsoak.billet.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.billet.Billet;
import seamsoak.data.Fault;
import seamsoak.data.Mistake;
import seamsoak.support.KnownSteels;

/** Files that a tired smith may write: each is answered with one sentence that helps. */
class BadBilletTest {
  private static final String GOOD =
      """
      { "name": "good",
        "stack": { "layers": 5, "steels": ["1084", "75Ni8"], "thickness": ["3 mm", "2 mm"],
          "width": "40 mm", "length": "150 mm", "skin": "0.1 mm" },
        "steps": [
          { "do": "weld", "heats": [{ "at": "1200 C", "for": "5 min", "times": 3 }], "faces": "open" },
          { "do": "draw", "thickness": "24 mm", "width": "24 mm", "heats": [{ "at": "1150 C", "for": "3 min" }] },
          { "do": "restack", "across": 3, "high": 2, "turn": "all", "kerf": "2 mm" },
          { "do": "weld", "heats": [{ "at": "1200 C", "for": "5 min" }], "seen": { "seams": "restack", "line": "faint" } },
          { "do": "tile", "angle": "45 deg", "slice": "15 mm", "jacket": { "steel": "1008", "thickness": "1 mm" } },
          { "do": "cool", "in": "air" } ],
        "soak": { "most": "60 min" }, "shown": "top", "visible": { "dip": "0.1 %" }, "covered": "50 %",
        "blade": { "thickness": "4 mm", "hardness": "60 HRC", "edge": "75Ni8" },
        "equipment": { "forge": "gas", "kiln": { "highest": "1200 C", "ramp": "500 C/h" }, "cold": "none" },
        "quenchants": [{ "kind": "oil-fast", "at": "50 C", "flash": "180 C" }] }
      """;

  private static final String LENGTHS =
      "; write a length such as 1-3/8 in, 3/8\", 0.040 in, 2 ft, 38 mm or 1.5 cm";
  private static final String TEMPERATURES =
      "; write a temperature such as 2150 F, 1500 °F, 1177 C or 1450 K";
  private static final String TIMES = "; write a time such as 90 s, 4 min, 1.5 h or 1 h 20 min";

  private static final String UNITS = ", or begin the file with \"units\": \"us\" or \"metric\"";

  @TempDir Path folder;

  @Test
  void theGoodOneIsRead() throws IOException {
    assertEquals(6, KnownSteels.read(file(GOOD)).steps().size());
  }

  /**
   * What is replaced in the good billet, by what (a caret stands where the fault should be placed),
   * and the sentence that answers it. What is not there for want of the right key is told besides.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'thickness': '24 mm' | ^'thicknes': '24 mm' | step 2 draw has no key 'thicknes'; did you mean 'thickness'?",
        "'kerf' | ^'saw' | step 3 restack has no key 'saw'; the keys here are do, across, high, turn, kerf, seen, note, done",
        "'times': 3 | ^'time': 3 | heat 1 has no key 'time'; did you mean 'times'?",
        "'skin' | ^'Skin' | stack has no key 'Skin'; did you mean 'skin'?",
        "'shown' | ^'show' | the billet has no key 'show'; did you mean 'shown'?",
        "'most' | ^'least' | soak has no key 'least'; the keys here are most, outside, highest",
        "'dip' | ^'dips' | visible has no key 'dips'; did you mean 'dip'?",
        "'seams' | ^'seam' | seen has no key 'seam'; did you mean 'seams'?",
        "'steel': | ^'steal': | jacket has no key 'steal'; did you mean 'steel'?",
        "'width': '24 mm' | ^'thickness': '24 mm' | the key 'thickness' stands twice; it already stands in line 6; keep one",
        "'24 mm', 'width' | ^24, 'width' | thickness '24' has no unit{L}{U}",
        "'24 mm', 'width' | ^'24', 'width' | thickness '24' has no unit{L}{U}",
        "'24 mm', 'width' | ^null, 'width' | thickness is null; it should be a quantity with its unit in double quotes",
        "'24 mm', 'width' | ^['24 mm'], 'width' | thickness is a list in brackets; it should be a quantity with its unit in double quotes",
        "'24 mm', 'width' | ^'24 kg', 'width' | thickness '24 kg' has 'kg' where its unit should stand{L}",
        "'24 mm', 'width' | ^'-24 mm', 'width' | thickness '-24 mm' is negative{L}",
        "'24 mm', 'width' | ^'0 mm', 'width' | thickness is '0 mm'; it should be above zero",
        "'24 mm', 'width' | ^'24 m', 'width' | thickness is '24 m'; 10 m is the most",
        "'24 mm', 'width' | ^'50 ft', 'width' | thickness is '50 ft'; 32 ft is the most",
        "'24 mm', 'width' | ^'2,4 cm', 'width' | thickness '2,4 cm' has a comma, which could be a decimal or a thousands mark (use a decimal point){L}",
        "'24 mm', 'width' | ^'1e999 mm', 'width' | thickness '1e999 mm' has 'e999 mm' where its unit should stand{L}",
        "'1200 C', 'for' | ^1200, 'for' | at '1200' has no unit{T}{U}",
        "'1200 C', 'for' | ^'1200 min', 'for' | at '1200 min' has 'min' where its unit should stand{T}",
        "'1200 C', 'for' | ^'2150 C', 'for' | at is '2150 C'; a heat is between 100 C (212 F) and 1600 C (2912 F)",
        "'1200 C', 'for' | ^'20 C', 'for' | at is '20 C'; a heat is between 100 C (212 F) and 1600 C (2912 F)",
        "'1200 C', 'for' | ^'NaN', 'for' | at 'NaN' does not begin with a number{T}",
        "'5 min', 'times' | ^5, 'times' | for '5' has no unit{D}{U}",
        "'5 min', 'times' | ^'0:05', 'times' | for '0:05' could be hours or minutes (say 1 h 20 min or 1 min 20 s){D}",
        "'5 min', 'times' | ^'0 min', 'times' | for is '0 min'; it should be above zero and at most 48 h",
        "'5 min', 'times' | ^'50 h', 'times' | for is '50 h'; it should be above zero and at most 48 h",
        "'times': 3 | 'times': ^0 | times is the number 0; it should be a whole number from 1 to 100",
        "'times': 3 | 'times': ^1e9 | times is the number 1e9; it should be a whole number from 1 to 100",
        "'times': 3 | 'times': ^2.5 | times is the number 2.5; it should be a whole number from 1 to 100",
        "'times': 3 | 'times': ^'three' | times is 'three'; it should be a whole number from 1 to 100",
        "'times': 3 | 'times': ^1e999 | the number 1e999 is too large; write a smaller one",
        "'faces': 'open' | 'faces': ^'Coverd' | faces is 'Coverd'; did you mean 'covered'?",
        "'faces': 'open' | 'faces': ^'wet' | faces is 'wet'; it is one of open, covered, sealed",
        "'faces': 'open' | 'faces': ^true | faces is true; it is one of open, covered, sealed",
        "'do': 'draw' | 'do': ^'drew' | do is 'drew'; did you mean 'draw'?",
        "'do': 'draw' | 'do': ^'rehang' | do is 'rehang'; it is one of weld, draw, press, roll, grind, restack, tile, unjacket, twist, soak, anneal, normalize, refine, relieve, harden, temper, cool",
        "{ 'do': 'draw', | ^{ | step 2 has no 'do'; add one, such as 'do': 'weld'",
        "{ 'do': 'cool', 'in': 'air' } | ^'cool' | step 6 is 'cool'; it should be an object in braces",
        "'in': 'air' | 'in': ^'snow' | in is 'snow'; it is one of air, furnace, quench",
        "{ 'do': 'draw', 'thickness': '24 mm', 'width': '24 mm', 'heats': [{ 'at': '1150 C', 'for': '3 min' }] | ^{ 'do': 'draw', 'thickness': '24 mm', 'width': '24 mm' | step 2 draw has no 'heats'; add one, such as 'heats': [{ 'at': '1150 C', 'for': '3 min' }]",
        "[{ 'at': '1150 C', 'for': '3 min' }] | ^[] | heats has 0 entries; it should have 1 to 100",
        "[{ 'at': '1150 C', 'for': '3 min' }] | ^{ 'at': '1150 C', 'for': '3 min' } | heats is an object in braces; it should be a list in brackets",
        "[{ 'at': '1150 C', 'for': '3 min' }] | [^'1150 C'] | heat 1 is '1150 C'; it should be an object in braces",
        "{ 'at': '1150 C', 'for': '3 min' } | ^{ 'at': '1150 C' } | heat 1 has no 'for'; add one, such as 'for': '3 min'",
        "'45 deg' | ^45 | angle '45' has no unit; write an angle such as 45 deg or 45°{U}",
        "'45 deg' | ^'0 deg' | angle is '0 deg'; a cut for tiles is between 10 and 80 deg to the bar's length",
        "'45 deg' | ^'90 deg' | angle is '90 deg'; a cut for tiles is between 10 and 80 deg to the bar's length",
        "'45 deg' | ^'120 deg' | angle is '120 deg'; a cut for tiles is between 10 and 80 deg to the bar's length",
        "'across': 3, 'high': 2 | 'across': ^1, 'high': 1 | 1 across by 1 high makes 1 pieces; a restack has 2 to 1000",
        "'across': 3, 'high': 2 | 'across': ^100, 'high': 100 | 100 across by 100 high makes 10000 pieces; a restack has 2 to 1000",
        "'across': 3 | 'across': ^-3 | across is the number -3; it should be a whole number from 1 to 1000",
        "'slice': '15 mm', 'jacket' | 'slice': '15 mm', 'count': ^1, 'jacket' | count is the number 1; it should be a whole number from 2 to 1000",
        "'1084' | ^'1085' | there is no steel '1085'; did you mean '1084'?",
        "'1084' | ^'mystery bar' | there is no steel 'mystery bar'; give a steel of the table or an analysis such as 'C0.84 Mn0.75 Si0.22'",
        "'1084' | ^'C0.84 Mnx' | steels: 'C0.84 Mnx' is not an analysis; give a steel of the table or an analysis such as 'C0.84 Mn0.75 Si0.22'",
        "'1084' | ^1084 | steels: the number 1084 is no steel; give a steel of the table or an analysis such as 'C0.84 Mn0.75 Si0.22'",
        "['1084', '75Ni8'] | ^[] | steels has 0 entries; it should have 1 to 20",
        "'layers': 5, 'steels': [ | 'layers': 1, 'steels': ^[ | 1 layers cannot hold 2 steels; give at least as many layers as steels",
        "'layers': 5 | 'layers': ^1001 | layers is the number 1001; it should be a whole number from 1 to 1000",
        "['3 mm', '2 mm'] | ^['3 mm'] | thickness has 1 entries for 2 steels; give one for each steel, or a single text for all",
        "['3 mm', '2 mm'] | ^'9 m' | the stack is 45000 mm thick; 500 mm is the most",
        "'0.1 mm' | ^'1 mm' | the skins of both faces meet in the thinnest layer; skin is the depth on one face",
        "'seams': 'restack' | 'seams': ^'restack 1' | seams is 'restack 1' but no such step comes before; name seams that exist by then",
        "'seams': 'restack' | 'seams': ^'tile' | seams is 'tile' but no such step comes before; name seams that exist by then",
        "'seams': 'restack' | 'seams': ^'welds' | seams is 'welds'; it is layers, restack or tile, with the number of its step if there are several, such as 'restack 4'",
        "'line': 'faint' | 'line': 'none', 'width': ^'1 mm' | width is given for a line that was not seen; leave it out",
        "'name': 'good' | 'name': ^7 | name is the number 7; it should be a text",
        "'name': 'good' | 'name': ^' ' | name is blank; write something or leave it out",
        "'name': 'good' | 'name': ^'\\u001b[2J' | name is too long or holds control characters; write one line of at most 500 letters",
        "'0.1 %' | ^0.1 | dip '0.1' has no unit; write a percentage such as 0.10 % or 50 %",
        "'50 %' | ^'150 %' | covered '150 %' is not between 0 and 100 %; write a percentage such as 0.10 % or 50 %",
        "'hardness': '60 HRC' | 'hardness': ^60 | hardness '60' has no unit; write a hardness such as 60 HRC{U}",
        "'hardness': '60 HRC' | 'hardness': ^'60 HRB' | hardness '60 HRB' has 'hrb' where its unit should stand; write a hardness such as 60 HRC",
        "'hardness': '60 HRC' | 'hardness': ^'82 HRC' | hardness '82 HRC' is not on the scale, which ends at 70; write a hardness such as 60 HRC",
        "'hardness': '60 HRC' | 'hardness': ^'25 HRC' | hardness is '25 HRC'; a tempered blade has 40 to 67 HRC",
        "'hardness': | ^'hard': | blade has no key 'hard'; the keys here are thickness, width, length, bevel, edge, hardness, cuts",
        "'edge': '75Ni8' | 'edge': ^'80CrV2' | edge is '80CrV2', which is not in the stack; it is one of 1084, 75Ni8",
        "'edge': '75Ni8' | 'edge': ^'75Ni9' | there is no steel '75Ni9'; did you mean '75Ni8'?",
        "'forge': 'gas' | 'forge': ^'gaz' | forge is 'gaz'; did you mean 'gas'?",
        "'forge': 'gas' | ^'oven': 'gas' | equipment has no key 'oven'; the keys here are forge, kiln, salt, cold, shop, descale",
        "{ 'highest': '1200 C', 'ramp': '500 C/h' } | ^'yes' | kiln is 'yes'; it is 'none', or its limits in braces: highest and ramp",
        "{ 'highest': '1200 C', 'ramp': '500 C/h' } | ^true | kiln is true; it should be an object in braces",
        "'500 C/h' | ^'500 C' | ramp '500 C' has 'c' where its unit should stand; write a rate such as 1000 F/h, 500 C/h or 10 C/min",
        "'500 C/h' | ^'0 C/h' | ramp '0 C/h' is not above zero, or faster than any fire; write a rate such as 1000 F/h, 500 C/h or 10 C/min",
        "'500 C/h' | ^'500 mm/h' | ramp '500 mm/h' has 'mm/h' where its unit should stand; write a rate such as 1000 F/h, 500 C/h or 10 C/min",
        "'1200 C', 'ramp' | ^'2000 C', 'ramp' | highest is '2000 C'; a heat is between 100 C (212 F) and 1600 C (2912 F)",
        "'cold': 'none' | 'cold': ^'ice' | cold is 'ice'; it is one of none, dry ice, liquid nitrogen",
        "'kind': 'oil-fast', | ^'in': 'oil', | quenchant 1 has no key 'in'; the keys here are kind, at, flash",
        "'50 C' | ^'-5 C' | at is '-5 C'; a bath is between 0 C (32 F) and 900 C (1652 F)",
        "'50 C' | ^'50' | at '50' has no unit{T}{U}",
        "[{ 'kind': 'oil-fast', 'at': '50 C', 'flash': '180 C' }] | ^[] | quenchants has 0 entries; it should have 1 to 20",
        "'60 min' } | '60 min' ^] | ']' does not belong here; close each bracket with its own kind",
        "'do': 'draw' | 'do': ^draw | 'draw' stands without quotes; write 'draw'",
      })
  void aSlipIsAnsweredAtItsPlace(String good, String bad, String sentence) throws IOException {
    String wanted = good.replace('\'', '"');
    assertTrue(GOOD.contains(wanted), wanted);
    int at = GOOD.indexOf(wanted);
    String marked = GOOD.substring(0, at) + bad.replace('\'', '"');
    String text = marked.replace("^", "") + GOOD.substring(at + wanted.length());
    int caret = marked.indexOf('^');
    long line = 1 + marked.substring(0, caret).chars().filter(c -> c == '\n').count();
    int column = caret - marked.lastIndexOf('\n', caret);
    String full =
        sentence
            .replace("{L}", LENGTHS)
            .replace("{T}", TEMPERATURES)
            .replace("{D}", TIMES)
            .replace("{U}", UNITS);
    List<Mistake> told = new ArrayList<>(mistakes(file(text)));
    if (told.size() > 1) {
      told.removeIf(m -> m.found().contains(" has no '") && m.expected().startsWith("add one"));
    }
    assertEquals(
        List.of(line + ":" + column + ": " + full.replace('"', '\'')),
        told.stream()
            .map(m -> m.place().line() + ":" + m.place().column() + ": " + m.said())
            .map(said -> said.replace('"', '\''))
            .toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "``       | it is empty; write JSON between braces",
        "~        | it is empty; write JSON between braces",
        "[]       | 1:1: the billet is a list in brackets; it should be an object in braces",
        "42       | 1:1: the billet is the number 42; it should be an object in braces",
        "{'steps': [{'do': 'cool', 'in': 'air'}]} | 1:1: the billet has no 'stack'; add one, such as 'stack': { 'layers': 13, 'steels': [...], ... }",
        "{'stack': | 1:10: the file ends too early; close the bracket that opens in line 1",
        "hello    | 1:1: 'hello' does not belong here; put a text in double quotes, such as '38 mm' or 'covered'",
      })
  void aFileThatIsNoBillet(String text, String sentence) throws IOException {
    String said = said(file(text.replace('\'', '"').replace('~', '\n')));
    assertEquals(sentence, afterFileName(said));
  }

  @Test
  void missingSteps() throws IOException {
    int from = GOOD.indexOf("\"steps\"");
    int to = GOOD.indexOf("\"soak\"");
    assertTrue(
        said(file(GOOD.substring(0, from) + GOOD.substring(to)))
            .endsWith(
                ":1:1: the billet has no 'steps'; add one, such as \"steps\": [{ \"do\": \"weld\", ... }]"));
  }

  @Test
  void tooManySteps() throws IOException {
    int from = GOOD.indexOf("{ \"do\": \"cool\"");
    String many = "{\"do\": \"cool\", \"in\": \"air\"},".repeat(500);
    assertTrue(
        said(file(GOOD.substring(0, from) + many + GOOD.substring(from)))
            .endsWith(":4:12: steps has 506 entries; it should have 1 to 500"));
  }

  @Test
  void cutAnywhereItIsRefusedInOneLine() throws IOException {
    for (int end = 0; end < GOOD.strip().length(); end += 7) {
      said(file(GOOD.substring(0, end)));
    }
  }

  /** Random damage never gives anything but a billet or a sentence. */
  @Test
  void damageNeverGivesAnythingButAFault() throws IOException {
    long seed = System.nanoTime();
    SplittableRandom random = new SplittableRandom(seed);
    for (int n = 0; n < 3000; n++) {
      StringBuilder damaged = new StringBuilder(GOOD);
      for (int k = random.nextInt(1, 4); k > 0; k--) {
        int at = random.nextInt(damaged.length());
        damaged.setCharAt(at, "{}[]\":, 0-9.xCm\n".charAt(random.nextInt(16)));
      }
      Path file = file(damaged.toString());
      try {
        KnownSteels.read(file);
      } catch (Fault fault) {
        fault.mistakes().forEach(m -> oneLine(m.sentence(), "seed " + seed + ": "));
      }
    }
  }

  @Test
  void allMistakesAreToldAtOnceInTheOrderOfTheFile() throws IOException {
    String bad =
        GOOD.replace("\"3 mm\", \"2 mm\"", "\"3\", \"2,5 mm\"")
            .replace("\"5 min\", \"times\": 3", "\"5:00\", \"time\": 0")
            .replace("\"do\": \"restack\"", "\"do\": \"restak\"")
            .replace("\"angle\": \"45 deg\", ", "")
            .replace("\"most\": \"60 min\"", "\"most\": \"60 min\", \"most\": \"50 min\"");
    assertEquals(
        List.of(
            "line 2, stack.thickness[0]: thickness '3' has no unit",
            "line 2, stack.thickness[1]: thickness '2,5 mm' has a comma, which could be a decimal or"
                + " a thousands mark (use a decimal point)",
            "line 5, steps[0].heats[0].for: for '5:00' could be hours or minutes"
                + " (say 1 h 20 min or 1 min 20 s)",
            "line 5, steps[0].heats[0].time: heat 1 has no key 'time'",
            "line 5, steps[0].heats[0].times: times is the number 0",
            "line 7, steps[2].do: do is 'restak'",
            "line 9, steps[4].angle: step 5 tile has no 'angle'",
            "line 11, soak.most: the key 'most' stands twice"),
        mistakes(file(bad)).stream()
            .map(m -> "line " + m.place().line() + ", " + m.field() + ": " + m.found())
            .toList());
  }

  /** Bare numbers cannot be judged then, but what has its unit can. */
  @Test
  void wrongUnitsAreToldOnce() throws IOException {
    String bad =
        GOOD.replace("\"name\"", "\"units\": \"stone\", \"name\"")
            .replace("\"24 mm\"", "24")
            .replace("\"1150 C\"", "\"2150 C\"");
    assertEquals(
        List.of(
            "units is 'stone'; it is one of us, metric",
            "at is '2150 C'; a heat is between 100 C (212 F) and 1600 C (2912 F)"),
        mistakes(file(bad)).stream().map(Mistake::said).toList());
  }

  @Test
  void sentencesAreInTheUnitsOfTheFile() throws IOException {
    String bad =
        GOOD.replace("\"name\"", "\"units\": \"us\", \"name\"")
            .replace("\"1200 C\", \"for\"", "3000, \"for\"")
            .replace("\"24 mm\", \"width\": \"24 mm\"", "-24, \"width\": 900")
            .replace("\"slice\": \"15 mm\", ", "")
            .replace("0.1 %\"", "0.1\"");
    assertEquals(
        List.of(
            "at is the number 3000; a heat is between 212 F and 2912 F",
            "thickness '-24' is negative" + LENGTHS,
            "width is the number 900; 32 ft is the most",
            "at is the number 3000; a heat is between 212 F and 2912 F",
            "step 5 tile has no 'slice'; add one, such as \"slice\": \"5/8 in\"",
            "dip '0.1' has no unit; write a percentage such as 0.10 % or 50 %"),
        mistakes(file(bad)).stream().map(Mistake::said).toList());
  }

  /** What depends on a step that could not be read is not told as well. */
  @Test
  void aStepThatIsNotKnownIsOneMistake() throws IOException {
    assertEquals(
        "7:13: do is 'rehang'; it is one of weld, draw, press, roll, grind, restack, tile, unjacket,"
            + " twist, soak, anneal, normalize, refine, relieve, harden, temper, cool",
        afterFileName(said(file(GOOD.replace("\"do\": \"restack\"", "\"do\": \"rehang\"")))));
  }

  @Test
  void aLookWithoutItsPlaceIsToldHowToSayIt() throws IOException {
    assertEquals(
        "8:76: seen has no 'where'; add one, such as 'where': 'restack 4'",
        afterFileName(said(file(GOOD.replace("\"seams\": \"restack\", ", "")))));
  }

  @Test
  void deepNesting() throws IOException {
    assertTrue(
        said(file(GOOD.replace("\"good\"", "[".repeat(5000))))
            .endsWith(":1:42: brackets are nested deeper than 32; no file here needs that"));
  }

  @Test
  void aZeroByteAndAWrongEncoding() throws IOException {
    assertTrue(
        said(file(GOOD.replace("good", "go\0od")))
            .endsWith(":1: a zero byte stands here, so it is not text; give JSON"));
    Path latin = folder.resolve("latin.json");
    Files.write(latin, GOOD.replace("45 deg", "45°").getBytes(StandardCharsets.ISO_8859_1));
    assertTrue(said(latin).endsWith(":9: this is not UTF-8 text; save it as UTF-8"));
    Path wide = folder.resolve("wide.json");
    Files.write(wide, GOOD.getBytes(StandardCharsets.UTF_16));
    assertTrue(said(wide).endsWith(":1: this is not UTF-8 text; save it as UTF-8"));
  }

  @Test
  void aByteOrderMarkAndWindowsLineEndsAreNoFault() throws IOException {
    Billet plain = KnownSteels.read(file(GOOD));
    Billet windows = KnownSteels.read(file("\uFEFF" + GOOD.replace("\n", "\r\n")));
    assertEquals(plain, windows);
  }

  @Test
  void aFolderAndAMissingFile() {
    assertEquals(folder + ": it is a folder; give the file itself", said(folder));
    Path none = folder.resolve("none.json");
    assertEquals(none + ": there is no such file; check its name and folder", said(none));
  }

  @Test
  void aHugeFileIsAnsweredAtOnce() throws IOException {
    Path huge = folder.resolve("huge.json");
    try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
      file.setLength(100L << 20);
    }
    assertTimeoutPreemptively(
        Duration.ofSeconds(1),
        () ->
            assertTrue(
                said(huge)
                    .endsWith(
                        ": it is larger than 1 MB; a file for this program is a few kB of text")));
  }

  private Path file(String text) throws IOException {
    Path file = folder.resolve("billet.json");
    Files.writeString(file, text);
    return file;
  }

  /** With single quotes throughout, as the tables here have them. */
  private static String afterFileName(String said) {
    return said.replaceFirst("^[^:]*: ?", "").replace('"', '\'');
  }

  /** The only mistake, with its exact place. */
  private static String said(Path file) {
    Mistake only = mistakes(file).get(0);
    assertEquals(1, mistakes(file).size());
    return only.place() + ": " + only.said();
  }

  private static List<Mistake> mistakes(Path file) {
    List<Mistake> all = assertThrows(Fault.class, () -> KnownSteels.read(file)).mistakes();
    for (Mistake m : all) {
      assertEquals(file.toString(), m.place().file());
      oneLine(m.sentence().substring(file.toString().length()), "");
    }
    return all;
  }

  private static void oneLine(String said, String report) {
    assertFalse(said.matches("(?s).*\\p{Cntrl}.*"), report + said);
    assertTrue(said.contains("; ") && said.length() < 330, report + said);
  }
}
