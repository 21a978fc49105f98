package worthsaving.intake.advert;

import java.util.Objects;

/**
 * What the seller says of a part: a claim, kept apart from what was seen.
 *
 * @param item failure item of the catalogue
 */
public record Claim(String item, Standing standing) {

    /** How the seller puts it; {@code IMPLIED} is our reading of the symptoms, not the seller's word. */
    public enum Standing { FAILED, DOUBTED, DENIED, REPAIRED, IMPLIED }

    public Claim {
        Objects.requireNonNull(item, "item");
        Objects.requireNonNull(standing, "standing");
    }

    /** True when the part counts among those said or taken to have failed. */
    public boolean held() {
        return standing == Standing.FAILED || standing == Standing.DOUBTED || standing == Standing.IMPLIED;
    }
}
