package hotidle.cli.live;

import hotidle.cli.InstalledBrowser;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * Hands a test the live page of shuttle-five in a real browser, one browser and one server for all of them; where there is no browser
 * they are skipped, and the log says either. After each test the console of the browser has no error.
 */
final class LiveBrowser implements ExecutionCondition, ParameterResolver, AfterEachCallback {

    /** A name that is led to this machine, as an attacker's server of names would. */
    static final String REBOUND = "rebound.example.org";

    private static final Optional<Path> PROGRAM = InstalledBrowser.program("the live page");
    private static final Optional<Path> DRIVER = InstalledBrowser.driver("the live page");
    private static final String KEY = "opened";

    /** Browser and server, closed after the last test. */
    private static final class Opened implements AutoCloseable {
        private final ChromeDriver driver = driver();
        private final Visitor visitor;
        private int tests;

        Opened() throws IOException {
            visitor = new Visitor("shuttle-five");
        }

        @Override
        public void close() {
            driver.quit();
            visitor.close();
            Assertions.assertEquals(List.of(), visitor.faults);
            System.out.println("IN A BROWSER: " + tests + " tests of the live page ran");
        }
    }

    private static ChromeDriver driver() {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(PROGRAM.orElseThrow().toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--force-device-scale-factor=1",
                "--host-resolver-rules=MAP " + REBOUND + " 127.0.0.1");
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        options.setExperimentalOption("prefs", Map.of("download.prompt_for_download", false));
        // the driver's place is given: none is looked for in the network
        ChromeDriver driver = new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(DRIVER.orElseThrow().toFile())
                        .usingAnyFreePort()
                        .build(),
                options);
        driver.manage().timeouts().scriptTimeout(Duration.ofMinutes(3)); // a machine may be busy
        return driver;
    }

    private static Opened opened(ExtensionContext context) {
        ExtensionContext.Store store = context.getRoot().getStore(Namespace.create(LiveBrowser.class));
        Opened opened = store.get(KEY, Opened.class);
        if (opened == null) {
            try {
                opened = new Opened();
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
            store.put(KEY, opened);
        }
        return opened;
    }

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        return PROGRAM.isPresent() && DRIVER.isPresent()
                ? ConditionEvaluationResult.enabled("a browser is there")
                : ConditionEvaluationResult.disabled("no browser on the path");
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == LivePage.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        Opened opened = opened(context);
        opened.tests++;
        return new LivePage(opened.driver, opened.visitor);
    }

    @Override
    public void afterEach(ExtensionContext context) {
        Opened opened = opened(context);
        LivePage page = new LivePage(opened.driver, opened.visitor);
        page.onlyThisWindow();
        Assertions.assertEquals(List.of(), page.errors());
    }
}
