package seamsoak.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.nio.file.StandardCopyOption.REPLACE_EXISTING;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.support.Child;
import seamsoak.support.HostileCase;

/**
 * The same input gives the same bytes, whatever the machine speaks and however many cores it has.
 */
@Tag("slow")
class SameEverywhereTest {
  /** Letters whose case and order differ from language to language, and a kiln. */
  private static final String MORE =
      "\"name\": \"I\u0131\u0130i \u00C5se, stra\u00DFe \u03A3\", \"equipment\":"
          + " { \"kiln\": { \"highest\": \"1250 C\", \"ramp\": \"500 C/h\" } },";

  private static Map<String, byte[]> plain;

  @TempDir private Path folder;

  @BeforeAll
  static void onAPlainMachine(@TempDir Path folder) throws Exception {
    plain =
        answers(
            folder,
            "-Duser.language=en -Duser.country=US -Duser.timezone=UTC -Dfile.encoding=UTF-8"
                + " -XX:ActiveProcessorCount=1");
    for (String kind : List.of("svg", "png", "html", "json", "csv", "txt")) {
      assertTrue(
          plain.keySet().stream().anyMatch(name -> name.endsWith("." + kind)),
          kind + " in " + plain.keySet());
    }
    String said = new String(plain.get("standard output"), UTF_8);
    assertEquals(EveryAnswer.LINES.size(), said.split("exit code 0 of ").length - 1, said);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        // the same once more
        "-Duser.language=en -Duser.country=US -Duser.timezone=UTC -Dfile.encoding=UTF-8"
            + " -XX:ActiveProcessorCount=1",
        // i without a dot, and every core that there is
        "-Duser.language=tr -Duser.country=TR -Duser.timezone=Asia/Kathmandu"
            + " -Dfile.encoding=ISO-8859-9 -XX:ActiveProcessorCount=8",
        // digits of its own
        "-Duser.language=ar -Duser.country=EG -Duser.timezone=Pacific/Apia"
            + " -Dfile.encoding=US-ASCII -XX:ActiveProcessorCount=2",
        "-Duser.language=hi -Duser.country=IN -Duser.extensions=u-nu-deva"
            + " -Duser.timezone=America/St_Johns -XX:ActiveProcessorCount=2",
        // comma for the decimal point
        "-Duser.language=de -Duser.country=DE -Dfile.encoding=UTF-16 -XX:ActiveProcessorCount=4"
      })
  void theBytesAreTheSame(String settings) throws Exception {
    Map<String, byte[]> here = answers(folder, settings);
    assertEquals(plain.keySet(), here.keySet());
    plain.forEach((name, bytes) -> assertArrayEquals(bytes, here.get(name), name));
  }

  /** All that a run prints and writes, by name. */
  private static Map<String, byte[]> answers(Path folder, String settings) throws Exception {
    String quick = HostileCase.read(HostileCase.FOLDER.resolve("quick.json"));
    Files.writeString(folder.resolve("billet.json"), quick.replaceFirst("\\{", "{ " + MORE));
    Files.copy(Path.of("alloy-data/logs/forge.csv"), folder.resolve("run.csv"), REPLACE_EXISTING);
    Files.copy(
        Path.of("alloy-data/billets/mosaic.json"), folder.resolve("tiles.json"), REPLACE_EXISTING);
    Child child =
        Child.start(folder, List.of(settings.split(" ")), EveryAnswer.class.getName(), List.of());
    assertEquals(0, child.code(), child.said());
    Map<String, byte[]> all = new TreeMap<>();
    all.put("standard output", Files.readAllBytes(child.out()));
    all.put("standard error", Files.readAllBytes(child.err()));
    all.put("the billet", Files.readAllBytes(folder.resolve("billet.json")));
    try (Stream<Path> files = Files.list(folder.resolve("out"))) {
      for (Path file : (Iterable<Path>) files::iterator) {
        all.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return all;
  }

  /** The program as it is called, for one command after the other. */
  static final class EveryAnswer {
    private static final List<String> LINES =
        List.of(
            "steels",
            "steels 75Ni8 --sources",
            "pair O1 1084 --json",
            "pairs 1084 1095 75Ni8 O1 --csv --out out --png",
            "migrate 1084 75Ni8 --layer 1mm,0.5mm --at 1100C --for 20min",
            "decarb 1095 --at 2100F --for 30min --json",
            "decarb 9260 --at 1580F --for 40min --atmosphere still-air",
            "schedule 1084 75Ni8 --layer 1mm --section 6mm --json",
            "heat run.csv --tip steel --planned 1120C",
            "heat run.csv --tip steel --json",
            "check billet.json",
            "face billet.json --out out/end.png --json",
            "face tiles.json --out out/top.png",
            "schedule billet.json --samples 4 --json",
            "kiln billet.json billet.json --samples 0 --units both",
            "kiln billet.json billet.json --samples 0 --json",
            "record billet.json --step 1 --at 1210C --for 4.5min --on 2026-11-20",
            "record billet.json --undo --json",
            "record billet.json --step 1 --at 1210C --for 4.5min --json");

    private EveryAnswer() {}

    public static void main(String[] args) {
      PrintWriter out = new PrintWriter(new OutputStreamWriter(System.out, UTF_8));
      PrintWriter err = new PrintWriter(new OutputStreamWriter(System.err, UTF_8));
      for (String line : LINES) {
        int code = Commands.run(new Terminal(false, Optional::empty), out, err, line.split(" "));
        out.println("exit code " + code + " of " + line);
      }
      out.flush();
      err.flush();
      Main.main("plan billet.json --samples 4 --sources --png --out out".split(" "));
    }
  }
}
