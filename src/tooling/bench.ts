/**
 * `npm run bench`: what things cost, as ratios against a yardstick measured in the same run, so that the machine drops
 * out. `-- --smoke` runs each row briefly, to see that it runs. `-- HOURS_TO_FILL` measures functions by id only.
 */
import fs from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { PMT } from "@formulajs/formulajs";
import { argumentCells, firstExample, type CallById } from "../catalogue/constantFormula";
import type { ReadFunction } from "../catalogue/readCatalogue";
import { findBrowser, launchBrowser } from "./browser";
import { build, buildStamp, distFolder } from "./build";
import { installHostBridge, type HostBridge } from "./hostBridge";
import { startStaticServer } from "../server/staticServer";

const smoke = process.argv.includes("--smoke");
const wantedIds = process.argv.slice(2).filter((word) => /^[A-Z0-9_]+$/.test(word));
const rounds = smoke ? 1 : 5;
/** Long enough for a stable median, short enough for 150 functions. */
const roundNanoseconds = smoke ? 2e5 : 8e6;

let sink: unknown;

/** Nanoseconds a call, the median of several rounds. */
function nanosecondsPerCall(run: () => unknown): number {
  for (let warm = 0; warm < (smoke ? 3 : 2000); warm++) {
    sink = run();
    if (warm > 20 && warm % 50 === 0 && smoke) break;
  }
  let calls = 1;
  for (;;) {
    const start = process.hrtime.bigint();
    for (let call = 0; call < calls; call++) sink = run();
    const spent = Number(process.hrtime.bigint() - start);
    if (spent >= roundNanoseconds / 4) {
      calls = Math.max(1, Math.round((calls * roundNanoseconds) / spent));
      break;
    }
    calls *= 4;
  }
  const measured: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const start = process.hrtime.bigint();
    for (let call = 0; call < calls; call++) sink = run();
    measured.push(Number(process.hrtime.bigint() - start) / calls);
  }
  return measured.sort((a, b) => a - b)[Math.floor(measured.length / 2)]!;
}

const ratio = (value: number, yardstick: number): string => {
  const times = value / yardstick;
  return times >= 100 ? times.toFixed(0) : times >= 10 ? times.toFixed(1) : times.toFixed(2);
};

function printTable(title: string, header: readonly string[], rows: readonly (readonly string[])[]): void {
  const widths = header.map((word, column) => Math.max(word.length, ...rows.map((row) => row[column]!.length)));
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, column) => (column === 0 ? cell.padEnd(widths[column]!) : cell.padStart(widths[column]!)))
      .join("  ");
  console.log(`\n${title}\n${line(header)}`);
  for (const row of rows) console.log(line(row));
}

type Values = Readonly<Record<string, unknown>>;
type Formula = (values: Values) => unknown;

interface DirectCall {
  formula: Formula;
  values: Values;
}

type Run = (args: { readonly names: readonly string[] }, given: unknown, formula: Formula) => unknown;

/** The formula behind each function with the values of its first example, taken by standing in for eachCell once. */
function directCalls(): Map<string, DirectCall> {
  // Loaded anew, so that the functions measured before never met the stand-in.
  for (const file of Object.keys(require.cache))
    if (/[\\/]src[\\/](functions|arguments|catalogue)[\\/]/.test(file)) delete require.cache[file];
  const wrapperPath = require.resolve("../arguments/eachCell");
  const original = require(wrapperPath) as typeof import("../arguments/eachCell");
  let seen: DirectCall | undefined;
  const watched =
    (run: Run): Run =>
    (args, given, formula) =>
      run(args, given, (values) => {
        seen = { formula, values: Object.fromEntries(args.names.map((name) => [name, values[name]])) };
        return formula(values);
      });
  require.cache[wrapperPath]!.exports = {
    ...original,
    eachCell: watched(original.eachCell as unknown as Run),
    wholeTable: watched(original.wholeTable as unknown as Run),
  };
  const { readCatalogue } = require("../catalogue/readCatalogue") as typeof import("../catalogue/readCatalogue");
  const found = readCatalogue();
  const byId = new Map(found.map((each) => [each.record.id, each.call]));
  const direct = new Map<string, DirectCall>();
  for (const each of found) {
    const cells = argumentCells(firstExample(each.record), (id) => byId.get(id));
    seen = undefined;
    each.call(...cells);
    if (seen) direct.set(each.record.id, seen);
  }
  return direct;
}

