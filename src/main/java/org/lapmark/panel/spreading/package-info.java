/**
 * Slash and spread: a panel cut along lines, opened or overlapped, its outline drawn anew, exactly
 * as much longer as it was opened wherever a smooth line can be.
 */
package org.lapmark.panel.spreading;
