package seamsoak.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** Speaks to a page as a browser does, or as none should: byte for byte. */
final class Visitor {
  private static final int PATIENCE_MILLIS = 30_000;

  final String authority;
  final Map<String, String> headers = new LinkedHashMap<>();

  /** What came back. */
  record Reply(int status, String head, String body) {
    String header(String name) {
      return head.lines()
          .filter(l -> l.regionMatches(true, 0, name + ":", 0, name.length() + 1))
          .map(l -> l.substring(name.length() + 1).strip())
          .findFirst()
          .orElse("");
    }
  }

  Visitor(String authority) {
    this.authority = authority;
    headers.put("Host", authority);
    headers.put("Connection", "close");
  }

  /** One who was let in. */
  static Visitor in(Page page) throws IOException {
    return in(page.link());
  }

  /** One who opened a link. */
  static Visitor in(String opened) throws IOException {
    URI link = URI.create(opened);
    Visitor visitor = new Visitor(link.getAuthority());
    Reply reply = visitor.get(link.getPath() + "?" + link.getQuery());
    visitor.headers.put("Cookie", reply.header("Set-Cookie").replaceFirst(";.*", ""));
    return visitor;
  }

  Reply get(String target) throws IOException {
    return send("GET", target, Map.of(), "");
  }

  Reply post(String target, Map<String, String> form) throws IOException {
    String body =
        form.entrySet().stream()
            .map(e -> encoded(e.getKey()) + "=" + encoded(e.getValue()))
            .collect(Collectors.joining("&"));
    return post(target, Map.of(), body);
  }

  Reply post(String target, Map<String, String> other, String body) throws IOException {
    Map<String, String> all = new LinkedHashMap<>();
    all.put("Origin", "http://" + authority);
    all.put("Content-Type", "application/x-www-form-urlencoded");
    all.put("Content-Length", "" + body.getBytes(StandardCharsets.UTF_8).length);
    all.putAll(other);
    return send("POST", target, all, body);
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  /** Headers that are given replace those that are usual; an empty one is left out. */
  Reply send(String method, String target, Map<String, String> other, String body)
      throws IOException {
    Map<String, String> all = new LinkedHashMap<>(headers);
    all.putAll(other);
    all.values().removeIf(String::isEmpty);
    String head =
        all.entrySet().stream()
            .map(e -> e.getKey() + ": " + e.getValue() + "\r\n")
            .collect(Collectors.joining());
    return raw(method + " " + target + " HTTP/1.1\r\n" + head + "\r\n" + body);
  }

  /** Sends just these bytes and reads until the other side closes. */
  Reply raw(String bytes) throws IOException {
    try (Socket socket = connect()) {
      try {
        socket.getOutputStream().write(bytes.getBytes(StandardCharsets.ISO_8859_1));
      } catch (IOException refused) {
        // what it says of that may still be read
      }
      return read(socket.getInputStream());
    }
  }

  Socket connect() throws IOException {
    int colon = authority.indexOf(':');
    Socket socket =
        new Socket(
            InetAddress.getByName(authority.substring(0, colon)),
            Integer.parseInt(authority.substring(colon + 1)));
    socket.setSoTimeout(PATIENCE_MILLIS);
    return socket;
  }

  static Reply read(InputStream in) throws IOException {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    try {
      in.transferTo(all);
    } catch (IOException reset) {
      // what came before counts
    }
    String text = all.toString(StandardCharsets.UTF_8);
    int end = text.indexOf("\r\n\r\n");
    if (end < 0) {
      return new Reply(0, text, "");
    }
    return new Reply(
        Integer.parseInt(text.split(" ")[1]), text.substring(0, end), text.substring(end + 4));
  }
}
