package hotidle.answer.page;

import hotidle.answer.Answer;

/** An answer that is written as a page; the screen says what was written. */
public interface PageAnswer extends Answer {

    /** The page that is written. */
    Page page();
}
