package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages against the standards. */
@Tag("slow")
class PageHtmlTest {
  @TempDir private Path folder;

  @Test
  void theHtmlCheckerFindsNothing() throws Exception {
    Files.copy(Path.of("alloy-data/billets/mosaic.json"), folder.resolve("mosaic.json"));
    Files.writeString(folder.resolve("slip.json"), "{");
    try (Page page = Pageful.open(folder)) {
      Visitor smith = Visitor.in(page);
      check("told", smith.get("/none"));
      check("shelf", smith.get("/"));
      check("taken", smith.post("/new", Map.of("pattern", "mosaic", "name", "mosaic")));
      String desk = smith.post("/open", Map.of("file", "mosaic.json")).header("Location");
      check("bench", smith.get(desk));
      Visitor.Reply answer = smith.get(desk + "/answer?stage=NONE&done=0");
      check("answer", answer);
      check("bench with an answer", smith.get(desk));
      check("card", smith.get(desk + "/card"));
      check("fire", smith.get(desk + "/fire"));
      check("etch", smith.get(desk + "/fire.etch"));
      check("log", smith.get(desk + "/fire.log"));
      Files.copy(Path.of("alloy-data/billets/san-mai.json"), folder.resolve("three.json"));
      check("shelf with ticks", smith.get("/"));
      check("one kiln", smith.get("/kiln?b0=mosaic.json&b1=three.json"));
      check("phones", smith.get("/phones"));
      smith.post(
          desk + "/edit",
          Map.of("rev", "1", "steps[0].heats[0].at", "hot", "stack.steels[0]", "\"<x>'&"));
      check("faults", smith.get(desk));
      String none = smith.post("/new", Map.of("pattern", "nothing")).header("Location");
      check("nothing", smith.get(none));
    }
  }

  private void check(String name, Visitor.Reply reply) throws Exception {
    Path file = Files.writeString(folder.resolve(name + ".html"), reply.body());
    EmbeddedValidator checker = new EmbeddedValidator();
    checker.setOutputFormat(EmbeddedValidator.OutputFormat.TEXT);
    String said =
        checker
            .validate(file)
            .strip()
            .replaceAll(
                "Warning: Inline style violates Content Security Policy .*\nFrom line .*\n", "");
    assertEquals("Document checking completed. No errors found.", said, name);
  }
}
