/**
 * What a check of hand readings says to people and programs: lines on the screen, a table for
 * spreadsheets, JSON, a page for the teacher, and a page of feedback for each reader.
 */
@NullMarked
package wickmark.cli.check;

import org.jspecify.annotations.NullMarked;
