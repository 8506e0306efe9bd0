package seamsoak.page;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import seamsoak.data.Fault;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.JsonWriter;

/**
 * Where a page on a folder runs, written down for the user alone: whoever starts the program on it
 * once more is given a fresh link to the one that runs, so that two do not work on one billet.
 *
 * @param file that says it
 */
record Running(Path file) {
  /** Where the running one is asked; a browser lets no other page send such a header. */
  static final String AGAIN = "/again";

  static final String HEADER = "X-Seamsoak-Again";

  private static final Duration PATIENCE = Duration.ofSeconds(2);

  /** Of a folder of billets. */
  static Running of(Path state, Path folder) {
    String name = Drafts.digest(folder.toString()).substring(0, 32);
    return new Running(state.resolve("running-" + name + ".json"));
  }

  /** Writes down where this one runs. */
  void is(String address, String secret) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("address", address);
    all.put("secret", secret);
    Mine.write(file, JsonWriter.write(all));
  }

  /** The one with a secret runs no more; another that was started since may. */
  void ends(String secret) {
    try {
      if (JsonTree.read(file.toString(), file) instanceof ObjectValue o
          && Mine.text(o, "secret").equals(secret)) {
        Mine.remove(file);
      }
    } catch (Fault | IllegalArgumentException gone) {
      // then there is nothing to take away
    }
  }

  /**
   * A fresh link from the one that runs, if one does.
   *
   * @param billet to be laid on the bench; blank for none
   */
  Optional<String> link(String billet) {
    try {
      if (!(JsonTree.read(file.toString(), file) instanceof ObjectValue o)) {
        return Optional.empty();
      }
      URI ask =
          URI.create(
              Mine.text(o, "address").replaceFirst("/$", AGAIN)
                  + "?file="
                  + URLEncoder.encode(billet, StandardCharsets.UTF_8));
      if (!ask.getHost().startsWith("127.")) {
        return Optional.empty();
      }
      HttpResponse<String> answer =
          HttpClient.newBuilder()
              .connectTimeout(PATIENCE)
              .proxy(HttpClient.Builder.NO_PROXY)
              .build()
              .send(
                  HttpRequest.newBuilder(ask)
                      .timeout(PATIENCE)
                      .header(HEADER, Mine.text(o, "secret"))
                      .build(),
                  HttpResponse.BodyHandlers.ofString());
      return answer.statusCode() == 200 ? Optional.of(answer.body()) : Optional.empty();
    } catch (Fault | IllegalArgumentException | IOException none) {
      return Optional.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }
}
