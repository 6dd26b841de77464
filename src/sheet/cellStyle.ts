import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
  type IBorderStyleData,
  type IStyleData,
} from "@univerjs/core";
import type { BorderSide, CellStyle, Color } from "hucre";
import { resolveThemeColor } from "hucre/xlsx";

/** Turns a colour of the file into "#RRGGBB", undefined where the file leaves it to the program. */
export type ReadColour = (colour: Color | undefined) => string | undefined;

export const colourReader =
  (themeColours: string[] | undefined): ReadColour =>
  (colour) => {
    if (colour?.rgb) return `#${colour.rgb.slice(-6)}`;
    if (colour?.theme === undefined || !themeColours?.length) return undefined;
    return `#${resolveThemeColor(themeColours, colour.theme, colour.tint).slice(-6)}`;
  };

const lines: Record<BorderSide["style"], BorderStyleTypes> = {
  thin: BorderStyleTypes.THIN,
  hair: BorderStyleTypes.HAIR,
  dotted: BorderStyleTypes.DOTTED,
  dashed: BorderStyleTypes.DASHED,
  dashDot: BorderStyleTypes.DASH_DOT,
  dashDotDot: BorderStyleTypes.DASH_DOT_DOT,
  double: BorderStyleTypes.DOUBLE,
  medium: BorderStyleTypes.MEDIUM,
  mediumDashed: BorderStyleTypes.MEDIUM_DASHED,
  mediumDashDot: BorderStyleTypes.MEDIUM_DASH_DOT,
  mediumDashDotDot: BorderStyleTypes.MEDIUM_DASH_DOT_DOT,
  slantDashDot: BorderStyleTypes.SLANT_DASH_DOT,
  thick: BorderStyleTypes.THICK,
};

const horizontal: Record<string, HorizontalAlign> = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  centerContinuous: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
  justify: HorizontalAlign.JUSTIFIED,
  distributed: HorizontalAlign.DISTRIBUTED,
};

const vertical: Record<string, VerticalAlign> = {
  top: VerticalAlign.TOP,
  center: VerticalAlign.MIDDLE,
  bottom: VerticalAlign.BOTTOM,
};

/** For computers without the file's font, narrow ones first. */
const fallbackFonts = "Carlito, 'Segoe UI', 'Helvetica Neue', 'Liberation Sans', Arial, sans-serif";

/** Distance of the text from the cell's edge for one step of indent, about one character. */
const indentPixels = 9;
const edgePixels = 2;

/** The looks of a cell or of a conditional format, without what the grid can't draw (patterns become their ground). */
export const gridStyle = (style: CellStyle, colourOf: ReadColour): IStyleData => {
  const { font, fill, border, alignment, numFmt } = style;
  const result: IStyleData = {};
  if (font?.name) result.ff = `${font.name}, ${fallbackFonts}`;
  if (font?.size) result.fs = font.size;
  if (font?.bold) result.bl = BooleanNumber.TRUE;
  if (font?.italic) result.it = BooleanNumber.TRUE;
  if (font?.underline) result.ul = { s: BooleanNumber.TRUE };
  if (font?.strikethrough) result.st = { s: BooleanNumber.TRUE };
  const ink = colourOf(font?.color);
  if (ink) result.cl = { rgb: ink };

  if (fill?.type === "pattern" && fill.pattern !== "none") {
    const ground =
      fill.pattern === "solid" ? (colourOf(fill.fgColor) ?? colourOf(fill.bgColor)) : colourOf(fill.bgColor);
    if (ground) result.bg = { rgb: ground };
  }

  const side = (of: BorderSide | undefined): IBorderStyleData | undefined =>
    of ? { s: lines[of.style], cl: { rgb: colourOf(of.color) ?? "#000000" } } : undefined;
  if (border) {
    const [t, r, b, l] = [side(border.top), side(border.right), side(border.bottom), side(border.left)];
    result.bd = { ...(t && { t }), ...(r && { r }), ...(b && { b }), ...(l && { l }) };
  }

  const across = horizontal[alignment?.horizontal ?? ""];
  if (across !== undefined) result.ht = across;
  // A file that says nothing means the bottom of the cell.
  result.vt = vertical[alignment?.vertical ?? ""] ?? VerticalAlign.BOTTOM;
  if (alignment?.wrapText) result.tb = WrapStrategy.WRAP;
  if (alignment?.indent) {
    const pixels = edgePixels + alignment.indent * indentPixels;
    result.pd = alignment.horizontal === "right" ? { r: pixels } : { l: pixels };
  }
  if (numFmt && !/^general$/i.test(numFmt)) result.n = { pattern: numFmt };
  return result;
};
