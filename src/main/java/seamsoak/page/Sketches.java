package seamsoak.page;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.data.Fault;
import seamsoak.page.form.Kit;
import seamsoak.page.form.Proof;

/** Small drawings of the billets on the shelf, as each is at its end. */
final class Sketches {
  private static final int MOST = 100;

  private final Shelf shelf;
  private final Desks desks;
  private final Kit kit;
  private final Map<String, byte[]> drawn =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, byte[]> eldest) {
          return size() > MOST;
        }
      };

  Sketches(Shelf shelf, Desks desks, Kit kit) {
    this.shelf = shelf;
    this.desks = desks;
    this.kit = kit;
  }

  /** That of a file of the folder; nothing where it is none, or cannot be drawn. */
  Optional<byte[]> of(String file) {
    Optional<Desk> desk = desks.of(file);
    if (desk.isPresent()) {
      return last(desk.get().now().proof().made());
    }
    if (!shelf.files().contains(file)) {
      return Optional.empty();
    }
    try {
      return of(file, Desks.read(shelf.folder().resolve(file)).text());
    } catch (Fault unreadable) {
      return Optional.empty();
    }
  }

  private synchronized Optional<byte[]> of(String file, String text) {
    byte[] svg =
        drawn.computeIfAbsent(
            Drafts.digest(text),
            k ->
                last(Proof.of(shelf.folder().resolve(file), text, kit).made()).orElse(new byte[0]));
    return svg.length == 0 ? Optional.empty() : Optional.of(svg);
  }

  private static Optional<byte[]> last(List<Proof.Made> made) {
    return made.isEmpty()
        ? Optional.empty()
        : Optional.of(made.get(made.size() - 1).svg().getBytes(StandardCharsets.UTF_8));
  }
}
