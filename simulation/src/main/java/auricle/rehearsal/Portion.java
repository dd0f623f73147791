package auricle.rehearsal;

/**
 * A part of a longer piece of work, told as the whole's progress.
 *
 * @param whole who hears of the whole
 * @param from share of the whole that is done when this part begins
 * @param to share that is done when it ends
 */
record Portion(RehearsalWatcher whole, double from, double to) implements RehearsalWatcher {
  @Override
  public void progress(String words, double share) {
    whole.progress(words, from + (to - from) * share);
  }

  @Override
  public boolean cancelled() {
    return whole.cancelled();
  }
}
