package wickmark.cli.program;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.condition.OS;

/** Tests that need a browser and the launcher for Unix shells. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "starts the launcher for Unix shells")
@EnabledIf(
    value = "wickmark.cli.browser.Browser#isInstalled",
    disabledReason = "no chromium with its chromedriver is on the PATH")
@interface WithBrowser {}
