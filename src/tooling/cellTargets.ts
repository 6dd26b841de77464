import { addressOf, areaOf, cellName, isInArea, placeOf, rangeOf, sheetAndRange, type Area } from "../cells/addresses";
import { readNumber } from "../cells/numberText";
import type { CellOfSheet } from "../engine/dependencies";
import type { SavedSheet, SavedWorkbook } from "../engine/file/readWorkbook";
import type { Entry } from "../engine/file/writeWorkbook";
import type { SheetCell, SheetInput } from "../engine/workbookInput";
import { editDistance } from "../models/nearestName";
import { Misuse } from "./misuse";

/** Cells that a person named: "Summary!A5", "Plan!B2:C9" or a name of the workbook. */
export interface CellTarget {
  readonly asked: string;
  readonly sheet: string;
  readonly area: Area;
}

export const targetAddress = ({ sheet, area }: CellTarget): string => `${sheet}!${rangeOf(area)}`;

const nearest = (asked: string, known: readonly string[]): string => {
  const [best] = known
    .map((name) => ({ name, distance: editDistance(asked.toLowerCase(), name.toLowerCase()) }))
    .sort((one, other) => one.distance - other.distance);
  return best && best.distance <= Math.max(2, asked.length / 3) ? `; did you mean ${best.name}?` : "";
};

const sheetNamed = ({ sheets }: SavedWorkbook, asked: string): SavedSheet => {
  const sheet = sheets.find(({ name }) => name.toLowerCase() === asked.toLowerCase());
  if (sheet) return sheet;
  throw new Misuse(
    `there is no sheet ${asked}${nearest(
      asked,
      sheets.map(({ name }) => name),
    )}`,
  );
};

/** @throws Misuse in words for a person */
export const findTarget = (workbook: SavedWorkbook, asked: string): CellTarget => {
  const read = (reference: string): CellTarget => {
    const { sheet, range } = sheetAndRange(reference);
    const { name } = sheetNamed(workbook, sheet);
    try {
      return { asked, sheet: name, area: areaOf(range) };
    } catch (thrown) {
      throw new Misuse(`${asked}: ${(thrown as Error).message}`);
    }
  };
  if (asked.includes("!")) return read(asked);
  const names = workbook.names.names ?? {};
  const name = Object.keys(names).find((candidate) => candidate.toLowerCase() === asked.toLowerCase());
  if (name === undefined) {
    const only = workbook.sheets.length === 1 && /^\$?[A-Z]{1,3}\$?\d+(?::|$)/i.test(asked);
    if (only) return read(`${workbook.sheets[0]!.name}!${asked}`);
    throw new Misuse(`there is no name ${asked}; write Sheet!A1 for a cell${nearest(asked, Object.keys(names))}`);
  }
  if (workbook.names.ambiguous?.includes(name.toUpperCase())) {
    throw new Misuse(`${name} means different things on different sheets; write Sheet!A1 for a cell`);
  }
  const content = names[name]!;
  if (content.startsWith("=")) throw new Misuse(`${name} stands for ${content}, not for cells`);
  return read(content);
};

const looksLikeNumber = /^[-+]?[\d.,' ]*\d[\d.,' ]*%?$/;

/** A value as it is given on the command line: a number, TRUE or FALSE, an ISO date, else a text; nothing is a blank. */
export const readEntry = (text: string): number | string | boolean | undefined => {
  if (text === "") return undefined;
  if (/^".*"$/s.test(text)) return text.slice(1, -1);
  if (/^(?:true|false)$/i.test(text)) return text.toLowerCase() === "true";
  const [, sign, digits, percent] = /^([-+]?)([\d.].*?)(%?)$/.exec(text.trim()) ?? [];
  const number = digits === undefined ? undefined : readNumber(digits);
  if (number !== undefined) return ((sign === "-" ? -1 : 1) * number) / (percent ? 100 : 1);
  const [, day, time = "00:00"] = /^(\d{4}-\d{2}-\d{2})(?:[ T](\d{2}:\d{2}))?$/.exec(text.trim()) ?? [];
  if (day !== undefined) {
    const milliseconds = Date.parse(`${day}T${time}:00Z`);
    // Dates that do not exist are moved on or refused by the parser.
    const isReal = !Number.isNaN(milliseconds) && new Date(milliseconds).toISOString().startsWith(day);
    if (isReal) return milliseconds / 86_400_000 + 25_569;
    throw new Misuse(`there is no date ${text}`);
  }
  if (looksLikeNumber.test(text) || /^\d{1,2}[-/.]\d{1,2}[-/.]\d{2,4}/.test(text)) {
    throw new Misuse(
      `${text} can be read in more than one way: write 1500, 1500.5 or 2026-03-24, or "${text}" in quotation marks for a text`,
    );
  }
  return text;
};

export interface Setting {
  readonly target: CellTarget;
  readonly value: number | string | boolean | undefined;
}

/** "Inputs!B8=300" and "Name=300". */
export const readSetting = (workbook: SavedWorkbook, text: string): Setting => {
  const [, asked, value] = /^((?:'(?:[^']|'')*')?[^=]*)=([^]*)$/.exec(text) ?? [];
  if (!asked) throw new Misuse(`--set wants Sheet!A1=value or Name=value, not "${text}"`);
  const target = findTarget(workbook, asked.trim());
  if (rangeOf(target.area).includes(":"))
    throw new Misuse(`--set ${asked}: ${targetAddress(target)} is more than one cell`);
  const place = { row: target.area.startRow, column: target.area.startColumn };
  const address = addressOf(place);
  const { cells } = workbook.sheets.find(({ name }) => name === target.sheet)!;
  const filledBy = Object.entries(cells).find(
    ([own, cell]) => cell.formula !== undefined && (own === address || (cell.ref && isInArea(place, areaOf(cell.ref)))),
  );
  if (filledBy) throw new Misuse(`--set ${asked}: ${target.sheet}!${address} is filled by a formula and is no input`);
  return { target, value: readEntry(value!) };
};

export interface ChangedWorkbook {
  readonly sheets: readonly SheetInput[];
  readonly entries: ReadonlyMap<string, ReadonlyMap<string, Entry>>;
  readonly changed: readonly CellOfSheet[];
}

/** The workbook's sheets with other inputs. Of two settings of a cell the later one holds. */
export const changeInputs = (sheets: readonly SheetInput[], settings: readonly Setting[]): ChangedWorkbook => {
  const entries = new Map<string, Map<string, Entry>>();
  for (const { target, value } of settings) {
    const own = entries.get(target.sheet) ?? new Map<string, Entry>();
    own.set(cellName(target.area.startRow, target.area.startColumn), { value });
    entries.set(target.sheet, own);
  }
  const changed = [...entries].flatMap(([sheet, own]) =>
    [...own.keys()].map((address): CellOfSheet => ({ sheet, ...placeOf(address) })),
  );
  return {
    entries,
    changed,
    sheets: sheets.map((sheet) => {
      const own = entries.get(sheet.name);
      if (!own) return sheet;
      const cells: Record<string, SheetCell> = { ...sheet.cells };
      for (const [address, { value }] of own) {
        if (value === undefined) delete cells[address];
        else cells[address] = { value: value as number | string | boolean };
      }
      return { ...sheet, cells };
    }),
  };
};
