package worthsaving.desktop;

import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;

/** Labels in the few forms that screens use. */
public final class Words {

    private Words() {}

    /** A label that wraps. */
    public static Label wrapped(String text, String... styles) {
        Label label = plain(text, styles);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    /** A label on one line that is never cut. */
    public static Label whole(String text, String... styles) {
        Label label = plain(text, styles);
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    public static Label plain(String text, String... styles) {
        Label label = new Label(text);
        label.getStyleClass().addAll(styles);
        return label;
    }

    /** Adds what a term means, for the pointer and for a screen reader. */
    public static Label explained(Label label, String meaning) {
        label.setTooltip(new Tooltip(meaning));
        label.setAccessibleHelp(meaning);
        return label;
    }
}
