import { areaOf, cellsOfArea, isInArea, placeOf } from "../../cells/addresses";
import { isFileError } from "../../cells/errorCodes";
import { isCellDate } from "../../cells/cellValues";
import { shiftFormula } from "../../cells/shiftFormula";
import { isEngineError, type EngineValue } from "../engineValue";
import { partText, setPart } from "./partXml";
import { walkSheet, type StoredCell, type StoredRow } from "./sheetPart";
import { escapeXml, type Attributes } from "./xmlScan";
import type { Parts } from "./zipParts";

/** What becomes of one cell; its style stays. */
export type CellChange =
  /** A value typed in; a formula that stood here goes. Undefined empties the cell. */
  | { readonly kind: "value"; readonly value: EngineValue | undefined }
  /** The formula stays and shows this; `area` is what it fills now, for a formula that may spill. */
  | { readonly kind: "result"; readonly value: EngineValue; readonly area?: string }
  /** The formula goes, what it showed stays. */
  | { readonly kind: "frozen" }
  /** Another formula, in the form files keep. `mark` is the number of the dynamic mark it needs. */
  | {
      readonly kind: "formula";
      readonly stored: string;
      readonly value: EngineValue | undefined;
      readonly area?: string;
      readonly mark?: number;
    };

export type SheetChanges = ReadonlyMap<string, CellChange>;

const attributesXml = (attributes: Attributes, without: readonly string[]): string =>
  Object.entries(attributes)
    .filter(([name, value]) => value !== undefined && !without.includes(name))
    .map(([name, value]) => ` ${name}="${escapeXml(value!)}"`)
    .join("");

/** Type and content of a cell that shows a value. */
const valueXml = (value: EngineValue | undefined, isResult: boolean): { type: string; content: string } => {
  if (value === undefined || (value === "" && !isResult)) return { type: "", content: "" };
  if (typeof value === "boolean") return { type: ' t="b"', content: `<v>${value ? 1 : 0}</v>` };
  if (typeof value === "number") return { type: "", content: `<v>${value}</v>` };
  if (isCellDate(value)) return { type: "", content: `<v>${value.basicValue}</v>` };
  if (isEngineError(value)) {
    return { type: ' t="e"', content: `<v>${isFileError(value.error) ? value.error : "#VALUE!"}</v>` };
  }
  if (isResult) return { type: ' t="str"', content: `<v>${escapeXml(value)}</v>` };
  return { type: ' t="inlineStr"', content: `<is><t xml:space="preserve">${escapeXml(value)}</t></is>` };
};

const element = (attributes: string, content: string): string =>
  content === "" ? `<c${attributes}/>` : `<c${attributes}>${content}</c>`;

