import { read, type CellObject } from "@e965/xlsx";
import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from "fflate";
import type { ComputedSheet, SheetCell, SheetInput, TableInput, WorkbookNames } from "./engine";
import { cellName, placeOf, cellsOfArea } from "../cells/addresses";
import { engineError, isDateFormat, isEngineError, type EngineValue } from "./engineValue";
import { isFileError } from "../cells/errorCodes";
import { toTyped } from "../cells/storedFormula";
import { isCellDate } from "../cells/cellValues";

/** A workbook as it was saved: what to compute, and what its cells showed. */
export interface SavedWorkbook {
  readonly sheets: readonly SheetInput[];
  readonly names: WorkbookNames;
  /** The saved value of a cell that holds one, by sheet name and address. */
  cached(sheet: string, address: string): EngineValue | undefined;
}

const valueOf = (cell: CellObject): EngineValue | undefined => {
  const { t: type, v: value, z: format } = cell;
  if (type === "e") return engineError(String(cell.w ?? value));
  if (type === "z" || value === undefined || value instanceof Date) return undefined;
  if (type === "n" && typeof format === "string" && isDateFormat(format)) {
    return { type: "Double", basicType: "Double", basicValue: Number(value), numberFormat: format };
  }
  return value;
};

const attribute = (xml: string, name: string): string | undefined => new RegExp(`\\s${name}="([^"]*)"`).exec(xml)?.[1];

const unescapeXml = (text: string): string =>
  text
    .replace(/&#x([0-9a-f]+);/gi, (_, hex: string) => String.fromCodePoint(Number.parseInt(hex, 16)))
    .replace(/&#(\d+);/g, (_, digits: string) => String.fromCodePoint(Number(digits)))
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&apos;/g, "'")
    .replace(/&amp;/g, "&");

/** Characters that XML can't hold are written as _x0007_, as Excel does. */
const controlCode = (character: string): string =>
  `_x${character.charCodeAt(0).toString(16).padStart(4, "0").toUpperCase()}_`;

const escapeXml = (text: string): string =>
  text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/\p{Cc}/gu, (character) => (/\s/.test(character) ? character : controlCode(character)));

type Parts = Record<string, Uint8Array>;

const textOf = (parts: Parts, path: string): string => (parts[path] ? strFromU8(parts[path]) : "");

/** "xl/worksheets/sheet1.xml" and "../tables/table1.xml" to "xl/tables/table1.xml". */
const resolvePath = (from: string, target: string): string => {
  if (target.startsWith("/")) return target.slice(1);
  const steps = from.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") steps.pop();
    else if (step !== ".") steps.push(step);
  }
  return steps.join("/");
};

interface Relationship {
  id: string;
  type: string;
  path: string;
}

const relationshipsOf = (parts: Parts, path: string): Relationship[] => {
  const slash = path.lastIndexOf("/");
  const rels = `${path.slice(0, slash)}/_rels${path.slice(slash)}.rels`;
  return [...textOf(parts, rels).matchAll(/<Relationship\s[^>]*>/g)].map(([tag]) => ({
    id: attribute(tag, "Id") ?? "",
    type: (attribute(tag, "Type") ?? "").split("/").pop()!,
    path: resolvePath(path, unescapeXml(attribute(tag, "Target") ?? "")),
  }));
};

const workbookPath = "xl/workbook.xml";

/** Each sheet's name and part, in the order of the tabs. */
const sheetPartsOf = (parts: Parts): { name: string; path: string }[] => {
  const relationships = relationshipsOf(parts, workbookPath);
  return [...textOf(parts, workbookPath).matchAll(/<sheet\s[^>]*>/g)].flatMap(([tag]) => {
    const path = relationships.find(({ id }) => id === attribute(tag, "r:id"))?.path;
    return path === undefined ? [] : [{ name: unescapeXml(attribute(tag, "name") ?? ""), path }];
  });
};

const tablesOf = (parts: Parts): TableInput[] =>
  sheetPartsOf(parts).flatMap(({ name: sheet, path }) =>
    relationshipsOf(parts, path)
      .filter(({ type }) => type === "table")
      .map(({ path: tablePath }): TableInput => {
        const xml = textOf(parts, tablePath);
        const [tag = ""] = /<table\s[^>]*>/.exec(xml) ?? [];
        return {
          name: unescapeXml(attribute(tag, "displayName") ?? attribute(tag, "name") ?? ""),
          sheet,
          ref: attribute(tag, "ref") ?? "A1",
          columns: [...xml.matchAll(/<tableColumn\s[^>]*>/g)].map(([column]) =>
            unescapeXml(attribute(column, "name") ?? ""),
          ),
        };
      }),
  );

