package worthsaving.intake.advert;

import java.util.Objects;

/**
 * What the seller says of a part: a claim, kept apart from what was seen.
 *
 * @param item failure item of the catalogue
 */
public record Claim(String item, Standing standing) {

    /**
     * How the seller puts it; {@code MENTIONED} names the part and nothing amiss with it in this car, {@code IMPLIED} is our
     * reading of the symptoms, not the seller's word. The gravest first.
     */
    public enum Standing { FAILED, DOUBTED, DENIED, REPAIRED, MENTIONED, IMPLIED }

    public Claim {
        Objects.requireNonNull(item, "item");
        Objects.requireNonNull(standing, "standing");
    }

    /** True when the part counts among those said or taken to have failed. */
    public boolean held() {
        return standing == Standing.FAILED || standing == Standing.DOUBTED || standing == Standing.IMPLIED;
    }
}
