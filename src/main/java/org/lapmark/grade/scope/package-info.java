/** What names stand for in one variant: measures, options, properties, conditions. */
package org.lapmark.grade.scope;
