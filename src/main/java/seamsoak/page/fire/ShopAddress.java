package seamsoak.page.fire;

import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * An address of this computer in a network of the house.
 *
 * @param card by which the system calls the network card
 * @param physical whether it is one that can be touched, as far as can be told
 */
public record ShopAddress(InetAddress address, String card, boolean physical) {
  /** For tests, which stay on this computer. */
  private static final String ALSO = "seamsoak.shop";

  private static final int ADDRESS_BYTES = 4;

  /** Those that phones can reach, the likeliest first; none that the world could. */
  public static List<ShopAddress> all() {
    List<ShopAddress> all = new ArrayList<>();
    try {
      for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
        if (card.isUp() && !card.isLoopback()) {
          for (InetAddress address : Collections.list(card.getInetAddresses())) {
            if (address.getAddress().length == ADDRESS_BYTES
                && (address.isSiteLocalAddress() || address.isLinkLocalAddress())) {
              all.add(new ShopAddress(address, card.getDisplayName(), isPhysical(card)));
            }
          }
        }
      }
      String also = System.getProperty(ALSO);
      if (also != null) {
        all.add(new ShopAddress(InetAddress.getByName(also), "test", false));
      }
    } catch (SocketException | UnknownHostException none) {
      return List.of();
    }
    all.sort(
        Comparator.comparing((ShopAddress a) -> !a.physical())
            .thenComparing(a -> a.address().isLinkLocalAddress())
            .thenComparing(ShopAddress::card));
    return List.copyOf(all);
  }

  /** Cards that programs make have an address that says so. */
  private static boolean isPhysical(NetworkInterface card) throws SocketException {
    byte[] own = card.getHardwareAddress();
    return own != null
        && own.length > 0
        && (own[0] & 2) == 0
        && !card.isVirtual()
        && !card.isPointToPoint();
  }

  public String shown() {
    return address.getHostAddress();
  }
}
