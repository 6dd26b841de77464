import path from "node:path";
import { calc } from "../../src/tooling/calc";

const sample = (name: string): string => path.join(__dirname, "..", "..", "samples", name);

const run = async (...argv: string[]): Promise<{ code: number; out: string[]; err: string[] }> => {
  const [out, err]: string[][] = [[], []];
  const code = await calc(argv, { out: (text) => out!.push(text), err: (text) => err!.push(text) });
  return { code, out: out!, err: err! };
};

test("--check finds nothing in a sound workbook and ends with 0", async () => {
  const { code, out } = await run(sample("quick-checks.xlsx"), "--check");
  expect(code).toBe(0);
  expect(out.at(-1)).toMatch(/^0 findings in \d+ formulas$/);
}, 60_000);

test("--check prints a line a finding, with other inputs too, and ends with 1", async () => {
  const { code, out } = await run(sample("quick-checks.xlsx"), "--set", "Checks!C6=", "--check");
  expect(code).toBe(1);
  expect(out[0]).toMatch(/^DANGER\tChecks!G6\todd input: capacity of HOURS_TO_FILL points at a blank cell/);
  expect(out.at(-1)).toMatch(/^1 finding in/);
}, 60_000);

test("--check --json prints one object a line", async () => {
  const { out, err } = await run(sample("quick-checks.xlsx"), "--set", "Checks!C6=", "--check", "--json");
  expect(out.map((line) => JSON.parse(line) as object)).toEqual([
    expect.objectContaining({ sheet: "Checks", cell: "G6", rule: "odd input", severity: "danger" }),
  ]);
  expect(err.join("\n")).toContain("1 finding in");
}, 60_000);

test("--check needs a workbook", async () => {
  const { code, err } = await run("=1+1", "--check");
  expect([code, err.join("\n")]).toEqual([2, expect.stringContaining("--check needs a workbook")]);
});
