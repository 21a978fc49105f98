package worthsaving.desktop.car;

import java.time.LocalDate;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Typed;
import worthsaving.desktop.book.Bought;
import worthsaving.quantity.Money;

/** What is asked when a car was bought: for what, and when. Holds no control. */
public final class BuyModel {

    private final CarBook book;
    private final CarModel car;
    private final LocalDate today;
    private final StringProperty price = new SimpleStringProperty("");
    private final StringProperty day = new SimpleStringProperty("");

    public BuyModel(CarModel car, CarBook book, LocalDate today) {
        this.car = car;
        this.book = book;
        this.today = today;
        double at = car.value(Lever.PRICE);
        price.set(at > 0 ? Figures.amount(at) : "");
        day.set(today.toString());
    }

    public StringProperty priceProperty() {
        return price;
    }

    public StringProperty dayProperty() {
        return day;
    }

    public String currency() {
        return car.currency().getCurrencyCode();
    }

    static Typed<Double> price(String text) {
        return Typed.amount(text, true);
    }

    Typed<LocalDate> day(String text) {
        return Typed.day(text, true, today);
    }

    /**
     * Keeps it, with the forecast as it stands.
     *
     * @return whether what was typed could be used
     */
    public boolean buy() {
        Optional<Double> paid = price(price.get()).value();
        Optional<LocalDate> on = day(day.get()).value();
        if (paid.isEmpty() || on.isEmpty()) {
            return false;
        }
        book.buy(new Bought(on.get(), new Money(paid.get(), car.currency())));
        return true;
    }
}
