package worthsaving.intake.advert;

import java.util.List;
import worthsaving.vehicle.Exposure;

/**
 * What is said of its state.
 *
 * @param runningState a word such as {@code "runs_rough"}; {@code "unknown"} where nothing tells
 * @param codes trouble codes in the text
 */
public record ConditionReading(
        Found<String> runningState,
        List<Found<Symptom>> symptoms,
        List<Found<Claim>> claims,
        List<Found<SaidCode>> codes,
        Exposure exposure) {

    public ConditionReading {
        symptoms = List.copyOf(symptoms);
        claims = List.copyOf(claims);
        codes = List.copyOf(codes);
    }
}
