package worthsaving.catalog;

import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/**
 * Chance that a failed item alone produces a finding (a noisy-OR link, the finding's false rate apart).
 */
public record FindingLink(String finding, String item, Range chance, Source source) {}
