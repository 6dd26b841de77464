import { readFileSync } from "node:fs";
import path from "node:path";
import { functions } from "../../src/catalogue/generated/functions";
import { createEngine } from "../../src/engine/engine";
import { isEngineError, type EngineValue } from "../../src/engine/engineValue";
import { readWorkbook } from "../../src/engine/file/readWorkbook";
import { samplesFolder } from "../../src/tooling/buildSamples";

/**
 * What a user sees after changing inputs. Expected states follow from the scenario by plain arithmetic beside each test,
 * never from the workbook's own cached values.
 */
type Changes = Readonly<Record<string, number | string | boolean | null>>;

const after = async (
  name: string,
  changes: Changes,
  madeAnew = false,
): Promise<(at: string) => EngineValue | undefined> => {
  const saved = readWorkbook(
    readFileSync(path.join(samplesFolder, `${name}.xlsx`)),
    functions.map(([id]) => id),
  );
  const sheets = saved.sheets.map((sheet) => ({ name: sheet.name, cells: { ...sheet.cells } }));
  for (const [at, value] of Object.entries(changes)) {
    const mark = at.lastIndexOf("!");
    const { cells } = sheets.find((sheet) => sheet.name === at.slice(0, mark))!;
    const address = at.slice(mark + 1);
    if (cells[address]?.formula !== undefined && !madeAnew) throw new Error(`${at} is no input`);
    if (value === null) delete cells[address];
    else cells[address] = { value };
  }
  const engine = createEngine(functions);
  try {
    const computed = await engine.calculateWorkbook(sheets, saved.names);
    return (at) => {
      const mark = at.lastIndexOf("!");
      return computed.find((sheet) => sheet.name === at.slice(0, mark))!.cells[at.slice(mark + 1)]?.value;
    };
  } finally {
    engine.dispose();
  }
};

const verdict = "Summary!A6";

