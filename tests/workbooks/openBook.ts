import { readFileSync } from "node:fs";
import path from "node:path";
import { areaOf, cellName, cellsOfArea, isInArea, overlaps, placeOf, type Area } from "../../src/cells/addresses";
import { functions } from "../../src/catalogue/generated/functions";
import { Dependencies, type AreaOfSheet } from "../../src/engine/dependencies";
import type { Engine } from "../../src/engine/engine";
import { isEngineError, type EngineValue } from "../../src/engine/engineValue";
import { readWorkbook } from "../../src/engine/file/readWorkbook";
import type { SheetCell } from "../../src/engine/workbookInput";
import { sampleBuilders, samplesFolder } from "../../src/tooling/buildSamples";
import { checkNames, checkSheetName } from "../../src/workbooks/checks";
import type { Validation, WorkbookDescription } from "../../src/workbooks/writer";

export type Entry = number | string | boolean | null;
export type Changes = Readonly<Record<string, Entry>>;

interface Formula {
  readonly at: string;
  readonly sheet: string;
  readonly fills: Area;
  readonly formula: string;
  readonly reads: readonly AreaOfSheet[];
}

export interface Book {
  readonly name: string;
  /** Every filled entry that the reader may change, with the rule for it. */
  readonly entries: readonly { at: string; value: Entry; validation?: Validation }[];
  /** What each headline says as saved, by name. */
  readonly saved: ReadonlyMap<string, EngineValue>;
  /** What the checks alone say after changes: the states that are not "ok", at little cost. */
  faults(changes: Changes): Promise<string[]>;
  /** What every headline says after changes; only what they touch is calculated. */
  headlines(changes: Changes): Promise<ReadonlyMap<string, EngineValue>>;
}

const sheetAndCell = (at: string): [string, string] => {
  const mark = at.lastIndexOf("!");
  return [at.slice(0, mark).replace(/^'|'$/g, ""), at.slice(mark + 1).replace(/\$/g, "")];
};

export const shown = (value: EngineValue | undefined): string =>
  isEngineError(value) ? value.error : typeof value === "object" ? JSON.stringify(value) : String(value);

/** As the engine takes it for an entry: an error as its code, a date as its serial. */
const valueOf = (value: EngineValue | undefined): Exclude<Entry, null> | undefined => {
  if (isEngineError(value)) return value.error;
  if (value !== null && typeof value === "object") return value.basicValue;
  return value ?? undefined;
};

/** The samples that have a check total; the others are named by `uncheckedBooks`. */
const hasTotal = (name: string): boolean =>
  readWorkbook(readFileSync(path.join(samplesFolder, `${name}.xlsx`)), []).names.names?.[checkNames.total] !==
  undefined;

export const allBooks = sampleBuilders().map(({ name }) => name);
export const checkedBooks = allBooks.filter(hasTotal);

