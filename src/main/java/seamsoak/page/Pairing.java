package seamsoak.page;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import seamsoak.billet.Billet;
import seamsoak.billet.JustWelded;
import seamsoak.data.Fault;
import seamsoak.page.form.Kit;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.PairAdvisor;
import seamsoak.pairing.Stock;
import seamsoak.plan.PlanAdvisor;
import seamsoak.report.AnswerPage;
import seamsoak.report.SteelsPage;
import seamsoak.state.Progress;
import seamsoak.steel.Steel;
import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;
import seamsoak.words.PageWords;
import seamsoak.words.Sentence;

/** Two steels without a billet: whether they belong together, and the cycles of a bar of them. */
final class Pairing {
  private final Kit kit;
  private final List<BenchPage.Named> steels;

  /**
   * What is shown.
   *
   * @param asked fields by their names, as they were sent
   * @param faults what is wrong, by the field
   * @param answers what is read at once
   * @param pieces all else
   * @param layers of a bar of them, where its sizes were given
   */
  record View(
      Map<String, String> asked,
      Map<String, String> faults,
      List<AnswerPage.Piece> answers,
      List<AnswerPage.Piece> pieces,
      String layers,
      List<BenchPage.Named> steels) {
    String value(String field) {
      return asked.getOrDefault(field, "");
    }

    String fault(String field) {
      return faults.getOrDefault(field, "");
    }
  }

  Pairing(Kit kit) {
    this.kit = kit;
    this.steels = BenchPage.steels(kit.steels());
  }

  /**
   * Answers a form; one at a time, since it takes a processor.
   *
   * @param bare what a number without a unit is in
   */
  synchronized View of(Map<String, String> asked, UnitSystem bare) {
    Map<String, String> faults = new LinkedHashMap<>();
    if (asked.getOrDefault("first", "").isBlank() && asked.getOrDefault("second", "").isBlank()) {
      return new View(asked, faults, List.of(), List.of(), "", steels);
    }
    UnitSystem units = kit.asked().orElse(bare);
    Optional<Length> layer = length(asked, "layer", bare, faults);
    Optional<Length> other = length(asked, "other", bare, faults).or(() -> layer);
    Optional<Length> section = length(asked, "section", bare, faults);
    if (other.isPresent() && layer.isEmpty()) {
      faults.putIfAbsent("layer", PageWords.needed(bare.show("0.020 in", "0.5 mm")));
    }
    Optional<PairAdvice> stock = stock(asked);
    if (stock.isPresent()) {
      return shown(asked, faults, stock.get(), Optional.empty(), units);
    }
    Optional<Steel> first = steel(asked, "first", faults);
    Optional<Steel> second =
        steel(asked, "second", faults).map(s -> first.map(f -> s.amongst(List.of(f))).orElse(s));
    if (first.isEmpty() || second.isEmpty() || !faults.isEmpty()) {
      return new View(asked, faults, List.of(), List.of(), "", steels);
    }
    List<Steel> both = List.of(first.get(), second.get());
    Optional<JustWelded> bar =
        layer.isPresent() && section.isPresent()
            ? Optional.of(
                JustWelded.of(
                    both, List.of(layer.get(), other.get()), section.get(), kit.correlations()))
            : Optional.empty();
    bar.filter(b -> !b.fits()).ifPresent(b -> faults.put("section", PageWords.TOO_THIN));
    bar.filter(b -> b.count() > JustWelded.MOST_LAYERS)
        .ifPresent(b -> faults.put("layer", PageWords.tooMany(b.count(), JustWelded.MOST_LAYERS)));
    PairAdvice pair =
        kit.pairs()
            .advise(
                both.get(0),
                both.get(1),
                new PairAdvisor.Asked(
                    metres(layer), metres(other), OptionalDouble.empty(), metres(section)));
    Optional<SteelsPage.Treated> treated =
        bar.filter(b -> faults.isEmpty()).map(b -> treated(b, units));
    return shown(asked, faults, pair, treated, units);
  }

  private View shown(
      Map<String, String> asked,
      Map<String, String> faults,
      PairAdvice pair,
      Optional<SteelsPage.Treated> treated,
      UnitSystem units) {
    SteelsPage page = new SteelsPage(pair, treated, units);
    String layers = treated.map(t -> Integer.toString(t.bar().count())).orElse("");
    return new View(asked, faults, page.answers(), page.pieces(), layers, steels);
  }

  private SteelsPage.Treated treated(JustWelded bar, UnitSystem units) {
    Billet billet = bar.billet(units);
    return new SteelsPage.Treated(
        bar, new PlanAdvisor(kit.correlations(), kit.cautions(), 0).treat(billet, Progress.NONE));
  }

  /** A word such as scrap, where no steel has that name. */
  private Optional<PairAdvice> stock(Map<String, String> asked) {
    List<String> names =
        Stream.of("first", "second").map(k -> asked.getOrDefault(k, "").strip()).toList();
    return names.stream()
        .filter(n -> known(n).isEmpty())
        .flatMap(n -> Stock.named(n).stream())
        .max(Comparator.naturalOrder())
        .map(s -> kit.pairs().withStock(names.get(0), names.get(1), s));
  }

  private Optional<Steel> known(String name) {
    try {
      return kit.steels().find(name);
    } catch (IllegalArgumentException none) {
      return Optional.empty();
    }
  }

  private Optional<Steel> steel(
      Map<String, String> asked, String field, Map<String, String> faults) {
    String name = asked.getOrDefault(field, "").strip();
    try {
      Optional<Steel> found = name.isEmpty() ? Optional.empty() : kit.steels().find(name);
      if (found.isEmpty()) {
        faults.put(
            field,
            name.isEmpty()
                ? PageWords.needed("1084")
                : PageWords.noSteel(Fault.shown(name), kit.steels().nearest(name)));
      }
      return found;
    } catch (IllegalArgumentException e) {
      faults.put(field, Sentence.ended(Sentence.capital(e.getMessage())));
      return Optional.empty();
    }
  }

  private static Optional<Length> length(
      Map<String, String> asked, String field, UnitSystem bare, Map<String, String> faults) {
    String text = asked.getOrDefault(field, "").strip();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      Length length = Length.parse(text, bare);
      if (length.metres() > 0) {
        return Optional.of(length);
      }
      faults.put(field, PageWords.NOTHING_THICK);
    } catch (IllegalArgumentException e) {
      faults.put(field, Sentence.ended(Sentence.capital(e.getMessage())));
    }
    return Optional.empty();
  }

  private static OptionalDouble metres(Optional<Length> length) {
    return length.map(l -> OptionalDouble.of(l.metres())).orElse(OptionalDouble.empty());
  }
}