describe("the supply plan", () => {
  test("says short as ordered and nothing short as moved; a busy flow above the mean", async () => {
    const show = await after("supply-plan", {});
    expect(show(verdict)).toMatch(
      /^As ordered: SHORT on 2026-03-22, \d+ L in all\.\nAs moved: nothing short, lowest \d+ L on 2026-\d\d-\d\d\.\nAs moved, a day late: SHORT/,
    );
    // Wards: 2 × 8 + 6 × 4 + 4 × 1.5 + 2 × 5 + 1.5 × 15 L/min.
    expect(show("Demand!D20")).toBeCloseTo(78.5, 10);
    expect(show("Summary!B20")).toBeGreaterThan(78.5);
    // 52 cylinders of 6,800 L, a tenth left in each, at 78.5 L/min and 5 % more.
    expect(show("Summary!B21")).toBeCloseTo((52 * 6800 * 0.9) / (78.5 * 1.05 * 1440), 10);
  }, 60_000);

  test("says short in both cases once the delivery stays where it was ordered", async () => {
    const show = await after("supply-plan", { "Inputs!D47": 0 });
    expect(show(verdict)).toMatch(/^As ordered: SHORT on 2026-03-22.*\nAs moved: SHORT on 2026-03-22/);
    expect(show("Summary!C8")).toEqual(show("Summary!C9"));
  }, 60_000);

  const noOutage = Object.fromEntries(
    [65, 66, 67].flatMap((row) => ["A", "B", "C"].map((column) => [`Inputs!${column}${row}`, null])),
  );

  test("has nothing short without the outage and the surge", async () => {
    // 181 L/day made stands against 172 L/day drawn, so no day falls behind.
    const show = await after("supply-plan", { ...noOutage, "Inputs!B22": 1 });
    expect(show(verdict)).toMatch(/^As ordered: nothing short, .*\nAs moved: nothing short, /);
  }, 60_000);

  test("lets the generators carry the plants as far as the fuel goes", async () => {
    // Dark: 10 + 24 + 24 + 12 h. Three sets at 55.1 / (3 × 36) of their power burn 5.3 + 2.4 × (0.51 − 0.5)/0.25 L/h each.
    const hourly = 3 * (5.3 + (7.7 - 5.3) * ((55.1 / 108 - 0.5) / 0.25));
    const full = await after("supply-plan", { "Power and fuel!B37": 5000 });
    expect(full(verdict)).toMatch(/^As ordered: nothing short/);
    expect(full("Summary!B24")).toBeCloseTo(5000 - 70 * hourly, 6);
    const none = await after("supply-plan", { "Power and fuel!B39": "no" });
    expect(none("Fuel plan!G27")).toBe(0);
    expect(none("Summary!B24")).toBe(420);
  }, 120_000);

  test("takes the poorest month of all that the plan touches", async () => {
    // From 30 January the first, thirty-first and last of 60 days lie in January and March.
    const show = await after("supply-plan", { "Inputs!B7": 46052, "Site and plants!B13": 45 });
    // ISO 2533 at 310 m: 101.325 × (1 − 0.0065 × 310 / 288.15)^5.25588; a hundredth a degree above 21.1 °C.
    const share = (1 - (0.0065 * 310) / 288.15) ** 5.25588 * (1 - 0.01 * (45 - 21.1));
    expect(show("Site and plants!E28")).toBeCloseTo(3.1 * share, 6);
  }, 60_000);

  test("holds 120 days, and every table filled to its last row", async () => {
    const rows = (count: number, line: (row: number) => Changes): Changes =>
      Object.assign({}, ...Array.from({ length: count }, (_, row) => line(row))) as Changes;
    const show = await after("supply-plan", {
      "Inputs!B8": 120,
      "Inputs!B10": 330,
      ...rows(12, (row) => ({
        [`Demand!A${8 + row}`]: `Ward ${row}`,
        [`Demand!B${8 + row}`]: 1 + row / 10,
        [`Demand!C${8 + row}`]: 5,
      })),
      ...rows(6, (row) => ({
        [`Inputs!A${36 + row}`]: `Plant ${row}`,
        [`Inputs!B${36 + row}`]: 1,
        [`Inputs!C${36 + row}`]: 46000,
        [`Inputs!D${36 + row}`]: 3,
        [`Inputs!E${36 + row}`]: 1.5 + row / 10,
        [`Inputs!F${36 + row}`]: 80,
        [`Inputs!G${36 + row}`]: 8000,
        [`Inputs!H${36 + row}`]: 900,
        [`Power and fuel!B${17 + row}`]: 40,
        [`Power and fuel!C${17 + row}`]: 16,
      })),
      ...rows(15, (row) => ({
        [`Inputs!A${46 + row}`]: `Boat ${row}`,
        [`Inputs!B${46 + row}`]: 46090 + 5 * row,
        [`Inputs!C${46 + row}`]: 100,
        [`Inputs!D${46 + row}`]: 0,
      })),
      ...rows(10, (row) => ({
        [`Inputs!A${65 + row}`]: 46090 + 10 * row,
        [`Inputs!B${65 + row}`]: 46091 + 10 * row,
        [`Inputs!C${65 + row}`]: 20,
      })),
      ...rows(90, (row) => ({ [`Logs!A${6 + row}`]: 46081 - row, [`Logs!B${6 + row}`]: 5 + (row % 3) })),
    });
    expect(show("Checks!A5")).toBe("");
    // Twelve wards of 1 to 2.1 patients at 5 L/min: 12 × 1.55 × 5.
    expect(show("Demand!D20")).toBeCloseTo(93, 10);
    expect(show(verdict)).toMatch(/^As ordered: /);
    for (const row of [32, 46]) expect(typeof show(`Summary!E${row}`)).toBe("number");
  }, 60_000);

  test.each<[string, Changes]>([
    ["more liquid than the plants hold", { "Inputs!B10": 5000 }],
    ["a blank where the stock belongs", { "Inputs!B10": null }],
    ["words for a mean", { "Demand!B9": "six" }],
    ["a reading that is not available", { "Inputs!B11": "#N/A" }],
  ])(
    "never says nothing short when there is no answer: %s",
    async (_, changes) => {
      const show = await after("supply-plan", changes);
      expect(show(verdict)).toMatch(new RegExp(`^CHECK INPUTS: ${Object.keys(changes)[0]!} `));
      expect(show("Summary!B9")).toBe("CHECK INPUTS");
    },
    60_000,
  );

  test("points at a delivery outside the plan", async () => {
    const show = await after("supply-plan", { "Inputs!D46": 40 });
    expect([show("Inputs!F46"), show("Inputs!F47")]).toEqual(["OUTSIDE", "in the plan"]);
    expect(show(verdict)).toMatch(/^CHECK INPUTS: Inputs!E46 lies outside the plan/);
  }, 60_000);
});

