/** The cases of univerFaults.test.ts with the patches in place, in a sheet that calculates as one in a page does. */
import {
  BaseFunction,
  ICalculateFormulaService,
  IDefinedNamesService,
  type BaseValueObject,
  type CalculateFormulaService,
} from "@univerjs/engine-formula";
import { CellError } from "../../src/cells/cellValues";
import { wordsOfCell } from "../../src/engine/cellError";
import { fromEngineCell } from "../../src/engine/engineValue";
import type { EngineFunction } from "../../src/engine/oxygenFunction";
import { errorAt, registerFunctions } from "../../src/engine/registerFunctions";
import { settleSpills } from "../../src/engine/settleSpills";
import { speakErrorAlerts } from "../../src/engine/upstreamPatches";
import { openLiveSheet, type LiveSheet } from "./liveSheet";

class Throws extends BaseFunction {
  override calculate(): BaseValueObject {
    throw new Error("out of order");
  }
}

const functions: EngineFunction[] = [
  [
    "WORDS",
    (a: unknown[][]) => [[Number(a[0]![0]) === 0 ? 5 : new CellError("#N/A", `no answer for ${String(a[0]![0])}`)]],
  ],
];

let sheet: LiveSheet;
let settling: { dispose(): void };
const open = async (cells: Parameters<typeof openLiveSheet>[0]): Promise<void> => {
  sheet = await openLiveSheet(cells, [new Throws("THROWS")], (injector, unitId) => {
    registerFunctions(injector, functions);
    settling = settleSpills(injector, unitId);
  });
};
afterEach(() => {
  settling.dispose();
  sheet.close();
});

test("SORT leaves the range it reads as it is", async () => {
  await open({ A1: { v: 3 }, A2: { v: 1 }, A3: { v: 2 }, C1: { f: "=SUM(SORT(A1:A3)*0)+SUM(A1:A3*{1;10;100})" } });
  expect(sheet.cell("C1").v).toBe(3 + 10 + 200);
});

test("a comparison with an array reads that array", async () => {
  await open({ A1: { f: "=SUM((SORT({3;1;2})=2)*1)" }, A2: { f: "=SUM((SORT({8;7;9})=2)*1)" } });
  expect([sheet.cell("A1").v, sheet.cell("A2").v]).toEqual([1, 0]);
});

test("A1# gives the cells A1 fills, and follows them", async () => {
  await open({ D1: { v: 3 }, A1: { f: "=SEQUENCE(D1)" }, B1: { f: "=SUM(A1#)" }, B2: { f: "=D1#" } });
  expect(sheet.cell("B1").v).toBe(6);
  expect(sheet.cell("B2").v).toBe("#REF!");
  await sheet.type("D1", 4);
  expect(sheet.cell("B1").v).toBe(10);
  await sheet.type("D1", 2);
  expect(sheet.cell("B1").v).toBe(3);
  await sheet.type("D1", 1);
  expect(sheet.cell("B1").v).toBe(1);
});

test("@ gives the cell of the same row", async () => {
  await open({ A1: { v: 7 }, A2: { v: 8 }, B1: { f: "=@A1" }, B2: { f: "=@A1:A9" } });
  expect([sheet.cell("B1").v, sheet.cell("B2").v]).toEqual([7, 8]);
});

test("the content of a name may hold operators and numbers of any spelling", async () => {
  sheet = await openLiveSheet(
    { A1: { v: 7 }, B1: { f: "=Seen*1.50" }, B2: { f: '=COUNTIF(A1:A2,">.5")' } },
    [],
    (injector, unitId) => {
      registerFunctions(injector, functions);
      settling = settleSpills(injector, unitId);
      injector.get(IDefinedNamesService).registerDefinedName(unitId, {
        id: "Seen",
        name: "Seen",
        formulaOrRefString: "=@$A$1+1.0",
      });
    },
  );
  expect([sheet.cell("B1").v, sheet.cell("B2").v]).toEqual([12, 1]);
});

test("a name may stand behind a minus sign", async () => {
  await open({
    A1: { f: "=LET(rate,5,-rate)" },
    A2: { f: "=LET(rate,5,SUM(- rate,1))" },
    A3: { f: "=LET(rate,5,3*-rate)" },
    A4: { f: "=LET(rate,5,7-rate)" },
  });
  expect(["A1", "A2", "A3", "A4"].map((at) => sheet.cell(at).v)).toEqual([-5, -4, -15, 2]);
});

