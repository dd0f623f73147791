package auricle.analysis;

/**
 * A set of the model.
 *
 * @param name by which it is asked for
 * @param selector what it holds
 */
public record NamedSelector(String name, Selector selector) {}
