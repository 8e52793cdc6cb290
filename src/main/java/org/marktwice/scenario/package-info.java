/**
 * What is set: a scenario and the workshop's practice settings. May use timber and drawing. No reading of files here.
 */
@NullMarked
package org.marktwice.scenario;

import org.jspecify.annotations.NullMarked;
