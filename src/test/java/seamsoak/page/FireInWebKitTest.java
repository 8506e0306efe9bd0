package seamsoak.page;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import seamsoak.support.Engine;
import seamsoak.support.Screen;

/**
 * The engine of many phones in every build, shortly; left out where WebKit, its driver or a screen
 * to draw on is not installed.
 */
@Tag("slow")
@Timeout(600)
class FireInWebKitTest {
  @TempDir private Path folder;
  @TempDir private Path browser;

  @Test
  void aPhoneJoinsAndEntersAHeat() throws Exception {
    assumeTrue(Engine.WEBKIT.installed(), "no WebKit here");
    try (Screen phone = Engine.WEBKIT.open(browser, 390, 844)) {
      JoiningPhone.entersAHeat(phone, folder);
    }
  }
}
