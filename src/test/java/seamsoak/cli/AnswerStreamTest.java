package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class AnswerStreamTest {
  private final StringWriter said = new StringWriter();

  private boolean complainsOf(String failure) {
    AnswerStream stream =
        new AnswerStream(
            new OutputStream() {
              @Override
              public void write(int b) throws IOException {
                throw new IOException(failure);
              }
            });
    assertThrows(IOException.class, () -> stream.write(new byte[1], 0, 1));
    return stream.complain(new PrintWriter(said, true));
  }

  @Test
  void aReaderThatHasLeftIsNoFault() {
    assertFalse(complainsOf("Broken pipe"));
    assertEquals("", said.toString());
  }

  @Test
  void aFullDiskIs() {
    assertTrue(complainsOf("No space left on device"));
    assertTrue(said.toString().contains("No space left on device"));
  }
}
