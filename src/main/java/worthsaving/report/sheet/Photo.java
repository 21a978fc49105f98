package worthsaving.report.sheet;

import java.util.Arrays;
import java.util.Objects;

/**
 * A photo fit to be shown: whole, of a size that can be handled, and without what cameras write into files beside
 * the picture, such as the place it was taken.
 *
 * @param name file name
 * @param width as it is to be seen, in pixels
 * @param height as it is to be seen, in pixels
 * @param turn how the stored picture is turned and mirrored to be seen
 */
public record Photo(String name, Format format, int width, int height, Turn turn, byte[] bytes) {

    /** What the bytes are. */
    public enum Format {
        JPEG("image/jpeg"),
        PNG("image/png");

        private final String mediaType;

        Format(String mediaType) {
            this.mediaType = mediaType;
        }

        public String mediaType() {
            return mediaType;
        }
    }

    /**
     * Maps the stored unit square, origin below left and y up, to the one seen: x' = ax + cy + e, y' = bx + dy + f.
     * The eight orientations of Exif 2.32, tag 0x0112.
     */
    public enum Turn {
        UPRIGHT(1, 0, 0, 1, 0, 0),
        MIRRORED(-1, 0, 0, 1, 1, 0),
        HALF(-1, 0, 0, -1, 1, 1),
        HALF_MIRRORED(1, 0, 0, -1, 0, 1),
        LEFT_MIRRORED(0, -1, -1, 0, 1, 1),
        RIGHT(0, -1, 1, 0, 0, 1),
        RIGHT_MIRRORED(0, 1, 1, 0, 0, 0),
        LEFT(0, 1, -1, 0, 1, 0);

        private final float[] matrix;

        Turn(float... matrix) {
            this.matrix = matrix;
        }

        /** @param orientation 1 to 8; anything else is upright */
        static Turn of(int orientation) {
            return orientation >= 1 && orientation <= 8 ? values()[orientation - 1] : UPRIGHT;
        }

        /** a, b, c, d, e, f. */
        float[] matrix() {
            return matrix.clone();
        }

        /** Whether width and height change places. */
        boolean sideways() {
            return ordinal() >= LEFT_MIRRORED.ordinal();
        }
    }

    public Photo {
        name = SheetText.clean(name);
        Objects.requireNonNull(format, "format");
        Objects.requireNonNull(turn, "turn");
        bytes = bytes.clone();
    }

    /** A copy. */
    @Override
    public byte[] bytes() {
        return bytes.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Photo p && name.equals(p.name) && format == p.format && turn == p.turn
                && Arrays.equals(bytes, p.bytes);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, format, turn, Arrays.hashCode(bytes));
    }

    @Override
    public String toString() {
        return name + ", " + width + " x " + height + ", " + bytes.length + " bytes";
    }
}
