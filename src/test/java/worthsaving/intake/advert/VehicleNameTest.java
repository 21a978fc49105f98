package worthsaving.intake.advert;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names of cars as people write them. */
class VehicleNameTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "2011 vw jetta GLI 2.0T | Volkswagen | Jetta", "2013 ford f150 xlt | Ford | F-150",
        "2013 ford f 150 | Ford | F-150",
        "2003 F-250 Super Duty | Ford | F-250", "Dodge Ram 1500 2009 | Dodge | Ram 1500", "2013 RAM 2500 | Ram | 2500",
        "2005 Ram 1500 | Dodge | Ram 1500", "2006 Mazda 3 hatch | Mazda | 3", "2010 mazda3 | Mazda | 3",
        "Bmw 328i 2012 | BMW | 328i", "BMW 2012 328i | BMW | 328i", "merc c300 2011 | Mercedes-Benz | C300",
        "Mercedes-Benz C 300 2011 | Mercedes-Benz | C300", "saab 9-3 aero 2005 | Saab | 9-3",
        "2012 chrysler 200 | Chrysler | 200",
        "2008 chevy silverado 2500hd | Chevrolet | Silverado 2500HD",
        "04 chevy silverado 1500 | Chevrolet | Silverado 1500",
        "2014 chevorlet malibu | Chevrolet | Malibu", "2011 Toyoya Camry | Toyota | Camry",
        "2011 toyota camery | Toyota | Camry",
        "2012 hyndai sonatta | Hyundai | Sonata", "2015 nisan altima | Nissan | Altima",
        "honda crv 2004 | Honda | CR-V",
        "2009 town and country | Chrysler | Town & Country", "2012 Mini Cooper S | MINI | Cooper",
        "Jeep Wrangler Unlimited Sahara 2012 | Jeep | Wrangler Unlimited",
        "2010 grand cherokee | Jeep | Grand Cherokee",
        "17 Escape SE | Ford | Escape", "2018 Camry XSE | Toyota | Camry", "2010 Lexus ES 350 | Lexus | ES 350",
        "2010 es350 lexus | Lexus | ES 350", "2012 Kia Soul needs new spark plugs | Kia | Soul",
        "2012 Honda Civic will trade for a Tacoma | Honda | Civic",
        "range rover sport 2010 | Land Rover | Range Rover Sport",
        "holden commodore VE 2009 | Holden | Commodore", "Nissan Qashqai 2011 | Nissan | Qashqai",
        "Peugeot 308 2012 | Peugeot | 308", "VW Polo 2014 | Volkswagen | Polo",
    })
    void name(String text, String make, String model) {
        CarReading car = Vocabularies.read(text).car();
        assertThat(car.make().orElseThrow().value()).isEqualTo(make);
        assertThat(car.model().orElseThrow().value()).isEqualTo(model);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "2010 Mercedes C300 4MATIC Sport | 4MATIC Sport", "2010 Mercedes C300 Sport 4MATIC | Sport 4MATIC",
        "2016 Mini Cooper S Clubman | S", "Honda Accord Hybrid 2014 Touring | Hybrid Touring",
        "Toyota Yaris 2015 1.0 VVTi Icon | Icon", "Vauxhall Corsa 1.2 SXi 2009 | SXi",
        "2006 Silverado 1500 extended cab LT 4x4 | LT Extended Cab 4x4", "Skoda Octavia 2.0 TDI 150ps SE L | SE L",
        "2011 Toyota Corolla Ascent | Ascent",
    })
    void trim(String text, String trim) {
        assertThat(Vocabularies.read(text).car().trim().orElseThrow().value()).isEqualTo(trim);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Stoke on Trent | Stoke on Trent", "Mullingar, Co Westmeath | Mullingar, Co Westmeath",
        "Kendal, Cumbria | Kendal, Cumbria", "Ann Arbor, Mich. | Ann Arbor, MI", "Ft Myers FL | Fort Myers, FL",
        "St Louis MO | St Louis, MO", "London ON | London, ON",
    })
    void place(String text, String place) {
        assertThat(Vocabularies.read("2010 Ford Focus, runs rough. $900. " + text).offer().location().orElseThrow()
                .value()).isEqualTo(place);
    }

    @ParameterizedTest
    @CsvSource({
        "spark plugs and a note for the focus group", "escape the city on this edge of the titan",
        "battery charger 300",
        "'nice boat, 1500 obo'",
    })
    void everyday_words_alone_are_no_car(String text) {
        assertThat(Vocabularies.read(text).car().model()).isEmpty();
    }

    @Test
    void a_slip_is_marked_as_guess_and_a_plain_name_is_not() {
        assertThat(Vocabularies.read("2011 Toyoya Camry").car().make().orElseThrow().isGuessed()).isTrue();
        assertThat(Vocabularies.read("2011 Toyota Camry").car().make().orElseThrow().isGuessed()).isFalse();
    }

    @Test
    void ram_is_priced_under_its_own_make() {
        assertThat(Vocabularies.read("Dodge Ram 1500 2009").pricedAs()).contains("ram/1500");
    }
}
