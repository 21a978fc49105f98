package worthsaving.report.sheet;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;
import java.util.zip.CRC32;

/** A PNG file taken apart into its chunks, each proved by its checksum; chunks of text, time and Exif are left out. */
final class PngFile {

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final int AROUND = 12;
    private static final Set<String> KEPT = Set.of("IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB",
            "iCCP", "sBIT");

    private PngFile() {}

    static boolean is(byte[] bytes) {
        return bytes.length >= SIGNATURE.length
                && Arrays.equals(bytes, 0, SIGNATURE.length, SIGNATURE, 0, SIGNATURE.length);
    }

    static Photo read(String name, byte[] bytes) throws BrokenPhotoException {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        ByteArrayOutputStream kept = new ByteArrayOutputStream(bytes.length);
        kept.write(bytes, 0, SIGNATURE.length);
        int at = SIGNATURE.length;
        int width = 0;
        int height = 0;
        boolean data = false;
        while (true) {
            int length = at + AROUND <= bytes.length ? in.getInt(at) : -1;
            if (length < 0 || length > bytes.length - at - AROUND) {
                throw new BrokenPhotoException("the file is cut off");
            }
            CRC32 crc = new CRC32();
            crc.update(bytes, at + 4, length + 4);
            if ((int) crc.getValue() != in.getInt(at + 8 + length)) {
                throw new BrokenPhotoException("the file is damaged");
            }
            String type = new String(bytes, at + 4, 4, StandardCharsets.ISO_8859_1);
            if (type.equals("IHDR") && length >= 8) {
                width = in.getInt(at + 8);
                height = in.getInt(at + 12);
            }
            data |= type.equals("IDAT");
            if (KEPT.contains(type)) {
                kept.write(bytes, at, length + AROUND);
            }
            at += length + AROUND;
            if (type.equals("IEND")) {
                break;
            }
        }
        if (!data || width <= 0 || height <= 0) {
            throw new BrokenPhotoException("it holds no picture");
        }
        return new Photo(name, Photo.Format.PNG, width, height, Photo.Turn.UPRIGHT, kept.toByteArray());
    }
}
