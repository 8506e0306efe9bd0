package seamsoak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A page, worked by forms alone, as a browser without the script sends them. */
abstract class FormsOnly {
  @TempDir Path folder;
  Page page;
  Visitor smith;

  @BeforeEach
  void open() throws IOException {
    page = Pageful.open(folder);
    smith = Visitor.in(page);
  }

  @AfterEach
  void close() {
    page.close();
  }

  String begun(String pattern, String units, String name) throws IOException {
    Visitor.Reply reply =
        smith.post("/new", Map.of("pattern", pattern, "units", units, "name", name));
    assertEquals(303, reply.status(), reply.body());
    return reply.header("Location");
  }

  static String number(Visitor.Reply bench) {
    Matcher m = Pattern.compile("name=\"rev\" value=\"([0-9]+)\"").matcher(bench.body());
    assertTrue(m.find(), bench.body());
    return m.group(1);
  }

  Visitor.Reply edit(String desk, String number, Map<String, String> fields) throws IOException {
    Map<String, String> all = new LinkedHashMap<>(fields);
    all.put("rev", number);
    return smith.post(desk + "/edit", all);
  }

  /** Edits what is there now. */
  Visitor.Reply edit(String desk, Map<String, String> fields) throws IOException {
    Visitor.Reply reply = edit(desk, number(smith.get(desk)), fields);
    assertEquals(303, reply.status(), reply.body());
    return smith.get(desk);
  }

  static String value(Visitor.Reply bench, String field) {
    Matcher m =
        Pattern.compile("name=\"" + Pattern.quote(field) + "\" value=\"([^\"]*)\"")
            .matcher(bench.body());
    return m.find() ? m.group(1) : "no such field";
  }
}
