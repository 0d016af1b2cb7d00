package hotidle.cli.live;

/** What a page asks for is none that can be: an unknown build, an impossible size. */
final class WrongStateException extends RuntimeException {
    private static final long serialVersionUID = 1;

    WrongStateException(String message) {
        super(message, null, false, false);
    }
}
