/** Rules over a pattern as evaluated in one variant; each breach is a finding. */
package org.lapmark.check;
