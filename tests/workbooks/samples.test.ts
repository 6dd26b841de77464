import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { readXlsx } from "hucre/xlsx";
import { catalogue } from "../../src/catalogue/catalogue";
import { functions } from "../../src/catalogue/generated/functions";
import { compareWithSaved } from "../../src/engine/compareWithSaved";
import { createEngine } from "../../src/engine/engine";
import { readWorkbook } from "../../src/engine/file/readWorkbook";
import { buildSample, sampleBuilders, samplesFolder } from "../../src/tooling/buildSamples";
import type { WorkbookDescription } from "../../src/workbooks/writer";
import { addressOf, areaOf, placesIn } from "../../src/cells/addresses";
import { readCells, type ReadCell } from "./openXmlSecondReader";
import { assertWorkbookSound } from "./openXmlSound";
import { testValidator, validatorFindings, validatorMark } from "./openXmlValidator";

/** Cells that show an error on purpose: examples of what the functions refuse. */
const errorsOnPurpose: Readonly<Record<string, RegExp>> = {
  "function-checks": /^(?:Checks!E|Tables!|Word tables!)/,
  "this-excel": /^This Excel!(?:B16|B25|B42)$/,
};

/** Most cells of a sheet that may call a custom function: an edit must not keep Excel or the local sheet busy for long. */
const mostCustomCells = 1500;

const builders = sampleBuilders();
const fileOf = (name: string): string => path.join(samplesFolder, `${name}.xlsx`);
const committed = new Map<string, Uint8Array>(
  builders.filter(({ name }) => existsSync(fileOf(name))).map(({ name }) => [name, readFileSync(fileOf(name))]),
);

const partsOf = (bytes: Uint8Array): Map<string, string> =>
  new Map(Object.entries(unzipSync(bytes)).map(([part, content]) => [part, strFromU8(content)]));

const customFunctionsIn = (formula: string): string[] =>
  [...formula.matchAll(/_xldudf_OXYGEN_(\w+)\(/g)].map(([, id]) => id!);

const recompute = async (bytes: Uint8Array) => {
  const engine = createEngine(functions);
  try {
    const saved = readWorkbook(
      bytes,
      functions.map(([id]) => id),
    );
    return compareWithSaved(saved, await engine.calculateWorkbook(saved.sheets, saved.names));
  } finally {
    engine.dispose();
  }
};

interface SheetParts {
  name: string;
  xml: string;
}

const sheetsOf = (bytes: Uint8Array): SheetParts[] => {
  const parts = partsOf(bytes);
  const rels = parts.get("xl/_rels/workbook.xml.rels")!;
  return [...parts.get("xl/workbook.xml")!.matchAll(/<sheet\s[^>]*>/g)].map(([tag]) => {
    const id = /r:id="([^"]+)"/.exec(tag)![1]!;
    const relation = [...rels.matchAll(/<Relationship\s[^>]*>/g)].find(([found]) => found.includes(`Id="${id}"`))![0];
    const target = /Target="([^"]+)"/.exec(relation)![1]!.replace(/^\/?(?:xl\/)?/, "xl/");
    return { name: /name="([^"]+)"/.exec(tag)![1]!.replace(/&amp;/g, "&"), xml: parts.get(target)! };
  });
};

/** Cells open on a protected sheet that no validation covers, read from the file itself. */
const openCellsWithoutValidation = (bytes: Uint8Array): string[] => {
  const styles = partsOf(bytes).get("xl/styles.xml")!.split("<cellXfs")[1]!.split("</cellXfs>")[0]!;
  const looks = styles.match(/<xf [^>]*?(?:\/>|>.*?<\/xf>)/g)!;
  const isOpen = looks.map((look) => /locked="0"/.test(look));
  return sheetsOf(bytes).flatMap(({ name, xml }) => {
    const placesOf = (ranges: readonly string[]): Set<string> =>
      new Set(ranges.flatMap((range) => [...placesIn(areaOf(range))].map(addressOf)));
    const covered = placesOf(
      [...xml.matchAll(/<dataValidation [^>]*sqref="([^"]+)"/g)].flatMap(([, list]) => list!.split(" ")),
    );
    const merges = [...xml.matchAll(/<mergeCell ref="([^"]+)"/g)].map(([, range]) => range!);
    const underMerge = placesOf(merges);
    for (const range of merges) underMerge.delete(range.split(":")[0]!);
    return [...xml.matchAll(/<c r="([A-Z]+\d+)"[^>]*? s="(\d+)"/g)]
      .filter(([, address, look]) => isOpen[Number(look)] && !covered.has(address!) && !underMerge.has(address!))
      .map(([, address]) => `${name}!${address}`);
  });
};

