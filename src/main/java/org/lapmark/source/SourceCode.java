package org.lapmark.source;

import java.util.List;
import java.util.Locale;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with the files of a pattern folder. */
public enum SourceCode implements FindingCode {
  /** The folder has no {@code pattern.yaml}. */
  PATTERN_MISSING,
  /** The folder has no {@code sizes.csv}. */
  SIZES_MISSING,
  /** A file is named that doesn't exist. */
  FILE_MISSING,
  /** A text that stands where nothing is read, or has another ending. */
  FILE_UNREAD,
  /** A folder whose name is nearly that of one that is read. */
  FOLDER_UNREAD,
  /** Something that is there can't be read. */
  FILE_UNREADABLE,
  /** A file has more bytes than are read. */
  FILE_TOO_LARGE,
  /** All files together have more bytes than are read. */
  TOO_MUCH_TEXT,
  /** A line is longer than is read. */
  LINE_TOO_LONG,
  /** A text file isn't UTF-8. */
  NOT_UTF_8,
  /** A text has a character that nobody sees and that changes what is read or found. */
  CONTROL_CHARACTER,
  /** A file's name has a character that nobody sees. */
  FILE_NAME_CONTROL,
  /** Two files' names differ only in how accents are coded. */
  FILE_NAME_TWICE,
  /** A symbolic link stands in the folder. */
  SYMBOLIC_LINK,
  /** Something that is neither a plain file nor a folder stands in the folder. */
  SPECIAL_FILE,
  /** A reference leads out of its folder. */
  PATH_OUTSIDE,
  /** The folder holds more files than are read. */
  TOO_MANY_FILES,
  /** Folders stand too deep in each other. */
  FOLDER_TOO_DEEP,

