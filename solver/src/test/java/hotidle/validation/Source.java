package hotidle.validation;

/**
 * Where a published value comes from.
 *
 * @param text  author, title, year and place
 * @param read  whether the source was read for this check or is quoted from memory
 * @param named whether it is a publication that can be looked up
 */
record Source(String text, Read read, boolean named) {

    /** How the value came here. */
    enum Read {
        FOUND("found"),
        MEMORY("from memory");

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
        return new Source(text, Read.FOUND, true);
    }

    /** A publication quoted from memory. */
    static Source memory(String text) {
        return new Source(text, Read.MEMORY, true);
    }

    /** A value that is published without a name to look it up by. */
    static Source unnamed(String text, Read read) {
        return new Source(text, read, false);
    }

    /** The same publication at one example, table or equation. */
    Source at(String place) {
        return new Source(text + ", " + place, read, named);
    }
}
