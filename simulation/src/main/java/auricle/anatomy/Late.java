package auricle.anatomy;

import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value that is worked out when it is first asked for; the same whoever asks. */
final class Late<T> {
  private final Supplier<T> make;
  private final AtomicReference<@Nullable T> value = new AtomicReference<>();

  Late(Supplier<T> make) {
    this.make = make;
  }

  T get() {
    T known = value.get();
    if (known != null) {
      return known;
    }
    T made = make.get();
    value.set(made);
    return made;
  }
}
