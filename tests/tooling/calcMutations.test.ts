/**
 * Workbooks with random damage: each run of calc ends within ten seconds of work in an answer or in a refusal in our own words.
 * The seed is fixed; OXYGEN_MUTATIONS says how many (`npm run mutations` runs 5,000). Damage to the packed bytes that is
 * not refused must leave the answer as it was; damage to the XML within a sound package may change it.
 */
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { calc } from "../../src/tooling/calc";
import { projectFolder } from "../../src/tooling/build";

const count = Number(process.env.OXYGEN_MUTATIONS ?? 300);
/** OXYGEN_MUTATION=<number> runs that one alone. */
const only = process.env.OXYGEN_MUTATION === undefined ? undefined : Number(process.env.OXYGEN_MUTATION);
const slowest = 10_000;

/** mulberry32, a generator of 32 bits of state by Tommy Ettinger, in the public domain. */
const randomFrom = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

const samples = path.join(projectFolder, "samples");
const files = readdirSync(samples)
  .filter((name) => /^[^~.].*\.xlsx$/.test(name))
  .map((name) => new Uint8Array(readFileSync(path.join(samples, name))));

type Damage = (bytes: Uint8Array, below: (most: number) => number) => Uint8Array;

const bytesChanged =
  (change: (part: Uint8Array, below: (most: number) => number) => void): Damage =>
  (bytes, below) => {
    const copy = bytes.slice();
    const at = below(copy.length);
    change(copy.subarray(at, Math.min(copy.length, at + 1 + below(300))), below);
    return copy;
  };

const packed: Damage[] = [
  bytesChanged((part) => part.fill(0xff)),
  bytesChanged((part) => part.fill(0)),
  bytesChanged((part, below) => part.forEach((_, at) => (part[at] = below(256)))),
  bytesChanged((part, below) => (part[0] = part[0]! ^ (1 << below(8)))),
  (bytes, below) => bytes.slice(0, below(bytes.length)),
  (bytes, below) => {
    const at = below(bytes.length);
    return Uint8Array.from([...bytes.subarray(0, at), ...bytes.subarray(at + 1 + below(50))]);
  },
];

/** Pieces that hold the meaning of a sheet: tags, attributes, numbers, names. */
const pieces = /<[^>]*>|[A-Za-z_]+|\d+(?:\.\d+)?|"[^"]*"/g;

const partChanged =
  (change: (text: string, below: (most: number) => number) => string | undefined): Damage =>
  (bytes, below) => {
    const parts = unzipSync(bytes);
    const names = Object.keys(parts).filter((name) => /\.(?:xml|rels)$/.test(name));
    // Half of the damage goes to the sheets.
    const sheets = names.filter((name) => name.includes("worksheets/sheet"));
    const name = below(2) ? sheets[below(sheets.length)]! : names[below(names.length)]!;
    const text = change(strFromU8(parts[name]!), below);
    if (text === undefined) delete parts[name];
    else parts[name] = strToU8(text);
    return zipSync(parts, { level: 1 });
  };

const replacePiece = (text: string, below: (most: number) => number, by: (piece: string) => string): string => {
  const found = [...text.matchAll(pieces)];
  const { 0: piece, index } = found[below(found.length)]!;
  return text.slice(0, index) + by(piece) + text.slice(index + piece.length);
};

const odd = [
  "",
  "0",
  "-1",
  "1e308",
  "NaN",
  "#REF!",
  "&amp;",
  "&#0;",
  "<v>",
  "</row>",
  "A1:XFD1048576",
  "\u0000",
  "999999999999",
];

const withinParts: Damage[] = [
  partChanged(() => undefined),
  partChanged(() => ""),
  partChanged((text, below) => text.slice(0, below(text.length))),
  partChanged((text, below) => replacePiece(text, below, () => odd[below(odd.length)]!)),
  partChanged((text, below) => replacePiece(text, below, (piece) => piece + piece)),
  partChanged((text, below) => replacePiece(text, below, () => "")),
  partChanged((text, below) => {
    const at = below(text.length);
    return text.slice(0, at) + String.fromCharCode(32 + below(95)) + text.slice(at + 1);
  }),
];

interface Outcome {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  readonly milliseconds: number;
}

const folder = mkdtempSync(path.join(tmpdir(), "mutations-"));
afterAll(() => rmSync(folder, { recursive: true }));

const run = async (bytes: Uint8Array): Promise<Outcome> => {
  const file = path.join(folder, "plan.xlsx");
  writeFileSync(file, bytes);
  const out: string[] = [];
  const err: string[] = [];
  // Time of the processor, since a machine with much else to do takes longer.
  const start = process.cpuUsage();
  const code = await calc([file, "--seconds", "60"], { out: (text) => out.push(text), err: (text) => err.push(text) });
  const { user, system } = process.cpuUsage(start);
  return { code, out: out.join("\n"), err: err.join("\n"), milliseconds: (user + system) / 1000 };
};

/** What our own refusals look like; words of a library or of the language are none. */
const ownWords =
  /^plan\.xlsx (?:is damaged: .*\. Copy or download the file again|is no \.xlsx|is empty|is locked|is written in an unusual way|is packed in a way|is a workbook of|unpacks to|has more than|holds macros|counts dates|has formulas that depend on themselves)/;

test(
  `${count} damaged workbooks are answered or refused`,
  async () => {
    const random = randomFrom(20260301);
    const below = (most: number): number => Math.floor(random() * most);
    const whole = new Map<Uint8Array, string>();
    const tally = { answered: 0, refused: 0 };
    const faults: string[] = [];
    for (let index = 0; index < count; index++) {
      const bytes = files[below(files.length)]!;
      // Answers take a second each, so three of four are damage to the packed bytes, which is mostly refused.
      const isPacked = index % 4 !== 3;
      const kinds = isPacked ? packed : withinParts;
      const kind = below(kinds.length);
      const damaged = kinds[kind]!(bytes, below);
      if (only !== undefined && index !== only) continue;
      const { code, out, err, milliseconds } = await run(damaged);
      const name = `${index} (${isPacked ? "packed" : "part"} ${kind})`;
      if (milliseconds > slowest) faults.push(`${name} took ${milliseconds} ms`);
      if (code === 2) {
        tally.refused++;
        if (!ownWords.test(err) || out !== "") faults.push(`${name}: ${err}`);
        continue;
      }
      tally.answered++;
      if (!/formulas fill \d+ cells; /.test(out)) faults.push(`${name}: exit code ${code}, ${err || out}`);
      if (!isPacked) continue;
      if (!whole.has(bytes)) whole.set(bytes, (await run(bytes)).out);
      if (out !== whole.get(bytes)) faults.push(`${name} was answered otherwise than the whole file`);
    }
    expect(faults).toEqual([]);
    if (only !== undefined) return;
    expect(tally.refused).toBeGreaterThan(count / 2);
    expect(tally.answered).toBeGreaterThan(count / 50);
  },
  count * slowest,
);
