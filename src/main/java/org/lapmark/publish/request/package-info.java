/** What can be asked for, and refusing what can't be meant. */
package org.lapmark.publish.request;
