package seamsoak.report;

import java.util.List;
import java.util.stream.Stream;
import seamsoak.plan.Advice;
import seamsoak.unit.UnitSystem;
import seamsoak.words.SoakWords;

/**
 * The card as it hangs at the forge, on one sheet of paper, and on its back what to do next time
 * and the cautions.
 */
public record Sheet(String billet, ShopCard card, List<Chapter> back, Colophon colophon) {
  /**
   * @param before what its anchors begin with, for a page that has others of the same chapters
   */
  static Sheet of(Advice advice, UnitSystem units, Colophon colophon, String before) {
    Chapter next =
        Chapter.of(before + "next", "Next time").items(new SoakWords(units).nextTime(advice));
    Chapter cautions = CautionText.all(advice, units).chapter();
    return new Sheet(
        advice.billet(),
        ShopCard.of(advice, units),
        Stream.of(next, new Chapter(before + cautions.id(), cautions.title(), cautions.parts()))
            .filter(c -> !c.parts().isEmpty())
            .toList(),
        colophon);
  }

  /** Of a page that holds nothing else. */
  static String style() {
    return HtmlReport.style("sheet.css") + HtmlReport.style("paper.css");
  }
}
