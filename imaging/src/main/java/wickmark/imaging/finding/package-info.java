/** What finders say when they do not find, and what they doubt. */
@NullMarked
package wickmark.imaging.finding;

import org.jspecify.annotations.NullMarked;