function functionCosts(): void {
  const { readCatalogue } = require("../catalogue/readCatalogue") as typeof import("../catalogue/readCatalogue");
  const found: ReadFunction[] = readCatalogue();
  const calls = new Map(found.map((each) => [each.record.id, each.call]));
  const byId: CallById = (id) => calls.get(id);
  const measured = found
    .filter(({ record }) => wantedIds.length === 0 || wantedIds.includes(record.id))
    .map(({ record, call }) => {
      const cells = argumentCells(firstExample(record), byId);
      const pmt = nanosecondsPerCall(() => PMT(0.05, 12, 1000, 0));
      return { id: record.id, pmt, single: nanosecondsPerCall(() => call(...cells)) };
    });
  const direct = directCalls();
  const overPmt: number[] = [];
  const rows = measured.map(({ id, pmt, single }) => {
    const model = direct.get(id);
    const plain = model ? nanosecondsPerCall(() => model.formula(model.values)) : undefined;
    overPmt.push(single / pmt);
    return [id, ratio(single, pmt), ...(plain === undefined ? ["–", "–"] : [ratio(single, plain), ratio(plain, pmt)])];
  });
  printTable(
    "One call of each function by its first example. Yardsticks: PMT of @formulajs/formulajs, and the function's own formula on plain numbers.",
    ["function", "call / PMT", "call / own formula", "own formula / PMT"],
    rows,
  );
  const sorted = [...overPmt].sort((a, b) => a - b);
  if (sorted.length > 0) console.log(`median call / PMT: ${ratio(sorted[Math.floor(sorted.length / 2)]!, 1)}`);
}

function oxygenCosts(): void {
  const { saturationAtPressure, gasDensity } = require("../models/oxygen") as typeof import("../models/oxygen");
  const pmt = nanosecondsPerCall(() => PMT(0.05, 12, 1000, 0));
  let step = 0;
  const next = (): number => (step = (step + 1) % 4096);
  const rows = [
    ["saturation, 1 atm again", nanosecondsPerCall(() => saturationAtPressure(1.01325))],
    ["saturation, a new pressure each time", nanosecondsPerCall(() => saturationAtPressure(1 + next() * 0.005))],
    ["gas density, the same again", nanosecondsPerCall(() => gasDensity(150, 293))],
    ["gas density, a new pressure each time", nanosecondsPerCall(() => gasDensity(50 + next() * 0.05, 293))],
  ] as const;
  printTable(
    "Oxygen properties. Yardstick: PMT.",
    ["property", "call / PMT"],
    rows.map(([name, cost]) => [name, ratio(cost, pmt)]),
  );
}

