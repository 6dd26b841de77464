import { createEngine, type Engine } from "../../src/engine/engine";
import type { EngineValue } from "../../src/engine/engineValue";
import { received, standIns } from "./standInFunctions";

let engine: Engine;
beforeAll(() => {
  engine = createEngine(standIns);
});
afterAll(() => engine.dispose());

const table = async (formula: string): Promise<EngineValue[][]> => (await engine.calculate([formula]))[0]!;
const value = async (formula: string): Promise<EngineValue> => (await table(formula))[0]![0]!;

describe("formulas on their own", () => {
  // Expected values are plain arithmetic or the documented meaning of the built-in function.
  test.each<[string, EngineValue[][]]>([
    ["=OXYGEN.PLUS(1,2)", [[3]]],
    ["oxygen.plus(1,2)", [[3]]],
    ["=OXYGEN.PLUS({1;2;3},10)", [[11], [12], [13]]],
    ["=SUM(OXYGEN.PLUS({1;2;3},10))", [[36]]],
    [
      "=OXYGEN.SQUARES(2)",
      [
        ["n", "square"],
        [1, 1],
        [2, 4],
      ],
    ],
    ["=SUM(DROP(OXYGEN.SQUARES(3),1,1))", [[14]]],
    ["=LET(a,OXYGEN.PLUS(1,1),a*2)", [[4]]],
    ["=MAP({1;2},LAMBDA(x,OXYGEN.PLUS(x,1)))", [[2], [3]]],
    ['={"70 °F";"95 °F"}', [["70 °F"], ["95 °F"]]],
    ["=1=1", [[true]]],
    ["=IFNA(OXYGEN.NO_ANSWER(1),7)", [[7]]],
    ["=@OXYGEN.SQUARES(2)", [["n"]]],
  ])("%s", async (formula, expected) => {
    expect(await table(formula)).toEqual(expected);
  });

  test("a blank cell arrives as null, an argument that is left out as undefined", async () => {
    received.length = 0;
    await engine.calculate([
      "=OXYGEN.PLUS(A1,1)",
      "=OXYGEN.PLUS(5)",
      "=OXYGEN.PLUS(5, )",
      "=OXYGEN.PLUS(5,IF(TRUE,B1))",
      "=IF(FALSE,,OXYGEN.PLUS(5,))",
    ]);
    expect(received).toEqual([
      [[[null]], [[1]]],
      [[[5]], undefined],
      [[[5]], undefined],
      [[[5]], [[null]]],
      [[[5]], undefined],
    ]);
  });

  test("text, numbers and booleans arrive as they are", async () => {
    received.length = 0;
    await engine.calculate(['=OXYGEN.ECHO({1,"a";TRUE,FALSE})']);
    expect(received[0]).toEqual([
      [
        [1, "a"],
        [true, false],
      ],
    ]);
  });

  test("an error keeps its code and the function's own words, also through other functions", async () => {
    const error = { error: "#N/A", message: "the vessel never empties" };
    expect(await value("=OXYGEN.NO_ANSWER(1)")).toEqual(error);
    expect(await value("=OXYGEN.NO_ANSWER(1)+1")).toEqual(error);
    expect(await value("=IF(TRUE,OXYGEN.NO_ANSWER(1))")).toEqual(error);
    expect(await value("=OXYGEN.ECHO(OXYGEN.NO_ANSWER(1))")).toEqual(error);
  });

  test("an error that comes in goes out unchanged, and only in its own cell", async () => {
    expect(await table("=OXYGEN.ECHO({1,#DIV/0!})")).toEqual([[1, expect.objectContaining({ error: "#DIV/0!" })]]);
  });

  test("an error of a built-in function has words too", async () => {
    expect(await value("=1/0")).toEqual({ error: "#DIV/0!", message: "a division by zero" });
  });

  test("a throw becomes an error with words, and the next formula is computed", async () => {
    expect(await engine.calculate(["=OXYGEN.THROWS(1)", "=1+1"])).toEqual([
      [[{ error: "#VALUE!", message: "OXYGEN.THROWS failed: out of order" }]],
      [[2]],
    ]);
  });

  test("no NaN gets out", async () => {
    expect(await value("=OXYGEN.NOT_A_NUMBER(1)")).toMatchObject({ error: "#NUM!" });
  });

  test("a date result keeps its number format and counts as a number", async () => {
    expect(await value("=OXYGEN.DAY_OF(45000)")).toMatchObject({ basicValue: 45000, numberFormat: "yyyy-mm-dd" });
    // Serial 45000 is 2023-03-15: 44927 is 2023-01-01 in the 1900 system, 73 days earlier.
    expect(await value('=TEXT(OXYGEN.DAY_OF(45000),"yyyy-mm-dd")')).toBe("2023-03-15");
    expect(await value("=OXYGEN.DAY_OF(45000)-OXYGEN.DAY_OF(44927)")).toBe(73);
  });

  test("too many arguments are refused", async () => {
    expect(await value("=OXYGEN.PLUS(1,2,3)")).toMatchObject({
      error: "#VALUE!",
      message: expect.stringMatching(/2.*3/),
    });
  });

  test("an unknown name is named, with the one that may be meant", async () => {
    expect(await value("=OXYGEN.SQARES(1)")).toEqual({
      error: "#NAME?",
      message: "no function OXYGEN.SQARES; did you mean OXYGEN.SQUARES?",
    });
    expect(await value("=SQUARES(1)")).toMatchObject({ message: "no function SQUARES; did you mean OXYGEN.SQUARES?" });
    expect(await value("=1+litres")).toMatchObject({ error: "#NAME?", message: expect.stringContaining("litres") });
  });

  test("a formula that can't be read says why", async () => {
    expect(await value("=SUM(1,2")).toMatchObject({ error: "#ERROR!", message: "1 closing parenthesis is missing" });
    expect(await value('="abc')).toMatchObject({ error: "#ERROR!", message: expect.stringContaining("quotation") });
    expect(await value("=")).toMatchObject({ error: "#ERROR!" });
  });
});

