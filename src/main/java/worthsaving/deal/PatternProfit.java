package worthsaving.deal;

import java.util.BitSet;

/**
 * What each way out earns when exactly these items have failed, at the price judged at.
 *
 * @param pattern bits by position in the deal's patterns
 * @param weight probability of the pattern
 * @param profit expected profit by {@link WayOut#ordinal()}
 */
public record PatternProfit(BitSet pattern, double weight, double[] profit) {}
