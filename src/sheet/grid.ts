import "@univerjs/design/lib/index.css";
import "@univerjs/ui/lib/index.css";
import "@univerjs/docs-ui/lib/index.css";
import "@univerjs/sheets-ui/lib/index.css";
import "@univerjs/sheets-formula-ui/lib/index.css";
import "@univerjs/sheets-numfmt-ui/lib/index.css";
import "@univerjs/sheets-conditional-formatting-ui/lib/index.css";
import "@univerjs/sheets-data-validation-ui/lib/index.css";
import {
  CommandType,
  ICommandService,
  IUniverInstanceService,
  LifecycleService,
  LifecycleStages,
  LocaleType,
  LogLevel,
  mergeLocales,
  Univer,
  UniverInstanceType,
  type Injector,
  type Workbook,
} from "@univerjs/core";
import DesignWords from "@univerjs/design/locale/en-US";
import {
  DocSelectionManagerService,
  RichTextEditingMutation,
  SetTextSelectionsOperation,
  UniverDocsPlugin,
} from "@univerjs/docs";
import { UniverDocsUIPlugin } from "@univerjs/docs-ui";
import DocsWords from "@univerjs/docs-ui/locale/en-US";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { DeviceInputEventType, UniverRenderEnginePlugin } from "@univerjs/engine-render";
import {
  SheetsSelectionsService,
  SetSelectionsOperation,
  SetWorksheetActiveOperation,
  UniverSheetsPlugin,
} from "@univerjs/sheets";
import SheetsWords from "@univerjs/sheets/locale/en-US";
import { UniverSheetsConditionalFormattingUIPlugin } from "@univerjs/sheets-conditional-formatting-ui";
import ConditionalWords from "@univerjs/sheets-conditional-formatting-ui/locale/en-US";
import { UniverSheetsDataValidationPlugin } from "@univerjs/sheets-data-validation";
import ValidationWords from "@univerjs/sheets-data-validation/locale/en-US";
import { UniverSheetsDataValidationUIPlugin } from "@univerjs/sheets-data-validation-ui";
import ValidationUIWords from "@univerjs/sheets-data-validation-ui/locale/en-US";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import FormulaWords from "@univerjs/sheets-formula/locale/en-US";
import { UniverSheetsFormulaUIPlugin } from "@univerjs/sheets-formula-ui";
import FormulaUIWords from "@univerjs/sheets-formula-ui/locale/en-US";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import { UniverSheetsNumfmtUIPlugin } from "@univerjs/sheets-numfmt-ui";
import NumfmtWords from "@univerjs/sheets-numfmt-ui/locale/en-US";
import {
  CellAlertManagerService,
  HoverManagerService,
  IEditorBridgeService,
  ScrollToCellCommand,
  SetCellEditVisibleWithF2Operation,
  UniverSheetsUIPlugin,
} from "@univerjs/sheets-ui";
import SheetsUIWords from "@univerjs/sheets-ui/locale/en-US";
import { defaultTheme } from "@univerjs/themes";
import { ILayoutService, KeyCode, UniverUIPlugin } from "@univerjs/ui";
import UIWords from "@univerjs/ui/locale/en-US";
import { catalogue } from "../catalogue/catalogue";
import { namespace } from "../cells/namespace";
import { functions } from "../catalogue/generated/functions";
import { giveNames } from "../engine/giveNames";
import { errorAt, registerFunctions } from "../engine/registerFunctions";
import { speakErrorAlerts, type AlertService } from "../engine/upstreamPatches";
import { settleSpills } from "../engine/settleSpills";
import { completeByPlainName } from "./completion";
import { functionHint } from "./functionHints";
import { keepTypedFormulas } from "./keepTypedFormulas";
import type { OpenedWorkbook } from "./openWorkbook";

export interface SheetTab {
  readonly id: string;
  readonly name: string;
  readonly active: boolean;
}

/** The grid with one workbook in it. */
export interface Grid {
  readonly injector: Injector;
  readonly workbook: Workbook;
  tabs(): SheetTab[];
  showSheet(id: string): void;
  /** Row and column of the active cell of the shown sheet, from 0. */
  activeCell(): { row: number; column: number };
  /** Makes a cell the active one and brings it into view. */
  goTo(sheetId: string, row: number, column: number): void;
  focus(): void;
  /** The text of the cell being edited and the caret in it; null when none is. */
  typing(): { text: string; caret: number } | null;
  close(): void;
}

export interface GridEvents {
  /** The active cell, or the shown sheet, is another one. */
  moved(): void;
  /** Contents or results changed. */
  changed(): void;
  /** A key or a click in the cell being edited. */
  typed(): void;
  /** The grid is drawn and takes keys. */
  ready(): void;
  /** A click on a cell, rows and columns from 0. */
  clicked(row: number, column: number): void;
}

const words = mergeLocales(
  DesignWords,
  UIWords,
  DocsWords,
  SheetsWords,
  SheetsUIWords,
  FormulaWords,
  FormulaUIWords,
  NumfmtWords,
  ValidationWords,
  ValidationUIWords,
  ConditionalWords,
);

