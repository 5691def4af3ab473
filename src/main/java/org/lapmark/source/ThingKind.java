package org.lapmark.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a tool, a material or a piece of hardware is, as far as care goes: the one place that says
 * which hazards it brings. A kind without hazards says that a thing is harmless, whatever it is
 * called.
 */
public enum ThingKind {
  /** Cuts cloth, long blades. */
  SHEARS(Group.TOOL, "blades"),
  /** Cuts cloth or thread. */
  SCISSORS(Group.TOOL, "blades"),
  /** Cuts thread, and clips allowances. */
  SNIPS(Group.TOOL, "blades"),
  /** Cuts cloth on a mat. */
  ROTARY_CUTTER(Group.TOOL, "blades"),
  /** Cuts along a ruler. */
  KNIFE(Group.TOOL, "blades"),
  /** Opens seams and buttonholes. */
  SEAM_RIPPER(Group.TOOL, "blades"),
  /** Cuts holes. */
  PUNCH(Group.TOOL, "blades"),
  /** Sews by hand. */
  NEEDLE(Group.TOOL, "points"),
  /** Hold layers together. */
  PINS(Group.TOOL, "points"),
  /** Pricks and widens holes. */
  AWL(Group.TOOL, "points"),
  /** Presses. */
  IRON(Group.TOOL, "iron"),
  /** Steams. */
  STEAMER(Group.TOOL, "iron"),
  /** Presses a whole area at once. */
  HEAT_PRESS(Group.TOOL, "iron"),
  /** A lighter, a match or a candle, to melt ends. */
  FLAME(Group.TOOL, "melting"),
  /** Cuts and melts in one. */
  HOT_KNIFE(Group.TOOL, "melting", "blades"),
  /** Blows hot air. */
  HEAT_GUN(Group.TOOL, "melting"),
  /** Melts glue. */
  GLUE_GUN(Group.TOOL, "hot_glue"),
  /** Sews. */
  MACHINE(Group.TOOL, "machine"),
  /** Sews and trims in one. */
  OVERLOCKER(Group.TOOL, "machine", "blades"),
  /** Sets rivets, eyelets and snaps. */
  SETTING_TOOL(Group.TOOL, "rivets"),
  /** Strikes. */
  HAMMER(Group.TOOL, "rivets"),
  /** Chalk, pencil, pen. */
  MARKER(Group.TOOL),
  /** Ruler, square, tape measure. */
  RULER(Group.TOOL),
  /** What is cut upon. */
  MAT(Group.TOOL),
  /** Hold layers together without a hole. */
  CLIPS(Group.TOOL),
  /** Hold paper and cloth down. */
  WEIGHTS(Group.TOOL),
  /** A foot of the machine. */
  FOOT(Group.TOOL),
  /** A pressing cloth, a ham, a sleeve board. */
  PRESSING_AID(Group.TOOL),
  /** Draws cords and elastic in; blunt. */
  BODKIN(Group.TOOL),
  /** Pushes corners out; blunt. */
  TURNER(Group.TOOL),
  /** Flattens seams without heat. */
  ROLLER(Group.TOOL),

  /** Glues, cold: liquid, spray or tape. */
  ADHESIVE(Group.PART, "adhesive"),
  /** Seals seams or edges, cold. */
  SEALER(Group.PART, "adhesive"),
  /** Thins or takes away. */
  SOLVENT(Group.PART, "solvents"),
  /** A rivet. */
  RIVET(Group.PART, "rivets"),
  /** An eyelet or a grommet. */
  EYELET(Group.PART, "rivets"),
  /** A snap that is set with a tool. */
  SNAP(Group.PART, "rivets"),
  /** A magnet, or a snap that has one. */
  MAGNET(Group.PART, "magnets"),
  /** A cord or a lace. */
  CORD(Group.PART, "cords"),
  /** A cord that draws an opening shut. */
  DRAWSTRING(Group.PART, "cords"),
  /** A ribbon or a tape to tie. */
  RIBBON(Group.PART),
  /** A clasp that comes open when it is pulled. */
  BREAKAWAY_CLASP(Group.PART, "cords"),
  /** A cord that is sewn into piping. */
  PIPING_CORD(Group.PART),
  /** Holds a cord where it is pushed. */
  CORD_LOCK(Group.PART),
  /** Throws light back. */
  REFLECTOR(Group.PART, "reflectors"),
  /** Plastic film, or cloth that lets no air through. */
  FILM(Group.PART, "film"),
  /** Wadding made to keep heat from hands. */
  HEAT_WADDING(Group.PART, "heat"),
  /** Any other wadding or filling. */
  WADDING(Group.PART),
  /** A woven or knitted cloth. */
  CLOTH(Group.PART),
  /** Interfacing, sewn in or fused. */
  INTERFACING(Group.PART),
  /** Foam or a board that stiffens. */
  STIFFENER(Group.PART),
  /** Webbing. */
  WEBBING(Group.PART),
  /** Tape or binding that is sewn on flat. */
  TAPE(Group.PART),
  /** Elastic. */
  ELASTIC(Group.PART),
  /** A zip. */
  ZIP(Group.PART),
  /** Hook-and-loop tape. */
  HOOK_TAPE(Group.PART),
  /** A snap that is sewn on. */
  SEWN_SNAP(Group.PART),
  /** A button. */
  BUTTON(Group.PART),
  /** A buckle. */
  BUCKLE(Group.PART),
  /** A ring, a slide, a hook to hang something in. */
  RING(Group.PART);

  /** Where a thing of the kind is stated. */
  public enum Group {
    /** Among tools alone: the same word means something else among materials. */
    TOOL,
    /** Among materials, hardware or tools. */
    PART
  }

  private final Group group;
  private final List<String> hazards;

  ThingKind(Group group, String... hazards) {
    this.group = group;
    this.hazards = List.of(hazards);
  }

  /**
   * Its name in a pattern.
   *
   * @return English, whatever the pattern's language
   */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Where it is stated.
   *
   * @return its group
   */
  public Group group() {
    return group;
  }

  /**
   * What it brings.
   *
   * @return hazards; none when it is harmless
   */
  public List<String> hazards() {
    return hazards;
  }

  /**
   * Whether it can go round a neck.
   *
   * @return true for what is tied or drawn
   */
  public boolean isTied() {
    return this == CORD || this == DRAWSTRING || this == RIBBON;
  }

  /**
   * A kind by its name in a pattern.
   *
   * @param id the name
   * @return the kind, if there is one
   */
  public static Optional<ThingKind> of(String id) {
    for (ThingKind kind : values()) {
      if (kind.id().equals(id)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }

  /**
   * The names of all kinds.
   *
   * @return the names in their order
   */
  public static List<String> ids() {
    List<String> ids = new ArrayList<>();
    for (ThingKind kind : values()) {
      ids.add(kind.id());
    }
    return ids;
  }
}
