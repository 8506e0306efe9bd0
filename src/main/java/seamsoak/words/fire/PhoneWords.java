package seamsoak.words.fire;

/** What is said of phones that are let in. */
public final class PhoneWords {
  public static final String MAY_NOT =
      "A phone may look, enter what was done, and say what was seen. All else is done at the"
          + " computer.";
  public static final String NOT_IN =
      "This phone was not let in, or was let out since. At the computer, press Phones in the shop,"
          + " and read the picture there with the camera.";
  public static final String WRONG_KEY =
      "This picture is none that lets in a phone by now. Ask for a new one at the computer.";
  public static final String WRONG_CODE =
      "That is not the code on the screen. Look again; five wrong ones end this invitation.";
  public static final String TOO_OFTEN =
      "The code was wrong five times, so this picture lets in nobody any more. Ask for a new one at"
          + " the computer.";
  public static final String USED =
      "This picture was used already; each lets in one phone. Ask for another at the computer. If it"
          + " was not yours that came in, press Off there.";
  public static final String OLD =
      "This picture is older than a quarter of an hour. Ask for a new one at the computer.";
  public static final String NO_ADDRESS =
      "This computer is in no network of the house that phones could reach it by.";
  public static final String CANNOT_LISTEN =
      "Nothing can listen at that address. Choose another, or look at the network's settings.";
  public static final String NO_BILLET =
      "No billet is open at the computer. Open one there, then load this anew.";

  private PhoneWords() {}
}
