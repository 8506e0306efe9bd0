package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.support.Appender;
import seamsoak.support.Child;

/** A file of the user's is changed without harm, by one run or by several. */
class UserFileTest {
  private static final String START = "{ \"all\": [] } // mine\n";

  @TempDir private Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("bar.json"), text);
  }

  private static UserFile read(Path file) {
    return UserFile.read(file.getFileName().toString(), file);
  }

  private String content(String name) throws IOException {
    return Files.readString(folder.resolve(name));
  }

  private Set<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return new TreeSet<>(
          all.map(f -> f.getFileName().toString())
              .filter(name -> !name.equals(FolderLock.NAME))
              .toList());
    }
  }

  private static void refused(String said, Runnable what) {
    Fault fault = assertThrows(Fault.class, what::run);
    assertTrue(fault.getMessage().contains(said), fault.getMessage());
  }

  @Test
  void itIsKeptAsItWasBeforeTheFirstWriting() throws Exception {
    Path file = file("{ }");
    UserFile first = read(file);
    UserFile second = first.write("{ \"a\": 1 }", "one");
    assertEquals(folder.toRealPath().resolve("bar.json.before"), second.before());
    second.write("{ \"a\": 2 }", "two");
    assertEquals("{ \"a\": 2 }", content("bar.json"));
    assertEquals("{ }", content("bar.json.before"));
    assertEquals(Set.of("bar.json", "bar.json.before", "bar.json.undo"), names());
    Files.writeString(file, "{ \"b\": 1 }");
    read(file).write("{ \"b\": 2 }", "three");
    assertEquals("{ }", content("bar.json.before"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\uFEFF{ \"all\": [] }",
        "{\r\n \"all\": [] // \uD83D\uDD25\uD83D\uDD28\r\n}\r\n",
        "// \u00fc\r{\"all\":[ /* \uD83D\uDD25 */ ]}\r"
      })
  void allThatWasWrittenIsTakenBackByteForByte(String text) throws Exception {
    Path file = file(text);
    List<byte[]> states = new ArrayList<>();
    List<String> items = List.of("\uD83D\uDD25", "\uD83D\uDD28", "x", "x", "\u00fc");
    for (String item : items) {
      states.add(Files.readAllBytes(file));
      Appender.append(file, item);
    }
    assertEquals(text.startsWith("\uFEFF"), content("bar.json").startsWith("\uFEFF"));
    for (int i = items.size() - 1; i >= 0; i--) {
      assertEquals(items.get(i), read(file).undo().what());
      assertArrayEquals(states.get(i), Files.readAllBytes(file));
    }
    refused("there is nothing to take back", () -> read(file).undo());
    assertEquals(Set.of("bar.json", "bar.json.before"), names());
  }

  /** Whoever has not heard that something was taken may send it again, also after another start. */
  @Test
  void whatWasSentIsKnownAgainUntilItIsTakenBack(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("sent.json");
    Files.writeString(file, "{ \"a\": 1 }");
    UserFile.read("sent.json", file).write("{ \"a\": 2 }", "first", "id-1");
    UserFile.read("sent.json", file).write("{ \"a\": 3 }", "second");
    UserFile again = UserFile.read("sent.json", file);
    assertTrue(again.holds("id-1"));
    assertFalse(again.holds("id-2"));
    assertEquals(Optional.of("second"), again.last());
    UserFile once = again.undo().file();
    assertEquals(Optional.of("first"), once.last());
    UserFile twice = once.undo().file();
    assertFalse(twice.holds("id-1"));
    assertEquals(Optional.empty(), twice.last());
  }

  @Test
  void whatAnotherHandChangedMeanwhileIsNotLost() throws Exception {
    Path file = file(START);
    UserFile read = read(file);
    Files.writeString(file, "{ \"all\": [1] }");
    refused(
        "bar.json: it was changed by another hand while this ran; nothing was written",
        () -> read.write("{ }", "late"));
    refused("nothing was written", read::undo);
    assertEquals("{ \"all\": [1] }", content("bar.json"));
    assertEquals(Set.of("bar.json"), names());
    Files.delete(file);
    refused("it was taken away while this ran", () -> read.write("{ }", "late"));
    assertEquals(Set.of(), names());
  }

  @Test
  void nothingIsTakenBackThatAnotherHandHasChangedSince() throws Exception {
    Path file = file(START);
    Appender.append(file, "one");
    String changed = content("bar.json").replace("mine", "yours");
    Files.writeString(file, changed);
    refused("it was changed by another hand since the last record", () -> read(file).undo());
    assertEquals(changed, content("bar.json"));
    Appender.append(file, "two");
    read(file).undo();
    assertEquals(changed, content("bar.json"));
    refused("since the last record", () -> read(file).undo());
  }

  /** A run that was killed between its two files: what it meant to write was not written. */
  @Test
  void whatWasPutDownButNotWrittenIsNoRecord() throws Exception {
    Path file = file(START);
    Appender.append(file, "one");
    String one = content("bar.json");
    Appender.append(file, "two");
    Files.writeString(file, one);
    assertEquals("one", read(file).undo().what());
    assertEquals(START, content("bar.json"));
    Appender.append(file, "three");
    Files.writeString(file, START);
    refused("there is nothing to take back", () -> read(file).undo());
    Appender.append(file, "four");
    assertEquals("four", read(file).undo().what());
    assertEquals(START, content("bar.json"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"{ }", "{ \"records\": [1] }", "{ \"records\": [{ \"what\": 1 }] }", "[]", "x"})
  void aFileOfThatNameByAnotherHandIsNotWrittenOver(String text) throws Exception {
    Path file = file(START);
    Files.writeString(folder.resolve("bar.json.undo"), text);
    refused("bar.json.undo", () -> read(file).write("{ }", "one"));
    refused("bar.json.undo", () -> read(file).undo());
    assertEquals(START, content("bar.json"));
    assertEquals(text, content("bar.json.undo"));
  }

  @Test
  void whatWasWrittenLongAgoIsForgotten() throws Exception {
    Path file = file(START);
    for (int i = 0; i < 105; i++) {
      Appender.append(file, "item " + i);
    }
    for (int i = 0; i < 100; i++) {
      read(file).undo();
    }
    refused("there is nothing to take back", () -> read(file).undo());
    assertTrue(content("bar.json").contains("\"item 4\"]"), content("bar.json"));
  }

  @Test
  void aLinkStaysOne() throws Exception {
    Path file = file(START);
    Path link =
        Files.createSymbolicLink(
            Files.createDirectory(folder.resolve("links")).resolve("my.json"), file);
    Appender.append(link, "one");
    assertTrue(Files.isSymbolicLink(link));
    assertTrue(content("bar.json").contains("one"));
    assertEquals(Set.of("bar.json", "bar.json.before", "bar.json.undo", "links"), names());
  }

  @Test
  void whoMayReadItStays() throws Exception {
    Path file = file(START);
    assumeTrue(Files.getFileStore(file).supportsFileAttributeView("posix"));
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));
    Appender.append(file, "one");
    for (String name : names()) {
      assertEquals(
          "rw-rw----",
          PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(name))),
          name);
    }
  }

  @Test
  void whatIsNoFileIsRefused() throws Exception {
    refused("there is no such file", () -> read(folder.resolve("bar.json")));
    refused("it is a folder", () -> read(folder));
    refused("it is a device or pipe", () -> read(Path.of("/dev/null")));
    Path file = Files.write(folder.resolve("bar.json"), new byte[] {'{', '}', (byte) 0xE4});
    refused("this is not UTF-8", () -> read(file));
    Files.writeString(file, "{" + " ".repeat(1 << 20) + "}");
    refused("it is larger than 1 MB", () -> read(file));
    Files.writeString(file, "{ }");
    UserFile read = read(file);
    refused("it would grow beyond 1 MB", () -> read.write("{" + " ".repeat(1 << 20) + "}", "big"));
    refused("what should be written is no text", () -> read.write("{ \"\uD83D\" }", "half"));
    Files.createDirectory(folder.resolve("bar.json.undo"));
    refused("bar.json.undo: it is a folder", () -> read.write("{}", "one"));
    assertEquals("{ }", content("bar.json"));
    assertEquals(Set.of("bar.json", "bar.json.undo"), names());
  }

  @Test
  void threadsAtOnceLoseNothing() throws Exception {
    Path file = file(START);
    List<Thread> threads = new ArrayList<>();
    for (String name : List.of("a", "b", "c")) {
      Thread thread = new Thread(() -> Appender.main(new String[] {file.toString(), name, "10"}));
      threads.add(thread);
      thread.start();
    }
    for (Thread thread : threads) {
      thread.join();
    }
    allAreThere(file, 10, "a", "b", "c");
  }

  @Test
  @Tag("slow")
  void processesAtOnceLoseNothing() throws Exception {
    Path file = file(START);
    List<Child> children = new ArrayList<>();
    for (String name : List.of("a", "b", "c")) {
      children.add(
          Child.start(
              folder, List.of(), Appender.class.getName(), List.of(file.toString(), name, "30")));
    }
    for (Child child : children) {
      assertEquals(0, child.code(), child.said());
    }
    allAreThere(file, 30, "a", "b", "c");
  }

  private void allAreThere(Path file, int many, String... writers) throws IOException {
    String text = content("bar.json");
    for (String writer : writers) {
      int place = 0;
      for (int i = 0; i < many; i++) {
        int next = text.indexOf("\"" + writer + i + "\"");
        assertTrue(next > place, writer + i + " is not where it should be in " + text);
        place = next;
      }
    }
    for (int i = 0; i < many * writers.length; i++) {
      read(file).undo();
    }
    assertEquals(START, content("bar.json"));
    assertEquals(Set.of("bar.json", "bar.json.before"), names());
    assertFalse(Files.exists(folder.resolve("bar.json.undo")));
  }

  /** Killed at any moment: the file is whole, and all that was written can be taken back. */
  @Test
  @Tag("slow")
  @Tag("long")
  void aKillLeavesAWholeFile() throws Exception {
    int kills = Integer.getInteger("kills", Boolean.getBoolean("long") ? 50 : 4);
    Path file = file(START);
    int behind = 0;
    for (int kill = 0; kill < kills; kill++) {
      Child child =
          Child.start(
              folder, List.of(), Appender.class.getName(), List.of(file.toString(), kill + "-"));
      while (Files.size(child.out()) == 0) {
        Thread.sleep(1);
      }
      Thread.sleep(kill * 7 % 60);
      child.process().destroyForcibly();
      child.code();
      behind += names().stream().anyMatch(n -> n.startsWith(".")) ? 1 : 0;
      JsonTree.read("bar.json", file);
      if (kill % 2 == 0) {
        Appender.append(file, "after");
        Set<String> left = names();
        assertEquals(Set.of("bar.json", "bar.json.before", "bar.json.undo"), left);
        assertEquals("after", read(file).undo().what());
      }
      int taken = 0;
      while (Files.exists(folder.resolve("bar.json.undo")) && !content("bar.json").equals(START)) {
        read(file).undo();
        taken++;
      }
      assertEquals(START, content("bar.json"), taken + " taken back");
    }
    System.out.println(
        "Killed while changing a file: " + kills + " times, " + behind + " with something left");
  }
}
