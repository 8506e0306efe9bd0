package seamsoak.chart;

import java.util.TreeMap;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/**
 * Writes an XML tree: attributes by name, one element a line, line feeds only. The JDK's own writer
 * breaks lines as the machine does and has changed between releases.
 */
final class XmlText {
  private final StringBuilder out = new StringBuilder();

  String document(Element root, String namespace) {
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    root.setAttribute("xmlns", namespace);
    element(root);
    return out.toString();
  }

  private void element(Element element) {
    out.append('<').append(element.getTagName());
    TreeMap<String, String> attributes = new TreeMap<>();
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      Attr attribute = (Attr) element.getAttributes().item(i);
      attributes.put(attribute.getName(), attribute.getValue());
    }
    attributes.forEach(
        (name, value) -> {
          out.append(' ').append(name).append("=\"");
          escaped(value);
          out.append('"');
        });
    if (element.getFirstChild() == null) {
      out.append("/>\n");
      return;
    }
    boolean hasText = element.getFirstChild() instanceof Text;
    out.append(hasText ? ">" : ">\n");
    for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child) {
        element(child);
      } else if (node instanceof Text text) {
        escaped(text.getData());
      }
    }
    out.append("</").append(element.getTagName()).append(">\n");
  }

  private void escaped(String text) {
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(allowed(c) ? c : 0xFFFD);
              }
            });
  }

  /** Characters of XML 1.0; others cannot be written at all, not even escaped. */
  private static boolean allowed(int c) {
    return c == '\t'
        || c == '\n'
        || c >= 0x20 && c <= 0xD7FF
        || c >= 0xE000 && c <= 0xFFFD
        || c >= 0x10000;
  }
}
