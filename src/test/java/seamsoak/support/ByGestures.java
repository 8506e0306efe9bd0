package seamsoak.support;

import java.util.Map;

/** One that is told of gestures as WebDriver has them. */
interface ByGestures extends Screen {
  void act(Map<String, Object> actions) throws Exception;

  @Override
  default void touch(double x, double y) throws Exception {
    act(Gestures.tap(x, y));
  }

  @Override
  default void press(String key) throws Exception {
    act(Gestures.key(key));
  }

  @Override
  default void pressBack(String key) throws Exception {
    act(Gestures.back(key));
  }

  @Override
  default void type(String text) throws Exception {
    ask("document.activeElement.select && document.activeElement.select()");
    act(Gestures.letters(text));
  }
}
