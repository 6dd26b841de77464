/**
 * Shows each fault of Univer 0.25.1 that src/engine/upstreamPatches.ts puts right, without the patches. When one of
 * these fails after an update, the fault is gone and its patch can go. Expected values are plain arithmetic.
 */
import { readFileSync } from "node:fs";
import { ICommandService, type Workbook } from "@univerjs/core";
import {
  BaseFunction,
  ErrorType,
  ErrorValueObject,
  ICalculateFormulaService,
  IDefinedNamesService,
  IFunctionService,
  NumberValueObject,
  type BaseValueObject,
  type CalculateFormulaService,
} from "@univerjs/engine-formula";
import { openLiveSheet, type LiveSheet } from "./liveSheet";

class Throws extends BaseFunction {
  override calculate(): BaseValueObject {
    throw new Error("out of order");
  }
}

/** #N/A with words for positive numbers, without for negative ones, a number for 0. */
class Words extends BaseFunction {
  override calculate(argument: BaseValueObject): BaseValueObject {
    const value = argument.isArray()
      ? (argument as unknown as { getFirstCell(): BaseValueObject }).getFirstCell()
      : argument;
    const sign = Math.sign(Number(value.getValue()));
    if (sign === 0) return NumberValueObject.create(5);
    const error = new ErrorValueObject(ErrorType.NA);
    return sign > 0 ? error.withCustomData({ errorWords: "own words" }) : error;
  }
}

let sheet: LiveSheet;
afterEach(() => sheet.close());

const calculated = async (formula: string): Promise<unknown> => {
  const service = sheet.injector.get(ICalculateFormulaService) as CalculateFormulaService;
  const value = (await service.calculate(formula)) as BaseValueObject | undefined;
  return value?.getValue();
};

test("SORT sorts the range it reads for every later formula", async () => {
  sheet = await openLiveSheet({
    A1: { v: 3 },
    A2: { v: 1 },
    A3: { v: 2 },
    C1: { f: "=SUM(SORT(A1:A3)*0)+SUM(A1:A3*{1;10;100})" },
  });
  const right = 3 + 10 + 200;
  expect(sheet.cell("C1").v).not.toBe(right);
  expect(sheet.cell("C1").v).toBe(1 + 20 + 300);
});

test("a text of an array constant is cut at its comma", async () => {
  sheet = await openLiveSheet({ A1: { f: '=COLUMNS({"12,5";"x"})' } });
  expect(sheet.cell("A1").v).toBe(2);
});

test("a text that looks like a date becomes a number", async () => {
  sheet = await openLiveSheet({ A1: { f: '=ISNUMBER("05/03/2026")' } });
  expect(sheet.cell("A1").v).toBe(1);
});

test("a number that is not spelled as JavaScript would is a text", async () => {
  sheet = await openLiveSheet({
    A1: { f: "=ISTEXT(1.50)" },
    A2: { f: "=SUM({.5,2})" },
    A3: { f: '=COUNTIF(B1:B2,">1.50")' },
    B1: { v: 3, t: 2 },
  });
  expect([sheet.cell("A1").v, sheet.cell("A2").v, sheet.cell("A3").v]).toEqual([1, 2, 0]);
});

test("1.E+3 is cut at its sign", async () => {
  sheet = await openLiveSheet({ A1: { f: "=1.E+3" } });
  expect(sheet.cell("A1").v).toBe("#NAME?");
});

test("of two doubled quotation marks one is lost", async () => {
  sheet = await openLiveSheet({ A1: { f: '=LEN("""""")' } });
  expect(sheet.cell("A1").v).toBe(1);
});

test("the content of a name is read without the patched operators", async () => {
  sheet = await openLiveSheet({ A1: { v: 7 }, B1: { f: "=Seen" } }, [], (injector, unitId) => {
    injector.get(IDefinedNamesService).registerDefinedName(unitId, {
      id: "Seen",
      name: "Seen",
      formulaOrRefString: "=@$A$1",
    });
  });
  expect(sheet.cell("B1").v).not.toBe(7);
});

test("a name's content is put into the formula as text", async () => {
  sheet = await openLiveSheet({ B1: { f: "=More*2" } }, [], (injector, unitId) => {
    injector.get(IDefinedNamesService).registerDefinedName(unitId, {
      id: "More",
      name: "More",
      formulaOrRefString: "=1+2",
    });
  });
  expect(sheet.cell("B1").v).toBe(5);
});

