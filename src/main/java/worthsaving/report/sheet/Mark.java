package worthsaving.report.sheet;

/** Something put on paper. Lengths in points (1/72 inch), from the upper left, y downwards. */
sealed interface Mark {

    /** The same elsewhere. */
    Mark moved(double dx, double dy);

    /** @param y of the baseline */
    record Text(double x, double y, double size, boolean bold, Ink ink, String text) implements Mark {
        @Override
        public Text moved(double dx, double dy) {
            return new Text(x + dx, y + dy, size, bold, ink, text);
        }
    }

    /** A filled rectangle. */
    record Box(double x, double y, double width, double height, Ink ink) implements Mark {
        @Override
        public Box moved(double dx, double dy) {
            return new Box(x + dx, y + dy, width, height, ink);
        }
    }

    /** A straight line. */
    record Rule(double x1, double y1, double x2, double y2, double thickness, Ink ink) implements Mark {
        @Override
        public Rule moved(double dx, double dy) {
            return new Rule(x1 + dx, y1 + dy, x2 + dx, y2 + dy, thickness, ink);
        }
    }

    /** A photo fitted into a frame of its own proportions. */
    record Image(double x, double y, double width, double height, Photo photo) implements Mark {
        @Override
        public Image moved(double dx, double dy) {
            return new Image(x + dx, y + dy, width, height, photo);
        }
    }
}
