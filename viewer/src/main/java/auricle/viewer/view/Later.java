package auricle.viewer.view;

import javafx.animation.AnimationTimer;

/**
 * Does something some frames from now, once however often it was asked for meanwhile: what is drawn
 * beside the ear lets the ear go first.
 */
public final class Later extends AnimationTimer {
  /** The frame of the change itself, and that it is on the screen before more is drawn. */
  private static final int FRAMES = 3;

  private final Runnable task;
  private int frames;
  private boolean waiting;

  /** Waits to do something. */
  public Later(Runnable task) {
    this.task = task;
  }

  /** Asks for it; a wait that has begun goes on. */
  public void ask() {
    if (!waiting) {
      waiting = true;
      frames = 0;
      start();
    }
  }

  @Override
  public void handle(long now) {
    frames++;
    if (frames > FRAMES) {
      stop();
      waiting = false;
      task.run();
    }
  }
}
