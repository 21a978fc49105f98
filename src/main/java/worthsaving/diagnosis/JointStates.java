package worthsaving.diagnosis;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import worthsaving.diagnosis.inference.BestStates;

/** Which items have failed together: the likeliest sets, or draws. */
interface JointStates {

    /** The fewest states that hold {@code mass}; empty when they are more than {@code cap} or cannot be told. */
    Optional<List<BestStates.State>> covering(int cap, double mass);

    /** One draw per point of a sequence. */
    Function<PatternPoints, BitSet> draws();

    /** Of a distribution whose likeliest states cannot be told. */
    static JointStates drawnOnly(Function<PatternPoints, BitSet> draws) {
        return new JointStates() {
            @Override
            public Optional<List<BestStates.State>> covering(int cap, double mass) {
                return Optional.empty();
            }

            @Override
            public Function<PatternPoints, BitSet> draws() {
                return draws;
            }
        };
    }
}
