package worthsaving.report.sheet;

/** What became of a photo that was to go on a sheet. */
public sealed interface PhotoReading {

    /** Files beyond this are named, not shown. */
    int MOST_BYTES = 8_000_000;

    /** Pictures beyond this are named, not shown. */
    int MOST_PIXELS = 50_000_000;

    /** It can be shown. */
    record Shown(Photo photo) implements PhotoReading {}

    /** It cannot, and why. */
    record Named(String name, String why) implements PhotoReading {

        /** Such as {@code "front.heic: neither JPEG nor PNG"}. */
        public String words() {
            return name + ": " + why;
        }
    }

    /** For a file that is larger than {@link #MOST_BYTES} and need not be read. */
    static PhotoReading tooLarge(String name) {
        return new Named(name, "larger than " + MOST_BYTES / 1_000_000 + " MB; make it smaller");
    }

    /** For a file that is not there, or may not be read. */
    static PhotoReading unreadable(String name) {
        return new Named(name, "cannot be read");
    }

    /**
     * Reads a JPEG (ITU-T T.81) or PNG (W3C PNG 3rd edition) file as far as showing it needs; never fails.
     *
     * @param name file name
     */
    static PhotoReading of(String name, byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            return tooLarge(name);
        }
        try {
            Photo photo;
            if (JpegFile.is(bytes)) {
                photo = JpegFile.read(name, bytes);
            } else if (PngFile.is(bytes)) {
                photo = PngFile.read(name, bytes);
            } else {
                return new Named(name, "neither JPEG nor PNG");
            }
            if (photo.width() <= 0 || photo.height() <= 0 || (long) photo.width() * photo.height() > MOST_PIXELS) {
                return new Named(name, photo.width() + " x " + photo.height() + " pixels cannot be shown");
            }
            return new Shown(photo);
        } catch (BrokenPhotoException e) {
            return new Named(name, e.getMessage());
        }
    }
}
