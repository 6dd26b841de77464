import { readFileSync } from "node:fs";
import path from "node:path";
import type { Page } from "playwright-core";
import type { FunctionRecord } from "../../src/catalogue/record";
import { argumentCells, firstExample } from "../../src/catalogue/constantFormula";
import { CellError } from "../../src/cells/cellValues";
import { readCatalogue } from "../../src/catalogue/readCatalogue";
import { distFolder } from "../../src/tooling/build";
import { describeInBrowser } from "../inBrowser";
import { installHostBridge, type HostAnswer, type HostBridge } from "../../src/tooling/hostBridge";

type BridgedWindow = Window & {
  _richApiNativeBridge: HostBridge;
  CustomFunctions: { _association: { mappings: Record<string, unknown> } };
  OSF: { _OfficeAppFactory: { setContext(context: unknown): void } };
};

const call = (page: Page, id: string, args: unknown[], flags?: number): Promise<HostAnswer> =>
  page.evaluate(
    ([name, cells, how]) => (window as unknown as BridgedWindow)._richApiNativeBridge.call(name, cells, how),
    [id, args, flags] as const,
  );

const built = (name: string): string => readFileSync(path.join(distFolder, name), "utf8");

/** An error cell in the runtime's form of a data type. */
const richError = (cell: unknown): unknown =>
  cell instanceof CellError
    ? { value: JSON.stringify({ type: "Error", basicType: "Error", basicValue: cell.code }) }
    : cell;

/** Omitted arguments reach the runtime as null, one for each parameter of functions.json. */
const asExcelSends = (cells: (unknown[][] | undefined)[], parameters: number): unknown[] =>
  Array.from({ length: parameters }, (_, at) => cells[at]?.map((row) => row.map(richError)) ?? null);

const plain = (cell: unknown): unknown =>
  typeof cell === "object" && cell !== null && "basicValue" in cell
    ? (cell as { basicValue: unknown }).basicValue
    : cell;

const expectTable = (answer: HostAnswer, record: FunctionRecord): void => {
  if (!answer.ok) throw new Error(`${record.id} failed as a whole: ${answer.message}`);
  const [example] = record.examples;
  if (!example) throw new Error(`${record.id} has no example`);
  const got = answer.value as unknown[][];
  const wanted = example.result;
  if (typeof wanted === "object" && !Array.isArray(wanted)) {
    expect(got[0]?.[0]).toMatchObject({
      type: "Error",
      basicValue: wanted.error,
      message: expect.stringContaining(wanted.words),
    });
    return;
  }
  const rows = Array.isArray(wanted) ? wanted : [[wanted]];
  if (example.localOnly) {
    expect(got.map((row) => row[0])).toEqual(rows.map((row) => row[0]));
    expect(JSON.stringify(got)).not.toContain("local engine");
    return;
  }
  expect(got.map((row) => row.length)).toEqual(rows.map((row) => row.length));
  rows.flat().forEach((cell, at) => {
    const value = plain(got.flat()[at]);
    if (typeof cell !== "number") expect(value).toEqual(cell);
    else
      expect(Math.abs((value as number) - cell)).toBeLessThanOrEqual(
        example.tolerance ?? Math.abs(cell) * 1e-9 + 1e-12,
      );
  });
};

/**
 * Microsoft's runtime tries to show a hidden page of its usage statistics (telemetryservice.firstpartyapps.oaspapps.com)
 * wherever it is loaded; the page's policy forbids it, which the browser reports.
 */
