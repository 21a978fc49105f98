package worthsaving.casebook;

/** Reading an open casebook failed, as when its drive is gone. The message says what would mend it. */
public final class CasebookException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Trouble trouble;

    CasebookException(Trouble trouble, Throwable cause) {
        super(trouble.text(), cause);
        this.trouble = trouble;
    }

    public Trouble trouble() {
        return trouble;
    }
}
