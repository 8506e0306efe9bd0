package seamsoak.support;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.JsonWriter;

/** Numbered commands to a browser and its answers, over a WebSocket. */
final class Wire implements AutoCloseable {
  private final Map<Integer, CompletableFuture<ObjectValue>> waiting = new ConcurrentHashMap<>();
  private final AtomicInteger last = new AtomicInteger();
  private final BiConsumer<String, String> events;
  private final WebSocket socket;

  /**
   * @param events is told what else the browser says: the event's name and the whole of it
   */
  Wire(URI address, BiConsumer<String, String> events) throws Exception {
    this.events = events;
    this.socket =
        HttpClient.newHttpClient()
            .newWebSocketBuilder()
            .buildAsync(address, new Ear())
            .get(Screen.PATIENCE_SECONDS, TimeUnit.SECONDS);
  }

  private final class Ear implements WebSocket.Listener {
    private final StringBuilder heard = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean end) {
      heard.append(data);
      if (end) {
        ObjectValue said = (ObjectValue) JsonTree.parse("browser", heard.toString());
        if (member(said, "method") != null) {
          events.accept(text(said, "method"), heard.toString());
        }
        heard.setLength(0);
        if (member(said, "id") instanceof JsonValue.NumberValue id) {
          Optional.ofNullable(waiting.remove((int) id.value())).ifPresent(w -> w.complete(said));
        }
      }
      from.request(1);
      return null;
    }
  }

  ObjectValue call(String method, Map<String, ?> params) throws Exception {
    int id = last.incrementAndGet();
    CompletableFuture<ObjectValue> answer = new CompletableFuture<>();
    waiting.put(id, answer);
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("id", id);
    all.put("method", method);
    all.put("params", params);
    socket.sendText(JsonWriter.write(all), true).get(Screen.PATIENCE_SECONDS, TimeUnit.SECONDS);
    ObjectValue said = answer.get(Screen.PATIENCE_SECONDS, TimeUnit.SECONDS);
    if (!(member(said, "result") instanceof ObjectValue result)) {
      throw new AssertionError(method + ": " + said);
    }
    return result;
  }

  /** Says the last word, which nobody answers. */
  void goodbye(String method) {
    socket.sendText("{\"id\": 0, \"method\": \"" + method + "\", \"params\": {}}", true);
  }

  @Override
  public void close() {
    socket.abort();
  }

  static JsonValue member(JsonValue object, String key) {
    JsonValue.Member member = ((ObjectValue) object).members().get(key);
    return member == null ? null : member.value();
  }

  static String text(JsonValue object, String key) {
    return member(object, key) instanceof JsonValue.TextValue text ? text.text() : "";
  }
}
