/**
 * The teacher's desk: setting exercises, handing them out, marking what comes back, and what to teach again.
 *
 * <p>What is edited is an immutable draft behind {@link org.marktwice.view.desk.Steps}, which knows no component; what is
 * reckoned is the classroom's. Nothing slow runs on the event thread: it goes through {@link
 * org.marktwice.view.desk.Aside}.
 */
@NullMarked
package org.marktwice.view.desk;

import org.jspecify.annotations.NullMarked;
