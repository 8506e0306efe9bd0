package seamsoak.page;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.support.Tab;

/** A page in a browser, worked by keyboard; left out where no Chromium is installed. */
abstract class InBrowser {
  static final String WHOLE = AtTheBench.WHOLE;

  @TempDir Path folder;
  @TempDir Path browser;
  Page page;
  Tab tab;
  AtTheBench bench;

  @BeforeEach
  void open() throws Exception {
    assumeTrue(Tab.installed().isPresent(), "no Chromium here");
    page = Pageful.open(folder);
    tab = Tab.open(Tab.installed().orElseThrow(), browser, 1280, 800);
    bench = AtTheBench.at(page, tab);
  }

  @AfterEach
  void close() throws Exception {
    if (tab != null) {
      tab.close();
      page.close();
    }
  }

  void tabTo(String selector) throws Exception {
    bench.tabTo(selector);
  }

  static String quoted(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }

  void begin(String pattern) throws Exception {
    bench.begin(pattern);
  }

  String value(String id) throws Exception {
    return bench.value(id);
  }

  void taken(int number) throws Exception {
    bench.taken(number);
  }
}
