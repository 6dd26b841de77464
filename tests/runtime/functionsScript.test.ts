import { readFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";
import { gzipSync } from "node:zlib";
import moduleLoader from "@jitl/quickjs-wasmfile-release-sync/emscripten-module";
import { QuickJSFFI } from "@jitl/quickjs-wasmfile-release-sync/ffi";
import { parse } from "acorn";
import { newQuickJSWASMModuleFromVariant, type QuickJSSyncVariant } from "quickjs-emscripten-core";
import { evaluateCall, parseConstantFormula } from "../../src/catalogue/constantFormula";
import type { FunctionRecord } from "../../src/catalogue/record";
import { projectFolder } from "../../src/tooling/build";
import { buildTimeout, builtFiles } from "../builtFiles";
import { exampleDifference } from "../exampleDifference";
import { es2016Context } from "./es2016Context";

describe.each(["functions", "functions-perpetual"])("%s.js", (name) => {
  let script: string;
  let records: FunctionRecord[];

  beforeAll(() => {
    script = readFileSync(path.join(builtFiles(), `${name}.js`), "utf8");
    const file = path.join(projectFolder, "src", "catalogue", "generated", "records.json");
    records = JSON.parse(readFileSync(file, "utf8")) as FunctionRecord[];
  }, buildTimeout);

  /** The stand-in for the host. Cells go in and out as JSON, in which an omitted argument is null. */
  const standIn = `
  var calls = {};
  var CustomFunctions = {
    associate: function (id, call) { calls[id] = call; },
    Error: function (code, message) { this.code = code; this.message = message; }
  };
  function run(id, cells) { return JSON.stringify(calls[id].apply(null, JSON.parse(cells))); }
`;

  /** QuickJS without the dynamic imports of the package's own entry, which Jest does not take. */
  const quickJs: QuickJSSyncVariant = {
    type: "sync",
    importFFI: () => Promise.resolve(QuickJSFFI),
    importModuleLoader: () => Promise.resolve(moduleLoader),
  };

  /** Evaluates scripts in an engine of its own; the result is a text. */
  type Engine = (code: string) => string;

  const wrongExamples = (evaluate: Engine): string[] => {
    evaluate(standIn);
    evaluate(script);
    const callById =
      (id: string) =>
      (...cells: unknown[]): never[][] =>
        JSON.parse(evaluate(`run(${JSON.stringify(id)}, ${JSON.stringify(JSON.stringify(cells))})`));
    return records.flatMap(({ examples }) =>
      examples.flatMap((example) => {
        const got = evaluateCall(parseConstantFormula(example.formula), callById) as never[][];
        if (example.localOnly) return /local engine/.test(JSON.stringify(got)) ? `${example.formula}: ${got}` : [];
        return exampleDifference(example, got) ?? [];
      }),
    );
  };

  describe("the functions script", () => {
    it("parses as ES2016", () => {
      expect(() => parse(script, { ecmaVersion: 2016 })).not.toThrow();
      expect(() => parse(`${script};async () => 1`, { ecmaVersion: 2016 })).toThrow();
    });

    // One character beyond Latin-1 makes an engine keep the whole text in two bytes a character.
    it("is written in ASCII", () => {
      expect(Buffer.byteLength(script)).toBe(script.length);
    });

    it("names nothing the JavaScript-only runtime lacks", () => {
      for (const lacking of [
        /\bglobalThis\b/,
        /\bIntl\b/,
        /\bWebAssembly\b/,
        /\b(?:local|session)Storage\b/,
        /\bdocument\b/,
        /\bfetch\(/,
        /\beval\(/,
        /new Function\b/,
        /\bBigInt\(/,
      ])
        expect([lacking.source, lacking.exec(script)?.[0]]).toEqual([lacking.source, undefined]);
    });

    // 175 functions came to 423 bytes each, of which their own words were 170; zod, the solver and the readers are in it.
    it("keeps its names to itself, so that it can be loaded again", () => {
      const context = es2016Context();
      const globals = (): string => vm.runInContext("Object.getOwnPropertyNames(this).join()", context) as string;
      vm.runInContext(standIn, context);
      const before = globals();
      vm.runInContext(script, context);
      expect(() => vm.runInContext(script, context)).not.toThrow();
      expect(globals()).toBe(before);
    });

    it("is small for the number of its functions", () => {
      expect(gzipSync(Buffer.from(script), { level: 9 }).length / records.length).toBeLessThan(450);
    });

    it("gives the value of every example in a bare context that has ES2016 only", () => {
      const context = es2016Context();
      const evaluate: Engine = (code) => vm.runInContext(code, context) as string;
      for (const newer of [
        "globalThis",
        "Intl",
        "BigInt",
        "console",
        "setTimeout",
        "URL",
        "WebAssembly",
        "Object.entries({})",
        "Object.fromEntries([])",
        "Object.getOwnPropertyDescriptors({})",
        "[].flat()",
        "[].flatMap(Number)",
        "[].at(0)",
        "''.padStart(2)",
        "''.replaceAll('a','b')",
        "''.matchAll(/a/g)",
        "''.trimEnd()",
        "Promise.allSettled([])",
        "new Map().groupBy()",
        "[1].values().map(Number)",
      ])
        expect(() => evaluate(newer)).toThrow();
      for (const known of [
        "[1].includes(1)",
        "2 ** 2",
        "new Map([[1, 2]]).get(1)",
        "'a'.repeat(2)",
        "Math.hypot(3, 4)",
      ])
        expect(() => evaluate(known)).not.toThrow();
      expect(wrongExamples(evaluate)).toEqual([]);
    }, 60_000);

    it("gives the value of every example in QuickJS", async () => {
      const context = (await newQuickJSWASMModuleFromVariant(quickJs)).newContext();
      const evaluate: Engine = (code) => {
        const handle = context.unwrapResult(context.evalCode(code));
        const value = context.dump(handle) as string;
        handle.dispose();
        return value;
      };
      expect(evaluate("typeof window + typeof process")).toBe("undefinedundefined");
      expect(wrongExamples(evaluate)).toEqual([]);
      context.dispose();
    }, 240_000);

    it("hands a fault to every cell that it spoils in words, and none of it to the others", () => {
      const context = es2016Context();
      vm.runInContext(standIn, context);
      vm.runInContext(script, context);
      const result = JSON.parse(
        vm.runInContext(
          `run("HOURS_TO_FILL", ${JSON.stringify('[[[60],["sixty"],[null]],[[1.5]],null,null]')})`,
          context,
        ),
      );
      // An empty 60 L vessel at 1.5 L/h after 3 h: 3 + 60/1.5 = 43.
      expect(result).toEqual([
        [43],
        [{ code: "#VALUE!", message: expect.stringContaining("capacity") }],
        [{ code: "#VALUE!", message: expect.stringContaining("capacity") }],
      ]);
    });
  });
});
