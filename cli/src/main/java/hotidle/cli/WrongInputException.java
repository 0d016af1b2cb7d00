package hotidle.cli;

/** The user's input is wrong; the message is all that is printed. */
final class WrongInputException extends RuntimeException {

    WrongInputException(String message) {
        super(message);
    }
}
