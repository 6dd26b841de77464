import { LocaleType, LogLevel, Univer, UniverInstanceType, type ICellData, type Injector } from "@univerjs/core";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import type { EngineFunction } from "./oxygenFunction";
import { registerFunctions } from "./registerFunctions";

/** One workbook in one engine. */
export interface Session {
  readonly univer: Univer;
  readonly injector: Injector;
  readonly unitId: string;
}

export type CellRows = Record<number, Record<number, ICellData>>;

let unitCount = 0;

export const sheetIdAt = (index: number): string => `sheet${index}`;

export const openSession = (
  functions: readonly EngineFunction[],
  sheets: readonly { name: string; cells: CellRows }[],
  size: { rows: number; columns: number },
): Session => {
  const univer = new Univer({ logLevel: LogLevel.SILENT, locale: LocaleType.EN_US });
  univer.registerPlugin(UniverFormulaEnginePlugin);
  // The engine's caches are shared by all engines of a process and keyed by unit, so each session needs its own id.
  const unitId = `unit${++unitCount}`;
  univer.createUnit(UniverInstanceType.UNIVER_SHEET, {
    id: unitId,
    sheetOrder: sheets.map((_, index) => sheetIdAt(index)),
    sheets: Object.fromEntries(
      sheets.map(({ name, cells }, index) => [
        sheetIdAt(index),
        { id: sheetIdAt(index), name, rowCount: size.rows, columnCount: size.columns, cellData: cells },
      ]),
    ),
  });
  const injector = univer.__getInjector();
  registerFunctions(injector, functions);
  return { univer, injector, unitId };
};