  /** The YAML can't be parsed. */
  YAML_SYNTAX,
  /** Lists and maps stand too deep in each other. */
  YAML_TOO_DEEP,
  /** The YAML has too many values. */
  YAML_TOO_LARGE,
  /** An anchor or an alias. */
  YAML_ALIAS,
  /** An explicit type tag. */
  YAML_TAG,
  /** More than one YAML document in a file. */
  YAML_SEVERAL_DOCUMENTS,
  /** A key that isn't known there. */
  KEY_UNKNOWN,
  /** A key that has to be there isn't. */
  KEY_MISSING,
  /** A key stands twice in one map. */
  KEY_DUPLICATE,
  /** A map or list stands where a key should. */
  KEY_NOT_TEXT,
  /** A key has no value. */
  VALUE_EMPTY,
  /** A list or map stands where text is expected. */
  VALUE_NOT_TEXT,
  /** Something else stands where a map is expected. */
  VALUE_NOT_MAP,
  /** A file, or the head of one, that isn't a map. */
  ROOT_NOT_MAP,
  /** A file that has to say something, and is empty. */
  FILE_SAYS_NOTHING,
  /** A name that is too long for figures, tables and labels. */
  NAME_LONG(Severity.WARNING),
  /** Two options, or two choices of one, that makers can't tell apart. */
  OPTION_LABEL_AGAIN(Severity.WARNING),
  /** Something else stands where a list is expected. */
  VALUE_NOT_LIST,
  /** A placeholder without quotes, which YAML takes for a map. */
  PLACEHOLDER_UNQUOTED,
  /** The format's version isn't one that this program reads. */
  FORMAT_UNSUPPORTED,
  /** Not a date. */
  DATE_WRONG,
  /** Not a language tag. */
  LANGUAGE_WRONG,
  /** Not one of the words for units. */
  UNITS_WRONG,
  /** Not one of the ways of joining pages. */
  JOINS_WRONG,
  /** Not a rounding step. */
  ROUNDING_WRONG,
  /** Not a whole number in the range that makes sense there. */
  NUMBER_WRONG,
  /** Neither true nor false. */
  TRUTH_WRONG,
  /** Not a name that formulas can use. */
  NAME_WRONG,
  /** A name that already means something else. */
  NAME_TAKEN,
  /** A panel without an outline. */
  PANEL_WITHOUT_SHAPE,
  /** A panel whose outline is stated in two ways. */
  PANEL_SHAPE_TWICE,
  /** A scaling of something that isn't scaled. */
  SCALE_MISPLACED,
  /** A scaling by an edge's length and by a width or height. */
  SCALE_TWO_WAYS,
  /** Stretching in one direction where both are stated, or neither. */
  STRETCH_MISPLACED,
  /** A shape whose numbers are too few, or too many. */
  SHAPE_STATEMENT,
  /** A drawing for a size that the size table doesn't have. */
  SIZE_UNKNOWN,
  /** A size without a drawing of its own. */
  SIZE_DRAWING_MISSING,
  /** A size's drawing with placeholders. */
  SIZE_DRAWING_COMPUTED,
  /** Drawings for different sizes with different corners, or in another order. */
  SIZE_DRAWINGS_CORNERS,
  /** Drawings for different sizes with different marks. */
  SIZE_DRAWINGS_MARKS(Severity.WARNING),
  /** A corner of a piece that isn't cut in one known way. */
  CORNER_KIND,
  /** An edge that isn't stated by two corners. */
  EDGE_CORNERS,
  /** A fold that isn't stated by two places. */
  FOLD_ENDS,
  /** An edge with neither an allowance nor one at its start and one at its end, or with both. */
  EDGE_ALLOWANCE,
  /** A seam with fewer than two sides. */
  SEAM_SIDES,
  /** A part of a side that is neither an edge nor a length nor something caught. */
  SEAM_PART_WRONG,
  /** A starting place in a seam that isn't a ring. */
  SEAM_START_MISPLACED,
  /** A seam that isn't stated. */
  SEAM_UNKNOWN,
  /** A panel that is to be smaller or larger than another, and doesn't say by how much. */
  DISTANCE_MISSING,
  /** A construction of linings that isn't known. */
  CONSTRUCTION_WRONG,
  /** A notch whose place is stated in no way, or in several. */
  NOTCH_PLACE,
  /** A notch that is both a set and counted. */
  NOTCH_SET_TWICE,
  /** A mark whose place is stated in no way that it can be. */
  MARK_STATEMENT,
  /** A word that isn't one of those for a way to cut or to fold. */
  MARK_WORD_UNKNOWN,
  /** A drawn mark that the drawing doesn't have. */
  MARK_NOT_DRAWN,
  /** A drawn pleat of which nothing is stated. */
  PLEAT_UNSTATED,
  /** A drawn dart that isn't two legs. */
  DART_SHAPE,
  /** A drawn dart with a leg that isn't straight. */
  DART_LEG_CURVED(Severity.WARNING),
  /** A drawn notch that isn't at one place of the outline. */
  NOTCH_OFF_OUTLINE,
  /** Where a slash line ends is stated in no way, or in two. */
  SLASH_END,
  /** A word that says no end of a slash line. */
  HINGE_UNKNOWN,
  /** A slash line that isn't drawn and whose ends aren't stated. */
  SLASH_UNKNOWN,
  /** A slash line that is drawn and never opened. */
  SLASH_IDLE(Severity.WARNING),
  /** A list that has to have something in it. */
  LIST_EMPTY,
  /** A piece number is used twice. */
  PIECE_NUMBER_DUPLICATE,
  /** Two steps have the same id. */
  STEP_ID_DUPLICATE,
  /** A texture that figures don't have. */
  TEXTURE_UNKNOWN,
  /** A file of the notes folder whose name says nothing. */
  NOTE_UNKNOWN,
  /** A thing that a step uses and the pattern doesn't have. */
  USE_UNKNOWN,
  /** A kind of tool, material or hardware that isn't known. */
  KIND_UNKNOWN,
  /** No hazards, and no reason why. */
  HAZARDS_UNREASONED,
  /** A reason for no hazards where nothing says that there are none. */
  REASON_IDLE(Severity.WARNING),
  /** Ages that can't be understood. */
  AGES_WRONG,
  /** Ages of a size that the size table doesn't have. */
  AGES_SIZE_UNKNOWN,
  /** A place of the body that isn't known. */
  PLACE_UNKNOWN,
  /** A place of something that isn't there. */
  WORN_UNKNOWN,
  /** A material that isn't stated. */
  MATERIAL_UNKNOWN,
  /** A panel that isn't stated. */
  PANEL_UNKNOWN,
  /** An edge or chain that the panel doesn't have. */
  EDGE_UNKNOWN,
  /** A corner that the drawing doesn't have. */
  CORNER_UNKNOWN,
  /** More entries than are read. */
  TOO_MANY_ENTRIES,
  /** A choice that its option doesn't have. */
  CHOICE_UNKNOWN,
  /** An option with fewer than two choices. */
  OPTION_CHOICES,
  /** An option that nothing depends on. */
  OPTION_IDLE(Severity.WARNING),
  /** A measure that doesn't say what it is, or says it twice. */
  MEASURE_VALUE,
  /** A bound or a tolerance of something that isn't solved for. */
  SOLVE_MISSING,
  /** A measure is solved for without saying between what. */
  SOLVE_BOUNDS,
  /** A condition to be solved that isn't an equation. */
  SOLVE_CONDITION,
  /** A passage of a text is never closed. */
  PASSAGE_UNCLOSED,
  /** A text for readers with more characters than are read. */
  LABEL_TOO_LONG,
  /** A drawing that no panel uses. */
  DRAWING_UNUSED(Severity.NOTE),
  /** Braces in a text that no value is put into. */
  LABEL_PLACEHOLDER(Severity.WARNING),

