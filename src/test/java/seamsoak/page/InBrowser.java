package seamsoak.page;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.support.Tab;

/** A page in a browser, worked by keyboard; left out where no Chromium is installed. */
abstract class InBrowser {
  static final String WHOLE =
      "document.getElementById('result')?.dataset.whole === 'yes' && document.getElementById('answer') !== null";
  static final int MOST_ACTIONS = 15;

  @TempDir Path folder;
  @TempDir Path browser;
  Page page;
  Tab tab;

  @BeforeEach
  void open() throws Exception {
    assumeTrue(Tab.installed().isPresent(), "no Chromium here");
    page = Pageful.open(folder);
    tab = Tab.open(Tab.installed().orElseThrow(), browser, 1280, 800);
    tab.go(page.link());
    tab.until("document.querySelector('h1')?.textContent === 'Billets'");
  }

  @AfterEach
  void close() throws Exception {
    if (tab != null) {
      tab.close();
      page.close();
    }
  }

  /** Presses the tab key until the focus is on something. */
  void tabTo(String selector) throws Exception {
    for (int i = 0; i < 200; i++) {
      tab.press("Tab");
      if (tab.ask("document.activeElement.matches(" + quoted(selector) + ")").equals("true")) {
        return;
      }
    }
    throw new AssertionError("the tab key never comes to " + selector);
  }

  static String quoted(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }

  void begin(String pattern) throws Exception {
    tabTo("button[value=" + pattern + "]");
    tab.press("Enter");
    tab.until("document.getElementById('bench') !== null");
  }

  String value(String id) throws Exception {
    return tab.ask("document.getElementById(" + quoted(id) + ").value");
  }

  /** Once all that was typed was taken. */
  void taken(int number) throws Exception {
    tab.until("document.getElementById('bench')?.elements.rev.value === '" + number + "'");
  }
}
