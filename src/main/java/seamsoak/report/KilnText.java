package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import seamsoak.kiln.KilnPlan;
import seamsoak.kiln.Load;
import seamsoak.unit.UnitSystem;
import seamsoak.words.kiln.KilnWords;

/** Several billets in one kiln: the answer, why not, the loads one by one. */
public record KilnText(KilnPlan plan, UnitSystem units) {
  public Answer told() {
    KilnWords words = new KilnWords(plan, units);
    Chapter answer = Chapter.of("answer").words(words.forbidden()).words(words.says());
    Chapter key = Chapter.of("key").items(words.key());
    Chapter apart =
        Chapter.of("apart", "Not together").items(plan.apart().stream().map(words::apart).toList());
    Chapter know =
        Chapter.of("know", "Worth knowing")
            .items(plan.remarks().stream().map(KilnWords::remark).toList());
    Chapter table = Chapter.of("loads", "The loads").table(table());
    return new Answer(
        List.of(
            answer,
            key,
            apart,
            know,
            table,
            Chapter.of("each", "Load by load").terms(terms(words)),
            Chapter.of("taken", "What this rests on").items(KilnWords.TAKEN)),
        List.of(
            answer,
            key,
            apart,
            Chapter.of("loads", "The loads")
                .items(plan.loads().stream().map(words::title).toList()),
            know,
            Chapter.of("rest")
                .words("--full also shows the order of taking out, load by load, and why.")));
  }

  private List<Part.Term> terms(KilnWords words) {
    List<Part.Term> all = new ArrayList<>();
    for (int i = 0; i < plan.loads().size(); i++) {
      Load load = plan.loads().get(i);
      all.add(new Part.Term((i + 1) + ". " + words.title(load), words.details(load)));
    }
    return all;
  }

  private Table table() {
    KilnWords words = new KilnWords(plan, units);
    return Columns.of(plan.loads(), units)
        .words("step", words::name)
        .words("in it", KilnWords::in)
        .heat("at", Load::celsius)
        .number("min", 0, Load::minutes)
        .words("then", KilnWords::then)
        .captioned(
            "The loads in order, the letters as they leave; min: until the last hold is over");
  }

  /** The same as pieces of a page. */
  public List<AnswerPage.Piece> pieces() {
    List<Chapter> all = told().all();
    List<Part> first = new ArrayList<>(all.get(0).parts());
    first.addAll(all.get(1).parts());
    return Stream.concat(
            Stream.of(new Chapter(all.get(0).id(), "Answer", first)), all.stream().skip(2))
        .map(AnswerPage.Piece::of)
        .toList();
  }
}
