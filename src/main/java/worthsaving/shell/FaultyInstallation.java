package worthsaving.shell;

/** A file of the project is missing or has faults; the message says which, and what mends it. */
public final class FaultyInstallation extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public FaultyInstallation(String message) {
        super(message);
    }
}
