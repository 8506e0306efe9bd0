package seamsoak.page.form;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Size;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.billet.file.BilletReader;
import seamsoak.carbon.SeamName;
import seamsoak.chart.Charts;
import seamsoak.chart.figure.SectionFigure;
import seamsoak.chart.figure.SectionFigures;
import seamsoak.data.Fault;
import seamsoak.data.Faults;
import seamsoak.data.JsonEditor;
import seamsoak.data.JsonPath;
import seamsoak.data.Mistake;
import seamsoak.state.SeamPlace;
import seamsoak.unit.UnitSystem;
import seamsoak.words.SeamWords;

/**
 * What reader and walk say of a billet's text at once.
 *
 * @param billet nothing where a mistake keeps it from being read
 * @param mistakes all of them
 * @param made what it looks like as laid and after each step, as far as it can be made
 */
public record Proof(Optional<Billet> billet, List<Mistake> mistakes, List<Made> made) {
  private static final Pattern STEP = Pattern.compile("steps\\[([0-9]+)].*");

  /** What has nothing to do with the shape, and need not be right for it to be drawn. */
  private static final List<String> NOT_DRAWN =
      List.of("blade", "soak", "equipment", "quenchants", "shown", "visible", "covered", "curves");

  /**
   * The billet after a step.
   *
   * @param notes size, what cannot be seen, and the carbon that is missing at its seams
   * @param svg its section
   * @param figure that this is drawn from
   */
  public record Made(List<String> notes, String svg, SectionFigure figure) {}

  public Proof {
    mistakes = List.copyOf(mistakes);
    made = List.copyOf(made);
  }

  /** The billet, if it can be answered. */
  public Optional<Billet> sound() {
    return billet.filter(b -> mistakes.isEmpty());
  }

  public static Proof of(Path file, String text, Kit kit) {
    Faults faults = new Faults();
    Optional<Billet> billet = faults.tried(() -> BilletReader.read(file, text, kit.names()));
    Optional<Billet> drawn =
        billet.isPresent() ? billet : drawable(file, text, faults.mistakes(), kit);
    List<Stage> stages =
        drawn.map(b -> walk(b, billet.isPresent() ? faults : new Faults(), kit)).orElse(List.of());
    return new Proof(
        billet, faults.mistakes(), drawn.map(b -> made(b, stages, kit)).orElse(List.of()));
  }

  private static List<Stage> walk(Billet billet, Faults faults, Kit kit) {
    Shop shop = new Shop(kit.correlations(), Assumptions.USUAL, Resolution.SAMPLE);
    return new BilletWalk(shop).walk(billet, faults);
  }

  /** The billet up to its first step with a mistake. */
  private static Optional<Billet> drawable(
      Path file, String text, List<Mistake> mistakes, Kit kit) {
    try {
      JsonEditor editor = new JsonEditor(file.toString(), text);
      for (String key : NOT_DRAWN) {
        JsonPath path = JsonPath.of(key);
        editor = editor.at(path).isPresent() ? editor.remove(path) : editor;
      }
      int first =
          mistakes.stream()
              .map(m -> STEP.matcher(m.field()))
              .filter(Matcher::matches)
              .mapToInt(m -> Integer.parseInt(m.group(1)))
              .min()
              .orElse(Integer.MAX_VALUE);
      JsonPath steps = JsonPath.of("steps");
      while (first < Integer.MAX_VALUE && editor.at(steps.item(first)).isPresent()) {
        editor = editor.remove(steps.item(first));
      }
      return Optional.of(BilletReader.read(file, editor.text(), kit.names()));
    } catch (Fault nothing) {
      return Optional.empty();
    }
  }

  private static List<Made> made(Billet billet, List<Stage> stages, Kit kit) {
    UnitSystem units = kit.units(billet);
    List<Size> sizes = stages.stream().map(s -> s.piece().size()).toList();
    List<Made> made = new ArrayList<>();
    for (SectionFigure f :
        new SectionFigures(billet.first(stages.size() - 1), sizes, units).each()) {
      List<String> notes = new ArrayList<>(f.panels().get(0).notes());
      notes.addAll(missing(stages.get(made.size()).piece()));
      made.add(new Made(notes, inline(Charts.sketch(f)), f));
    }
    return made;
  }

  /** The deepest line of all that each step has joined, as far as it is welded. */
  private static List<String> missing(Workpiece piece) {
    Map<SeamName, Double> deepest = new LinkedHashMap<>();
    for (SeamPlace place : SeamPlace.of(piece)) {
      SeamName made = place.joints().made();
      if (made.kind() != SeamName.Kind.LAYERS) {
        deepest.merge(made, place.carbon().farPct() - place.carbon().seamPct(), Math::max);
      }
    }
    return deepest.entrySet().stream()
        .map(e -> SeamWords.missing(e.getKey(), e.getValue()))
        .toList();
  }

  /** The SVG as an element: without the declaration that only a file of its own has. */
  public static String inline(byte[] file) {
    String svg = new String(file, StandardCharsets.UTF_8);
    return svg.substring(svg.indexOf("<svg")).strip();
  }
}
