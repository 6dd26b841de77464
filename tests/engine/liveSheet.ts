import {
  ICommandService,
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
  type ICellData,
  type Injector,
  type Workbook,
} from "@univerjs/core";
import {
  ICalculateFormulaService,
  IFunctionService,
  UniverFormulaEnginePlugin,
  type BaseFunction,
} from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { placeOf } from "../../src/cells/addresses";
import type { EngineCell } from "../../src/engine/cellError";

/** A sheet that calculates as one in a page does, without a page. */
export interface LiveSheet {
  readonly injector: Injector;
  readonly workbook: Workbook;
  readonly unitId: string;
  readonly sheetId: string;
  /** The stored cell. */
  cell(address: string): EngineCell;
  /** Types a value and waits until nothing is calculated any more. */
  type(address: string, value: number | string): Promise<void>;
  close(): void;
}

let count = 0;

export const openLiveSheet = async (
  cells: Readonly<Record<string, ICellData>>,
  functions: readonly BaseFunction[] = [],
  prepare: (injector: Injector, unitId: string) => void = () => undefined,
): Promise<LiveSheet> => {
  const univer = new Univer({ logLevel: LogLevel.SILENT, locale: LocaleType.EN_US, locales: { enUS: {} } });
  univer.registerPlugin(UniverFormulaEnginePlugin);
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin);
  const unitId = `live${++count}`;
  const sheetId = "sheet";
  const cellData: Record<number, Record<number, ICellData>> = {};
  for (const [address, cell] of Object.entries(cells)) {
    const { row, column } = placeOf(address);
    (cellData[row] ??= {})[column] = cell;
  }
  const workbook = univer.createUnit<object, Workbook>(UniverInstanceType.UNIVER_SHEET, {
    id: unitId,
    sheetOrder: [sheetId],
    sheets: { [sheetId]: { id: sheetId, name: "Sheet1", rowCount: 100, columnCount: 26, cellData } },
  });
  const injector = univer.__getInjector();
  injector.get(IFunctionService).registerExecutors(...functions);
  prepare(injector, unitId);

  let lastEnd = Date.now();
  let ends = 0;
  const subscription = injector.get(ICalculateFormulaService).executionCompleteListener$.subscribe(() => {
    lastEnd = Date.now();
    ends++;
  });
  const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 20));
  /** A calculation starts some time after its cause, and one may cause another. */
  const settle = async (isExpected: boolean): Promise<void> => {
    const before = ends;
    const start = Date.now();
    while (isExpected && ends === before && Date.now() - start < 10_000) await pause();
    lastEnd = Date.now();
    while (Date.now() - lastEnd < 150) await pause();
  };
  const hasFormulas = Object.values(cells).some(({ f }) => f);
  await settle(hasFormulas);
  return {
    injector,
    workbook,
    unitId,
    sheetId,
    cell: (address) => {
      const { row, column } = placeOf(address);
      return workbook.getSheetBySheetId(sheetId)?.getCellRaw(row, column) ?? {};
    },
    type: async (address, v) => {
      const { row, column } = placeOf(address);
      const settled = settle(hasFormulas);
      await injector.get(ICommandService).executeCommand("sheet.command.set-range-values", {
        unitId,
        subUnitId: sheetId,
        range: { startRow: row, endRow: row, startColumn: column, endColumn: column },
        value: { v },
      });
      await settled;
    },
    close: () => {
      subscription.unsubscribe();
      univer.dispose();
    },
  };
};
