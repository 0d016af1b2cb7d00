package hotidle.answer.list;

import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.ListPhrase;
import hotidle.transmission.Job;
import hotidle.transmission.Workshop;
import java.util.List;

/**
 * What a shop can do to the builds of a circuit, as {@code --job} takes it.
 *
 * @param circuit its name
 * @param named   whether its file names jobs, the same for each build; else they are those that worn fits of a build offer
 * @param shops   of the builds
 */
public record JobListing(String circuit, boolean named, List<Workshop> shops) {

    public JobListing {
        shops = List.copyOf(shops);
    }

    /** Jobs of the file once, else those of each build. */
    public String text() {
        StringBuilder text = new StringBuilder(Wrap.lines(ListPhrase.jobs(circuit, named), "", "  "));
        for (Workshop shop : named ? shops.subList(0, 1) : shops) {
            if (!named) {
                text.append(Wrap.lines(
                        shop.jobs().isEmpty()
                                ? ListPhrase.noJob(shop.unit().build())
                                : ListPhrase.jobsOf(shop.unit().build()),
                        "",
                        "  "));
            }
            shop.jobs().forEach(job -> text.append(Wrap.lines(line(job), "  ", "    ")));
        }
        return text.toString();
    }

    private static String line(Job job) {
        return HeadingPhrase.headed(job.name(), ListPhrase.job(job.about(), job.hours(), job.price()));
    }
}
