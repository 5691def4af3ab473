/** The walk of seams as text, JSON and CSV. */
package org.lapmark.cli.walk;
