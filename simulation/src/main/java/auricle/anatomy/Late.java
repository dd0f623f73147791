package auricle.anatomy;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/** A value that is worked out when it is first asked for; the same whoever asks. */
final class Late<T> {
  private final Supplier<T> make;
  private final AtomicReference<Optional<T>> value = new AtomicReference<>(Optional.empty());

  Late(Supplier<T> make) {
    this.make = make;
  }

  T get() {
    Optional<T> known = value.get();
    if (known.isPresent()) {
      return known.get();
    }
    T made = make.get();
    value.set(Optional.of(made));
    return made;
  }
}
