/** What a sheet shows, and its tiles as they come out; in millimetres of the sheet. */
package org.lapmark.print.sheet;
