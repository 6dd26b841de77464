import type { Cell, CellStyle, DataValidation, NamedRange, WriteSheet } from "hucre";
import { writeXlsx } from "hucre/xlsx";
import { isCellDate, isErrorCell } from "../../cells/cellValues";
import {
  absolute,
  absoluteReference,
  addressOf,
  areaFrom,
  overlaps,
  placeOf,
  placesIn,
  quotedSheet,
  rangeOf,
  sheetAndRange,
  type Area,
  type Place,
} from "../../cells/addresses";
import { formulaKey, type CachedCell, type Calculate, type CalculatedValues } from "./calculation";
import { chartPart } from "./chartPart";
import { isExcelError } from "../../cells/errorCodes";
import type { CellDescription, SheetDescription, SpillLook, Validation, WorkbookDescription } from "./description";
import { isDynamic } from "../../cells/dynamicFormula";
import { builtInFormula, storedFormula } from "./formulaForm";
import { errorMark, finishPackage } from "./packageParts";
import { heightFor } from "./rowHeights";
import { fontName, fontSize, marks, roles, shades, type Role } from "./theme";

/** Documents carry this date, whenever they are built. */
const documentDate = new Date(Date.UTC(2026, 0, 1));

const author = "Oxygen Supply Functions";

/** Excel's own limits: "Excel specifications and limits" and the fields of its validation dialogue. */
const limits = { sheetName: 31, list: 255, promptTitle: 32, prompt: 255, refusal: 225, name: 255 };

const inputRoles: ReadonlySet<Role> = new Set(["input", "tableInput"]);

const keyOf = ({ row, column }: Place): string => `${row},${column}`;

const styleOf = (description: CellDescription, role: Role, format = description.format): CellStyle => {
  const base = roles[role];
  const { align, wrap, unlocked = inputRoles.has(role) } = description;
  return {
    ...base,
    ...(format ? { numFmt: format } : {}),
    alignment: {
      ...base.alignment,
      ...(align ? { horizontal: align } : {}),
      ...(wrap === undefined ? {} : { wrapText: wrap }),
    },
    protection: { locked: !unlocked },
  };
};

type WrittenValue = number | string | boolean | null;

const errorCode = (value: object): string => {
  const { code, error } = value as { code?: string; error?: string };
  return code ?? error ?? "";
};

const isError = (value: CachedCell): value is Exclude<CachedCell, number | string | boolean | null> =>
  typeof value === "object" && value !== null && (isErrorCell(value) || "error" in value);

const writtenValue = (value: CachedCell, where: string): WrittenValue => {
  if (isError(value)) {
    const code = errorCode(value);
    if (!isExcelError(code)) throw new Error(`${where}: "${code}" is no error of a cell`);
    if (code === "#NAME?") throw new Error(`${where} came back as #NAME?, which must never be cached`);
    return errorMark + code;
  }
  if (isCellDate(value)) return value.basicValue;
  if (typeof value === "number" && !Number.isFinite(value))
    throw new Error(`${where}: ${value} is no number of a cell`);
  return value as WrittenValue;
};

const spilledRole = (look: SpillLook | undefined, role: Role, row: number, rows: number): Role => {
  if (look?.header && row === 0) return "tableHeader";
  if (look?.total && row === rows - 1) return "total";
  return role;
};

const spilledFormat = (look: SpillLook | undefined, column: number, value: CachedCell): string | undefined => {
  const list = look?.formats ?? [];
  return (
    list[Math.min(column, list.length - 1)] ?? (value !== null && isCellDate(value) ? value.numberFormat : undefined)
  );
};

interface LaidSheet {
  description: SheetDescription;
  cells: Map<string, Partial<Cell>>;
  shown: Map<string, CachedCell>;
  used: Area;
  merges: Area[];
}

