package seamsoak.page;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What a browser asks for.
 *
 * @param method such as {@code GET}
 * @param path as it was sent, without what follows a question mark
 * @param query what follows it
 * @param headers by their names in small letters
 * @param form what was sent along; empty until it has been read
 * @param file that was sent along, if one was
 */
record Asked(
    String method,
    String path,
    Map<String, String> query,
    Map<String, List<String>> headers,
    Map<String, String> form,
    Optional<Multipart.Sent> file) {
  private static final int MOST_FIELDS = 10_000;

  /** Names are small letters, so that it does not matter how they were sent. */
  static Asked of(
      String method, String path, Map<String, String> query, Map<String, List<String>> sent) {
    Map<String, List<String>> headers = new LinkedHashMap<>();
    sent.forEach((name, values) -> headers.put(name.toLowerCase(Locale.ROOT), List.copyOf(values)));
    return new Asked(method, path, query, headers, Map.of(), Optional.empty());
  }

  Asked with(Map<String, String> read) {
    return new Asked(method, path, query, headers, read, Optional.empty());
  }

  Asked with(Multipart read) {
    return new Asked(method, path, query, headers, read.fields(), read.file());
  }

  boolean isPost() {
    return method.equals("POST");
  }

  /** The values of a header. */
  List<String> all(String header) {
    return headers.getOrDefault(header, List.of());
  }

  /** Whether a header is there once and just so. */
  boolean has(String header, String value) {
    return all(header).equals(List.of(value));
  }

  /** A field of the form; empty where there is none. */
  String field(String name) {
    return form.getOrDefault(name, "");
  }

  /** A whole number that was sent, if it is one. */
  static Optional<Integer> number(String text) {
    return text != null && text.matches("[0-9]{1,9}")
        ? Optional.of(Integer.valueOf(text))
        : Optional.empty();
  }

  /**
   * Reads fields as a form sends them; {@code IllegalArgumentException} for what no form sends: a
   * broken escape, a field twice, far too many.
   */
  static Map<String, String> fields(String encoded) {
    Map<String, String> fields = new LinkedHashMap<>();
    if (encoded == null || encoded.isEmpty()) {
      return fields;
    }
    for (String field : encoded.split("&")) {
      int equals = field.indexOf('=');
      String name = decoded(equals < 0 ? field : field.substring(0, equals));
      String value = equals < 0 ? "" : decoded(field.substring(equals + 1));
      if (fields.put(name, value) != null || fields.size() > MOST_FIELDS) {
        throw new IllegalArgumentException("a field stands twice, or there are too many");
      }
    }
    return fields;
  }

  private static String decoded(String text) {
    return URLDecoder.decode(text, StandardCharsets.UTF_8);
  }
}
