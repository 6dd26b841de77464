/**
 * The library as another program has it: built into a folder of its own and reached through a package's name, in Node by
 * itself. Every example of every function gives its stated value; wrong use of types is refused by TypeScript.
 */
import { execFileSync, spawnSync } from "node:child_process";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { argumentCells, parseConstantFormula } from "../../src/catalogue/constantFormula";
import { readCatalogue } from "../../src/catalogue/readCatalogue";
import { buildLibrary } from "../../src/tooling/buildLibrary";
import { exampleDifference } from "../exampleDifference";

const project = path.join(__dirname, "..", "..");
let folder: string;

beforeAll(async () => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), "library-"));
  const place = path.join(folder, "node_modules", "oxygen-supply-functions");
  expect(await buildLibrary(place)).toEqual({ functions: 181, models: expect.any(Number) });
}, 120_000);

afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

const run = (code: string, input = ""): string => {
  const file = path.join(folder, "program.mjs");
  fs.writeFileSync(file, code);
  return execFileSync(process.execPath, [file], { cwd: folder, encoding: "utf8", input });
};

it("gives every example of every function", () => {
  const found = readCatalogue();
  const callById = (id: string) => found.find(({ record }) => record.id === id)?.call;
  const asked = found.flatMap(({ record, exportName }) =>
    record.examples.map((example) => {
      const cells = argumentCells(parseConstantFormula(example.formula), callById);
      // Plain values where a cell is given; an argument left out is null here, since JSON has no undefined.
      const given = cells.map((each) =>
        each === undefined ? null : each.length === 1 && each[0]!.length === 1 ? each[0]![0] : each,
      );
      return { exportName, given, example };
    }),
  );
  const plain = asked.filter(({ given }) => given.flat(2).every((each) => typeof each !== "object" || each === null));
  expect(plain.length).toBeGreaterThan(0.98 * asked.length);
  const answers = JSON.parse(
    run(
      `import * as library from "oxygen-supply-functions";
       import { readFileSync } from "node:fs";
       const asked = JSON.parse(readFileSync(0, "utf8"));
       const answer = ([name, given]) => library[name](...given.map((each) => each ?? undefined));
       console.log(JSON.stringify(asked.map(answer)));`,
      JSON.stringify(plain.map(({ exportName, given }) => [exportName, given])),
    ),
  ) as unknown[];
  const wrong = plain.flatMap(({ example }, index) => {
    const answer = answers[index] as never;
    // THIS_EXCEL tells what was handed over, and a blank cell is not handed over here.
    if (example.formula.includes("THIS_EXCEL")) return [];
    return exampleDifference(example, Array.isArray(answer) ? answer : [[answer]]) ?? [];
  });
  expect(wrong).toEqual([]);
});

it("reads dates, lists and blanks as a sheet does, and turns serials into dates", () => {
  expect(
    JSON.parse(
      run(`import { dateOf, fullAt, hoursToFill, isError, serialOf } from "oxygen-supply-functions";
        import { hoursToFill as hours } from "oxygen-supply-functions/models/making";
        import { findRecord } from "oxygen-supply-functions/catalogue";
        const full = fullAt(new Date("2026-03-01T06:00:00Z"), 60, 1.5, 0, 3);
        const blank = hoursToFill(null, 1.5);
        console.log(JSON.stringify([serialOf(new Date("2026-03-01T00:00:00Z")), dateOf(full), hoursToFill([60, 66], 1.5, 0, 3),
          hoursToFill([[60, 66]], 1.5, 0, 3), isError(blank), blank.message, hours(60, 1.5, 0, 3), findRecord("HOURS_TO_FILL").id]));`),
    ),
  ).toEqual([
    // ECMA-376 part 1, 18.17.4.1: serial 1 is 1 January 1900, and its worked values; 46082 from memory of the same system.
    46082,
    "2026-03-03T01:00:00.000Z",
    [[43], [47]],
    [[43, 47]],
    true,
    expect.stringContaining("capacity is blank"),
    43,
    "HOURS_TO_FILL",
  ]);
});

it("is typed: TypeScript takes right use and refuses wrong use", () => {
  const file = path.join(folder, "use.mts");
  fs.writeFileSync(
    file,
    `import { dateOf, hoursToFill, isError, sourceOf, stockPlan, type Answer } from "oxygen-supply-functions";
     import { catalogue } from "oxygen-supply-functions/catalogue";
     import { hoursToFill as hours } from "oxygen-supply-functions/models/making";
     const one: Answer<number> = hoursToFill(60, "1.5 L/h");
     const many: Answer<number>[][] = hoursToFill([60, 66], 1.5);
     const text: Answer<string> = sourceOf("HOURS_TO_FILL");
     const table: Answer[][] = stockPlan([new Date()], [12], [0], [24], [[2, "2026-02-01", 24, 1.2, 50]], 70);
     const plain: number = hours(60, 1.5, 0, 3);
     const names: string[] = catalogue.map(({ id }) => id);
     if (!isError(one)) dateOf(one);
     // @ts-expect-error an error is no number
     const sum: number = one + 1;
     // @ts-expect-error the rate is missing
     hoursToFill(60);
     // @ts-expect-error one argument too many
     hoursToFill(60, 1.5, 0, 3, 1);
     // @ts-expect-error no cell holds an object
     hoursToFill({ capacity: 60 }, 1.5);
     // @ts-expect-error a source is text
     const wrong: number = sourceOf("HOURS_TO_FILL");
     export { many, text, table, plain, names, sum, wrong };`,
  );
  const told = spawnSync(
    process.execPath,
    [
      require.resolve("typescript/bin/tsc"),
      ...["--noEmit", "--strict", "--target", "ES2022", "--module", "NodeNext", "--moduleResolution", "NodeNext"],
      ...["--types", "node", "--typeRoots", path.join(project, "node_modules", "@types"), file],
    ],
    { cwd: folder, encoding: "utf8" },
  );
  expect(told.stdout).toBe("");
  expect(told.status).toBe(0);
});

it("spreads ten thousand sites over threads and counts none as covered that it can't answer", () => {
  const example = path.join(folder, "manySites.mjs");
  fs.copyFileSync(path.join(project, "samples", "many-sites", "manySites.mjs"), example);
  const told = (threads: string) =>
    execFileSync(process.execPath, [example, "10000", threads], {
      encoding: "utf8",
      stdio: ["ignore", "pipe", "ignore"],
    });
  const two = told("2");
  expect(two).toBe(told("3"));
  const [, short, unanswered, covered] = /10000 sites.*: (\d+) run short,\n(\d+) could.*?(\d+) are covered/
    .exec(two)!
    .map(Number);
  // The example plants two entries to check in every 500 sites.
  expect(unanswered).toBe(40);
  expect(short! + unanswered! + covered!).toBe(10000);
  expect(short).toBeGreaterThan(0);
  expect(two).toContain("Site 00007 CHECK: need is blank");
});
