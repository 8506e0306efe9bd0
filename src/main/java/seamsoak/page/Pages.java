package seamsoak.page;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import seamsoak.page.fire.EtchView;
import seamsoak.page.fire.FireView;
import seamsoak.page.fire.LogView;
import seamsoak.page.fire.PhonesView;
import seamsoak.report.AnswerPage;
import seamsoak.unit.UnitSystem;
import seamsoak.words.PageWords;

/** Pages by their templates, which escape whatever comes from a billet or a file name. */
final class Pages {
  private Pages() {}

  /** A page of one sentence. */
  static Answer told(int status, String sentence) {
    return page(status, out -> JtetoldGenerated.render(out, null, sentence, "", Look.STYLE));
  }

  /** Of a billet that has to be mended first, on its bench. */
  static Answer toMend(Desk desk, String sentence) {
    String bench = "/d/" + desk.id();
    return page(409, out -> JtetoldGenerated.render(out, null, sentence, bench, Look.STYLE));
  }

  static Answer shelf(int status, ShelfPage page) {
    return page(status, out -> JteshelfGenerated.render(out, null, page, Look.STYLE, Look.SCRIPT));
  }

  static Answer myShop(int status, MyShop.View page) {
    return page(status, out -> JteshopGenerated.render(out, null, page, Look.STYLE));
  }

  static Answer pairing(Pairing.View page, UnitSystem bare) {
    String units = PageWords.units(Optional.of(bare));
    boolean metric = bare == UnitSystem.METRIC;
    return page(200, out -> JtepairingGenerated.render(out, null, page, units, metric, Look.STYLE));
  }

  static Answer oneKiln(OneKiln.View page) {
    return page(
        page.faults().isEmpty() ? 200 : 409,
        out -> JteonekilnGenerated.render(out, null, page, Look.STYLE));
  }

  /** A page of one piece, with a way back. */
  static Answer piece(String name, String back, AnswerPage.Piece piece) {
    return page(200, out -> JtepieceGenerated.render(out, null, name, back, piece, Look.STYLE));
  }

  static Answer bench(int status, BenchPage page) {
    return page(status, out -> JtebenchGenerated.render(out, null, page, Look.STYLE, Look.SCRIPT));
  }

  static Answer answer(String name, String desk, Answers.View view, int faults) {
    return page(
        200, out -> JteanswerGenerated.render(out, null, name, desk, view, faults, Look.STYLE));
  }

  static Answer log(int status, LogView view) {
    return page(status, out -> JtefirelogGenerated.render(out, null, view, Look.FIRE_STYLE))
        .with(Seal.POLICY, Seal.policy(Look.FIRE_STYLE, Look.FIRE_SCRIPT));
  }

  static Answer phones(int status, PhonesView view) {
    return page(status, out -> JtephonesGenerated.render(out, null, view, Look.FIRE_STYLE))
        .with(Seal.POLICY, Seal.policy(Look.FIRE_STYLE, Look.FIRE_SCRIPT));
  }

  /** What a phone sees first: the billets that are open. */
  static Answer guests(List<Phones.Named> billets) {
    return page(200, out -> JteguestsGenerated.render(out, null, billets, Look.STYLE));
  }

  static Answer join(int status, String key, String notice) {
    return page(status, out -> JtejoinGenerated.render(out, null, key, notice, Look.STYLE));
  }

  static Answer etch(EtchView view) {
    return page(
            200, out -> JteetchGenerated.render(out, null, view, Look.ETCH_STYLE, Look.ETCH_SCRIPT))
        .with(Seal.POLICY, Seal.policy(Look.ETCH_STYLE, Look.ETCH_SCRIPT));
  }

  static Answer fire(int status, FireView view) {
    return page(
            status,
            out -> JtefireGenerated.render(out, null, view, Look.FIRE_STYLE, Look.FIRE_SCRIPT))
        .with(Seal.POLICY, Seal.policy(Look.FIRE_STYLE, Look.FIRE_SCRIPT));
  }

  private static Answer page(int status, Consumer<OwaspHtmlTemplateOutput> template) {
    StringOutput page = new StringOutput();
    template.accept(new OwaspHtmlTemplateOutput(page));
    return Answer.html(status, page.toString());
  }
}
