package worthsaving.diagnosis.inference;

import java.util.Arrays;

/** Draws what each side of a merge contributed to a given outcome. */
final class MergeDraw {

    private final Merge merge;
    private final double[] before;
    private final double[] incoming;
    private final long label;
    /** By bit of the bucket's index: what the incoming index gains from it, where it is a plain variable. */
    private final int[] incomingOfBit = new int[Integer.SIZE];

    /** @param before may be null when the merge has no OR in common with what was gathered */
    MergeDraw(Merge merge, double[] before, double[] incoming, long label) {
        this.merge = merge;
        this.before = before;
        this.incoming = incoming;
        this.label = label;
        for (int b = 0; b < Integer.SIZE - 1; b++) {
            int at = Arrays.binarySearch(merge.base(), 1 << b);
            incomingOfBit[b] = at < 0 ? 0 : merge.incomingBase()[at];
        }
    }

    int source() {
        return merge.source();
    }

    /**
     * @param at bucket index of the outcome
     * @return bucket index of what was gathered before in the upper half, OR bits of the incoming index in the lower
     */
    long draw(int at, JointDraw.Uniforms uniforms) {
        int[] both = merge.both();
        int[] fresh = merge.fresh();
        int outcome = 0;
        int rest = at;
        for (int s = 1; s < both.length; s <<= 1) {
            if ((at & both[s]) != 0) {
                outcome |= s;
                rest -= both[s];
            }
        }
        int from = 0;
        for (int f = 1; f < fresh.length; f <<= 1) {
            if ((at & fresh[f]) != 0) {
                from += merge.incomingFresh()[f];
                rest -= fresh[f];
            }
        }
        // Nothing that both could have said was said: neither did.
        return outcome == 0 ? pack(rest, from) : draw(rest, from, outcome, uniforms.forHidden(label));
    }

    private long draw(int rest, int from, int outcome, double uniform) {
        int in = from;
        for (int bits = rest; bits != 0; bits &= bits - 1) {
            in += incomingOfBit[Integer.numberOfTrailingZeros(bits)];
        }
        int[] both = merge.both();
        int[] incomingBoth = merge.incomingBoth();
        double total = 0;
        for (int b = outcome; b >= 0; b = b == 0 ? -1 : b - 1 & outcome) {
            for (int s = b; s >= 0; s = s == 0 ? -1 : s - 1 & b) {
                total += before[rest + both[outcome ^ b | s]] * incoming[in + incomingBoth[b]];
            }
        }
        double left = uniform * total;
        long drawn = pack(rest, from);
        for (int b = outcome; b >= 0 && left >= 0; b = b == 0 ? -1 : b - 1 & outcome) {
            for (int s = b; s >= 0 && left >= 0; s = s == 0 ? -1 : s - 1 & b) {
                int a = outcome ^ b | s;
                double weight = before[rest + both[a]] * incoming[in + incomingBoth[b]];
                if (weight > 0) {
                    drawn = pack(rest + both[a], from + incomingBoth[b]);
                    left -= weight;
                }
            }
        }
        return drawn;
    }

    private static long pack(int gathered, int from) {
        return (long) gathered << Integer.SIZE | from;
    }
}
