package worthsaving.desktop;

import java.util.Map;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.Parent;
import javafx.scene.Scene;

/** Theme and text size, remembered. */
public final class Look {

    static final double USUAL = 13;
    private static final double SMALLEST = 10;
    private static final double LARGEST = 26;
    private static final String THEME = "theme";
    private static final String SIZE = "text_size";
    private static final String UNITS = "units";

    private final Parent root;
    private final Settings settings;
    private Theme theme;
    private final ReadOnlyObjectWrapper<Units> units = new ReadOnlyObjectWrapper<>(Units.MILES);
    private final ReadOnlyDoubleWrapper textSize = new ReadOnlyDoubleWrapper(USUAL);

    Look(Parent root, Settings settings) {
        this.root = root;
        this.settings = settings;
        this.theme = settings.get(THEME).filter("DARK"::equals).isPresent() ? Theme.DARK : Theme.LIGHT;
        this.units.set(settings.get(UNITS).filter("KILOMETRES"::equals).isPresent() ? Units.KILOMETRES : Units.MILES);
        this.textSize.set(settings.get(SIZE).map(Look::number).orElse(USUAL));
    }

    /** Size of ordinary text in pixels, by which everything is measured. */
    public ReadOnlyDoubleProperty textSizeProperty() {
        return textSize.getReadOnlyProperty();
    }

    /** What distances are shown in. */
    public ReadOnlyObjectProperty<Units> unitsProperty() {
        return units.getReadOnlyProperty();
    }

    public void otherUnits() {
        use(units.get().other());
    }

    void use(Units other) {
        units.set(other);
        settings.put(UNITS, other.name());
    }

    public void otherTheme() {
        theme = theme.other();
        settings.put(THEME, theme.name());
        apply();
    }

    /** @param steps above zero for larger text; zero for the usual size */
    public void resize(int steps) {
        textSize.set(steps == 0 ? USUAL : Math.max(SMALLEST, Math.min(LARGEST, textSize.get() + steps)));
        settings.put(SIZE, Double.toString(textSize.get()));
        apply();
    }

    void apply() {
        theme.apply(root, textSize.get());
    }

    /** Keys for sizes that the menus cannot show, such as those of the number pad. */
    void addKeys(Scene scene) {
        HeldKeys.silence(scene);
        Map.of(Shortcuts.BIGGER, 1, Shortcuts.SMALLER, -1, Shortcuts.USUAL_SIZE, 0).forEach((shortcut, steps) ->
                shortcut.otherKeys().forEach(keys -> scene.getAccelerators().put(keys, () -> resize(steps))));
    }

    private static double number(String text) {
        try {
            double size = Double.parseDouble(text);
            return size >= SMALLEST && size <= LARGEST ? size : USUAL;
        } catch (NumberFormatException e) {
            return USUAL;
        }
    }
}
