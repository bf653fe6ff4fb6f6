@NullMarked
package wickmark.cli.report;

import org.jspecify.annotations.NullMarked;
