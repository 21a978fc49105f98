package worthsaving.report.sheet;

/** The orientation in an Exif segment (Exif 2.32, 4.6.4, tag 0x0112; TIFF 6.0 for the layout). */
final class ExifOrientation {

    private static final byte[] EXIF = {'E', 'x', 'i', 'f', 0, 0};
    private static final int TAG = 0x0112;
    private static final int ENTRY = 12;

    private ExifOrientation() {}

    /**
     * @param from index after the segment's length
     * @param to index after the segment
     * @param otherwise what is known so far, for a segment that says nothing
     */
    static int of(byte[] b, int from, int to, int otherwise) {
        int tiff = from + EXIF.length;
        if (tiff + 8 > to) {
            return otherwise;
        }
        for (int i = 0; i < EXIF.length; i++) {
            if (b[from + i] != EXIF[i]) {
                return otherwise;
            }
        }
        boolean little = b[tiff] == 'I';
        long directory = tiff + (u(b, tiff + 4, 2, little) | (long) u(b, tiff + 6, 2, little) << 16);
        if (!little) {
            directory = tiff + ((long) u(b, tiff + 4, 2, false) << 16 | u(b, tiff + 6, 2, false));
        }
        if (directory < tiff || directory + 2 > to) {
            return otherwise;
        }
        int entries = u(b, (int) directory, 2, little);
        for (int i = 0; i < entries; i++) {
            long entry = directory + 2 + (long) i * ENTRY;
            if (entry + ENTRY > to) {
                return otherwise;
            }
            if (u(b, (int) entry, 2, little) == TAG) {
                return u(b, (int) entry + 8, 2, little);
            }
        }
        return otherwise;
    }

    private static int u(byte[] b, int at, int length, boolean little) {
        int value = 0;
        for (int i = 0; i < length; i++) {
            value |= (b[at + i] & 0xff) << 8 * (little ? i : length - 1 - i);
        }
        return value;
    }
}