describe("a workbook", () => {
  test("formulas see cells, spills, other sheets, names and tables", async () => {
    const [plan, other] = await engine.calculateWorkbook(
      [
        {
          name: "My plan",
          cells: {
            A1: { value: 3 },
            A3: { formula: "=OXYGEN.SQUARES(A1)" },
            D1: { formula: "=SUM(DROP(A3#,1,1))" },
            D2: { formula: "=Rate*2" },
            D3: { formula: "=SUM(Kinds[flow])" },
            D4: { value: true },
            D5: { formula: "=OXYGEN.ECHO(D4)" },
            D6: { formula: "=OXYGEN.ECHO(Z1)" },
            H1: { value: "kind" },
            I1: { value: "flow" },
            H2: { value: "a" },
            I2: { value: 10 },
            H3: { value: "b" },
            I3: { value: 20 },
          },
        },
        { name: "Other", cells: { B2: { formula: "='My plan'!A3#" }, F1: { formula: "='My plan'!B6+1" } } },
      ],
      {
        names: { Rate: "'My plan'!$A$1" },
        tables: [{ name: "Kinds", sheet: "My plan", ref: "H1:I3", columns: ["kind", "flow"] }],
      },
    );
    const squares = [
      ["n", "square"],
      [1, 1],
      [2, 4],
      [3, 9],
    ];
    expect(plan!.cells).toEqual({
      A3: { value: "n", spill: squares, area: "A3:B6" },
      D1: { value: 14, area: "D1" },
      D2: { value: 6, area: "D2" },
      D3: { value: 30, area: "D3" },
      D5: { value: true, area: "D5" },
      D6: { value: "(blank)", area: "D6" },
    });
    expect(other!.cells).toEqual({
      B2: { value: "n", spill: squares, area: "B2:C5" },
      F1: { value: 10, area: "F1" },
    });
  });

  test("an error keeps its words where other cells read it", async () => {
    const [sheet] = await engine.calculateWorkbook([
      {
        name: "S",
        cells: { A1: { formula: "=OXYGEN.NO_ANSWER(1)" }, A2: { formula: "=A1*2" }, A3: { formula: "=A1:A2" } },
      },
    ]);
    const error = { error: "#N/A", message: "the vessel never empties" };
    expect(sheet!.cells.A2!.value).toEqual(error);
    expect(sheet!.cells.A3!.spill).toEqual([[error], [error]]);
  });

  test("a chain of spills that read each other's inner cells settles", async () => {
    const [sheet] = await engine.calculateWorkbook([
      {
        name: "S",
        cells: {
          B1: { formula: "=SEQUENCE(C3)" },
          C1: { formula: "=SEQUENCE(D3)" },
          D1: { formula: "=SEQUENCE(E3)" },
          E1: { formula: "=SEQUENCE(F3)" },
          F1: { formula: "=SEQUENCE(A1)" },
          G1: { formula: "=SUM(B1:B9)" },
          J1: { formula: "=SEQUENCE(A1)" },
          K1: { formula: "=SEQUENCE(J3)" },
          L1: { formula: "=SEQUENCE(K3)" },
          M1: { formula: "=SEQUENCE(L3)" },
          N1: { formula: "=SEQUENCE(M3)" },
          A1: { value: 3 },
        },
      },
    ]);
    expect(sheet!.cells.B1!.area).toBe("B1:B3");
    expect(sheet!.cells.N1!.area).toBe("N1:N3");
    expect(sheet!.cells.G1!.value).toBe(6);
  });

  test("cells that a saved spill filled are not taken as typed in", async () => {
    const [sheet] = await engine.calculateWorkbook([
      {
        name: "S",
        cells: {
          A1: { formula: "=SEQUENCE(3)", ref: "A1:A4" },
          A2: { value: 99 },
          A4: { value: 99 },
          B1: { formula: "=SUM(A1:A9)" },
        },
      },
    ]);
    expect(sheet!.cells.A1!.spill).toEqual([[1], [2], [3]]);
    expect(sheet!.cells.B1!.value).toBe(6);
  });

  test("a spill that meets a typed cell is blocked", async () => {
    const [sheet] = await engine.calculateWorkbook([
      { name: "S", cells: { A1: { formula: "=SEQUENCE(3)" }, A3: { value: 1 } } },
    ]);
    expect(sheet!.cells.A1).toMatchObject({ value: { error: "#SPILL!" }, area: "A1" });
  });

  test("a spill far larger than the used sheet fits", async () => {
    const [sheet] = await engine.calculateWorkbook([{ name: "S", cells: { A1: { formula: "=SEQUENCE(5000)" } } }]);
    expect(sheet!.cells.A1!.area).toBe("A1:A5000");
  });

  test("formulas in a circle are named, and show an error that others carry on; the rest is computed", async () => {
    const [plan, other] = await engine.calculateWorkbook(
      [
        {
          name: "Plan",
          cells: {
            A1: { formula: "=A2" },
            A2: { formula: "=Back+1" },
            B1: { formula: "=A1+1" },
            C1: { formula: "=2*21" },
            D1: { formula: "=SUM(D1:D2)" },
            E1: { formula: "=SEQUENCE(2)+F3", ref: "E1:E2" },
            F3: { formula: "=E2" },
          },
        },
        { name: "Other sheet", cells: { A1: { formula: "=Plan!A1" } } },
      ],
      { names: { Back: "'Other sheet'!$A$1" } },
    );
    const circle = "the formula depends on itself: ";
    for (const cell of [plan!.cells.A1, plan!.cells.A2, other!.cells.A1]) {
      expect(cell).toMatchObject({ isCircular: true, value: { error: "#CYCLE!" } });
      expect((cell!.value as { message: string }).message).toMatch(
        /^the formula depends on itself: (?=.*Plan!A1 → Plan!A2)(?=.*Plan!A2 → Other sheet!A1)/,
      );
    }
    expect(plan!.cells.D1!.value).toEqual({ error: "#CYCLE!", message: `${circle}Plan!D1 → Plan!D1` });
    expect(plan!.cells.F3!.value).toMatchObject({ error: "#CYCLE!" });
    // B1 only reads the circle.
    expect(plan!.cells.B1!.value).toMatchObject({ error: "#CYCLE!", message: expect.stringContaining("Plan!A1") });
    expect(plan!.cells.B1!.isCircular).toBeUndefined();
    expect(plan!.cells.C1!.value).toBe(42);
  });

  test("a name that is not known is named in the cell's error", async () => {
    const [sheet] = await engine.calculateWorkbook([
      { name: "S", cells: { A1: { formula: "=OXYGEN.PLUSS(1,2)" }, A2: { formula: "=SUM(1" } } },
    ]);
    expect(sheet!.cells.A1!.value).toMatchObject({ message: expect.stringContaining("OXYGEN.PLUS") });
    expect(sheet!.cells.A2!.value).toMatchObject({
      error: expect.stringMatching(/^#/),
      message: expect.stringContaining("parenthesis"),
    });
  });
});
