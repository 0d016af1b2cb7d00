package hotidle.transmission;

/**
 * A place at which a gauge can be fitted.
 *
 * @param name    what it is called
 * @param node    whose pressure it shows
 * @param port    the port in the case, in words
 * @param between what lies between node and gauge, in words
 */
public record Tap(String name, String node, String port, String between) {}
