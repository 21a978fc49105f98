package worthsaving.intake.advert;

import java.util.List;
import worthsaving.vehicle.TitleBrand;

/** State of the papers: the gravest thing said counts; what is denied does not make it clean. */
final class TitleRule {

    /** What a phrase says; {@code FREE} clears a lien and says no more. */
    enum Said { PARTS_ONLY, FLOOD, SALVAGE, REBUILT, LOST, LIEN, CLEAN, CLEAN_CLAIMED, FREE }

    private TitleRule() {}

    static Found<TitleBrand> find(Page page, Polarity polarity) {
        Hit best = null;
        for (Said said : Said.values()) {
            for (Hit hit : page.hits("title")) {
                if (best == null && said != Said.FREE && hit.means().equals(said.name()) && !polarity.denied(hit)) {
                    best = hit;
                }
            }
        }
        if (best == null) {
            return Found.guessed(TitleBrand.UNKNOWN, List.of(), "nothing is said of the title; unknown is not clean");
        }
        TitleBrand brand = TitleBrand.valueOf(best.means());
        return polarity.doubted(best)
                ? Found.guessed(brand, page.spans(best), "the advert doubts it itself")
                : Found.stated(brand, page.spans(best));
    }
}
