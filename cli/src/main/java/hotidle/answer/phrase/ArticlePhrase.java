package hotidle.answer.phrase;

/** A noun with its article. */
public final class ArticlePhrase {

    private ArticlePhrase() {}

    /** An orifice, a clutch. */
    public static String of(String noun) {
        return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
    }
}
