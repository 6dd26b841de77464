import type { BorderSide, CellStyle, FillStyle } from "hucre";

/**
 * One look for every workbook. Hues are those of Okabe and Ito's palette for colour-blind readers (Okabe & Ito,
 * "Color Universal Design", 2008) or shades of its blue; no meaning hangs on hue alone: each role also differs by
 * weight, box, pattern or lightness, so a black-and-white print says the same.
 */
export const colours = {
  ink: "1A1A1A",
  quiet: "555555",
  navy: "1B3A57",
  blue: "0072B2",
  vermilion: "D55E00",
  green: "009E73",
  purple: "CC79A7",
  sky: "56B4E9",
  paleBlue: "E6F0F7",
  paleYellow: "FFF7D6",
  paleOrange: "FCE9DC",
  rule: "8C8C8C",
  hairline: "C4C4C4",
  white: "FFFFFF",
} as const;

/** Tabs by what the sheet is for. */
export const tabColours = {
  start: colours.navy,
  input: "E69F00",
  result: colours.blue,
  reference: colours.rule,
} as const;

export const fontName = "Calibri";
export const fontSize = 11;

/** What a cell is for. */
export type Role =
  | "title"
  | "subtitle"
  | "heading"
  | "text"
  | "label"
  | "input"
  | "output"
  | "answer"
  | "unit"
  | "note"
  | "caution"
  | "tableHeader"
  | "tableCell"
  | "tableInput"
  | "total"
  | "spillRoom"
  | "link";

/** What a conditional format says about a cell. */
export type Mark = "good" | "attention" | "danger" | "muted" | "total" | "strong";

const solid = (rgb: string): FillStyle => ({ type: "pattern", pattern: "solid", fgColor: { rgb }, bgColor: { rgb } });

const side = (style: BorderSide["style"], rgb: string): BorderSide => ({ style, color: { rgb } });

const box = (style: BorderSide["style"], rgb: string): CellStyle["border"] => ({
  top: side(style, rgb),
  right: side(style, rgb),
  bottom: side(style, rgb),
  left: side(style, rgb),
});

interface Letters {
  size?: number;
  bold?: boolean;
  italic?: boolean;
  underline?: boolean;
  rgb?: string;
}

const font = ({ size = fontSize, bold, italic, underline, rgb = colours.ink }: Letters = {}): CellStyle["font"] => ({
  name: fontName,
  size,
  family: 2,
  bold,
  italic,
  underline,
  color: { rgb },
});

const open = { locked: false };

const inputLook: CellStyle = {
  font: font({ rgb: colours.blue }),
  fill: solid(colours.paleYellow),
  border: box("thin", colours.rule),
  alignment: { vertical: "center" },
  protection: open,
};

export const roles: Record<Role, CellStyle> = {
  title: { font: font({ size: 18, bold: true, rgb: colours.navy }), alignment: { vertical: "center" } },
  subtitle: { font: font({ size: 12, rgb: colours.quiet }), alignment: { vertical: "top", wrapText: true } },
  heading: {
    font: font({ size: 13, bold: true, rgb: colours.navy }),
    border: { bottom: side("medium", colours.navy) },
    alignment: { vertical: "center" },
  },
  text: { font: font(), alignment: { vertical: "center", wrapText: true } },
  label: { font: font(), alignment: { vertical: "center", wrapText: true } },
  input: inputLook,
  output: {
    font: font({ bold: true }),
    fill: solid(colours.paleBlue),
    border: { bottom: side("medium", colours.blue) },
    alignment: { vertical: "center" },
  },
  answer: {
    font: font({ size: 14, bold: true }),
    fill: solid(colours.paleBlue),
    border: box("medium", colours.navy),
    alignment: { vertical: "center", horizontal: "center", wrapText: true },
  },
  unit: { font: font({ rgb: colours.quiet }), alignment: { vertical: "center", horizontal: "left", indent: 1 } },
  note: {
    font: font({ size: 10, italic: true, rgb: colours.quiet }),
    alignment: { vertical: "center", wrapText: true },
  },
  caution: {
    font: font({ bold: true }),
    fill: solid(colours.paleOrange),
    border: { ...box("thin", colours.vermilion), left: side("thick", colours.vermilion) },
    alignment: { vertical: "center", horizontal: "left", wrapText: true, indent: 1 },
  },
  tableHeader: {
    font: font({ bold: true, rgb: colours.white }),
    fill: solid(colours.navy),
    border: box("thin", colours.white),
    alignment: { vertical: "center", horizontal: "center", wrapText: true },
  },
  tableCell: { font: font(), border: box("thin", colours.hairline), alignment: { vertical: "center" } },
  tableInput: inputLook,
  total: {
    font: font({ bold: true }),
    border: { top: side("thin", colours.ink), bottom: side("double", colours.ink) },
    alignment: { vertical: "center" },
  },
  spillRoom: { font: font(), alignment: { vertical: "center" } },
  link: { font: font({ underline: true, rgb: colours.blue }), alignment: { vertical: "center" } },
};

const hatch = (rgb: string, background: string): FillStyle => ({
  type: "pattern",
  pattern: "lightUp",
  fgColor: { rgb },
  bgColor: { rgb: background },
});

/** Plain, hatched and reversed tell good, attention and danger apart without colour. */
export const marks: Record<Mark, CellStyle> = {
  good: { font: { color: { rgb: "00614A" } }, fill: solid("E2F3ED") },
  attention: { font: { bold: true, color: { rgb: colours.ink } }, fill: hatch("E69F00", "FFFFFF") },
  danger: { font: { bold: true, color: { rgb: colours.white } }, fill: solid("8A2B00") },
  muted: { font: { italic: true, color: { rgb: "767676" } } },
  total: {
    font: { bold: true },
    border: { top: side("thin", colours.ink), bottom: side("thin", colours.ink) },
  },
  strong: { font: { bold: true }, border: { bottom: side("thin", colours.ink) } },
};

/** Ends of a shaded scale: the darkest still carries black figures at a contrast above 7:1. */
export const shades = { light: colours.white, full: "9CC7E3" } as const;

export type Dash = "solid" | "dash" | "sysDot" | "dashDot" | "lgDash";
export type Marker = "circle" | "square" | "triangle" | "diamond" | "x";

/** Lines differ by dash and marker as well as hue, columns by pattern. */
export const seriesLooks: readonly { rgb: string; dash: Dash; marker: Marker; pattern?: string }[] = [
  { rgb: colours.blue, dash: "solid", marker: "circle" },
  { rgb: colours.vermilion, dash: "dash", marker: "square", pattern: "wdUpDiag" },
  { rgb: colours.green, dash: "sysDot", marker: "triangle", pattern: "pct50" },
  { rgb: colours.purple, dash: "dashDot", marker: "diamond", pattern: "dkHorz" },
  { rgb: colours.sky, dash: "lgDash", marker: "x", pattern: "wdDnDiag" },
];
