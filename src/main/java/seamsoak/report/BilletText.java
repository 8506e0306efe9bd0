package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import seamsoak.billet.Default;
import seamsoak.plan.Advice;
import seamsoak.state.Preform;
import seamsoak.state.StageReport;
import seamsoak.words.DefaultWords;

/** The billet itself: its size after each step, the bar that tiles would have wanted, defaults. */
record BilletText(Advice advice, Numbers numbers) {

  Table sizes() {
    return sizes(0, advice.history().size());
  }

  /** Of some of the stages. */
  Table sizes(int from, int to) {
    return Columns.of(advice.history().subList(from, to), numbers.units())
        .words("after step", LinesText::step)
        .size("long", StageReport::lengthMm)
        .size("wide", StageReport::widthMm)
        .size("thick", StageReport::thicknessMm)
        .length("skin", StageReport::skinMm)
        .captioned("Size after each step, and the skin with less than 90 % of the core's carbon");
  }

  String preform(Preform p) {
    return ("The tiles' cells are %s times as long as they are wide by now. To end up square, forge"
            + " the bar %s thick by %s wide before cutting; %d tiles take %s of it.")
        .formatted(
            Numbers.percent(p.aspectNow()),
            numbers.length(p.thicknessMm()),
            numbers.length(p.widthMm()),
            p.tiles(),
            numbers.length(p.barLengthMm()));
  }

  /** What was assumed, the steps that share an assumption named together. */
  List<String> assumed() {
    DefaultWords words = new DefaultWords(numbers.units());
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