test("MAXIFS of no cell shows nothing", async () => {
  sheet = await openLiveSheet({ A1: { v: 7, t: 2 }, B1: { f: '=MAXIFS(A1:A2,A1:A2,"<0")' } });
  expect(sheet.cell("B1").v).not.toBe(0);
});

test("the editor shortens numbers and takes texts from where they stood before", () => {
  // The class needs a page, so its text is read; src/sheet/keepTypedFormulas.ts goes round these lines.
  const source = readFileSync(require.resolve("@univerjs/sheets-ui"), "utf8");
  expect(source).toMatch(/const v = `\$\{parsedValue\.v\}`;/);
  expect(source).toMatch(/replaceString\(str\.slice\(startIndex, endIndex\), _normalStr, startIndex, endIndex\)/);
  expect(source).toMatch(/if \(!nodes\) return str;/);
});

test("a name behind a minus sign is not known", async () => {
  sheet = await openLiveSheet({ A1: { f: "=LET(rate,5,-rate)" }, A2: { f: "=LET(rate,5,-(rate))" } });
  expect([sheet.cell("A1").v, sheet.cell("A2").v]).toEqual(["#NAME?", -5]);
});

test("a comparison with an array finds what another array held", async () => {
  sheet = await openLiveSheet({ A1: { f: "=SUM((SORT({3;1;2})=2)*1)" }, A2: { f: "=SUM((SORT({8;7;9})=2)*1)" } });
  expect([sheet.cell("A1").v, sheet.cell("A2").v]).not.toEqual([1, 0]);
});

test("A1# gives no spill", async () => {
  sheet = await openLiveSheet({ A1: { f: "=SEQUENCE(3)" }, B1: { f: "=SUM(A1#)" } });
  expect(sheet.cell("B1").v).toBe("#VALUE!");
});

test("@ before one cell is refused", async () => {
  sheet = await openLiveSheet({ A1: { v: 7 }, B1: { f: "=@A1" } });
  expect(sheet.cell("B1").v).toBe("#VALUE!");
});

test("a boolean reads back as 1", async () => {
  sheet = await openLiveSheet({ A1: { f: "=TRUE" } });
  expect(sheet.cell("A1")).toMatchObject({ v: 1, t: 3 });
});

test("what reads a cell that a spill has left keeps the old value", async () => {
  sheet = await openLiveSheet({ A1: { v: 5 }, B1: { f: "=SEQUENCE(A1)" }, C1: { f: "=B5+100" } });
  expect(sheet.cell("C1").v).toBe(105);
  await sheet.type("A1", 3);
  expect(sheet.cell("C1").v).not.toBe(100);
});

test("an error that another cell reads loses its words", async () => {
  sheet = await openLiveSheet({ A1: { v: 1, t: 2 }, B1: { f: "=WORDS(A1)" }, C1: { f: "=B1" } }, [new Words("WORDS")]);
  expect(sheet.cell("B1").custom).toEqual({ errorWords: "own words" });
  expect(sheet.cell("C1")).toMatchObject({ v: "#N/A" });
  expect(sheet.cell("C1").custom).toBeUndefined();
});

test("words stay beside a new error that has none", async () => {
  sheet = await openLiveSheet({ A1: { v: 1, t: 2 }, B1: { f: "=WORDS(A1)" } }, [new Words("WORDS")]);
  await sheet.type("A1", -1);
  expect(sheet.cell("B1").custom).toEqual({ errorWords: "own words" });
});

test("a throw gets out of the calculation", async () => {
  sheet = await openLiveSheet({});
  sheet.injector.get(IFunctionService).registerExecutors(new Throws("THROWS"));
  await expect(calculated("=THROWS(1)")).rejects.toThrow("out of order");
});

test("the pop-up of an error cell takes its message from the code alone", () => {
  // The class needs a page, so its text is read: the message comes from the locale, and this key marks the pop-up.
  const source = readFileSync(require.resolve("@univerjs/sheets-formula-ui"), "utf8");
  expect(source).toMatch(
    /message: this\._localeService\.t\(`sheets-formula-ui\.error\.\$\{ErrorTypeToMessageMap\[errorType\]\}`\)/,
  );
  expect(source).toMatch(/const ALERT_KEY = "SHEET_FORMULA_ALERT"/);
});

test("the live sheet of these tests answers to commands", async () => {
  sheet = await openLiveSheet({ A1: { v: 1 }, B1: { f: "=A1+1" } });
  await sheet.type("A1", 41);
  expect(sheet.cell("B1").v).toBe(42);
  expect(sheet.injector.get(ICommandService)).toBeDefined();
  expect((sheet.workbook as Workbook).getSheets()).toHaveLength(1);
});
