package seamsoak.page.fire;

import java.util.List;

/**
 * What the bench shows of phones in the shop.
 *
 * @param addresses to choose from while none is let in; the likeliest first
 * @param on where phones come in; blank while none may
 * @param link that the picture says
 * @param code to be typed; blank once it was used up
 * @param svg the picture
 * @param phones how many are in
 * @param until when it ends by itself
 * @param notice what is to be told
 */
public record PhonesView(
    List<ShopAddress> addresses,
    String on,
    String link,
    String code,
    String svg,
    int phones,
    String until,
    String notice) {}
