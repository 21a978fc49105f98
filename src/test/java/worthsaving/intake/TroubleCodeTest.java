package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.intake.TroubleCode.DefinedBy;

class TroubleCodeTest {

    /**
     * Sources: 0143 is the worked example of ISO 15031-5 figure 19; E158 is in the public text on OBD-II
     * codes (from memory); the others follow from the layout, two bits of system and two of the digit.
     */
    @ParameterizedTest
    @CsvSource({
        "0143, P0143, POWERTRAIN", "E158, U2158, NETWORK", "0299, P0299, POWERTRAIN", "C100, U0100, NETWORK",
        "4300, C0300, CHASSIS", "9234, B1234, BODY"
    })
    void decodes_two_bytes(String bytes, String text, TroubleCode.System system) {
        TroubleCode code = TroubleCode.ofBytes(Integer.parseInt(bytes, 16));

        assertThat(code.text()).isEqualTo(text);
        assertThat(code.system()).isEqualTo(system);
    }

    /** Source: SAE J2012 / ISO 15031-6 by secondary summaries; B, C and U from memory. */
    @ParameterizedTest
    @CsvSource({
        "P0016, STANDARD", "P2463, STANDARD", "P1345, MAKER", "P3000, MAKER", "P33FF, MAKER", "P3400, STANDARD",
        "P3FFF, STANDARD", "B0001, STANDARD", "C0035, STANDARD", "U0121, STANDARD", "B1234, MAKER", "C2100, MAKER",
        "U1900, MAKER", "B3000, RESERVED", "C3000, RESERVED", "U3000, RESERVED"
    })
    void tells_who_defines_a_code(String text, DefinedBy definedBy) {
        assertThat(new TroubleCode(text).definedBy()).isEqualTo(definedBy);
    }

    @Test
    void every_two_bytes_come_back() {
        for (int bytes = 0; bytes <= 0xffff; bytes++) {
            TroubleCode code = TroubleCode.ofBytes(bytes);
            assertThat(code.bytes()).isEqualTo(bytes);
            assertThat(TroubleCode.parse(code.text().toLowerCase(Locale.ROOT))).contains(code);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "P016", "P00166", "X0016", "P4016", "P001G", "P0O16", "0016", "P-016"})
    void refuses_other_forms(String text) {
        assertThat(TroubleCode.parse(text)).isEmpty();
        assertThatThrownBy(() -> new TroubleCode(text)).hasMessageContaining("three hexadecimal digits");
    }

    @Test
    void refuses_more_than_two_bytes() {
        assertThatThrownBy(() -> TroubleCode.ofBytes(0x10000)).hasMessageContaining("65536");
    }
}