/**
 * Reads an .xlsx file's bytes, formulas in their typed form. `ids` are the add-in's function ids without namespace.
 * @throws when the bytes are no workbook, or when it counts dates from 1904.
 */
export const readWorkbook = (bytes: Uint8Array, ids: readonly string[]): SavedWorkbook => {
  const parts = unzipSync(bytes);
  if (!parts[workbookPath]) throw new Error("this is no .xlsx workbook");
  const book = read(bytes, {
    type: "array",
    cellFormula: true,
    cellNF: true,
    cellText: true,
    cellDates: false,
    xlfn: true,
  });
  if (book.Workbook?.WBProps?.date1904) throw new Error("this workbook counts dates from 1904; only 1900 is supported");

  const saved = new Map<string, Map<string, EngineValue>>();
  const sheets = book.SheetNames.map((name): SheetInput => {
    const cells: Record<string, SheetCell> = {};
    const values = new Map<string, EngineValue>();
    saved.set(name, values);
    for (const [address, content] of Object.entries(book.Sheets[name] ?? {})) {
      if (address.startsWith("!")) continue;
      const cell = content as CellObject;
      const value = valueOf(cell);
      if (value !== undefined) values.set(address, value);
      // The reader gives every cell of an array the formula of its first one.
      const isFirst = cell.F === undefined || cell.F.split(":")[0] === address;
      if (cell.f !== undefined && isFirst) {
        cells[address] = { formula: toTyped(cell.f, ids), ...(cell.F ? { ref: cell.F } : {}) };
      } else if (cell.F === undefined && value !== undefined) {
        // The engine takes the text of an error code for the error.
        if (isEngineError(value)) cells[address] = { value: value.error };
        else cells[address] = { value: isCellDate(value) ? value.basicValue : value };
      }
    }
    return { name, cells };
  });

  const names = Object.fromEntries(
    (book.Workbook?.Names ?? [])
      .filter(({ Name: name, Ref: ref }) => ref && !name.startsWith("_xlnm."))
      .map(({ Name: name, Ref: ref }) => {
        const typed = toTyped(ref, ids);
        return [name, /^=(?:'(?:[^']|'')*'|[^'!(]+)![$A-Z0-9:]+$/i.test(typed) ? typed.slice(1) : typed];
      }),
  );

  return {
    sheets,
    names: { names, tables: tablesOf(parts) },
    cached: (sheet, address) => saved.get(sheet)?.get(address),
  };
};

const styleOf = (attributes: string): string => {
  const style = attribute(` ${attributes}`, "s");
  return style === undefined ? "" : ` s="${style}"`;
};

const cellXml = (address: string, style: string, value: EngineValue): string => {
  const start = `<c r="${address}"${style}`;
  if (typeof value === "number") return `${start}><v>${value}</v></c>`;
  if (typeof value === "boolean") return `${start} t="b"><v>${value ? 1 : 0}</v></c>`;
  if (isCellDate(value)) return `${start}><v>${value.basicValue}</v></c>`;
  if (isEngineError(value)) {
    return `${start} t="e"><v>${isFileError(value.error) ? value.error : "#VALUE!"}</v></c>`;
  }
  if (value === "") return `${start}/>`;
  return `${start} t="inlineStr"><is><t xml:space="preserve">${escapeXml(value)}</t></is></c>`;
};

/** One sheet's XML with the given values in place of its formulas; `undefined` empties a cell, its style stays. */
const withValues = (xml: string, values: ReadonlyMap<string, EngineValue | undefined>): string =>
  xml.replace(/<sheetData\s*\/>|<sheetData>([\s\S]*?)<\/sheetData>/, (_, rows: string | undefined) => {
    const found = new Map<number, { attributes: string; cells: Map<number, string> }>();
    for (const [, attributes = "", inner = ""] of (rows ?? "").matchAll(/<row\b([^>]*?)(?:\/>|>([\s\S]*?)<\/row>)/g)) {
      const row = Number(attribute(attributes, "r")) - 1;
      const cells = new Map<number, string>();
      found.set(row, { attributes, cells });
      for (const [whole, cellAttributes = "", content = ""] of inner.matchAll(
        /<c\b([^>]*?)(?:\/>|>([\s\S]*?)<\/c>)/g,
      )) {
        const address = attribute(cellAttributes, "r") ?? "";
        const { column } = placeOf(address);
        const style = styleOf(cellAttributes);
        if (values.has(address)) {
          const value = values.get(address);
          cells.set(column, value === undefined ? `<c r="${address}"${style}/>` : cellXml(address, style, value));
        } else if (/<f\b/.test(content)) {
          // A formula that was not computed keeps what it showed.
          cells.set(column, whole.replace(/<f\b[^>]*?(?:\/>|>[\s\S]*?<\/f>)/, "").replace(/\s(?:cm|vm)="\d+"/g, ""));
        } else {
          cells.set(column, whole.replace(/^(<c\b[^>]*?)\s(?:cm|vm)="\d+"/, "$1"));
        }
      }
    }
    for (const [address, value] of values) {
      const { row, column } = placeOf(address);
      const place = found.get(row) ?? { attributes: ` r="${row + 1}"`, cells: new Map<number, string>() };
      found.set(row, place);
      if (value !== undefined && !place.cells.has(column)) place.cells.set(column, cellXml(address, "", value));
    }
    const ordered = <T>(map: Map<number, T>): [number, T][] => [...map].sort(([a], [b]) => a - b);
    const lines = ordered(found).map(([, { attributes, cells }]) => {
      const bare = attributes.replace(/\sspans="[^"]*"/, "");
      const inner = ordered(cells)
        .map(([, cell]) => cell)
        .join("");
      return inner === "" ? `<row${bare}/>` : `<row${bare}>${inner}</row>`;
    });
    return `<sheetData>${lines.join("")}</sheetData>`;
  });