function planningCosts(): void {
  const { functions } =
    require("../catalogue/generated/functions") as typeof import("../catalogue/generated/functions");
  const byId = new Map(functions);
  const pmt = nanosecondsPerCall(() => PMT(0.05, 12, 1000, 0));
  const column = <T>(length: number, of: (row: number) => T): T[][] => Array.from({ length }, (_, row) => [of(row)]);
  const firstDay = 46000;
  const plan = [
    column(365, (row) => firstDay + row),
    column(365, (row) => 40 + (row % 7) * 5),
    column(365, (row) => (row % 30 === 0 ? 50 : 0)),
    column(365, (row) => (row % 45 === 10 ? 0 : 24)),
    Array.from({ length: 10 }, (_, kind) => [1 + (kind % 3), firstDay + kind * 20, 24, 1 + kind * 0.1, 50]),
    [[20]],
    undefined,
    undefined,
    [[3]],
  ];
  const items = Array.from({ length: 10 }, (_, item) => [
    `item ${item + 1}`,
    50 + item * 13,
    12,
    8 + item * 3,
    2 + (item % 4),
  ]);
  const rows: string[][] = [];
  const stockPlan = byId.get("STOCK_PLAN");
  if (stockPlan)
    rows.push([
      "STOCK_PLAN, 365 days and 10 kinds of plant",
      ratio(
        nanosecondsPerCall(() => stockPlan(...plan)),
        pmt * 3650,
      ),
    ]);
  const bestMix = byId.get("BEST_MIX");
  if (bestMix)
    rows.push([
      "BEST_MIX, 10 items and 2 needs",
      ratio(
        nanosecondsPerCall(() => bestMix(items, [[240, 60]])),
        pmt * 3650,
      ),
    ]);
  printTable(
    "Whole plans. Yardstick: 3,650 calls of PMT, one for each day and kind.",
    ["plan", "call / 3,650 PMT"],
    rows,
  );
}

/** Milliseconds of a call that takes long, the median of some. */
function millisecondsPerCall(run: () => unknown): number {
  const spent: number[] = [];
  for (let call = 0; call < (smoke ? 1 : 14); call++) {
    const start = process.hrtime.bigint();
    sink = run();
    spent.push(Number(process.hrtime.bigint() - start) / 1e6);
  }
  return spent.slice(smoke ? 0 : 5).sort((a, b) => a - b)[smoke ? 0 : 4]!;
}

/** The largest questions of a planner, against what they may take of an idle core. */
function slowCorners(): void {
  const { functions } =
    require("../catalogue/generated/functions") as typeof import("../catalogue/generated/functions");
  const byId = new Map(functions);
  const column = <T>(length: number, of: (row: number) => T): T[][] => Array.from({ length }, (_, row) => [of(row)]);
  const firstDay = 46000;
  const plan = (days: number, need: (day: number) => number, plants: unknown[][], opening: number) => [
    column(days, (day) => firstDay + day),
    column(days, need),
    column(days, () => 0),
    column(days, (day) => (day % 9 === 4 ? 10 : 24)),
    plants,
    [[opening]],
    undefined,
    undefined,
    [[3]],
  ];
  const kinds = [1, 2, 3].map((size) => [2, firstDay - 30, 24, 1.2 * size, 50 * size]);
  const chance = plan(60, () => 170, kinds, 500);
  chance[2] = [
    [firstDay + 10, 80],
    [firstDay + 40, 80],
  ];
  // Short on the last day alone, whatever the count: no count can be left early.
  const count = plan(2000, (day) => (day === 1999 ? 1e7 : 0.1), [[1, firstDay - 30, 24, 1.2, 50]], 10);
  const deliveries = plan(365, () => 170, [[2, firstDay - 30, 24, 1.2, 400]], 500);
  deliveries.splice(2, 1);
  deliveries.splice(5, 0, [[120]], [[50]]);
  const patients = column(60, (kind) => 500 + kind);
  const flows = column(60, (kind) => (kind + 1) / 10);
  const unlike = [[Math.PI, Math.E, Math.SQRT2, Math.sqrt(3), 1.7]];
  const rows: [id: string, words: string, cells: unknown[], most: number][] = [
    [
      "PLAN_CHANCE",
      "1,000 runs of 60 days and 3 kinds of 2 plants",
      [...chance, undefined, [[0.2]], [[0.9]], [[2]], [[1]]],
      60,
    ],
    ["PLAN_CHANCE", "10,000 runs of the same", [...chance, undefined, [[0.2]], [[0.9]], [[2]], [[1]], [[10_000]]], 600],
    ["PLANTS_FOR_PLAN", "2,000 days and up to 1,000 plants", [...count, undefined, [[1000]]], 50],
    ["DELIVERIES_NEEDED", "365 days, a delivery every few", deliveries, 50],
    ["FLOW_AT_LEVEL", "46,000 patients of three kinds", [[[30000, 12000, 4000]], [[5, 10, 0.5]], [[0.95]]], 50],
    ["FLOW_AT_LEVEL", "60 kinds in tenths of a litre", [patients, flows, [[0.95]]], 50],
    ["FLOW_AT_LEVEL", "five kinds without a common step", [[[3, 2, 1.5, 4, 2]], unlike, [[0.95]]], 50],
  ];
  printTable(
    "Long calls in milliseconds. Yardstick: what each may take on an idle core.",
    ["call", "ms", "of the most"],
    rows.map(([id, words, cells, most]) => {
      const call = byId.get(id)! as (...given: unknown[]) => unknown;
      const spent = millisecondsPerCall(() => call(...cells));
      return [`${id}, ${words}`, spent.toFixed(1), ratio(spent, most)];
    }),
  );
}

