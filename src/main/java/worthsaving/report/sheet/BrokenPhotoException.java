package worthsaving.report.sheet;

/** A picture file that is not whole; the message says in what way. */
final class BrokenPhotoException extends Exception {

    private static final long serialVersionUID = 1L;

    BrokenPhotoException(String message) {
        super(message);
    }
}
