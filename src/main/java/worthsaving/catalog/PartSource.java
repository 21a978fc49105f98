package worthsaving.catalog;

/** Where a part comes from. */
public enum PartSource { MAKER, AFTERMARKET, REBUILT, USED, ON_THE_SHELF }
