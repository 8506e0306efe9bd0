package seamsoak.report;

import seamsoak.plan.Outlay;
import seamsoak.unit.UnitSystem;
import seamsoak.words.OutlayWords;

/** What the work takes: hours at each fire, and the stock to cut. */
record OutlayText(Outlay outlay, UnitSystem units) {
  Chapter chapter() {
    OutlayWords words = new OutlayWords(outlay, units);
    Chapter chapter =
        Chapter.of("outlay", "Hours and stock").words(words.times()).words(words.stock());
    return outlay.stock().isEmpty()
        ? chapter
        : chapter.table(
            Columns.of(outlay.stock(), units)
                .words("steel", Outlay.Stock::steel)
                .words("for", OutlayWords::use)
                .words("pieces", s -> Integer.toString(s.count()))
                .words("thick", s -> words.size(s.thicknessMm()))
                .words("wide", s -> words.size(s.widthMm()))
                .words("long", s -> words.size(s.lengthMm()))
                .words("of bar in all", s -> words.size(s.totalMm()))
                .captioned(words.caption()));
  }
}
