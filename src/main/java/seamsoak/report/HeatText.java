package seamsoak.report;

import java.util.List;
import seamsoak.heatlog.RealHeat;
import seamsoak.unit.UnitSystem;
import seamsoak.words.HeatWords;

/** What a real heat was worth. */
public record HeatText(RealHeat heat, UnitSystem units) {
  public Answer answer() {
    HeatWords words = new HeatWords(units);
    return Answer.of(
        List.of(
            Chapter.of("answer")
                .words(words.worth(heat))
                .words(words.course(heat))
                .words(words.face(heat)),
            Chapter.of("remarks", "Remarks").items(words.remarks(heat)),
            Chapter.of("sure", "How sure").items(words.doubts(heat)),
            Chapter.of("left-out", "Left out").items(words.leftOut(heat)),
            Chapter.of("taken", "Taken for want of a word").items(words.taken(heat))));
  }
}