type BridgedWindow = Window & {
  _richApiNativeBridge: HostBridge;
  CustomFunctions: { associate(id: string, call: (...cells: unknown[]) => unknown): void };
};

async function runtimeCosts(): Promise<void> {
  if (!findBrowser()) {
    console.log("\nIn Microsoft's runtime: left out, no browser found.");
    return;
  }
  if (!fs.existsSync(buildStamp)) await build();
  const server = await startStaticServer({ root: distFolder, port: 0 });
  const browser = await launchBrowser();
  try {
    // The page's own policy forbids scripts from memory, which the measure of parsing below needs.
    const page = await browser.newPage({ bypassCSP: true });
    // What tsx wraps around functions it hands to a page.
    await page.addInitScript("globalThis.__name = (value) => value");
    await page.addInitScript(`(${installHostBridge.toString()})()`);
    await page.goto(`http://localhost:${server.port}/functions.html`);
    const count = smoke ? 200 : 10_000;
    const [once, many, calls, chain] = await page.evaluate(
      async ({ rows, repeats }) => {
        const bridge = (window as unknown as BridgedWindow)._richApiNativeBridge;
        const capacities = Array.from({ length: rows }, (_, row) => [50 + (row % 50)]);
        const median = (spent: number[]): number => spent.sort((a, b) => a - b)[Math.floor(spent.length / 2)]!;
        const timed = async (run: () => Promise<unknown>): Promise<number> => {
          const spent: number[] = [];
          for (let repeat = 0; repeat < repeats; repeat++) {
            const start = performance.now();
            await run();
            spent.push(performance.now() - start);
          }
          return median(spent);
        };
        const rate = [[1.5]];
        const answered = async (call: ReturnType<HostBridge["call"]>): Promise<unknown> => {
          const answer = await call;
          if (!answer.ok) throw new Error(answer.message);
          return answer.value;
        };
        return [
          await timed(() => bridge.call("HOURS_TO_FILL", [[[60]], rate, null, null])),
          await timed(() => bridge.call("HOURS_TO_FILL", [capacities, rate, null, null])),
          await timed(() =>
            Promise.all(capacities.map((capacity) => bridge.call("HOURS_TO_FILL", [[capacity], rate, null, null]))),
          ),
          await timed(async () => {
            let level: unknown = [[0]];
            for (let link = 0; link < 5; link++)
              level = await answered(bridge.call("LEVEL_LEFT", [[[1]], level, [[60]], null, null, [[20]]]));
          }),
        ] as const;
      },
      { rows: count, repeats: smoke ? 1 : 5 },
    );
    printTable(
      `In Microsoft's runtime in Chromium, ${count.toLocaleString("en")} rows of HOURS_TO_FILL. Yardstick: one call of one cell.`,
      ["call", "/ one call", "/ the spilled call"],
      [
        ["one call that spills every row", ratio(many, once), "1.00"],
        ["a call for each row", ratio(calls, once), ratio(calls, many)],
        ["five calls, each fed by the one before", ratio(chain, once), ratio(chain, many)],
      ],
    );

    const [ours, theirs, first] = await page.evaluate(
      async ({ repeats }) => {
        const textOf = async (address: string): Promise<string> => (await fetch(address)).text();
        const load = async (text: string): Promise<number> => {
          const script = document.createElement("script");
          const file = URL.createObjectURL(new Blob([text], { type: "text/javascript" }));
          const start = performance.now();
          await new Promise((resolve, reject) => {
            script.onload = resolve;
            script.onerror = reject;
            script.src = file;
            document.head.append(script);
          });
          return performance.now() - start;
        };
        const calls = new Map<string, (...cells: unknown[]) => unknown>();
        const noteCalls = (): void => {
          const host = (window as unknown as BridgedWindow).CustomFunctions;
          const { associate } = host;
          host.associate = (id, call) => {
            calls.set(id, call);
            associate(id, call);
          };
        };
        const firstCall = (): number => {
          const start = performance.now();
          calls.get("HOURS_TO_FILL")!([[60]], [[1.5]]);
          return performance.now() - start;
        };
        const median = (spent: number[]): number => spent.sort((a, b) => a - b)[Math.floor(spent.length / 2)]!;
        const functions = await textOf("/functions.js");
        const runtime = await textOf("/office/custom-functions-runtime.js");
        const spent: [number[], number[], number[]] = [[], [], []];
        for (let repeat = 0; repeat < repeats; repeat++) {
          noteCalls();
          // A comment of its own keeps the engine from taking what it has parsed before.
          spent[0].push(await load(`/* ${repeat} */${functions}`));
          spent[2].push(firstCall());
          spent[1].push(await load(`/* ${repeat} */${runtime}`));
        }
        return spent.map(median) as [number, number, number];
      },
      { repeats: smoke ? 1 : 15 },
    );
    const size = (file: string): number => gzipSync(fs.readFileSync(path.join(distFolder, file)), { level: 9 }).length;
    const ourSize = size("functions.js");
    const theirSize = size(path.join("office", "custom-functions-runtime.js"));
    printTable(
      "The functions script. Yardstick: Microsoft's custom-functions-runtime.js, which is loaded before it.",
      ["what", "ours", "ours / yardstick"],
      [
        ["size, gzip", `${(ourSize / 1024).toFixed(1)} kB`, ratio(ourSize, theirSize)],
        ["parse and associate", `${ours.toFixed(1)} ms`, ratio(ours, theirs)],
        ["the first call, which sets the functions up", `${first.toFixed(1)} ms`, ratio(first, theirs)],
      ],
    );
  } finally {
    await browser.close();
    await server.close();
  }
}

