import { addressOf, isOnSheet, placeOf, type Place } from "../../cells/addresses";
import { walkPart } from "./partXml";
import { damagedPart } from "./unusableWorkbook";
import { cellTextOf, type Attributes } from "./xmlScan";
import type { Parts } from "./zipParts";

/** A cell as the XML of its sheet has it. Places are where its element starts and ends in the part's text. */
export interface StoredCell extends Place {
  readonly address: string;
  readonly attributes: Attributes;
  /** The content of `<v>`, undefined where there is none. */
  readonly value: string | undefined;
  /** The content of `<is>`, without readings of its characters. */
  readonly inlineText: string;
  readonly formula: { readonly text: string; readonly attributes: Attributes } | undefined;
  readonly start: number;
  readonly end: number;
}

export interface StoredRow {
  /** From 0. */
  readonly row: number;
  /** Where its opening tag starts and ends. */
  readonly start: number;
  readonly openEnd: number;
  /** Where its closing tag starts; -1 for a row without cells that closes itself. */
  readonly closeStart: number;
  readonly end: number;
}

export interface SheetListener {
  cell(cell: StoredCell): void;
  row?(row: StoredRow): void;
  /** Where the content of `<sheetData>` is; start and end are those of its tag where it closes itself. */
  data?(place: { start: number; openEnd: number; closeStart: number; end: number }): void;
}

/**
 * Goes through the cells of a sheet's part. Rows and cells must stand in their order, each once.
 * @throws UnusableWorkbook
 */
export const walkSheet = (parts: Parts, path: string, listener: SheetListener): void => {
  const fault = (what: string): never => {
    throw damagedPart(path, what);
  };
  let depth = 0;
  let isInData = false;
  let dataCount = 0;
  let data = { start: 0, openEnd: 0 };
  let row = { row: -1, start: 0, openEnd: 0 };
  let lastRow = -1;
  let lastColumn = -1;
  let cell: { address: string; place: Place; attributes: Attributes; start: number } | undefined;
  let value: string | undefined;
  let inlineText = "";
  let formula: { text: string; attributes: Attributes } | undefined;
  /** The element whose text is being read. */
  let reading = "";
  let isReadingOfCharacters = false;

  const openRow = ({ r }: Attributes, start: number, end: number): void => {
    const number = r === undefined ? lastRow + 2 : Number(r);
    if (!Number.isInteger(number) || number <= lastRow + 1 || !isOnSheet(String(number))) {
      fault(`has a row ${r ?? number} out of place`);
    }
    row = { row: number - 1, start, openEnd: end };
    lastRow = row.row;
    lastColumn = -1;
  };

  const openCell = (attributes: Attributes, start: number): void => {
    let place: Place = { row: row.row, column: lastColumn + 1 };
    if (attributes.r !== undefined) {
      try {
        place = placeOf(attributes.r);
      } catch {
        fault(`has a cell "${attributes.r}"`);
      }
    }
    const address = addressOf(place);
    if (place.row !== row.row || place.column <= lastColumn) fault(`has its cell ${address} out of place`);
    lastColumn = place.column;
    cell = { address, place, attributes, start };
    value = undefined;
    inlineText = "";
    formula = undefined;
  };

  walkPart(parts, path, "worksheet", {
    open: (tag, attributes, start, end) => {
      depth++;
      if (depth === 2 && tag === "sheetData") {
        if (++dataCount > 1) fault("holds its cells twice");
        isInData = true;
        data = { start, openEnd: end };
      } else if (!isInData) return;
      else if (depth === 3) {
        if (tag !== "row") fault(`has a <${tag}> where a row is wanted`);
        openRow(attributes, start, end);
      } else if (depth === 4) {
        if (tag !== "c") {
          if (tag !== "extLst") fault(`has a <${tag}> where a cell is wanted`);
          return;
        }
        openCell(attributes, start);
      } else if (cell && tag === "v") {
        if (value !== undefined) fault(`gives ${cell.address} two values`);
        value = "";
        reading = "v";
      } else if (cell && tag === "f") {
        formula = { text: "", attributes };
        reading = "f";
      } else if (tag === "rPh") isReadingOfCharacters = true;
      else if (cell && tag === "t" && !isReadingOfCharacters) reading = "t";
    },
    text: (text) => {
      if (reading === "v") value += text;
      else if (reading === "f") formula!.text += text;
      else if (reading === "t") inlineText += text;
    },
    close: (tag, start, end) => {
      depth--;
      if (tag === reading) reading = "";
      if (tag === "rPh") isReadingOfCharacters = false;
      if (!isInData) return;
      if (depth === 3 && cell && tag === "c") {
        const { place, address, attributes, start: from } = cell;
        listener.cell({
          ...place,
          address,
          attributes,
          value,
          inlineText: cellTextOf(inlineText),
          formula,
          start: from,
          end,
        });
        cell = undefined;
      } else if (depth === 2 && tag === "row") {
        const isEmpty = start === row.start;
        listener.row?.({ ...row, closeStart: isEmpty ? -1 : start, end });
      } else if (depth === 1) {
        isInData = false;
        listener.data?.({ ...data, closeStart: start, end });
      }
    },
  });
  if (dataCount === 0) fault("has no cells part (<sheetData>)");
};