/**
 * The same workbook with values in place of formulas, for people without the add-in: styles, widths, charts, names and
 * everything else stay as they are. Names that stand for formulas go, as do the marks of dynamic arrays.
 */
export const valuesOnly = (bytes: Uint8Array, saved: SavedWorkbook, computed: readonly ComputedSheet[]): Uint8Array => {
  const parts = unzipSync(bytes);
  for (const { name, path } of sheetPartsOf(parts)) {
    const sheet = computed.find((candidate) => candidate.name === name);
    const input = saved.sheets.find((candidate) => candidate.name === name);
    if (!sheet || !input || !parts[path]) continue;
    const values = new Map<string, EngineValue | undefined>();
    // What a spill filled when it was saved and no longer fills is emptied.
    for (const cell of Object.values(input.cells)) {
      if (cell.formula === undefined || !cell.ref) continue;
      for (const inner of cellsOfArea(cell.ref)) values.set(inner, undefined);
    }
    for (const [address, cell] of Object.entries(sheet.cells)) {
      for (const [inner, value] of filledCells(address, cell)) values.set(inner, value);
    }
    const xml = withValues(textOf(parts, path), values).replace(/<dimension\s[^>]*\/>/, "");
    parts[path] = strToU8(xml);
  }

  const gone = relationshipsOf(parts, workbookPath).filter(
    ({ type }) => type === "sheetMetadata" || type === "calcChain",
  );
  for (const { id, path } of gone) {
    delete parts[path];
    const rels = "xl/_rels/workbook.xml.rels";
    parts[rels] = strToU8(
      textOf(parts, rels).replace(/<Relationship\s[^>]*?\/>/g, (tag) => (attribute(tag, "Id") === id ? "" : tag)),
    );
    parts["[Content_Types].xml"] = strToU8(
      textOf(parts, "[Content_Types].xml").replace(/<Override\s[^>]*?\/>/g, (tag) =>
        attribute(tag, "PartName") === `/${path}` ? "" : tag,
      ),
    );
  }
  parts[workbookPath] = strToU8(
    textOf(parts, workbookPath)
      .replace(/<definedName\b[^>]*>([^<]*)<\/definedName>/g, (tag, formula: string) =>
        /_xlf|_xldudf|_xludf/i.test(formula) ? "" : tag,
      )
      .replace(/<definedNames>\s*<\/definedNames>/, ""),
  );
  for (const path of Object.keys(parts).filter((name) => /^xl\/tables\/[^/]+\.xml$/.test(name))) {
    parts[path] = strToU8(
      textOf(parts, path).replace(/<(calculatedColumnFormula|totalsRowFormula)\b[^>]*>[^<]*<\/\1>/g, ""),
    );
  }

  const fixed: Zippable = {};
  // The same bytes each time: zip stores a time of day, so it gets the earliest one.
  for (const [path, content] of Object.entries(parts))
    fixed[path] = [content, { mtime: new Date(1980, 0, 1), level: 6 }];
  return zipSync(fixed);
};

/** Every cell a computed formula fills, with its address. */
export const filledCells = (
  address: string,
  cell: { value: EngineValue; spill?: EngineValue[][] },
): [string, EngineValue][] => {
  if (!cell.spill) return [[address, cell.value]];
  const { row, column } = placeOf(address);
  return cell.spill.flatMap((line, down) =>
    line.map((value, right): [string, EngineValue] => [cellName(row + down, column + right), value]),
  );
};