const layOut = (sheet: SheetDescription, values: CalculatedValues, singleCellNames: ReadonlySet<string>): LaidSheet => {
  const cells = new Map<string, Partial<Cell>>();
  const shown = new Map<string, CachedCell>();
  const merges: Area[] = [];
  const spills: { from: Place; area: Area }[] = [];
  const described = Object.entries(sheet.cells).map(([address, description]) => ({
    place: placeOf(address),
    description,
  }));

  for (const { place, description } of described) {
    const where = formulaKey(sheet.name, place);
    if (cells.has(keyOf(place))) throw new Error(`${where} is described twice or lies under a merged cell`);
    const { across = 1, down = 1, role } = description;
    const own = areaFrom(place, down, across);
    const style = styleOf(description, role);
    for (const covered of placesIn(own)) {
      if (cells.has(keyOf(covered))) throw new Error(`${where} is merged over ${addressOf(covered)}, which is in use`);
      cells.set(keyOf(covered), { value: null, style });
    }
    if (across > 1 || down > 1) merges.push(own);
    if (description.formula === undefined) {
      const value = description.value === "" ? null : (description.value ?? null);
      if (typeof value === "number") writtenValue(value, where);
      const words = typeof value === "string" && isExcelError(value) ? errorMark + value : value;
      cells.set(keyOf(place), { value: words, style });
      shown.set(keyOf(place), value);
    }
    const target = description.link;
    if (target) {
      const { sheet: to, range } = sheetAndRange(target.to);
      cells.get(keyOf(place))!.hyperlink = {
        target: "",
        location: `${quotedSheet(to)}!${range}`,
        ...(target.tip ? { tooltip: target.tip } : {}),
      };
    }
  }

  for (const { place, description } of described) {
    const { formula, spill: look, role } = description;
    if (formula === undefined) continue;
    const where = formulaKey(sheet.name, place);
    const result = values.get(where);
    if (!result || result.length === 0 || result[0]!.length === 0) throw new Error(`${where} was not calculated`);
    const rows = result.length;
    const columns = result[0]!.length;
    const area = areaFrom(place, rows, columns);
    const reserved = areaFrom(place, Math.max(rows, look?.room ?? 0), columns);
    for (const free of placesIn(reserved)) {
      const isOwn = free.row === place.row && free.column === place.column;
      if (!isOwn && cells.has(keyOf(free)))
        throw new Error(`${where} would spill over ${addressOf(free)}, which is in use`);
    }
    const clash = spills.find((other) => overlaps(other.area, reserved));
    if (clash) throw new Error(`${where} and ${formulaKey(sheet.name, clash.from)} would spill into each other`);
    spills.push({ from: place, area: reserved });

    const isSpill = rows > 1 || columns > 1;
    for (const spilled of placesIn(reserved)) {
      const [row, column] = [spilled.row - place.row, spilled.column - place.column];
      const inside = row < rows;
      const value = inside ? (result[row]![column] ?? null) : null;
      const isFirst = row === 0 && column === 0;
      const cellRole = inside ? spilledRole(look, role, row, rows) : "spillRoom";
      const format = look?.formats
        ? spilledFormat(look, column, value)
        : (description.format ?? spilledFormat(look, column, value));
      const style = styleOf(
        isFirst ? description : { ...description, unlocked: false },
        cellRole,
        cellRole === "tableHeader" ? undefined : format,
      );
      const written = writtenValue(value, `${where}, row ${row + 1}, column ${column + 1}`);
      shown.set(keyOf(spilled), isError(value) ? null : value);
      const existing = isFirst ? cells.get(keyOf(place))! : {};
      if (isFirst) {
        const dynamic = isSpill || isDynamic(formula, singleCellNames);
        cells.set(keyOf(spilled), {
          ...existing,
          style,
          formula: storedFormula(formula),
          formulaResult: written,
          ...(dynamic ? { formulaDynamic: true, formulaType: "array", formulaRef: rangeOf(area) } : {}),
        });
      } else if (written === null) {
        cells.set(keyOf(spilled), { value: null, style });
      } else {
        cells.set(keyOf(spilled), { value: null, style, formula: "", formulaResult: written });
      }
    }
  }

  const corners = [
    ...[...cells.keys()].map((key) => key.split(",").map(Number) as [number, number]),
    ...(sheet.charts ?? []).map((chart) => {
      const { row, column } = placeOf(chart.to);
      return [row, column] as [number, number];
    }),
  ];
  const used: Area = {
    startRow: 0,
    startColumn: 0,
    endRow: Math.max(0, ...corners.map(([row]) => row)),
    endColumn: Math.max(0, ...corners.map(([, column]) => column)),
  };
  return { description: sheet, cells, shown, used, merges };
};

