package worthsaving.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ShippedCatalogueTest {

    @Test
    void loads_without_a_fault() {
        assertThat(CatalogueReader.read(ShippedCatalogue::open).faults()).isEmpty();
    }
}
