package hotidle.cli.live;

import hotidle.result.SolveCount;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * Processor time and states that pictures took while somebody turned at the page: unlike a clock, these say the same on a machine that
 * is busy with other work.
 */
final class Spent {

    private static final List<String> BROWSER =
            List.of("ScriptDuration", "RecalcStyleDuration", "LayoutDuration", "TaskDuration");

    private final Map<String, Double> sums = new HashMap<>();
    private Map<String, Double> before = Map.of();

    void begin(LivePage page) {
        before = now(page.driver);
    }

    void end(LivePage page) {
        now(page.driver).forEach((what, value) -> sums.merge(what, value - before.get(what), Double::sum));
    }

    private static Map<String, Double> now(ChromeDriver driver) {
        Map<String, Double> now = new HashMap<>();
        driver.executeCdpCommand("Performance.enable", Map.of());
        for (Object metric : (List<?>)
                driver.executeCdpCommand("Performance.getMetrics", Map.of()).get("metrics")) {
            Map<?, ?> one = (Map<?, ?>) metric;
            if (BROWSER.contains(one.get("name").toString())) {
                now.put(one.get("name").toString(), ((Number) one.get("value")).doubleValue());
            }
        }
        now.put("states", (double) SolveCount.now().states());
        now.put("program", program());
        return now;
    }

    /** Of the threads that answer, and of those that help them [s]. */
    private static double program() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        double sum = 0;
        for (ThreadInfo thread : threads.getThreadInfo(threads.getAllThreadIds())) {
            if (thread != null
                    && (thread.getThreadName().equals("live page")
                            || thread.getThreadName().startsWith("ForkJoinPool"))) {
                sum += Math.max(0, threads.getThreadCpuTime(thread.getThreadId())) / 1e9;
            }
        }
        return sum;
    }

    /** Of each of so many pictures. */
    String each(int pictures) {
        double ms = 1e3 / pictures;
        return String.format(
                Locale.ROOT,
                "%.0f states, %.1f ms of the program; browser %.1f ms, of these script %.1f, style %.1f, layout %.1f",
                sums.getOrDefault("states", 0.0) / pictures,
                sums.getOrDefault("program", 0.0) * ms,
                sums.getOrDefault("TaskDuration", 0.0) * ms,
                sums.getOrDefault("ScriptDuration", 0.0) * ms,
                sums.getOrDefault("RecalcStyleDuration", 0.0) * ms,
                sums.getOrDefault("LayoutDuration", 0.0) * ms);
    }
}
