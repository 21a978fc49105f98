package worthsaving.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Powertrain.Gearbox;

class CatalogueReaderTest {

    @Test
    void reads_every_column_of_every_table() {
        Catalogue catalogue = CatalogueFiles.sound().read().orElseThrow();

        assertThat(catalogue.version()).isEqualTo("test");
        FailureItem bearing = catalogue.itemsById().get("BEARING");
        assertThat(bearing.applies().engines()).containsExactlyInAnyOrder(Engine.PETROL, Engine.DIESEL);
        assertThat(bearing.applies().gearboxes()).containsExactlyInAnyOrder(Gearbox.values());
        assertThat(bearing.onset()).isEqualTo(new Onset(2, 50, 0.6, Probability.NEVER));
        assertThat(bearing.rootCauses()).containsExactly("PUMP");
        assertThat(bearing.jobHours().hours()).isEqualTo(new Range(2, 3, 5));
        assertThat(bearing.parts()).isEmpty();
        FailureItem pump = catalogue.itemsById().get("PUMP");
        assertThat(pump.parts()).isEqualTo(Map.of(PartSource.MAKER, MoneyRange.usd(100, 200, 300)));
        assertThat(pump.tools()).containsExactly("GAUGE");
        assertThat(pump.flags()).containsExactly(Flag.DO_NOT_RUN);
        assertThat(catalogue.itemsById().get("FLOOD").onset().scaleYears()).isInfinite();
        assertThat(catalogue.itemsById().get("FLOOD").exclusiveGroup()).isEqualTo("water");

        DamageLink damage = catalogue.damage().get(0);
        assertThat(damage.hazard()).contains(Exposure.Hazard.LOW_OIL_PRESSURE);
        assertThat(damage.ifStopped()).isEqualTo(Probability.of(0.1));
        assertThat(damage.ifDrivenOn()).isEqualTo(Probability.of(0.8));
        assertThat(catalogue.damage().get(1).hazard()).isEmpty();
        assertThat(catalogue.damage().get(1).ifDrivenOn()).isEqualTo(Probability.of(0.1));

        FindingKind waterLine = catalogue.findingsById().get("WATER_LINE");
        assertThat(waterLine.stage()).isEqualTo(FindingKind.Stage.DRIVEWAY);
        assertThat(waterLine.cost()).isEqualTo(Money.usd(5));
        assertThat(waterLine.time().value()).isEqualTo(10.0 / 60);
        assertThat(waterLine.canDoDamage()).isTrue();
        assertThat(waterLine.sellerAllows()).isEqualTo(FindingKind.Leave.MAYBE);
        assertThat(waterLine.caution()).isEqualTo("mould");
        assertThat(catalogue.findingsById().get("LAMP").codes()).containsExactly("P0520", "P0524");
        assertThat(catalogue.findingLinks())
                .contains(new FindingLink("LAMP", "PUMP", new Range(0.5, 0.7, 0.9), Source.guess("invented")));

        assertThat(catalogue.accessById().get("PAN").requires()).containsExactly("TRAY");
        assertThat(catalogue.accessById().get("TRAY").easedBy()).isEqualTo(Map.of("PAN", 0.5));
        Remedy shells = catalogue.remedies().get(0);
        assertThat(shells.closes()).isEqualTo(Set.of("BEARING"));
        assertThat(shells.partSource()).isEqualTo(PartSource.USED);
        assertThat(shells.success()).isEqualTo(Probability.of(0.7));
        assertThat(shells.wholeUnit()).isFalse();
        assertThat(catalogue.toolsById().get("GAUGE").price()).isEqualTo(MoneyRange.usd(30, 40, 60));
        assertThat(catalogue.moneyById().get("tow_hook_up").unit()).isEqualTo(MoneyLine.Unit.MONEY);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        // file | text | replacement | line | column | part of the message
        "damage.csv|PUMP,BEARING|PUMMP,BEARING|3|cause|'PUMMP' is not in items.csv",
        "finding_links.csv|LAMP,BEARING|LAMB,BEARING|4|finding|'LAMB' is not in findings.csv",
        "access.csv|Pan off,TRAY|Pan off,TRAP|4|requires|'TRAP' is not in access.csv",
        "access.csv|PAN:0.5|PANE:0.5|3|eased_by|'PANE' is not in access.csv",
        "access.csv|PAN:0.5|PAN|3|eased_by|write STEP:0.5",
        "access.csv|PAN:0.5|PAN:1.5|3|eased_by|factor from 0 to 1",
        "remedies.csv|BEARING|BEARINGS|3|closes|'BEARINGS' is not in items.csv",
        "remedies.csv|,BEARING,|,,|3|closes|empty",
        "findings.csv|GAUGE|GAGE|4|tools|'GAGE' is not in tools.csv",
        "parts.csv|FLOOD|FLOOT|4|item|'FLOOT' is not in items.csv",
        "parts.csv|FLOOD,ON_THE_SHELF|PUMP,MAKER|4|part_source|a second price of PUMP from MAKER",
        "items.csv|BEARING,oil|PUMP,oil|4|id|given a second time",
        "items.csv|FLOOD,flood|flood,flood|5|id|use capital letters",
        "money.csv|tow_hook_up|TOW|3|id|use small letters",
        "items.csv|PUMP,oil,Oil pump|PUMP,oil,|3|name|empty",
        "items.csv|any,2,40|any,two,40|3|shape|'two' is not a number",
        "items.csv|any,2,40|any,0,40|3|shape|above zero",
        "items.csv|any,2,40|any,2,-4|3|scale_years|above zero",
        "items.csv|40,0.6|40,1.6|3|mileage_share|from 0 to 1",
        "items.csv|0.6,0,0.5,1,2,,PAN,1|0.6,2,0.5,1,2,,PAN,1|3|event|from 0 to 1",
        "items.csv|PETROL DIESEL|PETROL DIESSEL|4|engines|allowed: PETROL, PETROL_TURBO, DIESEL, HYBRID, ELECTRIC",
        "items.csv|Oil pump,any|Oil pump,|3|engines|empty",
        "items.csv|REVIEW|REVUE|4|flags|allowed: HARD_STOP, REVIEW",
        "items.csv|,PUMP,REVIEW|,FLOOD PUMP PUMP,REVIEW|4|root_causes|twice in this cell",
        "items.csv|GAUGE,,DO|GAUGE,FLOOD,DO|3|root_causes|damage.csv has no line FLOOD,PUMP",
        "items.csv|PAN,1,2,3,10|PAN,3,2,1,10|3|hours_mode|out of order",
        "tools.csv|30,40,60|50,40,60|3|mode|low 50.0, mode 40.0 and high 60.0 are out of order",
        "tools.csv|30,40,60|-30,40,60|3|low|below zero",
        "tools.csv|30,40,60|30,NaN,60|3|mode|is not a number",
        "tools.csv|guess|hunch|3|label|allowed: MEASURED, PUBLISHED, COMMON_PRACTICE, GUESS, USER",
        "finding_links.csv|0.3,0.4,0.5|0.3,0.4,1.5|4|high|1.5 is not a probability",
        "findings.csv|P0524|P52|3|codes|'P52' is not a trouble code",
        "findings.csv|MAYBE,yes|MAYBE,perhaps|4|can_do_damage|allowed: yes, no",
        "findings.csv|,5,10|,5,-1|4|minutes|below zero",
        "damage.csv|0.1,0.8|0.5,0.8|3|if_stopped|driving on cannot make damage less likely",
        "damage.csv|0.1,0.8|0.1,0.3|3|if_stopped|driving on cannot make damage less likely",
        "damage.csv|0.2,,,|0.2,,0.1,0.3|4|hazard|name the hazard",
        "damage.csv|0.2,,,|0.2,RAIN,0.1,0.3|4|hazard|allowed: LOW_OIL_PRESSURE",
        "damage.csv|FLOOD,BEARING|PUMP,BEARING|4|effect|stand in an earlier line",
        "tools.csv|Gauge|Gauge, large|3||this line has 9 cells, the header 8",
        "tools.csv|id,name|id,nam|2|name|the header lacks name",
        "tools.csv|id,name|id,low|1||the header cannot be read",
        "tools.csv|# format 1, edition test|# my tools|1||must name the file format",
        "tools.csv|# format 1|# format 2|1||newer than this program",
    })
    void names_file_line_and_column_of_a_fault(
            String file, String text, String replacement, long line, String column, String message) {
        String spoilt = replacement == null ? "" : replacement;
        List<CatalogueFault> faults =
                CatalogueFiles.sound().with(file, text, spoilt).read().faults();

        assertThat(faults).anySatisfy(fault -> {
            assertThat(fault.file()).isEqualTo(file);
            assertThat(fault.line()).isEqualTo(line);
            assertThat(fault.column()).isEqualTo(column == null ? "" : column);
            assertThat(fault.message()).contains(message);
        });
    }

    @Test
    void lists_the_faults_of_all_files_at_once_by_place() {
        CatalogueReading reading = CatalogueFiles.sound()
                .with("tools.csv", "30,40,60", "x,y,60")
                .with("items.csv", "DO_NOT_RUN", "RUN")
                .with("findings.csv", "ADVERT", "BILLBOARD")
                .read();

        assertThat(reading.faults())
                .extracting(f -> f.file() + ":" + f.line() + ":" + f.column())
                .containsExactly("findings.csv:3:stage", "items.csv:3:flags", "tools.csv:3:low", "tools.csv:3:mode");
        assertThatThrownBy(reading::orElseThrow)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("items.csv, line 3, column flags: 'RUN' is not known")
                .hasMessageContaining("tools.csv, line 3, column low");
    }

    @Test
    void counts_remarks_and_empty_lines() {
        List<CatalogueFault> faults = CatalogueFiles.sound()
                .with("tools.csv", "GAUGE,Gauge,30", "# remark\n\n# another\nGAUGE,Gauge,x")
                .read()
                .faults();

        assertThat(faults).extracting(CatalogueFault::line).containsOnly(6L);
    }

    @Test
    void names_a_circle_in_damage() {
        List<CatalogueFault> faults = CatalogueFiles.sound()
                .with("damage.csv", "FLOOD,BEARING", "BEARING,PUMP")
                .read()
                .faults();

        assertThat(faults)
                .singleElement()
                .asString()
                .isEqualTo("damage.csv, line 3, column effect: goes round in a circle: BEARING > PUMP > BEARING;"
                        + " remove the weakest link");
    }

    @Test
    void names_a_circle_in_access() {
        List<CatalogueFault> faults = CatalogueFiles.sound()
                .with("access.csv", "Tray off,", "Tray off,PAN")
                .read()
                .faults();

        assertThat(faults).singleElement().asString().contains("access.csv, line 3").contains("PAN > TRAY > PAN");
    }

    @Test
    void wants_a_part_or_a_remedy_for_each_item_and_a_cause_for_each_finding() {
        List<CatalogueFault> faults = CatalogueFiles.sound()
                .with("remedies.csv", "BEARING", "PUMP")
                .with("finding_links.csv", "WATER_LINE", "LAMP")
                .read()
                .faults();

        assertThat(faults)
                .extracting(CatalogueFault::toString)
                .anyMatch(f -> f.startsWith("items.csv, line 4, column id: BEARING has neither a part nor a remedy"))
                .anyMatch(f -> f.startsWith("findings.csv, line 4, column id: WATER_LINE has no cause"))
                .hasSize(2);
    }

    @Test
    void a_missing_file_is_one_fault_and_no_flood_of_unknown_ids() {
        assertThat(CatalogueFiles.sound().without("access.csv").read().faults())
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.file()).isEqualTo("access.csv");
                    assertThat(fault.message()).contains("no such file").contains("restore it");
                });
    }

    @Test
    void a_reader_that_fails_is_a_fault_too() {
        CatalogueReading reading = CatalogueReader.read(file -> {
            throw new UncheckedIOException(new IOException("disk gone"));
        });

        assertThat(reading.faults())
                .hasSameSizeAs(CatalogueReader.FILES)
                .allSatisfy(fault -> assertThat(fault.message()).contains("disk gone"));
    }

    @Test
    void an_unclosed_quotation_mark_is_a_fault() {
        List<CatalogueFault> faults = CatalogueFiles.sound()
                .with("tools.csv", "GAUGE,Gauge", "GAUGE,\"Gauge")
                .read()
                .faults();

        assertThat(faults)
                .singleElement()
                .satisfies(f -> assertThat(f.message()).contains("quotation mark without its partner"));
    }

    @Test
    void a_byte_order_mark_and_windows_line_ends_do_no_harm() {
        CatalogueReading reading = CatalogueFiles.sound()
                .with("tools.csv", "# format 1", "\uFEFF# format 1")
                .with("money.csv", "\n", "\r\n")
                .read();

        assertThat(reading.faults()).isEmpty();
    }

    @Test
    void further_columns_are_left_alone() {
        CatalogueReading reading = CatalogueFiles.sound()
                .with("tools.csv", "label,source", "label,source,my remark")
                .with("tools.csv", "guess,invented", "guess,invented,bought in May")
                .read();

        assertThat(reading.faults()).isEmpty();
    }
}