describe("quick checks", () => {
  const fillState = "Checks!H6";

  test("take text with a unit as the same figure in the unit shown", async () => {
    // 35 psi is 35 × 0.45359237 × 9.80665 / 0.00064516 Pa (NIST SP 811), 10 gal are 37.85411784 L.
    const psi = await after("quick-checks", { "Checks!C44": "35 psi", "Checks!C54": "10 gal" });
    const bar = await after("quick-checks", {
      "Checks!C44": (35 * 0.45359237 * 9.80665) / 0.00064516 / 1e5,
      "Checks!C54": 37.85411784,
    });
    for (const at of ["Checks!G44", "Checks!G54"]) expect(psi(at)).toBeCloseTo(Number(bar(at)), 9);
  }, 60_000);

  test("say which entry is empty, doubtful or wrong", async () => {
    expect((await after("quick-checks", {}))(fillState)).toBe("ok");
    expect((await after("quick-checks", { "Checks!D6": null }))(fillState)).toMatch(/^EMPTY/);
    expect((await after("quick-checks", { "Checks!D82": 93 }))("Checks!H82")).toMatch(/^Oxygen wanted.*93.*percent/);
    const fuller = await after("quick-checks", { "Checks!E6": 900 });
    expect(isEngineError(fuller("Checks!G6")!)).toBe(true);
    expect(fuller(fillState)).toMatch(/^WRONG ENTRY/);
  }, 60_000);

  test("say what no answer means", async () => {
    // 1 L/min into 60 m³ with 5 changes an hour: 0.21 + 0.79 × 0.06 / 300 stays far under 0.235.
    const show = await after("quick-checks", { "Checks!D101": 1, "Checks!E101": 5 });
    expect(show("Checks!H101")).toBe(
      "No answer: the room as a whole stays under 23.5 %, but near the leak it is richer: no all-clear, measure",
    );
  }, 60_000);
});

describe("the options", () => {
  test("show no short day once the power stays on", async () => {
    const withOutage = await after("options", {});
    expect(typeof withOutage("Outage!E7")).toBe("object");
    // Nine used plants make 9 × 24 × 0.81 = 175 L a day against 164 L drawn; the others make more.
    const show = await after("options", { "Outage!B19": 24, "Outage!B20": 24 });
    for (const column of ["E", "F", "G", "H"]) expect(show(`Outage!${column}7`)).toBe("none");
  }, 60_000);

  test("never call an option good that could not be compared", async () => {
    const show = await after("options", { "Inputs!B56": null, "Inputs!C56": null });
    for (const at of ["Options!A6", "Start!B5", "Start!B6"]) expect(show(at)).toMatch(/^CHECK INPUTS: Inputs!B56/);
  }, 60_000);

  test("say so when no mix fits the mass", async () => {
    // One large plant and the two generators it needs already weigh 890 + 2 × 920 kg.
    const show = await after("options", { "Inputs!B35": 2000 });
    expect(isEngineError(show("Mix and money!A17")!)).toBe(true);
    for (const row of [17, 18, 19]) expect(show(`Mix and money!F${row}`)).toBe("no mix");
  }, 60_000);

  test("count more plants where it is hot and high", async () => {
    // 164.2 L a day at 24 × 3.1 × 0.92 L each is 2.4, 3 with a spare one 4. At 3000 m (ISO 2533: 70.1085 kPa) and 45 °C
    // a plant makes 3.1 × 0.6919 × 0.761 L/h: 4.56, 5 with a spare one 6.
    expect((await after("options", {}))("Heat and height!B12")).toBe(4);
    const show = await after("options", { "Heat and height!B11": 45, "Heat and height!A12": 3000 });
    expect(show("Heat and height!B12")).toBe(6);
  }, 60_000);
});

