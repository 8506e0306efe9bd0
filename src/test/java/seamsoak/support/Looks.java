package seamsoak.support;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** What is asked of the look of any page, as expressions of JavaScript. */
public final class Looks {
  /** Everything that sticks out of the window or out of its parent, or lies on its neighbor. */
  public static final String LAYOUT =
      """
      (() => {
      const wrong = [];
      const name = e => e.tagName + '.' + e.className + ' ' + e.textContent.slice(0, 40);
      const seen = e => e.checkVisibility() && !e.closest('.quiet');
      const all = [...document.body.querySelectorAll('*')]
        .filter(e => !e.closest('svg, script, datalist, option') && seen(e));
      for (const e of all) {
        const r = e.getBoundingClientRect();
        const within = e.parentElement.closest('.slides, figure, table');
        if (r.width && !within && (r.right > innerWidth + 0.5 || r.left < -0.5)) wrong.push('out ' + name(e));
        const slides = getComputedStyle(e).overflowX === 'auto';
        const typed = e.matches('input, select');
        if (e.scrollWidth > e.clientWidth + 1 && e.clientWidth && !slides && !typed && !within)
          wrong.push('cut ' + name(e));
      }
      for (const parent of all) {
        const boxes = [...parent.children].filter(e => all.includes(e) && getComputedStyle(e).display !== 'inline'
            && !['absolute', 'sticky', 'fixed'].includes(getComputedStyle(e).position))
          // one that goes on in the next column has a box in either
          .flatMap(e => [...e.getClientRects()].map(r => [e, r])).filter(b => b[1].width && b[1].height);
        boxes.forEach(([e, a], i) => boxes.slice(i + 1).filter(b => b[0] !== e).forEach(([f, b]) => {
          const x = Math.min(a.right, b.right) - Math.max(a.left, b.left);
          const y = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
          if (x > 1 && y > 1) wrong.push('overlap ' + name(e) + ' / ' + name(f));
        }));
      }
      return wrong.join('\\n');
      })()
      """
          .strip();

  /** What is too small to be hit with a gloved or shaking hand. */
  public static final String SMALL =
      """
      [...document.querySelectorAll('button, input, select, summary, a.button, a.jump')]
        .filter(e => e.checkVisibility() && !e.closest('.verdict, .piece, .quiet'))
        .map(e => [['radio', 'checkbox'].includes(e.type) ? e.closest('label') : e]
          .map(t => [t, t.getBoundingClientRect()])[0])
        .filter(([e, r]) => r.height < 43.5 || r.width < 43.5)
        .map(([e, r]) => e.tagName + ' ' + e.textContent.slice(0, 20) + ' ' + r.width + 'x' + r.height)
        .join('\\n')
      """
          .strip();

  /** A promise of what the accessibility checker finds; nothing where all is well. */
  public static final String AXE =
      """
      axe.run(document).then(r => r.passes.length > 20 ? r.violations.map(v =>
        v.id + ': ' + v.help + ' ' + v.nodes.map(n => n.html).slice(0, 3).join(' ')).join('\\n')
        : 'only ' + r.passes.length + ' checks ran')
      """
          .strip();

  private Looks() {}

  /** The checker itself. */
  public static String axe() throws IOException {
    try (InputStream in = Looks.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
