package hotidle.cli;

import hotidle.plots.Picture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Option;

/** Option that says how large a picture is. Letters keep their size: the smaller it is, the larger they are where it is shown. */
final class PictureSize {

    private static final Pattern WRITTEN = Pattern.compile("(\\d{1,5})x(\\d{1,5})");

    /** To be read from the back row of a room. */
    private static final String SLIDE = "slide";

    private static final int SLIDE_WIDTH = 960;
    private static final int SLIDE_HEIGHT = 540;

    @Option(
            names = "--size",
            paramLabel = "SIZE",
            description =
                    "size of the picture in px, for example 1600x900, or slide (960x540, whose letters are read from the back"
                            + " row). Default: 1200x800")
    private String written;

    /**
     * The picture in that size.
     *
     * @throws WrongInputException where it is no size
     */
    Picture of(Picture picture) {
        if (written == null) {
            return picture;
        }
        check();
        Matcher size = WRITTEN.matcher(written);
        return size.matches()
                ? picture.sized(Integer.parseInt(size.group(1)), Integer.parseInt(size.group(2)))
                : picture.sized(SLIDE_WIDTH, SLIDE_HEIGHT);
    }

    /**
     * Looks at it before anything is solved.
     *
     * @throws WrongInputException where it is no size
     */
    void check() {
        if (written == null || written.equals(SLIDE)) {
            return;
        }
        Matcher size = WRITTEN.matcher(written);
        if (!size.matches()) {
            throw new WrongInputException(
                    "hotidle: --size " + written + " is no size of a picture\nmend: write 1600x900, or " + SLIDE);
        }
        int width = Integer.parseInt(size.group(1));
        int height = Integer.parseInt(size.group(2));
        if (Math.min(width, height) < Picture.LEAST || Math.max(width, height) > Picture.MOST) {
            throw new WrongInputException("hotidle: --size " + written + ": allowed is " + Picture.LEAST + " to "
                    + Picture.MOST + " px each way");
        }
    }
}
