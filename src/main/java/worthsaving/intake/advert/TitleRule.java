package worthsaving.intake.advert;

import java.util.List;
import worthsaving.vehicle.TitleBrand;

/**
 * State of the papers: the gravest thing said counts, a rebuilt car having been salvage before; what is denied does
 * not make it clean.
 */
final class TitleRule {

    /**
     * What a phrase says; {@code FREE} clears a lien and says no more, a bill of sale, or a sale
     * for parts, counts where no title is named.
     */
    enum Said { PARTS_ONLY, FLOOD, REBUILT, SALVAGE, LOST, LIEN, CLEAN, CLEAN_CLAIMED, PARTS_SALE, BILL_OF_SALE, FREE }

    private TitleRule() {}

    static Found<TitleBrand> find(Page page, Polarity polarity) {
        Hit best = null;
        for (Said said : Said.values()) {
            for (Hit hit : page.hits("title")) {
                if (best == null && said != Said.FREE && hit.means().equals(said.name()) && polarity.meant(hit)) {
                    best = hit;
                }
            }
        }
        if (best == null) {
            return Found.guessed(TitleBrand.UNKNOWN, List.of(), "nothing is said of the title; unknown is not clean");
        }
        TitleBrand brand = switch (Said.valueOf(best.means())) {
            case BILL_OF_SALE -> TitleBrand.LOST;
            case PARTS_SALE -> TitleBrand.PARTS_ONLY;
            default -> TitleBrand.valueOf(best.means());
        };
        return polarity.doubted(best)
                ? Found.guessed(brand, page.spans(best), "the advert doubts it itself")
                : Found.stated(brand, page.spans(best));
    }
}
