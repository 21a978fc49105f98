package worthsaving.desktop;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Executor;

/** Screen and background threads of a test, turned by hand, so that every order of events can be tried. */
public final class HandTurned {

    private final Deque<Runnable> background = new ArrayDeque<>();
    private final Deque<Runnable> screen = new ArrayDeque<>();
    private boolean onScreen = true;

    public Executor background() {
        return background::add;
    }

    public ScreenThread screen() {
        return new ScreenThread(screen::add, () -> onScreen);
    }

    /** Runs one piece of background work; its results wait for the screen. */
    public void turnBackground() {
        onScreen = false;
        try {
            background.remove().run();
        } finally {
            onScreen = true;
        }
    }

    public void turnScreen() {
        while (!screen.isEmpty()) {
            screen.remove().run();
        }
    }

    /** Until nothing is left to do. */
    public void turnAll() {
        turnScreen();
        while (!background.isEmpty()) {
            turnBackground();
            turnScreen();
        }
    }

    public int waitingInBackground() {
        return background.size();
    }

    /** Runs something as if from a background thread. */
    public void elsewhere(Runnable work) {
        onScreen = false;
        try {
            work.run();
        } finally {
            onScreen = true;
        }
    }
}
