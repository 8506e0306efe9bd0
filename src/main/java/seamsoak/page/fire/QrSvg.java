package seamsoak.page.fire;

import io.nayuki.qrcodegen.QrCode;

/** A text as a picture that a phone's camera reads. */
public final class QrSvg {
  /** As wide as the standard wants it left blank. */
  private static final int BLANK = 4;

  private QrSvg() {}

  public static String of(String text, String title) {
    QrCode code = QrCode.encodeText(text, QrCode.Ecc.MEDIUM);
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < code.size; y++) {
      for (int x = 0; x < code.size; x++) {
        if (code.getModule(x, y)) {
          path.append('M').append(x + BLANK).append(',').append(y + BLANK).append("h1v1h-1z");
        }
      }
    }
    int size = code.size + 2 * BLANK;
    return "<svg class=\"qr\" role=\"img\" aria-label=\""
        + title
        + "\" viewBox=\"0 0 "
        + size
        + " "
        + size
        + "\" shape-rendering=\"crispEdges\"><rect width=\""
        + size
        + "\" height=\""
        + size
        + "\" fill=\"#fff\"/><path d=\""
        + path
        + "\" fill=\"#000\"/></svg>";
  }
}
