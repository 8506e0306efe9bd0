package seamsoak.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;

class SourceTableTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "agren1986",
        "agren1982",
        "gustafson1985",
        "hallstedt2010",
        "andrews1965",
        "grange1961",
        "hougardy1984",
        "leelee2007",
        "leelee2008",
        "vanbohemen2012",
        "ingberkunert2022",
        "hirai1997",
        "astm-e112",
        "en1993-1-2",
        "birks1970",
        "darken1949",
        "oneill1993",
        "neumannperson1968",
        "common-practice",
        "judgement",
        "memory",
        "trade-data-sheet"
      })
  void holdsEverySourceThatTheProgramLeansOn(String key) {
    Source source = SourceTable.load(DataFolder.packed()).find(key).orElseThrow();
    assertEquals(key, source.key());
    assertFalse(source.citation().isBlank());
  }

  @Test
  void keysAreLowerCaseWords() {
    for (Source source : SourceTable.load(DataFolder.packed()).sources()) {
      assertTrue(source.key().matches("[a-z0-9]+(-[a-z0-9]+)*"), source.key());
    }
  }

  @Test
  void saysNothingOfUnknownKeys() {
    assertEquals(Optional.empty(), SourceTable.load(DataFolder.packed()).find("nobody1900"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a,One,seen,;a,Two,seen, | :3:1: source 'a' stands twice",
        "a,,seen, | :2:3: the citation is blank",
        ",One,seen, | :2:1: the key is blank",
        "a,One,rumor, | :2:7: unknown standing 'rumor'; the words are 'seen', 'partly seen'"
      })
  void refusesFaultyTables(String lines, String message) throws IOException {
    Files.writeString(
        folder.resolve("sources.csv"), "key,citation,standing,note\n" + lines.replace(";a", "\na"));
    Fault fault = assertThrows(Fault.class, () -> SourceTable.load(DataFolder.over(folder)));
    assertTrue(fault.getMessage().contains(message), fault.getMessage());
  }
}
