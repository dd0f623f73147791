package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.energy.EnergyTerm;
import auricle.equilibrium.TotalEnergy;
import auricle.numerics.SymmetricMatrix;
import auricle.numerics.SymmetricPattern;
import auricle.surgery.EarBody;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** While an ear closes on itself, what is near changes all the time; what is solved does not. */
class ContactRoomTest {
  /** A plan of {@link RandomCase} that ends with the ear pressed on itself. */
  private static final long SEED = 21;

  private static EnergyTerm contact(EarBody body) {
    return body.shell().others().stream()
        .filter(term -> term.name().equals("ear against itself"))
        .findFirst()
        .orElseThrow();
  }

  /** Patterns met at the iterations of a plan, and lists of what is near. */
  private static final class Watch implements RehearsalWatcher {
    private final Set<SymmetricPattern> patterns =
        Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<Integer> lists = new HashSet<>();
    private Optional<RehearsalRun> run = Optional.empty();

    @Override
    public void progress(String words, double share) {}

    @Override
    public boolean cancelled() {
      run.map(RehearsalRun::body)
          .ifPresent(
              ear -> {
                patterns.add(ear.shell().energy().pattern());
                lists.add(contact(ear).stencilVersion());
              });
      return false;
    }
  }

  /** The product of the Hessian with a vector, at the present state. */
  private static double[] product(TotalEnergy energy) {
    double[] x = energy.free();
    energy.begin(x);
    SymmetricMatrix hessian = new SymmetricMatrix(energy.pattern());
    energy.derivatives(x, new double[x.length], hessian);
    double[] along = new double[x.length];
    Arrays.setAll(along, i -> Math.sin(1.7 * i));
    double[] product = new double[x.length];
    hessian.multiply(along, product);
    return product;
  }

  @Test
  void fewPatternsServeManyListsAndLeaveNothingOut() throws Exception {
    Watch watch = new Watch();
    RehearsalRun run = RandomCase.of(SEED, watch);
    watch.run = Optional.of(run);
    assertTrue(run.run().converged());
    EarBody body = run.body();
    assertTrue(watch.lists.size() >= 8, "lists of what is near: " + watch.lists.size());
    assertTrue(
        2 * watch.patterns.size() <= watch.lists.size(),
        "patterns: " + watch.patterns.size() + " for " + watch.lists.size());
    EnergyTerm contact = contact(body);
    long pressed =
        IntStream.range(0, contact.count()).filter(i -> contact.curved(i, body.unknowns())).count();
    assertTrue(pressed > 5, "pairs that press: " + pressed);
    double[] kept = product(body.shell().energy());
    double[] anew = product(body.copy().shell().energy());
    double largest = Arrays.stream(anew).map(Math::abs).max().orElseThrow();
    for (int i = 0; i < anew.length; i++) {
      assertEquals(anew[i], kept[i], 1e-11 * largest);
    }
  }
}
