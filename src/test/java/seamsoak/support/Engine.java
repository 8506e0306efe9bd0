package seamsoak.support;

import java.nio.file.Path;

/** The browsers that smiths have, by what draws in them. */
public enum Engine {
  CHROMIUM,
  FIREFOX,
  WEBKIT;

  public boolean installed() {
    return switch (this) {
      case CHROMIUM -> Tab.installed().isPresent();
      case FIREFOX -> Firefox.installed().isPresent();
      case WEBKIT -> WebKit.installed();
    };
  }

  /** Opens an empty window that keeps what it keeps in a folder. */
  public Screen open(Path folder, int width, int height) throws Exception {
    Screen screen =
        switch (this) {
          case CHROMIUM -> Tab.open(Tab.installed().orElseThrow(), folder, width, height);
          case FIREFOX -> Firefox.open(Firefox.installed().orElseThrow(), folder);
          case WEBKIT -> WebKit.open(folder);
        };
    try {
      screen.size(width, height);
      return screen;
    } catch (Exception | AssertionError e) {
      screen.close();
      throw e;
    }
  }
}