async function engineCosts(): Promise<void> {
  const { createEngine } = require("../engine/engine") as typeof import("../engine/engine");
  const { functions } =
    require("../catalogue/generated/functions") as typeof import("../catalogue/generated/functions");
  const engine = createEngine(functions);
  const count = smoke ? 20 : 2000;
  const timed = async (formula: (row: number) => string): Promise<number> => {
    const formulas = Array.from({ length: count }, (_, row) => formula(row));
    const start = process.hrtime.bigint();
    await engine.calculate(formulas);
    return Number(process.hrtime.bigint() - start);
  };
  await timed((row) => `=SUM(${row},1)`);
  const builtIn = await timed((row) => `=PMT(0.05,${12 + row},1000,0)`);
  const ours = await timed((row) => `=OXYGEN.HOURS_TO_FILL(${60 + row},1.5)`);
  engine.dispose();
  printTable(
    `In the local engine, ${count.toLocaleString("en")} formulas. Yardstick: as many of its built-in PMT.`,
    ["formulas", "/ built-in PMT"],
    [["OXYGEN.HOURS_TO_FILL", ratio(ours, builtIn)]],
  );
}

async function main(): Promise<void> {
  functionCosts();
  if (wantedIds.length > 0) return;
  oxygenCosts();
  planningCosts();
  slowCorners();
  await engineCosts();
  await runtimeCosts();
  if (sink === Symbol.iterator) console.log("never");
}

main().then(
  () => process.exit(0),
  (fault: unknown) => {
    console.error(fault);
    process.exit(1);
  },
);
