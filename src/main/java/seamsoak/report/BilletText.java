package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Default;
import seamsoak.plan.Advice;
import seamsoak.state.Preform;
import seamsoak.state.StageReport;
import seamsoak.words.DefaultWords;

/** The billet itself: its size after each step, the bar that tiles would have wanted, defaults. */
record BilletText(Advice advice, Shown shown) {

  Table sizes() {
    return sizes(0, advice.history().size());
  }

  /** Of some of the stages. */
  Table sizes(int from, int to) {
    Table table =
        new Table(
            "after step",
            shown.lengthHeads("long"),
            shown.lengthHeads("wide"),
            shown.lengthHeads("thick"),
            shown.lengthHeads("skin"));
    for (StageReport s : advice.history().subList(from, to)) {
      table.row(
          LinesText.step(s),
          shown.sizeCells(s.lengthMm()),
          shown.sizeCells(s.widthMm()),
          shown.sizeCells(s.thicknessMm()),
          shown.lengthCells(Optional.of(s.skinMm())));
    }
    return table.captioned(
        "Size after each step, and the skin with less than 90 % of the core's carbon");
  }

  String preform() {
    return advice.preform().map(p -> new Page().say(preform(p)).toString()).orElse("");
  }

  String preform(Preform p) {
    return "The tiles' cells are "
        + Shown.percent(p.aspectNow())
        + " times as long as they are wide by now. To end up square, forge the bar "
        + shown.length(p.thicknessMm())
        + " thick by "
        + shown.length(p.widthMm())
        + " wide before cutting; "
        + p.tiles()
        + " tiles take "
        + shown.length(p.barLengthMm())
        + " of it.";
  }

  /** What was assumed, the steps that share an assumption named together. */
  String defaults() {
    List<String> items = assumed();
    return items.isEmpty()
        ? ""
        : new Page().say("Assumed, since the file does not say").items(items).toString();
  }

  List<String> assumed() {
    DefaultWords words = new DefaultWords(shown.units());
    Map<Default.What, List<String>> byWhat = new LinkedHashMap<>();
    for (Default taken : advice.defaults()) {
      byWhat.computeIfAbsent(taken.what(), k -> new ArrayList<>()).add(words.where(taken));
    }
    List<String> items = new ArrayList<>();
    byWhat.forEach(
        (what, where) ->
            items.add(String.join(", ", where).replace(", step ", ", ") + ": " + words.what(what)));
    return items;
  }
}
