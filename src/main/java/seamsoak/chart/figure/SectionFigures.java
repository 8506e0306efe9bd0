package seamsoak.chart.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import seamsoak.billet.Billet;
import seamsoak.billet.Size;
import seamsoak.billet.Step;
import seamsoak.billet.Turn;
import seamsoak.carbon.SeamName;
import seamsoak.steel.Steel;
import seamsoak.unit.UnitSystem;
import seamsoak.words.SeamWords;

/**
 * The billet's section after each step.
 *
 * @param billet up to the last step that is drawn
 * @param sizes as laid and after each step
 */
public record SectionFigures(Billet billet, List<Size> sizes, UnitSystem units) {
  private static final int TO_A_DRAWING = 8;

  /** More pieces of layers than this are gray to the eye and a burden to a file. */
  private static final int MOST_PATCHES = 3000;

  /** So many to a drawing as a page holds. */
  public List<SectionFigure> all() {
    List<PatternWalk.Drawn> drawn = PatternWalk.of(billet, sizes);
    double widest = widest(drawn);
    List<SectionFigure.Panel> panels = drawn.stream().map(d -> panel(d, widest)).toList();
    int count = (panels.size() + TO_A_DRAWING - 1) / TO_A_DRAWING;
    int each = (panels.size() + count - 1) / count;
    List<SectionFigure> figures = new ArrayList<>();
    for (int i = 0; i < panels.size(); i += each) {
      String id = "section-" + (i / each + 1);
      figures.add(figure(id, panels.subList(i, Math.min(panels.size(), i + each)), widest));
    }
    return figures;
  }

  /** One for each step, all to one scale. */
  public List<SectionFigure> each() {
    List<PatternWalk.Drawn> drawn = PatternWalk.of(billet, sizes);
    double widest = widest(drawn);
    return drawn.stream()
        .map(d -> figure("after-" + d.step(), List.of(panel(d, widest)), widest))
        .toList();
  }

  private static double widest(List<PatternWalk.Drawn> drawn) {
    return drawn.stream().mapToDouble(d -> d.size().widthMetres() * 1e3).max().orElse(1);
  }

  private SectionFigure figure(String id, List<SectionFigure.Panel> panels, double widest) {
    String first = panels.get(0).name();
    String last = panels.get(panels.size() - 1).name();
    return new SectionFigure(
        id,
        "Sections of " + billet.name(),
        panels.size() == 1 ? "After step " + first : "From " + first + " to " + last,
        "The billet's section to scale after each step: "
            + panels.stream()
                .map(p -> p.name() + " " + String.join(", ", p.notes()))
                .collect(Collectors.joining("; "))
            + ".",
        units,
        panels,
        billet.stack().steels().stream().distinct().map(Steel::id).toList(),
        sets(),
        widest);
  }

  /** The sets of seams by the steps that make them. */
  private List<SectionFigure.SeamsOf> sets() {
    List<SectionFigure.SeamsOf> sets = new ArrayList<>();
    if (!Pattern.of(billet.stack()).seams().isEmpty()) {
      sets.add(new SectionFigure.SeamsOf(0, "seams of like layers"));
    }
    for (Step step : billet.steps()) {
      if (step instanceof Step.Restack || step instanceof Step.Tile) {
        SeamName made =
            new SeamName(
                step instanceof Step.Tile ? SeamName.Kind.TILES : SeamName.Kind.RESTACK,
                step.mark().number());
        sets.add(new SectionFigure.SeamsOf(made.step(), SeamWords.says(made)));
      }
    }
    return sets;
  }

  private SectionFigure.Panel panel(PatternWalk.Drawn d, double widestMm) {
    double width = d.size().widthMetres() * 1e3;
    double thickness = d.size().thicknessMetres() * 1e3;
    double across = d.jacketAcross() * 1e3;
    double up = d.jacketUp() * 1e3;
    List<String> notes = new ArrayList<>(List.of(size(width, thickness)));
    List<SectionFigure.View> views = new ArrayList<>();
    if (d.tiles().isPresent()) {
      double shown = Math.min(widestMm, d.size().lengthMetres() * 1e3);
      Pattern top = d.tiles().get().top(shown / 1e3, d.bodyWidth());
      Pattern side = d.tiles().get().side(shown / 1e3, d.bodyThickness());
      views.add(new SectionFigure.View("from above", shown, width, 0, across, true, drawable(top)));
      views.add(
          new SectionFigure.View("cut lengthwise", shown, thickness, 0, up, true, drawable(side)));
      notes.add(
          String.format(
              Locale.ROOT,
              "tile faces at %.0f° to the face",
              Math.toDegrees(d.tiles().get().faceRadians())));
    } else {
      views.add(
          new SectionFigure.View(
              "", width, thickness, across, up, false, d.bar().map(this::drawable).orElse(null)));
    }
    turned(d).ifPresent(notes::add);
    if (d.tiles().isEmpty() && d.bar().isEmpty()) {
      notes.add("pattern not drawn: tiles were stacked again");
    }
    return new SectionFigure.Panel(d.step() + " " + d.kind(), notes, views);
  }

  private Optional<String> turned(PatternWalk.Drawn d) {
    return billet.steps().stream()
        .filter(s -> s.mark().number() == d.step() && s instanceof Step.Restack)
        .map(s -> ((Step.Restack) s).turnTaken())
        .filter(t -> t != Turn.NONE)
        .map(t -> t == Turn.ALL ? "every piece turned" : "every other piece turned")
        .findFirst();
  }

  private Pattern drawable(Pattern p) {
    return p.patches().size() > MOST_PATCHES
        ? new Pattern(p.width(), p.thickness(), List.of(), p.seams())
        : p;
  }

  private String size(double widthMm, double thicknessMm) {
    String us = String.format(Locale.ROOT, "%.2f x %.2f in", widthMm / 25.4, thicknessMm / 25.4);
    String metric = String.format(Locale.ROOT, "%.1f x %.1f mm", widthMm, thicknessMm);
    return Unit.both(units, us, metric);
  }
}
