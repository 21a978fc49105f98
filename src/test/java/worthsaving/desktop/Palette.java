package worthsaving.desktop;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The commonest 256 colours of a picture; others become the nearest of them, so that pictures stay small. */
final class Palette {

    private static final int MOST = 256;

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
                .limit(MOST).map(Map.Entry::getKey).toList();
        return new Palette(commonest.stream().mapToInt(Integer::intValue).toArray());
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

    private int find(int colour) {
        int best = 0;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < colours.length; i++) {
            int r = (colours[i] >> 16) - (colour >> 16);
            int g = (colours[i] >> 8 & 255) - (colour >> 8 & 255);
            int b = (colours[i] & 255) - (colour & 255);
            int distance = r * r + g * g + b * b;
            if (distance < least) {
                least = distance;
                best = i;
            }
        }
        return best;
    }
}