test("a text of an array constant may hold commas and semicolons", async () => {
  await open({
    A1: { f: '=INDEX({"12,5",2;"a;b",-3},2,1)' },
    A2: { f: '=INDEX({"12,5",2;"a;b",-3},2,2)' },
    A3: { f: '=COLUMNS({"12,5";"x"})' },
  });
  expect(["A1", "A2", "A3"].map((at) => sheet.cell(at).v)).toEqual(["a;b", -3, 1]);
});

test("a text in a formula stays text", async () => {
  await open({ A1: { f: '=ISTEXT("05/03/2026")' }, A2: { f: '=ISTEXT({"93%"})' }, A3: { f: '="3"+1' } });
  expect(["A1", "A2", "A3"].map((at) => sheet.cell(at).v)).toEqual([1, 1, 4]);
});

test("a boolean is read as one", async () => {
  await open({ A1: { f: "=TRUE" }, A2: { f: "=1=2" } });
  expect([fromEngineCell(sheet.cell("A1")), fromEngineCell(sheet.cell("A2"))]).toEqual([true, false]);
});

test("what reads a cell that a spill has left is computed again", async () => {
  await open({ A1: { v: 5 }, B1: { f: "=SEQUENCE(A1)" }, C1: { f: "=B5+100" }, C2: { f: "=C1*2" } });
  expect(sheet.cell("C1").v).toBe(105);
  await sheet.type("A1", 3);
  expect([sheet.cell("C1").v, sheet.cell("C2").v]).toEqual([100, 200]);
  await sheet.type("A1", 6);
  expect(sheet.cell("C1").v).toBe(105);
  await sheet.type("A1", 1);
  expect(sheet.cell("C1").v).toBe(100);
});

test("words go with an error to the cells that read it, and leave with it", async () => {
  await open({
    A1: { v: 1, t: 2 },
    B1: { f: "=OXYGEN.WORDS(A1)" },
    C1: { f: "=B1+1" },
    D1: { f: "=1/0" },
    D2: { f: "=OXYGEN.WORD(1)" },
  });
  const errorOf = (column: number, row = 0) => errorAt(sheet.injector, sheet.unitId, sheet.sheetId, row, column);
  expect(wordsOfCell(sheet.cell("B1"))).toBe("no answer for 1");
  expect(errorOf(1)).toEqual({ error: "#N/A", message: "no answer for 1" });
  expect(errorOf(2)).toEqual({ error: "#N/A", message: "no answer for 1" });
  expect(errorOf(3)).toEqual({ error: "#DIV/0!", message: "a division by zero" });
  expect(errorOf(3, 1)).toEqual({ error: "#NAME?", message: "no function OXYGEN.WORD; did you mean OXYGEN.WORDS?" });
  expect(errorOf(0)).toBeUndefined();
  await sheet.type("A1", 0);
  expect(sheet.cell("B1").v).toBe(5);
  expect(errorOf(1)).toBeUndefined();
  expect(sheet.cell("B1").custom ?? null).toBeNull();
});

test("the words of a spilled cell are found", async () => {
  await open({ A1: { f: "=MAP({0;7},LAMBDA(x,OXYGEN.WORDS(x)))" } });
  expect(errorAt(sheet.injector, sheet.unitId, sheet.sheetId, 1, 0)).toEqual({
    error: "#N/A",
    message: "no answer for 7",
  });
  expect(errorAt(sheet.injector, sheet.unitId, sheet.sheetId, 0, 0)).toBeUndefined();
});

test("a throw becomes an error cell, and the other cells are computed", async () => {
  await open({ A1: { f: "=THROWS(1)" }, A2: { f: "=1+1" } });
  expect(sheet.cell("A1")).toMatchObject({ v: "#VALUE!" });
  expect(wordsOfCell(sheet.cell("A1"))).toContain("out of order");
  expect(sheet.cell("A2").v).toBe(2);
  const service = sheet.injector.get(ICalculateFormulaService) as CalculateFormulaService;
  await expect(service.calculate("=THROWS(1)")).resolves.toBeDefined();
});

test("the pop-up says the cell's words", async () => {
  await open({});
  const shown: unknown[] = [];
  const alerts = { showAlert: (alert: { key?: string; message?: unknown }) => void shown.push(alert.message) };
  speakErrorAlerts(alerts, (_unit, _sheet, row) => (row === 2 ? "own words" : ""));
  const location = { unitId: "u", subUnitId: "s", row: 2, col: 0 };
  const alert = { key: "SHEET_FORMULA_ALERT", message: "of the code", location };
  alerts.showAlert(alert);
  alerts.showAlert({ ...alert, location: { ...location, row: 3 } } as typeof alert);
  alerts.showAlert({ ...alert, key: "OTHER" });
  expect(shown).toEqual(["own words", "of the code", "of the code"]);
});
