package worthsaving.desktop;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** The commonest colours of a picture that can be told apart; others become the nearest, so that pictures stay small. */
final class Palette {

    private static final int MOST = 48;
    /** Squared distance below which two colours are taken for one. */
    private static final int NEAR = 60;

    private final int[] colours;
    private final Map<Integer, Integer> nearest = new HashMap<>();

    private Palette(int[] colours) {
        this.colours = colours;
    }

    static Palette of(int[] pixels) {
        Map<Integer, Integer> counts = new HashMap<>();
        for (int pixel : pixels) {
            counts.merge(pixel & 0xffffff, 1, Integer::sum);
        }
        List<Integer> commonest = counts.entrySet().stream()
                .sorted(Map.Entry.<Integer, Integer>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey).toList();
        List<Integer> kept = new ArrayList<>();
        for (int colour : commonest) {
            if (kept.size() < MOST && kept.stream().noneMatch(k -> distance(k, colour) < NEAR)) {
                kept.add(colour);
            }
        }
        return new Palette(kept.stream().mapToInt(Integer::intValue).toArray());
    }

    BufferedImage image(int[] pixels, int width, int height) {
        int[] table = Arrays.stream(colours).map(c -> 0xff000000 | c).toArray();
        IndexColorModel model = new IndexColorModel(8, table.length, table, 0, false, -1, 0);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_INDEXED, model);
        byte[] row = new byte[width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                row[x] = (byte) (int) nearest.computeIfAbsent(pixels[y * width + x] & 0xffffff, this::find);
            }
            image.getRaster().setDataElements(0, y, width, 1, row);
        }
        return image;
    }

    /** Packed as tightly as the format allows. */
    static void write(BufferedImage image, Path file) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ImageWriteParam packed = writer.getDefaultWriteParam();
        packed.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        packed.setCompressionQuality(0);
        try (ImageOutputStream out = ImageIO.createImageOutputStream(Files.newOutputStream(file))) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), packed);
        } finally {
            writer.dispose();
        }
    }

    private int find(int colour) {
        int best = 0;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < colours.length; i++) {
            int distance = distance(colours[i], colour);
            if (distance < least) {
                least = distance;
                best = i;
            }
        }
        return best;
    }

    private static int distance(int one, int other) {
        int r = (one >> 16) - (other >> 16);
        int g = (one >> 8 & 255) - (other >> 8 & 255);
        int b = (one & 255) - (other & 255);
        return r * r + g * g + b * b;
    }
}
