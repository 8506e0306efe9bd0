package seamsoak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The notice tells of each library in the jar, of no other, and its license is there. */
class NoticeTest {
  /** What the build wrote: group, name, kind, version, scope. */
  private static final Path LIBRARIES = Path.of("target/libraries.txt");

  private static final Path META_INF = Path.of("target/classes/META-INF");

  /** Jars that bring no license file of their own; the notice says where theirs lies. */
  private static final Set<String> BARE =
      Set.of("jfreechart", "jte-runtime", "picocli", "qrcodegen");

  @Test
  void theNoticeNamesWhatIsInTheJar() throws IOException {
    assertEquals(libraries("$1 $2"), found("(?m)^  (\\S+ [0-9][0-9.]*)$", notice(), "$1"));
  }

  @Test
  void theLicensesTravelAlong() throws IOException {
    assertTrue(Files.readString(META_INF.resolve("LICENSE")).contains("Apache License"));
    assertTrue(
        Files.readString(META_INF.resolve("licenses/LGPL-2.1.txt"))
            .contains("GNU LESSER GENERAL PUBLIC LICENSE\n                       Version 2.1"));
    for (String name : libraries("$1")) {
      Path own = META_INF.resolve("licenses").resolve(name);
      boolean has = Files.isDirectory(own) && own.toFile().list().length > 0;
      assertEquals(!BARE.contains(name), has, name);
    }
  }

  private static Set<String> libraries(String as) throws IOException {
    return found(
        "(?m)^ *[\\w.-]+:([\\w.-]+):jar:([\\w.-]+):(?:compile|runtime)\\b",
        Files.readString(LIBRARIES),
        as);
  }

  private static String notice() throws IOException {
    return Files.readString(META_INF.resolve("NOTICE"));
  }

  private static Set<String> found(String what, String text, String as) {
    return Pattern.compile(what)
        .matcher(text)
        .results()
        .map(m -> filled(m, as))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String filled(MatchResult m, String as) {
    String one = as.replace("$1", m.group(1));
    return m.groupCount() > 1 ? one.replace("$2", m.group(2)) : one;
  }
}