  /** A quoted cell that isn't closed. */
  CSV_SYNTAX,
  /** The size table lacks a column. */
  SIZES_COLUMN_MISSING,
  /** The size table has no size. */
  SIZES_NONE,
  /** A size stands twice. */
  SIZE_DUPLICATE,
  /** Not a name for a size. */
  SIZE_NAME_WRONG,
  /** A base measure stands twice. */
  MEASURE_DUPLICATE,
  /** A unit that isn't known. */
  UNIT_UNKNOWN,
  /** A size has no value. */
  CELL_MISSING,
  /** A value that isn't a number. */
  CELL_NOT_NUMBER,
  /** A fraction that a spreadsheet has turned into a date. */
  CELL_DATE,
  /** A number whose comma or point can be read in two ways. */
  CELL_AMBIGUOUS,
  /** A spreadsheet's formula or error. */
  CELL_FORMULA,
  /** A count that isn't whole. */
  CELL_NOT_WHOLE,
  /** A value in a column without a size. */
  CELL_WITHOUT_SIZE,
  /** Two cells of a row stand in each other's columns. */
  CELLS_SWAPPED,
  /** A length that is many times larger or smaller than those of the sizes beside it. */
  SIZE_ROW_ASTRAY,
  /** A row whose unit makes its lengths longer than anything sewn, alone among all rows. */
  SIZE_ROW_UNIT(Severity.WARNING),
  /** A row of the size table that rises and falls. */
  SIZE_ROW_TURNS(Severity.WARNING),
  /** A row of the size table that grows far more at one place than at all others. */
  SIZE_ROW_JUMPS(Severity.WARNING),
  /** Sizes whose columns don't stand in their order. */
  SIZES_OUT_OF_ORDER(Severity.WARNING),
  /** A number beyond all cloth. */
  NUMBER_TOO_LARGE,

  /** The XML can't be parsed. */
  XML_SYNTAX,
  /** A document type declaration that isn't harmless. */
  XML_DOCTYPE,
  /** Elements stand too deep in each other. */
  XML_TOO_DEEP,
  /** The drawing has too many elements. */
  XML_TOO_LARGE,
  /** The file isn't an SVG drawing. */
  SVG_ROOT,
  /** Something that would run or fetch something. */
  SVG_ACTIVE(Severity.WARNING),
  /** Shapes without a role. */
  SVG_IGNORED(Severity.NOTE),
  /** Shapes with a role that aren't drawn, or invisible. */
  SVG_HIDDEN(Severity.NOTE),
  /** A copy of something that isn't there. */
  SVG_COPY_UNKNOWN(Severity.WARNING),
  /** A copy that contains itself. */
  SVG_COPY_CYCLE,
  /** Copies of copies that come to too many elements. */
  SVG_COPIES,
  /** A style or an attribute that would move or shape something, and isn't read. */
  SVG_GEOMETRY_UNREAD,
  /** The drawing doesn't say how large it is. */
  SVG_SCALE_UNKNOWN,
  /** A drawing in pixels, or whose width and height aren't in proportion to its view box. */
  SVG_SIZE(Severity.NOTE),
  /** An attribute that isn't what it should be. */
  ATTRIBUTE_WRONG,
  /** A {@code data-} attribute that overrides nothing. */
  DATA_ATTRIBUTE_UNKNOWN(Severity.WARNING),
  /** A placeholder of a drawing asks for a printed form. */
  PLACEHOLDER_FORM_NOT_HERE,
  /** An id that looks like a role but isn't. */
  ROLE_UNKNOWN(Severity.WARNING),
  /** An id that is a role but for the number of a copy. */
  ROLE_NUMBERED(Severity.NOTE),
  /** A role that is given twice. */
  ROLE_TWICE,
  /** A role on something that isn't read. */
  ROLE_NOT_READ,
  /** No outline. */
  OUTLINE_MISSING,
  /** An outline whose end doesn't meet its start. */
  OUTLINE_NOT_CLOSED,
  /** A shape of several parts. */
  SHAPE_SEVERAL,
  /** An outline whose small gap was closed. */
  OUTLINE_GAP_CLOSED(Severity.NOTE),
  /** A shape without extent. */
  SHAPE_EMPTY,
  /** Path data that can't be parsed. */
  PATH_SYNTAX,
  /** A drawing with too many path segments. */
  PATH_TOO_LONG,
  /** A transform that can't be parsed. */
  TRANSFORM_SYNTAX,

  /** A step without front matter. */
  STEP_FRONT_MATTER_MISSING,
  /** A step whose front matter isn't closed. */
  STEP_FRONT_MATTER_OPEN;

  private final Severity severity;

  SourceCode() {
    this(Severity.ERROR);
  }

  SourceCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public Severity severity() {
    return severity;
  }

  @Override
  public List<String> subject() {
    return switch (this) {
      case MATERIAL_UNKNOWN, PANEL_UNKNOWN, USE_UNKNOWN -> List.of("name", "name");
      case SEAM_UNKNOWN -> List.of("seam", "name");
      case EDGE_UNKNOWN -> List.of("edge", "panel", "name");
      case CORNER_UNKNOWN -> List.of("corner", "panel", "name");
      default -> List.of();
    };
  }
}
