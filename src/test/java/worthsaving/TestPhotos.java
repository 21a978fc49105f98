package worthsaving;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;

/** Pictures for tests, written by the Java platform's own encoder. */
public final class TestPhotos {

    private TestPhotos() {}

    /** Left half red, right half blue. */
    public static byte[] png() throws IOException {
        return encoded("png");
    }

    /** @param format as {@link ImageIO#write} names it */
    public static byte[] encoded(String format) throws IOException {
        BufferedImage image = new BufferedImage(80, 40, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 80; x++) {
            for (int y = 0; y < 40; y++) {
                image.setRGB(x, y, x < 40 ? 0xff0000 : 0x0000ff);
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        if (!ImageIO.write(image, format, out)) {
            throw new IOException("this Java writes no " + format);
        }
        return out.toByteArray();
    }
}
