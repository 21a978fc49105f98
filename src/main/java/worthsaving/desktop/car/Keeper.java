package worthsaving.desktop.car;

/** Where the edits of a car are kept, and taken back from. */
public interface Keeper {

    /** Keeps nothing; then the car screen has a history of its own, which ends with the window. */
    Keeper NONE = new Keeper() {

        @Override
        public boolean keeps() {
            return false;
        }

        @Override
        public void keep(Scenario before, Scenario now) {
            // the history of the car screen has it
        }

        @Override
        public void undo() {
            throw new UnsupportedOperationException("nothing is kept here");
        }

        @Override
        public void redo() {
            throw new UnsupportedOperationException("nothing is kept here");
        }

        @Override
        public boolean canUndo() {
            return false;
        }

        @Override
        public boolean canRedo() {
            return false;
        }
    };

    /** Whether edits are kept; if not, nothing else may be asked of it but {@link #keep}. */
    boolean keeps();

    /** Told of every edit, of a whole drag once. */
    void keep(Scenario before, Scenario now);

    /** Takes back the last edit kept, of whatever screen; the car follows once that is done. */
    void undo();

    void redo();

    boolean canUndo();

    boolean canRedo();
}
