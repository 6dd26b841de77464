import type { Mark, Role } from "./theme";

export type Scalar = number | string | boolean;

/** What Excel asks of a typed entry. Words: title up to 32 characters, prompt up to 255, refusal up to 225. */
export interface Validation {
  rule:
    | { kind: "list"; values: readonly string[] }
    /** The cells of a range ("Lists!$A$2:$A$9") or a defined name. */
    | { kind: "listFrom"; range: string }
    /** Ends are numbers or formulas ("=B4"); leave one out for a one-sided limit. */
    | { kind: "number" | "whole" | "date"; least?: number | string; most?: number | string }
    /** A number between two ends, or text that begins with a number, a blank and a unit, for the functions to read. */
    | { kind: "quantity"; least: number; most: number }
    | { kind: "textLength"; most: number }
    /** True for an entry that may stay; relative references count from the first cell of the range. */
    | { kind: "formula"; formula: string };
  prompt?: { title: string; words: string };
  refusal?: { title: string; words: string; weight?: "stop" | "warning" | "information" };
  /** Whether an emptied cell passes; true if left out. */
  blankPasses?: boolean;
}

/** How the cells that a formula spills into look. */
export interface SpillLook {
  /** The first row holds column headings. */
  header?: boolean;
  /** The last row is a total. */
  total?: boolean;
  /** Number format of each column, left to right; the last one goes on for further columns. */
  formats?: readonly (string | undefined)[];
  /** Rows kept free and formatted, counted from the formula's own, for a table that may grow. */
  room?: number;
}

export interface CellDescription {
  value?: Scalar;
  /** As typed in Excel, with the leading "=". */
  formula?: string;
  role: Role;
  /** Excel's number format code; see numberFormats.ts. */
  format?: string;
  align?: "left" | "center" | "right";
  wrap?: boolean;
  /** Columns and rows the cell is merged over, itself included. */
  across?: number;
  down?: number;
  /** A defined name (workbook scope) for this cell. */
  name?: string;
  /** A jump within the workbook: "Sheet name!A1". */
  link?: { to: string; tip?: string };
  validation?: Validation;
  spill?: SpillLook;
  /** Whether the cell may be changed on a protected sheet; inputs may. */
  unlocked?: boolean;
}

/** Cells by address ("B3"). */
export type Cells = Readonly<Record<string, CellDescription>>;

export type ConditionalRule = {
  /** "C5:C34", on the sheet itself. */
  range: string;
} & (
  | {
      /** True where the mark goes; relative references count from the first cell of the range. */
      when: string;
      mark: Mark;
      /** No later rule counts for the cell. */
      last?: boolean;
    }
  /** Light for the lowest value to full for the highest, one hue, so that it prints as a grey scale. */
  | { shade: "lowToHigh" | "highToLow" }
);

export interface ChartSeries {
  /** Words, or the cell that holds them ("=Plan!C5"). */
  name: string;
  /** "Plan!C6:C35". */
  values: string;
  /** The kind of the chart if left out. */
  as?: "line" | "column";
  /** A level to stay above: black, dashed, without markers. */
  reserve?: boolean;
}

export interface ChartDescription {
  kind: "line" | "column";
  title: string;
  /** Top left and bottom right cell. */
  from: string;
  to: string;
  /** "Plan!A6:A35". */
  categories: string;
  /** The categories are dates. */
  dates?: boolean;
  /** Columns stand on each other. */
  stacked?: boolean;
  series: readonly [ChartSeries, ...ChartSeries[]];
  x: { title: string; format?: string };
  y: { title: string; format?: string; least?: number; most?: number };
  /** What the chart shows, for a screen reader. */
  altText: string;
}

export interface PrintSetup {
  /** Everything on the sheet if left out. */
  area?: string;
  orientation?: "portrait" | "landscape";
  paper?: "a4" | "letter";
  /** Rows repeated on every page: "1:3". */
  titleRows?: string;
  /** Pages the sheet is fitted to in height; as many as it takes if left out. The width is always one page. */
  pagesHigh?: number;
  /** Rows that begin a new page. */
  breaksBefore?: readonly number[];
}

export interface SheetDescription {
  name: string;
  /** Widths in characters, from column A on. */
  columns: readonly number[];
  /** Heights in points by row number; rows left out fit their text. */
  rowHeights?: Readonly<Record<number, number>>;
  cells: Cells;
  /** First cell that scrolls ("B5"): rows above and columns left of it stay. */
  freezeAt?: string;
  validations?: readonly (Validation & { range: string })[];
  conditional?: readonly ConditionalRule[];
  charts?: readonly ChartDescription[];
  /** Protected without a password, input cells open; true if left out. */
  protect?: boolean;
  print?: PrintSetup;
  /** A tab colour, "RRGGBB"; see `tabColours` in theme.ts. */
  tab?: string;
  hidden?: boolean;
  showGridLines?: boolean;
}

export interface WorkbookDescription {
  properties: { title: string; subject: string; description: string; keywords?: string };
  sheets: readonly [SheetDescription, ...SheetDescription[]];
  /** Defined names of workbook scope beyond those of single cells: { Needs: "Plan!$B$6:$B$35" }. */
  names?: Readonly<Record<string, string>>;
}
