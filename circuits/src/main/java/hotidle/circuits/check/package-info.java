/**
 * What must be true of a circuit file beyond each key alone: one rule a file, all listed in {@link hotidle.circuits.check.Rules}.
 *
 * <p>What must be true of the keys of one part alone is asked by its kind, of a part on its own and of a changed size too, and so
 * stands in {@code circuits/kind}: {@code ValveFitsItsBore} (a valve is narrower than its bore), {@code OpeningRules}, and
 * {@code check} of a kind or of the keys that kinds share. What each says is a code of {@link hotidle.circuits.text.ProblemCode},
 * used in that one place.
 */
package hotidle.circuits.check;