const validationFor = (range: string, validation: Validation): DataValidation => {
  const { rule, prompt, refusal, blankPasses = true } = validation;
  const tooLong = (words: string | undefined, most: number, what: string): void => {
    if (words && words.length > most)
      throw new Error(`${range}: ${what} is ${words.length} characters, ${most} at most`);
  };
  tooLong(prompt?.title, limits.promptTitle, "the prompt's title");
  tooLong(prompt?.words, limits.prompt, "the prompt");
  tooLong(refusal?.title, limits.promptTitle, "the refusal's title");
  tooLong(refusal?.words, limits.refusal, "the refusal");
  const common = {
    range,
    allowBlank: blankPasses,
    showInputMessage: prompt !== undefined,
    showErrorMessage: true,
    ...(prompt ? { inputTitle: prompt.title, inputMessage: prompt.words } : {}),
    ...(refusal
      ? { errorTitle: refusal.title, errorMessage: refusal.words, errorStyle: refusal.weight ?? "stop" }
      : {}),
  } as const;
  switch (rule.kind) {
    case "list": {
      if (rule.values.some((value) => /[,"]/.test(value)))
        throw new Error(`${range}: a list's words hold no comma or quote`);
      tooLong(rule.values.join(","), limits.list, "the list");
      return { ...common, type: "list", values: [...rule.values] };
    }
    case "listFrom":
      return {
        ...common,
        type: "list",
        formula1: rule.range.includes("!") ? absoluteReference(rule.range) : rule.range,
      };
    case "number":
    case "whole":
    case "date": {
      const type = rule.kind === "number" ? "decimal" : rule.kind;
      const [least, most] = [rule.least, rule.most].map((end) =>
        typeof end === "string" ? builtInFormula(end) : end === undefined ? undefined : String(end),
      );
      if (least !== undefined && most !== undefined) {
        return { ...common, type, operator: "between", formula1: least, formula2: most };
      }
      if (least !== undefined) return { ...common, type, operator: "greaterThanOrEqual", formula1: least };
      if (most !== undefined) return { ...common, type, operator: "lessThanOrEqual", formula1: most };
      throw new Error(`${range}: a limit needs a least or a most`);
    }
    case "quantity": {
      const cell = range.replace(/:.*/, "");
      const begins = `ISNUMBER(VALUE(LEFT(${cell},FIND(" ",${cell})-1)))`;
      const formula = `=IF(ISNUMBER(${cell}),AND(${cell}>=${rule.least},${cell}<=${rule.most}),${begins})`;
      return { ...common, type: "custom", formula1: builtInFormula(formula) };
    }
    case "textLength":
      return { ...common, type: "textLength", operator: "lessThanOrEqual", formula1: String(rule.most) };
    case "formula":
      return { ...common, type: "custom", formula1: builtInFormula(rule.formula) };
  }
};

const leastRowHeight = 18;

/**
 * Every row with a cell gets a stated height: Excel does not fit merged cells to their text by itself, and a file made
 * without Excel has no fitted heights to begin with.
 */
const rowHeightsOf = ({ description: sheet, cells, shown, merges }: LaidSheet): Map<number, { height: number }> => {
  const heights = new Map<number, { height: number }>();
  for (const [key, { style }] of cells) {
    const [row, column] = key.split(",").map(Number) as [number, number];
    const merged = merges.find(({ startRow, startColumn }) => startRow === row && startColumn === column);
    const content = shown.get(key);
    const isOneRow = !merged || merged.startRow === merged.endRow;
    const width = sheet.columns
      .slice(column, (merged?.endColumn ?? column) + 1)
      .reduce((sum, columnWidth) => sum + columnWidth, 0);
    const words = typeof content === "string" && isOneRow ? content : "";
    const room = style?.alignment?.wrapText ? width : Number.POSITIVE_INFINITY;
    const needed = heightFor(words, room, style?.font?.size, style?.font?.bold);
    heights.set(row, { height: Math.max(leastRowHeight, needed, heights.get(row)?.height ?? 0) });
  }
  for (const [row, height] of Object.entries(sheet.rowHeights ?? {})) heights.set(Number(row) - 1, { height });
  return heights;
};

/** Paper widths and heights in points: ISO 216 and ANSI/ASME Y14.1. */
const papers = { a4: [595.3, 841.9], letter: [612, 792] } as const;
const sideMargins = 2 * 0.5 * 72;

/**
 * Per cent at which a sheet's columns fill the width of its paper. A character is 7 pixels wide, at 96 a inch; LibreOffice
 * prints columns about a tenth wider, and one column over the edge doubles the pages.
 */
const scaleToWidth = ({ columns, print = {} }: SheetDescription): number => {
  const [narrow, wide] = papers[print.paper ?? "a4"];
  const points = columns.reduce((sum, width) => sum + (width * 7 + 5) * 0.75, 0);
  const room = (print.orientation === "landscape" ? wide : narrow) - sideMargins;
  return Math.max(10, Math.min(100, Math.floor((room / points) * 88)));
};

const escapedFooter = (words: string): string => words.replace(/&/g, "&&");

const sheetFor = (laid: LaidSheet, title: string): WriteSheet => {
  const { description: sheet, cells } = laid;
  const frozen = sheet.freezeAt ? placeOf(sheet.freezeAt) : undefined;
  const print = sheet.print ?? {};
  const cellValidations = Object.entries(sheet.cells).flatMap(([address, cell]) =>
    cell.validation ? [validationFor(address, cell.validation)] : [],
  );
  const rangeValidations = (sheet.validations ?? []).map(({ range, ...validation }) =>
    validationFor(range, validation),
  );
  return {
    name: sheet.name,
    // A stated width includes the cell's margins, which take 5 of 7 pixels (ECMA-376 part 1, 18.3.1.13).
    columns: sheet.columns.map((width) => ({ width: Math.round((width + 5 / 7) * 256) / 256 })),
    cells,
    rowDefs: rowHeightsOf(laid),
    merges: laid.merges.map(({ startRow, startColumn, endRow, endColumn }) => ({
      startRow,
      startCol: startColumn,
      endRow,
      endCol: endColumn,
    })),
    ...(frozen ? { freezePane: { rows: frozen.row, columns: frozen.column } } : {}),
    dataValidations: [...cellValidations, ...rangeValidations],
    conditionalRules: (sheet.conditional ?? []).map((rule, index) => {
      const common = { range: rule.range, priority: index + 1 };
      if ("shade" in rule) {
        const ends = [`FF${shades.light}`, `FF${shades.full}`];
        const colors = rule.shade === "lowToHigh" ? ends : ends.reverse();
        return { ...common, type: "colorScale", colorScale: { cfvo: [{ type: "min" }, { type: "max" }], colors } };
      }
      return {
        ...common,
        type: "expression",
        formula: builtInFormula(rule.when),
        style: marks[rule.mark],
        ...(rule.last ? { stopIfTrue: true } : {}),
      };
    }),
    ...(sheet.protect === false
      ? {}
      : { protection: { sheet: true, objects: false, scenarios: false, formatColumns: true, formatRows: true } }),
    pageSetup: {
      paperSize: print.paper ?? "a4",
      orientation: print.orientation ?? "portrait",
      // Excel heeds no manual break on a sheet that is fitted to pages, so the scale is worked out here.
      ...(print.breaksBefore
        ? { scale: scaleToWidth(sheet) }
        : { fitToPage: true, fitToWidth: 1, fitToHeight: print.pagesHigh ?? 0 }),
      margins: { left: 0.5, right: 0.5, top: 0.6, bottom: 0.7, header: 0.3, footer: 0.3 },
      horizontalCentered: true,
    },
    headerFooter: { oddFooter: `&L${escapedFooter(title)}&C&A&RPage &P of &N` },
    view: { showGridLines: sheet.showGridLines ?? false, ...(sheet.tab ? { tabColor: { rgb: sheet.tab } } : {}) },
    ...(sheet.hidden ? { hidden: true } : {}),
    charts: (sheet.charts ?? []).map((chart) => {
      const [from, to] = [placeOf(chart.from), placeOf(chart.to)];
      return {
        type: "line",
        // Only the frame is taken from here; chartPart writes the chart itself.
        series: [{ values: "A1" }],
        anchor: { from: { row: from.row, col: from.column }, to: { row: to.row + 1, col: to.column + 1 } },
        altText: chart.altText,
        frameTitle: chart.title,
      };
    }),
  };
};

const printNames = ({ description: sheet, used }: LaidSheet): NamedRange[] => {
  const on = quotedSheet(sheet.name);
  const { area = rangeOf(used), titleRows } = sheet.print ?? {};
  const rows = titleRows?.split(":");
  return [
    { name: "_xlnm.Print_Area", range: `${on}!${absolute(area)}`, scope: sheet.name },
    ...(rows
      ? [{ name: "_xlnm.Print_Titles", range: `${on}!$${rows[0]}:$${rows[1] ?? rows[0]}`, scope: sheet.name }]
      : []),
  ];
};

const legalName = /^[A-Za-z_\\][\w.\\]*$/;
const looksLikeCell = /^(?:[A-Za-z]{1,3}\d{1,7}|R\d*C?\d*|C\d*)$/i;

const namesOf = (workbook: WorkbookDescription): { name: string; refersTo: string }[] => {
  const ofCells = workbook.sheets.flatMap((sheet) =>
    Object.entries(sheet.cells).flatMap(([address, cell]) =>
      cell.name ? [{ name: cell.name, refersTo: `${quotedSheet(sheet.name)}!${absolute(address)}` }] : [],
    ),
  );
  const others = Object.entries(workbook.names ?? {}).map(([name, range]) => ({
    name,
    refersTo: absoluteReference(range),
  }));
  const all = [...ofCells, ...others];
  const seen = new Set<string>();
  for (const { name } of all) {
    if (!legalName.test(name) || looksLikeCell.test(name) || name.length > limits.name) {
      throw new Error(`"${name}" is no legal defined name`);
    }
    if (seen.has(name.toUpperCase())) throw new Error(`The name "${name}" is defined twice`);
    seen.add(name.toUpperCase());
  }
  return all;
};

const checkSheets = (workbook: WorkbookDescription): void => {
  const names = new Set(workbook.sheets.map((sheet) => sheet.name));
  for (const sheet of workbook.sheets) {
    if (sheet.name.length > limits.sheetName) throw new Error(`"${sheet.name}" is longer than a sheet's name may be`);
    const targets = [
      ...Object.values(sheet.cells).flatMap((cell) => (cell.link ? [cell.link.to] : [])),
      ...(sheet.charts ?? []).flatMap((chart) => [chart.categories, ...chart.series.map((series) => series.values)]),
    ];
    for (const target of [...targets, ...Object.values(workbook.names ?? {})]) {
      const { sheet: to } = sheetAndRange(target);
      if (!names.has(to)) throw new Error(`"${target}" on "${sheet.name}" leads to no sheet`);
    }
  }
};

/**
 * The bytes of an .xlsx file with every formula's value in it. `calculate` is asked once for all of them; an uncalculated
 * formula, a `#NAME?`, a spill onto cells in use, a volatile function or words beyond Excel's limits throw. The same
 * description and values give the same bytes.
 */
export const buildWorkbook = async (workbook: WorkbookDescription, calculate: Calculate): Promise<Uint8Array> => {
  checkSheets(workbook);
  const names = namesOf(workbook);
  const singleCellNames = new Set(
    names.filter(({ refersTo }) => !refersTo.includes(":")).map(({ name }) => name.toUpperCase()),
  );
  const values = await calculate({
    sheets: workbook.sheets.map((sheet) => ({
      name: sheet.name,
      cells: Object.entries(sheet.cells).flatMap(([address, { value, formula }]) =>
        (value === undefined || value === "") && formula === undefined
          ? []
          : [{ ...placeOf(address), ...(formula === undefined ? { value } : { formula }) }],
      ),
    })),
    names,
  });
  const laid = workbook.sheets.map((sheet) => layOut(sheet, values, singleCellNames));
  const shownOn = new Map(laid.map((sheet) => [sheet.description.name, sheet.shown]));
  const charts = laid.flatMap(({ description }) =>
    (description.charts ?? []).map((chart) =>
      chartPart(chart, (sheet, place) => shownOn.get(sheet)?.get(keyOf(place)) ?? null),
    ),
  );
  const { title, subject, description, keywords } = workbook.properties;
  const bytes = await writeXlsx({
    sheets: laid.map((sheet) => sheetFor(sheet, title)),
    defaultFont: { name: fontName, size: fontSize, family: 2 },
    namedRanges: [...names.map(({ name, refersTo }) => ({ name, range: refersTo })), ...laid.flatMap(printNames)],
    properties: {
      title,
      subject,
      description,
      ...(keywords ? { keywords } : {}),
      creator: author,
      lastModifiedBy: author,
      created: documentDate,
      modified: documentDate,
    },
  });
  return finishPackage(
    bytes,
    charts,
    workbook.sheets.map(({ print }) => print?.breaksBefore ?? []),
  );
};
