package worthsaving.cli;

/** Something the user can mend; its message is all that is shown. */
final class UserError extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int exitCode;

    UserError(int exitCode, String message) {
        super(message);
        this.exitCode = exitCode;
    }

    int exitCode() {
        return exitCode;
    }
}
