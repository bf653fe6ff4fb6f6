package wickmark.core.check;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One row of what a person read.
 *
 * <p>Numbers are as the person wrote them, with the decimals that were written.
 *
 * @param reader who read it; empty where the file does not say
 * @param spot its number, 1 nearest the front
 * @param distance of the spot's middle from the baseline, millimetres
 * @param front distance of the front from the baseline, millimetres
 * @param rf what the person worked out
 * @param rfUnit the unit that was written after the Rf, where one was
 * @param place file and line, for messages
 */
public record HandReading(
    String reader,
    String lane,
    int spot,
    Optional<BigDecimal> distance,
    Optional<BigDecimal> front,
    Optional<BigDecimal> rf,
    Optional<String> rfUnit,
    String place) {}
