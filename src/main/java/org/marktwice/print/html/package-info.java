/**
 * An attempt as one file for a browser: the replay, the mark sheet and the settings in force. The file needs nothing but
 * itself, and reads as a document where scripts don't run. Text that somebody typed goes in through {@link
 * org.marktwice.print.html.Markup} alone, which escapes it.
 */
@NullMarked
package org.marktwice.print.html;

import org.jspecify.annotations.NullMarked;
