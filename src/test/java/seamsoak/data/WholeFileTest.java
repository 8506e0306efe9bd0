package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
  private static final byte[] CONTENT = "whole".getBytes(StandardCharsets.UTF_8);

  @TempDir Path folder;

  @Test
  void aFileIsWrittenAndReplacedWithNothingLeftBeside() throws IOException {
    Path target = folder.resolve("answer.json");
    WholeFile.write(target, new byte[9]);
    WholeFile.write(target, CONTENT);
    assertArrayEquals(CONTENT, Files.readAllBytes(target));
    assertEquals(List.of(target), files());
  }

  @Test
  void itsPermissionsAreThoseOfAnyNewFile() throws IOException {
    Path target = folder.resolve("answer.json");
    Path ordinary = folder.resolve("ordinary.json");
    WholeFile.write(target, CONTENT);
    Files.write(ordinary, CONTENT);
    if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
      assertEquals(Files.getPosixFilePermissions(ordinary), Files.getPosixFilePermissions(target));
    } else {
      assertEquals(Files.isReadable(ordinary), Files.isReadable(target));
    }
  }

  @Test
  void aMissingFolderIsNamed() throws IOException {
    Path target = folder.resolve("none").resolve("answer.json");
    Fault fault = assertThrows(Fault.class, () -> WholeFile.write(target, CONTENT));
    assertEquals(
        target + ": its folder does not exist; choose another place for it", fault.getMessage());
    assertEquals(List.of(), files());
  }

  @Test
  void aFailureLeavesNoLitter() throws IOException {
    Path target = Files.createDirectory(folder.resolve("answer.json"));
    Fault fault = assertThrows(Fault.class, () -> WholeFile.write(target, CONTENT));
    assertEquals(
        target + ": it cannot be written (a folder has that name); choose another place for it",
        fault.getMessage());
    assertEquals(List.of(target), files());
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.toList();
    }
  }
}
