package hotidle.answer.live;

/** A file to be kept by who asks for it; the program writes none. */
public record LiveFileRecord(String name, String text) {}