describe("service and moving", () => {
  test("has nothing overdue where the manual's intervals hold in full", async () => {
    // At 0.7 of the intervals: 2025-03-14 + 255, 2025-12-09 + 63 and 2026-02-02 + 19 days, each over 3 days before 03-01.
    expect((await after("service-and-moving", {}))("Quarter!B11")).toBe(3);
    // From the last dates: valves 2026-03-14, belts 2026-03-09, filters 2026-03-02: none before 2026-03-01.
    expect((await after("service-and-moving", { "Karrow Point!B9": 1 }))("Quarter!B11")).toBe(0);
  }, 60_000);

  test("never counts a list that was refused as one without services", async () => {
    const rows = Array.from({ length: 10 }, (_, at) => 14 + at);
    const empty = rows.flatMap((row) => [..."ABCDEHI"].map((column) => [`Lunde Ridge!${column}${row}`, null] as const));
    const show = await after("service-and-moving", Object.fromEntries(empty));
    for (const at of ["Quarter!B11", "Start!B5"]) expect(show(at)).toBe("CHECK INPUTS");
    expect(show("Quarter!B27")).toMatch(/^NO/);
  }, 60_000);

  test("says when a part of the service sheets is not in the order", async () => {
    expect((await after("service-and-moving", {}))("Quarter!B27")).toBe("yes");
    expect((await after("service-and-moving", { "Quarter!A16": "filter" }))("Quarter!B27")).toMatch(/^NO/);
  }, 60_000);

  test("adds up the load", async () => {
    // 2 × 410 + 890 + 2 × 920 + 6 × 34 + 140 kg.
    const goods = 3894;
    expect((await after("service-and-moving", {}))("Drain and ship!B33")).toBeCloseTo(goods * 1.08, 6);
    const show = await after("service-and-moving", { "Drain and ship!B18": 0, "Drain and ship!B24": 1 });
    expect(show("Drain and ship!B33")).toBeCloseTo(goods - 410, 6);
  }, 60_000);
});

describe("this-excel", () => {
  const at = (cell: string): string => `This Excel!${cell}`;

  test("does not say that all holds before it was asked in Excel", async () => {
    const show = await after("this-excel", {});
    expect(show(at("A10"))).toMatch(/^NOT ASKED IN EXCEL YET/);
    expect(show(at("A11"))).toContain("held 10 of 10");
  });

  test.each([
    // As Excel would be where an empty cell comes as 0, an error as a value, a date from 1904, and nothing calculates.
    ["Empty cells come as empty", { B15: 0 }],
    ["Broken cells break what hangs on them", { B16: 0 }],
    ["The add-in calculates", { B20: "#NAME?" }],
    ["One formula fills a column", { B23: 66 }],
    ["A date comes as its day", { B24: 44622.04 }],
    ["A wrong entry is refused", { B25: 40 }],
    ["A table feeds another", { A46: "" }],
  ])("names what does not hold: %s", async (item, changes: Changes) => {
    const cells = Object.fromEntries(Object.entries(changes).map(([cell, value]) => [at(cell), value]));
    const show = await after("this-excel", cells, true);
    expect(show(at("A10"))).toMatch(new RegExp(`^NOT ALL HOLDS: ${item}`));
    expect(show(at("A11"))).toContain(`not held: ${item}`);
  });
});
