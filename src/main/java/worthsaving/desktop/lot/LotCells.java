package worthsaving.desktop.lot;

import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Units;
import worthsaving.desktop.VerdictBadge;

/** How each kind of column draws its cells. */
final class LotCells {

    /** Of a column that all its words are shown in, in sizes of text. */
    private static final double WIDE = 20;

    private LotCells() {}

    /** @param under what stands below the name of a car */
    static TableCell<LotRow, LotRow> of(
            LotColumn column, Supplier<StripScale> scale, Function<LotRow, String> under) {
        return switch (column) {
            case VERDICT -> new VerdictCell();
            case CAR -> new CarCell(under);
            case OUTCOME -> new StripCell(scale);
            case CHECK, LIKELY -> new WrappedCell(column);
            default -> new TextCell(column);
        };
    }

    /** What became of it in the choice of a set; without one its miles. The id stands in both. */
    static String under(LotRow row, Units units, ChoiceModel choice) {
        String id = row.listing().id();
        String mark = choice.mark(id);
        if (!mark.isEmpty()) {
            return mark + " \u00b7 " + id;
        }
        return id + (row.edited() ? Texts.of("lot.edited") : "")
                + row.listing().vehicle().odometer().get().map(d -> Texts.of("lot.odometer", units.text(d)))
                        .orElse(Texts.of("lot.miles_unknown"));
    }

    private abstract static class Cell extends TableCell<LotRow, LotRow> {

        private final Tooltip tip = new Tooltip();

        @Override
        protected void updateItem(LotRow row, boolean empty) {
            super.updateItem(row, empty);
            if (empty || row == null) {
                setText(null);
                setGraphic(null);
                setTooltip(null);
                setAccessibleText(null);
            } else {
                show(row);
            }
        }

        abstract void show(LotRow row);

        /** A cell shows many rows in its life, with one tooltip. */
        final void tip(String words) {
            tip.setText(words);
            setTooltip(tip);
        }
    }

    private static final class TextCell extends Cell {
        private final LotColumn column;

        TextCell(LotColumn column) {
            this.column = column;
            if (column.isNumber()) {
                getStyleClass().add("number");
            }
        }

        @Override
        void show(LotRow row) {
            setText(column.text(row));
        }
    }

    /** Two lines; what is longer stands in the tooltip. */
    private static final class WrappedCell extends Cell {
        private final LotColumn column;
        private final Label text = new Label();

        WrappedCell(LotColumn column) {
            this.column = column;
            text.setWrapText(true);
            text.setMinHeight(0);
            text.maxHeightProperty().bind(heightProperty());
            text.prefHeightProperty().bind(heightProperty());
            getStyleClass().add("two-lines");
            widthProperty().addListener(o -> {
                if (getItem() != null && !isEmpty()) {
                    text.setText(words(getItem()));
                }
            });
        }

        /** All of it where there is room. */
        private String words(LotRow row) {
            return getWidth() > WIDE * getFont().getSize() ? column.text(row) : column.brief(row);
        }

        @Override
        protected double computePrefHeight(double width) {
            return 0;
        }

        @Override
        void show(LotRow row) {
            text.setText(words(row));
            setGraphic(text);
            setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
            tip(column.text(row));
        }
    }

    private static final class VerdictCell extends Cell {
        private final VerdictBadge badge = new VerdictBadge();

        @Override
        void show(LotRow row) {
            badge.show(row.standing().verdict().kind());
            setGraphic(badge);
            setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
            tip(row.standing().verdict().headline());
        }
    }

    private static final class CarCell extends Cell {
        private final Function<LotRow, String> words;
        private final Label name = new Label();
        private final Label under = new Label();
        private final VBox box = new VBox(name, under);

        CarCell(Function<LotRow, String> words) {
            this.words = words;
            name.getStyleClass().add("subheading");
            under.getStyleClass().add("soft");
        }

        @Override
        void show(LotRow row) {
            name.setText(LotColumn.CAR.text(row));
            under.setText(words.apply(row));
            setGraphic(box);
            setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
            tip((name.getText() + '\n' + row.listing().story()).strip());
        }
    }

    private static final class StripCell extends Cell {
        private final OutcomeStrip strip = new OutcomeStrip();
        private final Supplier<StripScale> scale;

        StripCell(Supplier<StripScale> scale) {
            this.scale = scale;
            strip.prefHeightProperty().bind(heightProperty().multiply(0.55));
        }

        @Override
        void show(LotRow row) {
            strip.show(row.standing().strip(), scale.get());
            strip.setPrefWidth(getWidth());
            setGraphic(strip);
            setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
            tip(LotColumn.OUTCOME.text(row));
            setAccessibleText(LotColumn.OUTCOME.text(row));
        }
    }
}