/** Puts a workbook into an empty element of the page. Calculates everything once, then whatever an edit touches. */
export const openGrid = (container: HTMLElement, { data, names }: OpenedWorkbook, events: GridEvents): Grid => {
  const univer = new Univer({
    theme: defaultTheme,
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: words },
    logLevel: LogLevel.ERROR,
  });
  univer.registerPlugin(UniverRenderEnginePlugin);
  univer.registerPlugin(UniverFormulaEnginePlugin);
  univer.registerPlugin(UniverUIPlugin, {
    container,
    toolbar: false,
    header: true,
    footer: false,
    contextMenu: false,
    headerMenu: false,
  });
  univer.registerPlugin(UniverDocsPlugin);
  univer.registerPlugin(UniverDocsUIPlugin);
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsUIPlugin, { footer: false });
  univer.registerPlugin(UniverSheetsFormulaPlugin, {
    initialFormulaComputing: CalculationMode.FORCED,
    description: catalogue.map((record) => functionHint(record, namespace)),
  });
  univer.registerPlugin(UniverSheetsFormulaUIPlugin);
  univer.registerPlugin(UniverSheetsNumfmtPlugin);
  univer.registerPlugin(UniverSheetsNumfmtUIPlugin);
  univer.registerPlugin(UniverSheetsDataValidationPlugin);
  univer.registerPlugin(UniverSheetsDataValidationUIPlugin, { showEditOnDropdown: false });
  univer.registerPlugin(UniverSheetsConditionalFormattingUIPlugin);

  const workbook = univer.createUnit<object, Workbook>(UniverInstanceType.UNIVER_SHEET, data);
  const unitId = workbook.getUnitId();
  const injector = univer.__getInjector();
  registerFunctions(injector, functions);
  keepTypedFormulas();
  completeByPlainName(injector, namespace);
  speakErrorAlerts(injector.get(CellAlertManagerService) as unknown as AlertService, (unit, sheet, row, column) => {
    const error = errorAt(injector, unit, sheet, row, column);
    return error ? error.message : "";
  });

  giveNames(injector, unitId, names, (name) => workbook.getSheetBySheetName(name)?.getSheetId());

  const commands = injector.get(ICommandService);
  const selections = injector.get(SheetsSelectionsService);
  const watching = [
    settleSpills(injector, unitId),
    commands.onCommandExecuted(({ id, type }) => {
      if (id === SetSelectionsOperation.id || id === SetWorksheetActiveOperation.id) events.moved();
      else if (id === RichTextEditingMutation.id || id === SetTextSelectionsOperation.id) events.typed();
      else if (type === CommandType.MUTATION) events.changed();
    }),
  ];
  void injector
    .get(LifecycleService)
    .onStage(LifecycleStages.Steady)
    .then(() => events.ready());
  // Once used, Univer 0.25.1's editor in the bar keeps the arrow keys for itself; so the bar shows and the cell edits.
  const editInCell = ({ target, clientX, clientY }: MouseEvent): void => {
    const bar = (target as Element).closest('[data-u-comp="formula-bar"]');
    const text = bar?.querySelector("canvas")?.getBoundingClientRect();
    if (!text || clientX < text.left || clientX > text.right || clientY < text.top || clientY > text.bottom) return;
    void commands.executeCommand(SetCellEditVisibleWithF2Operation.id, {
      visible: true,
      eventType: DeviceInputEventType.Keyboard,
      keycode: KeyCode.F2,
      unitId,
    });
  };
  container.addEventListener("click", editInCell);
  const subscriptions = [
    selections.selectionChanged$.subscribe(() => events.moved()),
    injector
      .get(HoverManagerService)
      .currentClickedCell$.subscribe(({ location: { row, col } }) => events.clicked(row, col)),
  ];

  return {
    injector,
    workbook,
    tabs: () => {
      const active = workbook.getActiveSheet()?.getSheetId();
      return workbook
        .getSheets()
        .filter((sheet) => !sheet.isSheetHidden())
        .map((sheet) => ({ id: sheet.getSheetId(), name: sheet.getName(), active: sheet.getSheetId() === active }));
    },
    showSheet: (subUnitId) => {
      commands.syncExecuteCommand(SetWorksheetActiveOperation.id, { unitId, subUnitId });
    },
    activeCell: () => {
      const primary = selections.getCurrentLastSelection()?.primary;
      return { row: primary?.actualRow ?? 0, column: primary?.actualColumn ?? 0 };
    },
    goTo: (subUnitId, row, column) => {
      commands.syncExecuteCommand(SetWorksheetActiveOperation.id, { unitId, subUnitId });
      const range = { startRow: row, endRow: row, startColumn: column, endColumn: column };
      const primary = { ...range, actualRow: row, actualColumn: column, isMerged: false, isMergedMainCell: false };
      commands.syncExecuteCommand(SetSelectionsOperation.id, { unitId, subUnitId, selections: [{ range, primary }] });
      void commands.executeCommand(ScrollToCellCommand.id, { range });
    },
    focus: () => {
      injector.get(IUniverInstanceService).focusUnit(unitId);
      injector.get(ILayoutService).focus();
    },
    typing: () => {
      if (!injector.get(IEditorBridgeService).isVisible().visible) return null;
      const text = injector.get(IUniverInstanceService).getCurrentUniverDocInstance()?.getBody()?.dataStream ?? "";
      const caret = injector.get(DocSelectionManagerService).getActiveTextRange()?.startOffset;
      return { text: text.replace(/[\r\n]+$/, ""), caret: caret ?? text.length };
    },
    close: () => {
      container.removeEventListener("click", editInCell);
      for (const subscription of subscriptions) subscription.unsubscribe();
      for (const watch of watching) watch.dispose();
      univer.dispose();
    },
  };
};
