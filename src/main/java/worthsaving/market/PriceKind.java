package worthsaving.market;

/** What the price column means; asking prices are not sale prices. */
public enum PriceKind { ASKING, SALE, BID, WHOLESALE }
