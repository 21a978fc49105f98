package worthsaving.diagnosis.inference;

import java.util.Arrays;

/**
 * Combines an incoming table over ORs and plain variables with what a bucket has gathered so far:
 * product over the plain variables, OR-convolution over the ORs that both have.
 *
 * @param source table number, or ~bucket for the message of a bucket
 * @param base bucket indices over all bits but those of the incoming ORs and of ORs not met so far
 * @param incomingBase the index into the incoming table for each of {@code base}
 * @param both offsets of the ORs that both sides have, in the bucket
 * @param incomingBoth the same in the incoming table
 * @param fresh offsets of the ORs that only the incoming table has, in the bucket
 * @param incomingFresh the same in the incoming table
 */
record Merge(
        int source,
        int[] base,
        int[] incomingBase,
        int[] both,
        int[] incomingBoth,
        int[] fresh,
        int[] incomingFresh) {

    private int bits() {
        return Integer.numberOfTrailingZeros(both.length);
    }

    /** The bits of the bucket's index that stand for ORs of the incoming table. */
    int ors() {
        return both[both.length - 1] | fresh[fresh.length - 1];
    }

    /** Replaces {@code gathered}, which must be zero wherever a fresh OR is yes. */
    void apply(double[] gathered, double[] incoming) {
        switch (bits()) {
            case 0 -> applyFresh(gathered, incoming);
            case 1 -> applyOne(gathered, incoming);
            default -> applyMany(gathered, incoming);
        }
    }

    private void applyFresh(double[] gathered, double[] incoming) {
        for (int i = 0; i < base.length; i++) {
            double old = gathered[base[i]];
            for (int f = fresh.length - 1; f >= 0; f--) {
                gathered[base[i] + fresh[f]] = old * incoming[incomingBase[i] + incomingFresh[f]];
            }
        }
    }

    private void applyOne(double[] gathered, double[] incoming) {
        int yes = both[1];
        int incomingYes = incomingBoth[1];
        for (int i = 0; i < base.length; i++) {
            double no = gathered[base[i]];
            double oldYes = gathered[base[i] + yes];
            for (int f = fresh.length - 1; f >= 0; f--) {
                int from = incomingBase[i] + incomingFresh[f];
                double silent = incoming[from];
                double speaks = incoming[from + incomingYes];
                gathered[base[i] + fresh[f]] = no * silent;
                gathered[base[i] + fresh[f] + yes] = no * speaks + oldYes * (silent + speaks);
            }
        }
    }

    private void applyMany(double[] gathered, double[] incoming) {
        int states = both.length;
        OrConvolution convolution = new OrConvolution(bits());
        double[] old = new double[states];
        double[] in = new double[states];
        double[] out = new double[states];
        for (int i = 0; i < base.length; i++) {
            gather(gathered, base[i], both, old);
            for (int f = fresh.length - 1; f >= 0; f--) {
                gather(incoming, incomingBase[i] + incomingFresh[f], incomingBoth, in);
                Arrays.fill(out, 0);
                convolution.add(old, in, out);
                for (int s = 0; s < states; s++) {
                    gathered[base[i] + fresh[f] + both[s]] = out[s];
                }
            }
        }
    }

    private static void gather(double[] from, int at, int[] offsets, double[] to) {
        for (int s = 0; s < offsets.length; s++) {
            to[s] = from[at + offsets[s]];
        }
    }

    /**
     * Chain rule: replaces {@code derivative} with respect to the outcome by that with respect to what
     * was gathered before, and adds to that with respect to the incoming table.
     *
     * @param before null when it was nothing but ones
     */
    void back(double[] before, double[] incoming, double[] derivative, double[] into) {
        switch (bits()) {
            case 0 -> backFresh(before, incoming, derivative, into);
            case 1 -> backOne(before, incoming, derivative, into);
            default -> backMany(before, incoming, derivative, into);
        }
    }

    private void backFresh(double[] before, double[] incoming, double[] derivative, double[] into) {
        for (int i = 0; i < base.length; i++) {
            double old = before == null ? 1 : before[base[i]];
            double sum = 0;
            for (int f = 0; f < fresh.length; f++) {
                int from = incomingBase[i] + incomingFresh[f];
                double d = derivative[base[i] + fresh[f]];
                sum += incoming[from] * d;
                into[from] += old * d;
            }
            derivative[base[i]] = sum;
        }
    }

    private void backOne(double[] before, double[] incoming, double[] derivative, double[] into) {
        int yes = both[1];
        int incomingYes = incomingBoth[1];
        for (int i = 0; i < base.length; i++) {
            double oldNo = before[base[i]];
            double oldYes = before[base[i] + yes];
            double sumNo = 0;
            double sumYes = 0;
            for (int f = 0; f < fresh.length; f++) {
                int from = incomingBase[i] + incomingFresh[f];
                double dNo = derivative[base[i] + fresh[f]];
                double dYes = derivative[base[i] + fresh[f] + yes];
                double silent = incoming[from];
                double speaks = incoming[from + incomingYes];
                sumNo += silent * dNo + speaks * dYes;
                sumYes += (silent + speaks) * dYes;
                into[from] += oldNo * dNo + oldYes * dYes;
                into[from + incomingYes] += (oldNo + oldYes) * dYes;
            }
            derivative[base[i]] = sumNo;
            derivative[base[i] + yes] = sumYes;
        }
    }

    private void backMany(double[] before, double[] incoming, double[] derivative, double[] into) {
        int states = both.length;
        OrConvolution convolution = new OrConvolution(bits());
        double[] old = new double[states];
        double[] in = new double[states];
        double[] out = new double[states];
        double[] dOld = new double[states];
        double[] dIn = new double[states];
        for (int i = 0; i < base.length; i++) {
            gather(before, base[i], both, old);
            Arrays.fill(dOld, 0);
            for (int f = 0; f < fresh.length; f++) {
                int from = incomingBase[i] + incomingFresh[f];
                gather(incoming, from, incomingBoth, in);
                gather(derivative, base[i] + fresh[f], both, out);
                Arrays.fill(dIn, 0);
                convolution.addDerivative(old, in, out, dOld, dIn);
                for (int s = 0; s < states; s++) {
                    into[from + incomingBoth[s]] += dIn[s];
                }
            }
            for (int s = 0; s < states; s++) {
                derivative[base[i] + both[s]] = dOld[s];
            }
        }
    }
}
