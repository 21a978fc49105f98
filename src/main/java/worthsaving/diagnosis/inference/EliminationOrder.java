package worthsaving.diagnosis.inference;

import java.util.Arrays;
import java.util.List;

/**
 * Order in which variables are summed out: greedily the one that adds the fewest edges (min-fill),
 * then the fewest neighbours, then the lowest number. Source: Kjaerulff (1990), Aalborg R-90-09.
 */
final class EliminationOrder {

    private final int variables;
    private final int words;
    private final long[][] neighbours;
    private final int[] fill;
    private final boolean[] stale;

    private EliminationOrder(int variables, List<Table> tables) {
        this.variables = variables;
        words = (variables + 63) >> 6;
        neighbours = new long[variables][words];
        fill = new int[variables];
        stale = new boolean[variables];
        Arrays.fill(stale, true);
        for (Table table : tables) {
            for (int a : table.scope()) {
                for (int b : table.scope()) {
                    if (a != b) {
                        neighbours[a][b >> 6] |= 1L << b;
                    }
                }
            }
        }
    }

    /** @param stage by variable; all of a lower stage are eliminated before any of a higher one */
    static int[] minFill(int variables, List<Table> tables, int[] stage) {
        return new EliminationOrder(variables, tables).run(stage);
    }

    private int[] run(int[] stage) {
        int[] order = new int[variables];
        boolean[] done = new boolean[variables];
        for (int k = 0; k < variables; k++) {
            int best = -1;
            for (int v = 0; v < variables; v++) {
                if (!done[v] && (best < 0 || better(v, best, stage))) {
                    best = v;
                }
            }
            order[k] = best;
            done[best] = true;
            eliminate(best);
        }
        return order;
    }

    private boolean better(int v, int best, int[] stage) {
        if (stage[v] != stage[best]) {
            return stage[v] < stage[best];
        }
        int difference = fillOf(v) - fillOf(best);
        return difference < 0 || (difference == 0 && degree(v) < degree(best));
    }

    private int degree(int v) {
        int count = 0;
        for (long word : neighbours[v]) {
            count += Long.bitCount(word);
        }
        return count;
    }

    private int fillOf(int v) {
        if (stale[v]) {
            long[] of = neighbours[v];
            int missing = 0;
            for (int w = 0; w < words; w++) {
                for (long rest = of[w]; rest != 0; rest &= rest - 1) {
                    long[] other = neighbours[(w << 6) + Long.numberOfTrailingZeros(rest)];
                    for (int x = 0; x < words; x++) {
                        missing += Long.bitCount(of[x] & ~other[x]);
                    }
                    missing--;
                }
            }
            fill[v] = missing / 2;
            stale[v] = false;
        }
        return fill[v];
    }

    private void eliminate(int v) {
        boolean grows = fillOf(v) > 0;
        long[] of = neighbours[v];
        for (int w = 0; w < words; w++) {
            for (long rest = of[w]; rest != 0; rest &= rest - 1) {
                int a = (w << 6) + Long.numberOfTrailingZeros(rest);
                long[] mine = neighbours[a];
                mine[v >> 6] &= ~(1L << v);
                if (grows) {
                    for (int x = 0; x < words; x++) {
                        mine[x] |= of[x];
                    }
                    mine[a >> 6] &= ~(1L << a);
                }
                stale[a] = true;
            }
        }
        if (grows) {
            markAround(of);
        }
    }

    private void markAround(long[] of) {
        for (int w = 0; w < words; w++) {
            for (long rest = of[w]; rest != 0; rest &= rest - 1) {
                long[] next = neighbours[(w << 6) + Long.numberOfTrailingZeros(rest)];
                for (int x = 0; x < words; x++) {
                    for (long far = next[x]; far != 0; far &= far - 1) {
                        stale[(x << 6) + Long.numberOfTrailingZeros(far)] = true;
                    }
                }
            }
        }
    }
}