const errorCells = (cells: Map<string, ReadCell>): string[] =>
  [...cells].filter(([, { value }]) => typeof value === "object" && value !== null).map(([at]) => at);

/** Dates come from one reader as dates, from the other as serials. */
const serial = (value: unknown): unknown =>
  value instanceof Date ? value.getTime() / 86_400_000 + 25_569 : value === "" ? null : value;

test("every builder has its workbook in the folder, and every workbook its builder", () => {
  const files = readdirSync(samplesFolder).filter((file) => !file.startsWith("~$") && file.endsWith(".xlsx"));
  expect(files.sort()).toEqual(builders.map(({ name }) => `${name}.xlsx`).sort());
  expect(files.length).toBeGreaterThan(0);
});

describe.each(builders)("samples/$name.xlsx", ({ name, builder }) => {
  const bytes = committed.get(name)!;
  const description = (): WorkbookDescription => (require(builder) as { workbook: WorkbookDescription }).workbook;

  test("is there", () => expect(bytes).toBeDefined());
  if (!bytes) return;
  const cells = readCells(bytes);

  test("has the same bytes each time it is built, those of the committed file", async () => {
    const built = await buildSample(builder);
    expect(Buffer.compare(Buffer.from(await buildSample(builder)), Buffer.from(built))).toBe(0);
    // Not the same: npm run samples, look at the change, commit it.
    expect(Buffer.compare(Buffer.from(bytes), Buffer.from(built))).toBe(0);
  }, 120_000);

  test("shows in every formula cell what the local engine computes", async () => {
    const compared = await recompute(bytes);
    expect(compared.filter(({ area }) => area !== undefined).length).toBe(
      [...cells.values()].filter(({ formula }) => formula !== undefined).length,
    );
    expect(compared.filter(({ differs }) => differs).map(({ sheet, address }) => `${sheet}!${address}`)).toEqual([]);
  }, 120_000);

  test("reads the same with a second reader", async () => {
    const book = await readXlsx(bytes);
    let found = 0;
    for (const sheet of book.sheets) {
      sheet.rows.forEach((row, down) =>
        row.forEach((value, right) => {
          const at = `${sheet.name}!${addressOf({ row: down, column: right })}`;
          const other = cells.get(at)?.value ?? null;
          if (other !== null && typeof other === "object") return;
          const [left, wanted] = [serial(value), serial(other)];
          if (typeof left === "number" && typeof wanted === "number") {
            // A date-time comes through milliseconds.
            expect([at, Math.abs(left - wanted) < 1e-7]).toEqual([at, true]);
          } else {
            expect([at, left]).toEqual([at, wanted]);
          }
          if (left !== null) found++;
        }),
      );
    }
    expect(found).toBeGreaterThan(100);
  });

  test("holds what its builder wrote: constants, formulas, all sheets", () => {
    const { sheets } = description();
    for (const sheet of sheets) {
      for (const [address, { value, formula }] of Object.entries(sheet.cells)) {
        const read = cells.get(`${sheet.name}!${address}`);
        if (formula !== undefined) expect([address, read?.formula !== undefined]).toEqual([address, true]);
        else if (value !== undefined && value !== "" && !/^#/.test(String(value)))
          expect([address, read?.value]).toEqual([address, value]);
      }
    }
    expect(sheetsOf(bytes).map((sheet) => sheet.name)).toEqual(sheets.map((sheet) => sheet.name));
  });

  testValidator(
    `passes the validator of Microsoft's Open XML SDK ${validatorMark}`,
    () => {
      expect(validatorFindings(fileOf(name))).toEqual([]);
    },
    120_000,
  );

  test("is sound beyond what the validator looks at", () => {
    expect(() => assertWorkbookSound(bytes)).not.toThrow();
  });

  test("has a validation on every cell open to the user", () => {
    expect(openCellsWithoutValidation(bytes)).toEqual([]);
  });

  test("shows no error but those on purpose", () => {
    const purpose = errorsOnPurpose[name];
    expect(errorCells(cells).filter((at) => !purpose?.test(at))).toEqual([]);
  });

  test("calls only functions that exist, on no sheet too many", () => {
    const known = new Set(catalogue.map(({ id }) => id));
    const counts = new Map<string, number>();
    for (const [at, { formula }] of cells) {
      const called = customFunctionsIn(formula ?? "");
      for (const id of called) expect([at, id, known.has(id)]).toEqual([at, id, true]);
      const sheet = at.slice(0, at.lastIndexOf("!"));
      if (called.length > 0) counts.set(sheet, (counts.get(sheet) ?? 0) + 1);
    }
    expect(counts.size).toBeGreaterThan(0);
    for (const [sheet, count] of counts) expect([sheet, count <= mostCustomCells]).toEqual([sheet, true]);
  });

  test("begins with a sheet that links to all the others and cautions", () => {
    const [first, ...others] = description().sheets;
    const targets = Object.values(first.cells).flatMap(({ link }) =>
      link ? [link.to.slice(0, link.to.lastIndexOf("!"))] : [],
    );
    for (const { name: sheet, hidden } of others) if (!hidden) expect([...targets]).toContain(sheet);
    expect(Object.values(first.cells).filter(({ role }) => role === "caution").length).toBeGreaterThan(0);
  });

  test("says nothing of the machine it was built on", () => {
    const machinePaths = /\/(?:home|root|tmp|Users|work)\/|[A-Z]:\\/;
    for (const [part, xml] of partsOf(bytes)) expect([part, machinePaths.exec(xml)?.[0]]).toEqual([part, undefined]);
  });
});

test("every function has its examples in the workbook of function checks", () => {
  const bytes = committed.get("function-checks");
  if (!bytes) throw new Error("samples/function-checks.xlsx is not there");
  const called = new Set([...readCells(bytes).values()].flatMap(({ formula }) => customFunctionsIn(formula ?? "")));
  const comparable = catalogue.filter(({ examples }) => examples.some(({ localOnly }) => !localOnly));
  expect(comparable.map(({ id }) => id).filter((id) => !called.has(id))).toEqual([]);
});

/** Each check is given a workbook with the fault it is there for. */
describe("the checks speak up when", () => {
  const bytes = committed.get("quick-checks")!;
  const checksPart = "xl/worksheets/sheet2.xml";

  const altered = (part: string, from: RegExp, to: string): Uint8Array => {
    const parts = unzipSync(bytes);
    const before = strFromU8(parts[part]!);
    const after = before.replace(from, to);
    if (after === before) throw new Error(`Nothing to alter in ${part}`);
    return zipSync({ ...parts, [part]: strToU8(after) });
  };

  test("a cached value is not what the formula gives", async () => {
    const wrong = altered(checksPart, /(_xldudf_OXYGEN_GROSS_DRAW[^<]*<\/f><v>)[^<]*/, "$124");
    expect((await recompute(wrong)).filter(({ differs }) => differs)).toHaveLength(1);
  }, 120_000);

  test("an input loses its validation", () => {
    const wrong = altered(checksPart, /<dataValidation [^]*?<\/dataValidation>/, "");
    expect(openCellsWithoutValidation(wrong)).toHaveLength(1);
  });

  test("a cell shows an error", () => {
    const wrong = altered(checksPart, /(<c r="G6"[^>]*?)( s="\d+"[^]*?<v>)[^<]*/, '$1 t="e"$2#VALUE!');
    expect(errorCells(readCells(wrong))).toEqual(["Checks!G6"]);
  });

  testValidator(
    `the file breaks the schema ${validatorMark}`,
    () => {
      const folder = mkdtempSync(path.join(tmpdir(), "sample-"));
      try {
        const file = path.join(folder, "wrong.xlsx");
        writeFileSync(file, altered(checksPart, /<sheetProtection /, '<sheetProtection unheard="1" '));
        expect(validatorFindings(file).length).toBeGreaterThan(0);
      } finally {
        rmSync(folder, { recursive: true });
      }
    },
    120_000,
  );
});
