package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The same input gives the same bytes, whatever the machine speaks and however many cores it has.
 */
class SameEverywhereTest {
  private static Map<String, byte[]> plain;

  @TempDir private Path folder;

  @BeforeAll
  static void onAPlainMachine(@TempDir Path folder) throws Exception {
    plain =
        plan(
            folder,
            "-Duser.language=en -Duser.country=US -Duser.timezone=UTC -Dfile.encoding=UTF-8"
                + " -XX:ActiveProcessorCount=1");
    assertTrue(plain.size() >= 8, plain.keySet().toString());
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
    Map<String, byte[]> here = plan(folder, settings);
    assertEquals(plain.keySet(), here.keySet());
    plain.forEach((name, bytes) -> assertArrayEquals(bytes, here.get(name), name));
  }

  /** All that a run prints and writes, by name. */
  private static Map<String, byte[]> plan(Path folder, String settings) throws Exception {
    Files.copy(HostileCase.FOLDER.resolve("quick.json"), folder.resolve("billet.json"));
    Child child =
        Child.start(
            folder,
            List.of(settings.split(" ")),
            "seamsoak.cli.Main",
            List.of("plan", "billet.json", "--samples", "4", "--sources", "--png", "--out", "out"));
    assertEquals(0, child.code(), child.said());
    Map<String, byte[]> all = new TreeMap<>();
    all.put("standard output", Files.readAllBytes(child.out()));
    all.put("standard error", Files.readAllBytes(child.err()));
    try (Stream<Path> files = Files.list(folder.resolve("out"))) {
      for (Path file : (Iterable<Path>) files::iterator) {
        all.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return all;
  }
}
