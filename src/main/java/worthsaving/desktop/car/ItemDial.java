package worthsaving.desktop.car;

import java.util.Currency;
import java.util.Objects;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;

/** The chance, in percent, that one item has failed, for a user who knows better than the findings say. */
public record ItemDial(String item, String name) implements Dial {

    public ItemDial {
        Objects.requireNonNull(item, "item");
        Objects.requireNonNull(name, "name");
    }

    @Override
    public double low() {
        return 0;
    }

    @Override
    public double high(double given) {
        return 100;
    }

    @Override
    public double step() {
        return 1;
    }

    @Override
    public String label() {
        return name;
    }

    @Override
    public String explanation() {
        return Texts.of("dial.item.why");
    }

    @Override
    public String text(double value, Currency currency) {
        return Figures.percent(value / 100);
    }

    @Override
    public String id() {
        return "dial-" + item;
    }

    @Override
    public boolean quick() {
        return true;
    }
}
