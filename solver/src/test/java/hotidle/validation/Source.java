package hotidle.validation;

/**
 * Where a published value comes from.
 *
 * @param text  author, title, year and place
 * @param read  whether the source was read for this check or is quoted from memory
 */
record Source(String text, Read read) {

    /** How the value came here. */
    enum Read {
        FOUND("found"),
        MEMORY("from memory"),
        LIBRARY("from a library's code or tests");

        private final String label;

        Read(String label) {
            this.label = label;
        }

        String label() {
            return label;
        }
    }

    /** A publication that was read for this check. */
    static Source found(String text) {
        return new Source(text, Read.FOUND);
    }

    /** A publication quoted from memory. */
    static Source memory(String text) {
        return new Source(text, Read.MEMORY);
    }

    /** A value that stands in a library's code or its tests, which it names: computed by others, and so no publication. */
    static Source library(String text) {
        return new Source(text, Read.LIBRARY);
    }

    /** Whether it is a publication that can be looked up. */
    boolean published() {
        return read != Read.LIBRARY;
    }

    /** The same publication at one example, table or equation. */
    Source at(String place) {
        return new Source(text + ", " + place, read);
    }
}
