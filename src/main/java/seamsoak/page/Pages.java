package seamsoak.page;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.util.function.Consumer;

/** Pages by their templates, which escape whatever comes from a billet or a file name. */
final class Pages {
  private Pages() {}

  /** A page of one sentence. */
  static Answer told(int status, String sentence) {
    return Answer.html(
        status, html(out -> JtetoldGenerated.render(out, null, sentence, Look.STYLE)));
  }

  static Answer shelf(Shelf.View shelf) {
    return Answer.html(
        200, html(out -> JteshelfGenerated.render(out, null, shelf, Look.STYLE, Look.SCRIPT)));
  }

  private static String html(Consumer<OwaspHtmlTemplateOutput> template) {
    StringOutput page = new StringOutput();
    template.accept(new OwaspHtmlTemplateOutput(page));
    return page.toString();
  }
}