/** A sample with its formulas' precedents, so that a change recalculates what it touches alone. */
export const openBook = (name: string, engine: Engine): Book => {
  const saved = readWorkbook(
    readFileSync(path.join(samplesFolder, `${name}.xlsx`)),
    functions.map(([id]) => id),
  );
  const { workbook } = require(sampleBuilders().find((builder) => builder.name === name)!.builder) as {
    workbook: WorkbookDescription;
  };
  const named = saved.names.names ?? {};
  const dependencies = new Dependencies(saved.sheets, saved.names);
  const formulas: Formula[] = saved.sheets.flatMap(({ name: sheet, cells }) =>
    Object.entries(cells).flatMap(([address, cell]) =>
      cell.formula === undefined
        ? []
        : [
            {
              at: `${sheet}!${address}`,
              sheet,
              fills: areaOf(cell.ref ?? address),
              formula: cell.formula,
              reads: dependencies.areasIn(cell.formula, { sheet, ...placeOf(address) }),
            },
          ],
    ),
  );
  const byAt = new Map(formulas.map((formula) => [formula.at, formula]));
  const readers = new Map<Formula, Formula[]>(formulas.map((formula) => [formula, []]));
  for (const reader of formulas) {
    for (const one of formulas) {
      if (reader.reads.some((area) => area.sheet === one.sheet && overlaps(area, one.fills)))
        readers.get(one)!.push(reader);
    }
  }

  const touchedBy = (changes: Changes): Set<Formula> => {
    const places = Object.keys(changes).map((at) => {
      const [sheet, address] = sheetAndCell(at);
      return { sheet, ...placeOf(address) };
    });
    const open = formulas.filter(({ reads }) =>
      reads.some((area) => places.some((place) => place.sheet === area.sheet && isInArea(place, area))),
    );
    const touched = new Set(open);
    for (let formula = open.pop(); formula; formula = open.pop()) {
      for (const reader of readers.get(formula)!) {
        if (touched.has(reader)) continue;
        touched.add(reader);
        open.push(reader);
      }
    }
    return touched;
  };

  const neededFor = (targets: readonly Formula[], among: ReadonlySet<Formula>): Set<Formula> => {
    const needed = new Set(targets.filter((target) => among.has(target)));
    const open = [...needed];
    for (let formula = open.pop(); formula; formula = open.pop()) {
      const { reads } = formula;
      for (const other of among) {
        if (needed.has(other) || !reads.some((area) => area.sheet === other.sheet && overlaps(area, other.fills)))
          continue;
        needed.add(other);
        open.push(other);
      }
    }
    return needed;
  };

  /** `A11#` asks the formula in A11 how far it reaches, so that one is calculated too. */
  const withAnchors = (formulasToRun: ReadonlySet<Formula>): Set<Formula> => {
    const live = new Set(formulasToRun);
    for (const { formula, reads } of live) {
      if (!formula.includes("#")) continue;
      for (const other of formulas) {
        const [, address] = sheetAndCell(other.at);
        const anchor = placeOf(address);
        const isSpill = other.fills.endRow > other.fills.startRow || other.fills.endColumn > other.fills.startColumn;
        if (isSpill && reads.some((area) => area.sheet === other.sheet && isInArea(anchor, area))) live.add(other);
      }
    }
    return live;
  };

  const calculate = async (
    changes: Changes,
    formulasToRun: ReadonlySet<Formula>,
  ): Promise<(at: string) => EngineValue | undefined> => {
    const live = withAnchors(formulasToRun);
    const wanted = new Map<string, AreaOfSheet[]>();
    for (const { reads } of live) {
      for (const area of reads) wanted.set(area.sheet, [...(wanted.get(area.sheet) ?? []), area]);
    }
    const sheets = saved.sheets.map((sheet) => {
      const areas = wanted.get(sheet.name) ?? [];
      const cells: Record<string, SheetCell> = {};
      const filledAnew = new Set<string>();
      for (const formula of live) {
        if (formula.sheet !== sheet.name) continue;
        const [, address] = sheetAndCell(formula.at);
        cells[address] = { formula: formula.formula };
        const { startRow, startColumn, endRow, endColumn } = formula.fills;
        for (const inner of cellsOfArea(`${cellName(startRow, startColumn)}:${cellName(endRow, endColumn)}`))
          filledAnew.add(inner);
      }
      for (const [address, cell] of Object.entries(sheet.cells)) {
        if (filledAnew.has(address) || !areas.some((area) => isInArea(placeOf(address), area))) continue;
        const value = cell.formula === undefined ? cell.value : valueOf(saved.cached(sheet.name, address));
        if (value !== undefined) cells[address] = { value } as SheetCell;
      }
      return { name: sheet.name, cells };
    });
    for (const [at, value] of Object.entries(changes)) {
      const [sheet, address] = sheetAndCell(at);
      const { cells } = sheets.find((candidate) => candidate.name === sheet)!;
      if (value === null) delete cells[address];
      else cells[address] = { value };
    }
    const computed = await engine.calculateWorkbook(sheets, saved.names);
    return (at) => {
      const [sheet, address] = sheetAndCell(at);
      return computed.find((candidate) => candidate.name === sheet)!.cells[address]?.value;
    };
  };

  const headlineCells = Object.entries(named).filter(([key]) => key.startsWith(checkNames.headline));
  const headlineFormulas = headlineCells.map(([key, at]) => {
    const formula = byAt.get(sheetAndCell(at).join("!"));
    if (!formula) throw new Error(`${name}: ${key} is no formula`);
    if (!formula.formula.replace(/^=/, "").startsWith(`IF(${checkNames.total}>0,`))
      throw new Error(`${name}: ${key} does not hang on the check total`);
    return [key, formula] as const;
  });
  const before = new Map(
    headlineCells.map(([key, at]) => [key, saved.cached(...sheetAndCell(at)) as EngineValue] as const),
  );
  const states = formulas.filter(({ sheet, at }) => sheet === checkSheetName && /!C\d+$/.test(at));
  const entries = workbook.sheets.flatMap(({ name: sheet, cells }) =>
    Object.entries(cells).flatMap(([address, { role, unlocked, value, validation }]) =>
      (role === "input" || role === "tableInput") && unlocked !== false && value !== undefined && value !== ""
        ? [{ at: `${sheet}!${address}`, value, ...(validation ? { validation } : {}) }]
        : [],
    ),
  );
  return {
    name,
    entries,
    saved: before,
    faults: async (changes) => {
      const touched = touchedBy(changes);
      const cheap = new Set<Formula>();
      for (const state of states) {
        if (!touched.has(state)) continue;
        const needed = neededFor([state], touched);
        if (needed.size <= 3) for (const formula of needed) cheap.add(formula);
      }
      if (cheap.size === 0) return [];
      const show = await calculate(changes, cheap);
      return states.flatMap((state) => {
        const value = cheap.has(state) ? shown(show(state.at)) : "ok";
        return value === "ok" ? [] : [value];
      });
    },
    headlines: async (changes) => {
      const live = neededFor(
        headlineFormulas.map(([, formula]) => formula),
        touchedBy(changes),
      );
      const show = await calculate(changes, live);
      return new Map(
        headlineFormulas.map(
          ([key, formula]) => [key, live.has(formula) ? show(formula.at)! : before.get(key)!] as const,
        ),
      );
    },
  };
};
