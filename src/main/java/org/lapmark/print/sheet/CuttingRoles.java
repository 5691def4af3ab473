package org.lapmark.print.sheet;

import java.util.List;

/** The roles of cutting lines: that of one size alone, and those of sizes that are stacked. */
public final class CuttingRoles {
  /** The role of a pattern in one size. */
  public static final String ALONE = "cutting-line";

  /** The role of a size's own line begins so; the dash's number follows. */
  public static final String OWN = "size-line-";

  /** The role of a line that several sizes share. */
  public static final String COMMON = "size-common";

  /** There are so many dashes; further sizes begin again, and their names tell them apart. */
  public static final int DASHES = 12;

  private CuttingRoles() {}

  /** The role of the line of one of the sizes that are stacked, counted from 0. */
  public static String own(int size) {
    return OWN + (1 + size % DASHES);
  }

  /** The role of a line that these sizes have. */
  public static String of(List<Integer> sizes) {
    return sizes.size() == 1 ? own(sizes.get(0)) : COMMON;
  }

  /** Whether a role is that of some cutting line. */
  public static boolean isCutting(String role) {
    return role.equals(ALONE) || role.equals(COMMON) || role.startsWith(OWN);
  }
}
