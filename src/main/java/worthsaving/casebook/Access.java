package worthsaving.casebook;

/** What a casebook is opened for. */
public enum Access { READ, WRITE }
