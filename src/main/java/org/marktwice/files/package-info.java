/**
 * Reading, checking and writing scenarios and attempts; the journal. May use scenario and bench. A reader refuses what it
 * does not know, by name, with file, line, column and JSON path; nothing is half-loaded. No verdicts here.
 */
@NullMarked
package org.marktwice.files;

import org.jspecify.annotations.NullMarked;