const refusedToMicrosoft = /^console: (Applying inline style|Framing 'https:\/\/telemetryservice\.)/;

/** What a call of a host says of itself: errors (4) and data types (8) may come in, or neither. */
const dataTypes = 12;

describe.each([
  { name: "functions", program: "Microsoft 365", flags: dataTypes },
  { name: "functions-perpetual", program: "perpetual Excel", flags: 0 },
])("the build for $program", ({ name, program, flags }) => {
  describeInBrowser("in Microsoft's runtime", (suite) => {
    let page: Page;
    let faults: string[];
    let foreign: string[];
    let metadata: { id: string; parameters: unknown[] }[];

    beforeAll(async () => {
      ({ page, faults, foreign } = await suite.open(`${name}.html`, { before: `(${installHostBridge.toString()})()` }));
      metadata = JSON.parse(built(`${name}.json`)).functions;
    }, 60_000);

    it("associates every id of functions.json and no other", async () => {
      const associated = await page.evaluate(() =>
        Object.keys((window as unknown as BridgedWindow).CustomFunctions._association.mappings),
      );
      expect(associated.sort()).toEqual(metadata.map(({ id }) => id).sort());
      expect(associated.length).toBeGreaterThan(0);
    });

    it.each([
      ["as its hosts call it", flags],
      ["as the other hosts call it", dataTypes - flags],
    ])(
      "gives the value of each function's first example, %s",
      async (_how, how) => {
        const found = readCatalogue(undefined, () => undefined);
        const byId = new Map(found.map((each) => [each.record.id, each.call]));
        const inBuild = new Map(metadata.map((each) => [each.id, each]));
        const answers = await Promise.all(
          found
            .filter(({ record }) => inBuild.has(record.id))
            .map(async ({ record }) => {
              const cells = argumentCells(firstExample(record), (id) => byId.get(id));
              const answer = await call(
                page,
                record.id,
                asExcelSends(cells, inBuild.get(record.id)?.parameters.length ?? 0),
                how,
              );
              return { record, answer };
            }),
        );
        expect(answers).toHaveLength(metadata.length);
        const wrong = answers.flatMap(({ record, answer }) => {
          try {
            expectTable(answer, record);
            return [];
          } catch (fault) {
            return [`${record.id}: ${JSON.stringify(answer)} ${(fault as Error).message}`];
          }
        });
        expect(wrong).toEqual([]);
      },
      240_000,
    );

    // An empty 60 L vessel at 1.5 L/h after 3 h: 3 + 60/1.5 = 43, plain arithmetic.
    it("lets errors arrive with their words, each in its own cell", async () => {
      const answer = await call(page, "HOURS_TO_FILL", [[[60], ["sixty"], [null], [60]], [[1.5]], null, null]);
      expect(answer).toMatchObject({
        ok: true,
        value: [
          [43],
          [{ type: "Error", basicValue: "#VALUE!", message: expect.stringContaining("capacity") }],
          [{ type: "Error", basicValue: "#VALUE!", message: expect.stringContaining("capacity") }],
          [43],
        ],
      });
    });

    it("refuses in words a blank that comes as null, and gives every function's blank cells an answer as 0 too", async () => {
      const found = readCatalogue(undefined, () => undefined);
      const byId = new Map(found.map((each) => [each.record.id, each.call]));
      const asked = found.flatMap(({ record, args }) => {
        const cells = asExcelSends(
          argumentCells(firstExample(record), (id) => byId.get(id)),
          record.arguments.length,
        );
        return record.arguments.flatMap(({ name: argument }, index) =>
          [null, 0].map((blank) => ({
            id: record.id,
            argument,
            blank,
            takesBlank: "takesAnything" in args.readers[index]! || "mayBeBlank" in args.readers[index]!,
            given: cells.map((each, at) => (at === index ? [[blank]] : each)),
          })),
        );
      });
      const answers = await Promise.all(asked.map(({ id, given }) => call(page, id, given, flags)));
      const failures = asked.flatMap(({ id, argument, blank, takesBlank }, index) => {
        const answer = answers[index]!;
        const text = JSON.stringify(answer);
        const failed = !answer.ok || text.includes("fault in the add-in");
        const calm = blank === null && !takesBlank && !text.includes('"type":"Error"');
        return failed || calm ? [`${id} ${argument} ${blank}: ${text.slice(0, 200)}`] : [];
      });
      expect(failures).toEqual([]);
    }, 120_000);

    it("hands error cells that come in on, in both of the runtime's forms", async () => {
      const old = await call(
        page,
        "HOURS_TO_FILL",
        [[[{ type: "CustomFunctionError", code: "#DIV/0!" }]], [[1.5]], null, null],
        4,
      );
      expect(old).toMatchObject({ ok: true, value: [[{ type: "Error", basicValue: "#DIV/0!", errorType: "Div0" }]] });
      const rich = {
        value: JSON.stringify({ type: "Error", basicType: "Error", basicValue: "#DIV/0!", errorType: "Div0" }),
      };
      const fresh = await call(page, "HOURS_TO_FILL", [[[rich], [60]], [[1.5]], null, null]);
      expect(fresh).toMatchObject({
        ok: true,
        value: [[{ type: "Error", basicValue: "#DIV/0!", errorType: "Div0" }], [43]],
      });
    });

    it("reads formatted numbers as numbers", async () => {
      const sixty = {
        value: JSON.stringify({ type: "FormattedNumber", basicType: "Double", basicValue: 60, numberFormat: "0.0" }),
      };
      expect(await call(page, "HOURS_TO_FILL", [[[sixty]], [[1.5]], null, null])).toEqual({ ok: true, value: [[43]] });
    });

    it("answers 10,000 calls, and one call of 10,000 rows", async () => {
      const outcome = await page.evaluate(async () => {
        const bridge = (window as unknown as BridgedWindow)._richApiNativeBridge;
        const before = bridge.batches;
        const capacities = Array.from({ length: 10_000 }, (_, row) => row + 1);
        const answers = await Promise.all(
          capacities.map((capacity) => bridge.call("HOURS_TO_FILL", [[[capacity]], [[2]], null, null])),
        );
        const whole = await bridge.call("HOURS_TO_FILL", [capacities.map((capacity) => [capacity]), [[2]], null, null]);
        const single = answers.map((answer) => (answer.ok ? (answer.value as number[][])[0]?.[0] : "failed"));
        return {
          single,
          whole: whole.ok ? (whole.value as number[][]).map((row) => row[0]) : [],
          batches: bridge.batches - before,
        };
      });
      const wanted = Array.from({ length: 10_000 }, (_, row) => 3 + (row + 1) / 2);
      expect(outcome.single).toEqual(wanted);
      expect(outcome.whole).toEqual(wanted);
      expect(outcome.batches).toBeLessThan(100);
    }, 60_000);

    it("gives dates as its program shows them, whatever the host says of itself", async () => {
      // 1 March 2026 6:00 and 3 h + 60 L at 1.5 L/h later: 3 March 1:00, serial 46084 and 1/24.
      const args = [[[46082.25]], [[60]], [[1.5]], null, null];
      const full = async (): Promise<unknown> => {
        const answer = await call(page, "FULL_AT", args, flags);
        return answer.ok ? (answer.value as unknown[][])[0]![0] : answer;
      };
      const close = expect.closeTo(46084 + 1 / 24, 9);
      const wanted =
        program === "Microsoft 365"
          ? expect.objectContaining({ type: "Double", basicValue: close, numberFormat: "yyyy-mm-dd hh:mm" })
          : close;
      expect(await full()).toEqual(wanted);
      await page.evaluate(() => {
        const requirements = { isSetSupported: () => true };
        (window as unknown as BridgedWindow).OSF._OfficeAppFactory.setContext({ requirements });
      });
      expect(await full()).toEqual(wanted);
    });

    it("works under the strict policy, without a fault or a request elsewhere", () => {
      expect(foreign).toEqual([]);
      expect(
        page
          .frames()
          .map((frame) => frame.url())
          .filter((url) => /^https?:/.test(url)),
      ).toEqual([`${suite.address}/${name}.html`]);
      expect(faults.filter((fault) => !refusedToMicrosoft.test(fault))).toEqual([]);
    });
  });
});
