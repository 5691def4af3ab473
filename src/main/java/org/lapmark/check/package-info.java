/** Rules over a pattern as evaluated, in one variant and across sizes; each breach is a finding. */
package org.lapmark.check;
