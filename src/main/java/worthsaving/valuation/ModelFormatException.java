package worthsaving.valuation;

/** A file that cannot be used as a price model; the message says why and what would mend it. */
public final class ModelFormatException extends RuntimeException {

    public ModelFormatException(String message, Throwable cause) {
        super(message, cause);
    }
}