const formulaPattern = /<f\b(?:[^>"']|"[^"]*"|'[^']*')*?(?:\/>|>[^]*?<\/f>)/;

/** A cell as it was, its formula's area another one where it is an array's. */
const withArea = (formula: string, area: string | undefined): string =>
  area === undefined || !/^<f\b[^>]*\st="array"/.test(formula)
    ? formula
    : formula.replace(/(^<f\b[^>]*\sref=")[^"]*"/, `$1${area}"`);

const changedCell = (address: string, cell: StoredCell | undefined, raw: string, change: CellChange): string => {
  const own: Attributes = cell?.attributes ?? {};
  const start = (without: readonly string[]): string =>
    ` r="${address}"${attributesXml(own, ["r", "t", "vm", ...without])}`;
  const formula = formulaPattern.exec(raw)?.[0] ?? "";
  switch (change.kind) {
    case "value": {
      const { type, content } = valueXml(change.value, false);
      return element(start(["cm"]) + type, content);
    }
    case "result": {
      const { type, content } = valueXml(change.value, true);
      return element(start([]) + type, withArea(formula, change.area) + content);
    }
    case "frozen":
      return raw.replace(formulaPattern, "").replace(/^<c\b[^>]*/, (tag) => tag.replace(/\s(?:cm|vm)="\d+"/g, ""));
    case "formula": {
      const { type, content } = valueXml(change.value, true);
      const isArray = change.mark !== undefined;
      const tag = isArray ? `<f t="array" ref="${change.area ?? address}">` : "<f>";
      const mark = isArray ? ` cm="${change.mark}"` : "";
      return element(start(["cm"]) + mark + type, `${tag}${escapeXml(change.stored)}</f>${content}`);
    }
  }
};

interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

const applied = (text: string, edits: readonly Edit[]): string => {
  // What is put in at a place comes before what is put for the piece that starts there, the first given first.
  const ordered = edits.map((edit, order) => ({ ...edit, order }));
  ordered.sort(
    (one, other) =>
      one.start - other.start ||
      Number(one.end > one.start) - Number(other.end > other.start) ||
      one.order - other.order,
  );
  let result = "";
  let at = 0;
  for (const edit of ordered) {
    result += text.slice(at, edit.start) + edit.text;
    at = edit.end;
  }
  return result + text.slice(at);
};

interface FoundSheet {
  readonly cells: Map<string, StoredCell>;
  readonly rows: (StoredRow & { readonly cells: readonly StoredCell[] })[];
  readonly data: { start: number; openEnd: number; closeStart: number; end: number };
  /** First cells of shared formulas, by their number. */
  readonly shared: Map<string, StoredCell>;
  readonly followers: Map<string, StoredCell[]>;
}

const find = (parts: Parts, path: string): FoundSheet => {
  const found: FoundSheet = {
    cells: new Map(),
    rows: [],
    data: { start: 0, openEnd: 0, closeStart: 0, end: 0 },
    shared: new Map(),
    followers: new Map(),
  };
  let cells: StoredCell[] = [];
  walkSheet(parts, path, {
    cell: (cell) => {
      cells.push(cell);
      found.cells.set(cell.address, cell);
      const { t, si } = cell.formula?.attributes ?? {};
      if (t !== "shared" || si === undefined) return;
      if (cell.formula!.text !== "") found.shared.set(si, cell);
      else found.followers.set(si, [...(found.followers.get(si) ?? []), cell]);
    },
    row: (row) => {
      found.rows.push({ ...row, cells });
      cells = [];
    },
    data: (place) => Object.assign(found.data, place),
  });
  return found;
};

/** Cells of arrays that are emptied because their formula goes or fills less now. */
const leftCells = ({ cells }: FoundSheet, changes: SheetChanges): Map<string, CellChange> => {
  const left = new Map<string, CellChange>();
  for (const [address, change] of changes) {
    const { t, ref } = cells.get(address)?.formula?.attributes ?? {};
    if (t !== "array" || ref === undefined || change.kind === "frozen") continue;
    const now = change.kind === "value" ? address : (change.area ?? (change.kind === "result" ? ref : address));
    const area = areaOf(now);
    for (const inner of cellsOfArea(ref)) {
      if (inner === address || changes.has(inner) || isInArea(placeOf(inner), area)) continue;
      left.set(inner, { kind: "value", value: undefined });
    }
  }
  return left;
};

/** Cells that shared the formula of one that changes get their own. */
const separatedCells = ({ shared, followers }: FoundSheet, changes: SheetChanges, xml: string): Edit[] => {
  const edits: Edit[] = [];
  for (const [si, first] of shared) {
    const change = changes.get(first.address);
    if (!change || change.kind === "result") continue;
    for (const cell of followers.get(si) ?? []) {
      const own = changes.get(cell.address);
      if (own && own.kind !== "result") continue;
      const text = shiftFormula(first.formula!.text, cell.row - first.row, cell.column - first.column);
      const raw = xml.slice(cell.start, cell.end);
      const separate = raw.replace(formulaPattern, () => `<f>${escapeXml(text)}</f>`);
      edits.push({
        start: cell.start,
        end: cell.end,
        text: own ? changedCell(cell.address, cell, separate, own) : separate,
      });
    }
  }
  return edits;
};

/** The first row from `number` on, in rising rows. */
const rowFrom = (rows: FoundSheet["rows"], number: number): FoundSheet["rows"][number] | undefined => {
  let [low, high] = [0, rows.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rows[middle]!.row < number) low = middle + 1;
    else high = middle;
  }
  return rows[low];
};

const insertCells = ({ rows, data }: FoundSheet, added: ReadonlyMap<string, CellChange>, xml: string): Edit[] => {
  const edits: Edit[] = [];
  const byRow = new Map<number, { column: number; text: string }[]>();
  for (const [address, change] of added) {
    const { row, column } = placeOf(address);
    const cells = byRow.get(row) ?? [];
    cells.push({ column, text: changedCell(address, undefined, "", change) });
    byRow.set(row, cells);
  }
  for (const [number, cells] of [...byRow].sort(([one], [other]) => one - other)) {
    cells.sort((one, other) => one.column - other.column);
    const row = rowFrom(rows, number);
    if (row?.row !== number) {
      const text = `<row r="${number + 1}">${cells.map((cell) => cell.text).join("")}</row>`;
      const isEmpty = data.closeStart === data.start;
      if (row) edits.push({ start: row.start, end: row.start, text });
      else if (!isEmpty) edits.push({ start: data.closeStart, end: data.closeStart, text });
      else edits.push({ start: data.end, end: data.end, text });
      continue;
    }
    if (row.closeStart < 0) {
      const open = xml.slice(row.start, row.openEnd).replace(/\s*\/>$/, ">");
      const text = `${open}${cells.map((cell) => cell.text).join("")}</row>`;
      edits.push({ start: row.start, end: row.end, text });
      continue;
    }
    for (const { column, text } of cells) {
      const next = row.cells.find((cell) => cell.column > column);
      const at = next ? next.start : row.closeStart;
      edits.push({ start: at, end: at, text });
    }
  }
  return edits;
};

/**
 * Writes changed cells into a sheet's part; everything else of its text stays as it is. Cells of an array that its formula
 * no longer fills are emptied, and cells that shared a formula with a changed one get their own.
 * @returns whether a formula came or went.
 */
export const editSheet = (parts: Parts, path: string, changes: SheetChanges): boolean => {
  const xml = partText(parts, path);
  const found = find(parts, path);
  const all = new Map([...leftCells(found, changes), ...changes]);
  const separated = separatedCells(found, all, xml);
  const isDone = new Set(separated.map(({ start }) => start));
  const edits = [...separated];
  const added = new Map<string, CellChange>();
  let hasOtherFormulas = separated.length > 0;
  for (const [address, change] of all) {
    const cell = found.cells.get(address);
    if (cell?.formula ? change.kind !== "result" : change.kind === "formula") hasOtherFormulas = true;
    if (!cell) {
      const isNothing = change.kind === "frozen" || (change.kind !== "formula" && (change.value ?? "") === "");
      if (!isNothing) added.set(address, change);
    } else if (!isDone.has(cell.start)) {
      const text = changedCell(address, cell, xml.slice(cell.start, cell.end), change);
      edits.push({ start: cell.start, end: cell.end, text });
    }
  }
  const inserted = insertCells(found, added, xml);
  const { data } = found;
  // An empty <sheetData/> opens for what is put in behind it.
  if (inserted.length > 0 && data.closeStart === data.start) {
    edits.push({ start: data.start, end: data.end, text: "<sheetData>" });
    inserted.push({ start: data.end, end: data.end, text: "</sheetData>" });
  }
  let edited = applied(xml, [...edits, ...inserted]);
  if (added.size > 0) {
    // Both are hints that no longer fit.
    edited = edited.replace(/<dimension\b[^>]*\/>/, "").replace(/(<row\b[^>]*?)\sspans="[^"]*"/g, "$1");
  }
  setPart(parts, path, edited);
  return hasOtherFormulas;
};
