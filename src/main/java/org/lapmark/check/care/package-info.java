/** Rules about what can hurt somebody: each missing caution is a finding. */
package org.lapmark.check.care;
