package seamsoak.page;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a browser is answered.
 *
 * @param status of HTTP
 * @param headers besides those that every answer has
 * @param body may be empty
 */
record Answer(int status, Map<String, String> headers, byte[] body) {
  private static final String HTML = "text/html; charset=utf-8";

  static Answer html(int status, String page) {
    return of(status, HTML, page.getBytes(StandardCharsets.UTF_8));
  }

  static Answer of(int status, String type, byte[] body) {
    return new Answer(status, Map.of("Content-Type", type), body);
  }

  /** To be looked at elsewhere; the place is one of ours, never one that was asked for. */
  static Answer see(String path) {
    return new Answer(303, Map.of("Location", path), new byte[0]);
  }

  /** Nothing but that it was done. */
  static Answer nothing() {
    return new Answer(204, Map.of(), new byte[0]);
  }

  Answer with(String header, String value) {
    Map<String, String> all = new LinkedHashMap<>(headers);
    all.put(header, value);
    return new Answer(status, all, body);
  }

  /** As a file to keep, which the browser never opens by itself. */
  Answer asFile(String name) {
    return with("Content-Disposition", "attachment; filename=\"" + name + "\"");
  }
}
