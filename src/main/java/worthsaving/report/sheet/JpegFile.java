package worthsaving.report.sheet;

import java.io.ByteArrayOutputStream;

/**
 * A JPEG file taken apart into its segments (ITU-T T.81, annex B), so that only those that the picture needs are
 * kept. Of Exif only the orientation is read; place, time and camera stay behind.
 */
final class JpegFile {

    private static final int SOI = 0xd8;
    private static final int EOI = 0xd9;
    private static final int SOS = 0xda;
    private static final int APP0 = 0xe0;
    private static final int APP1 = 0xe1;
    private static final int APP2 = 0xe2;
    private static final int APP14 = 0xee;
    private static final int APP15 = 0xef;
    private static final int COMMENT = 0xfe;

    private final byte[] bytes;
    private final ByteArrayOutputStream kept;
    private int at = 2;
    private int width;
    private int height;
    private int orientation = 1;
    private boolean scanned;

    private JpegFile(byte[] bytes) {
        this.bytes = bytes;
        this.kept = new ByteArrayOutputStream(bytes.length);
    }

    static boolean is(byte[] bytes) {
        return bytes.length > 3 && (bytes[0] & 0xff) == 0xff && (bytes[1] & 0xff) == SOI && (bytes[2] & 0xff) == 0xff;
    }

    static Photo read(String name, byte[] bytes) throws BrokenPhotoException {
        JpegFile file = new JpegFile(bytes);
        file.kept.write(bytes, 0, 2);
        file.segments();
        Photo.Turn turn = Photo.Turn.of(file.orientation);
        return new Photo(name, Photo.Format.JPEG, turn.sideways() ? file.height : file.width,
                turn.sideways() ? file.width : file.height, turn, file.kept.toByteArray());
    }

    private void segments() throws BrokenPhotoException {
        while (true) {
            int marker = marker();
            if (marker == EOI) {
                if (!scanned || width == 0 || height == 0) {
                    throw new BrokenPhotoException("it holds no picture");
                }
                kept.write(0xff);
                kept.write(EOI);
                return;
            }
            int length = u16(at);
            if (length < 2 || at + length > bytes.length) {
                throw cutOff();
            }
            if (marker == APP1) {
                orientation = ExifOrientation.of(bytes, at + 2, at + length, orientation);
            } else if (isFrame(marker) && length >= 8) {
                height = u16(at + 3);
                width = u16(at + 5);
            }
            if (marker < APP0 || marker == APP0 || marker == APP2 || marker == APP14
                    || marker > APP15 && marker != COMMENT) {
                kept.write(0xff);
                kept.write(marker);
                kept.write(bytes, at, length);
            }
            at += length;
            if (marker == SOS) {
                scan();
            }
        }
    }

    /** Entropy-coded data up to the next marker that is neither a stuffed zero nor a restart. */
    private void scan() throws BrokenPhotoException {
        scanned = true;
        int from = at;
        while (at + 1 < bytes.length) {
            int next = bytes[at + 1] & 0xff;
            if ((bytes[at] & 0xff) == 0xff && next != 0 && next != 0xff && (next < 0xd0 || next > 0xd7)) {
                kept.write(bytes, from, at - from);
                return;
            }
            at++;
        }
        throw cutOff();
    }

    private int marker() throws BrokenPhotoException {
        if (at + 1 >= bytes.length || (bytes[at] & 0xff) != 0xff) {
            throw cutOff();
        }
        while (at + 1 < bytes.length && (bytes[at + 1] & 0xff) == 0xff) {
            at++;
        }
        if (at + 2 > bytes.length) {
            throw cutOff();
        }
        int marker = bytes[at + 1] & 0xff;
        at += 2;
        return marker;
    }

    /** SOF0 to SOF15 without DHT, JPG and DAC. */
    private static boolean isFrame(int marker) {
        return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
    }

    private int u16(int index) throws BrokenPhotoException {
        if (index + 2 > bytes.length) {
            throw cutOff();
        }
        return (bytes[index] & 0xff) << 8 | bytes[index + 1] & 0xff;
    }

    private static BrokenPhotoException cutOff() {
        return new BrokenPhotoException("the file is damaged or cut off");
    }
}
