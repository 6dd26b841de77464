/**
 * Everyday workbooks of other people's generators (XlsxWriter, openpyxl and Gnumeric: tests/check/ordinary; hucre and
 * @e965/xlsx: made here) hold no oxygen and much that looks like a fault: blanks, units of other places, "ok" beside an
 * IF, first rows that differ, totals, hidden sheets. The check leaves them in peace.
 */
import fs from "node:fs";
import path from "node:path";
import { utils, write } from "@e965/xlsx";
import { writeXlsx } from "hucre/xlsx";
import { catalogue } from "../../src/catalogue/catalogue";
import { checkWorkbook } from "../../src/check/checkWorkbook";
import { checkedWorkbook } from "../../src/engine/checkedWorkbook";
import { readWorkbook } from "../../src/engine/file/readWorkbook";

interface FormulaWithValue {
  formula: string;
  value: number | string;
}
type Placed = [place: string, cell: FormulaWithValue];

const folder = path.join(__dirname, "ordinary");

/** Water drawn by a camp: litres by day, a mean, a target in gallons. */
function waterLog(): Uint8Array {
  const rows: (string | number | null)[][] = [["Date", "Drawn (L)", "People", "L each"]];
  for (let day = 0; day < 28; day++)
    rows.push([46100 + day, 4200 + 35 * ((day * 5) % 9), day % 10 === 7 ? null : 310 + day, null]);
  const sheet = utils.aoa_to_sheet(rows);
  for (let row = 2; row <= 29; row++) {
    sheet[`A${row}`]!.z = "yyyy-mm-dd";
    sheet[`D${row}`] = { t: "n", f: `IF(C${row}="","",B${row}/C${row})`, v: 13 };
  }
  sheet.A30 = { t: "s", v: "Total" };
  sheet.B30 = { t: "n", f: "SUM(B2:B29)", v: 121000 };
  sheet.A31 = { t: "s", v: "Target (gal)" };
  sheet.B31 = { t: "n", v: 1200 };
  sheet.A32 = { t: "s", v: "Over target" };
  sheet.B32 = { t: "n", f: "IFERROR(MAX(B2:B29)/3.785-B31,0)", v: 0 };
  sheet["!ref"] = "A1:D32";
  const book = utils.book_new();
  utils.book_append_sheet(book, sheet, "Water");
  return new Uint8Array(write(book, { type: "array", bookType: "xlsx" }) as ArrayBuffer);
}

/** Travel claims: two sheets, rates looked up, a text that is a number. */
function travelClaims(): Uint8Array {
  const rates = utils.aoa_to_sheet([
    ["Means", "A km"],
    ["Car", 0.31],
    ["Bus", 0.08],
    ["Boat", 0.9],
  ]);
  const claims = utils.aoa_to_sheet([["Form", "Means", "km", "To pay"]]);
  for (let row = 2; row <= 15; row++) {
    claims[`A${row}`] = { t: "s", v: String(1040 + row) };
    claims[`B${row}`] = { t: "s", v: ["Car", "Bus", "Boat"][row % 3] };
    claims[`C${row}`] = { t: "n", v: 12 + row * 3 };
    claims[`D${row}`] = { t: "n", f: `IFERROR(C${row}*VLOOKUP(B${row},Rates!$A$2:$B$4,2,FALSE),0)`, v: 9 };
  }
  claims.C17 = { t: "n", f: "SUM(C2:C15)", v: 525 };
  claims.D17 = { t: "n", f: "SUM(D2:D15)", v: 130 };
  claims["!ref"] = "A1:D17";
  const book = utils.book_new();
  utils.book_append_sheet(book, claims, "Claims");
  utils.book_append_sheet(book, rates, "Rates");
  return new Uint8Array(write(book, { type: "array", bookType: "xlsx" }) as ArrayBuffer);
}

/** Fridge temperatures in °F turned into °C, with a limit and a verdict. */
const fridgeLog = () =>
  writeXlsx({
    sheets: [
      {
        name: "Fridge",
        rows: [
          ["Time", "Top (°F)", "Top (°C)", "Verdict"],
          ...Array.from({ length: 20 }, (_, index) => [
            new Date(Date.UTC(2026, 4, 1, index)),
            38 + (index % 6),
            null,
            null,
          ]),
        ],
        cells: new Map<string, FormulaWithValue>(
          Array.from({ length: 20 }, (_, index) => index + 1).flatMap((row): Placed[] => [
            [`${row},2`, { formula: `(B${row + 1}-32)*5/9`, value: 4 }],
            [`${row},3`, { formula: `IF(C${row + 1}>8,"too warm","ok")`, value: "ok" }],
          ]),
        ),
      },
    ],
  });

/** Seed bought by field, with a hidden list and a name that is also an argument's. */
const seedOrder = () =>
  writeXlsx({
    sheets: [
      {
        name: "Fields",
        rows: [
          ["Field", "Area (m²)", "Rate (kg/m²)", "Seed (kg)"],
          ...[420, 310, 980, 150].map((area, index) => [`F${index + 1}`, area, index === 2 ? 0.021 : 0.018, null]),
        ],
        cells: new Map<string, FormulaWithValue>(
          [1, 2, 3, 4]
            .map((row): Placed => [`${row},3`, { formula: `B${row + 1}*C${row + 1}`, value: 7 }])
            .concat([["5,3", { formula: "SUM(D2:D5)", value: 34 }]]),
        ),
      },
      { name: "Lists", hidden: true, rows: [["Rates"], [0.018], [0.021]] },
    ],
    namedRanges: [{ name: "rate", range: "Lists!$A$2:$A$3" }],
  });

const made: readonly (readonly [name: string, bytes: () => Uint8Array | Promise<Uint8Array>])[] = [
  ["water log", waterLog],
  ["travel claims", travelClaims],
  ["fridge log", fridgeLog],
  ["seed order", seedOrder],
  ...fs
    .readdirSync(folder)
    .filter((file) => file.endsWith(".xlsx"))
    .map((file) => [file, () => new Uint8Array(fs.readFileSync(path.join(folder, file)))] as const),
];

it("has twelve", () => expect(made).toHaveLength(12));

it.each(made)("leaves %s in peace", async (_name, bytes) => {
  const saved = readWorkbook(
    await bytes(),
    catalogue.map(({ id }) => id),
  );
  const { findings, formulas } = checkWorkbook(checkedWorkbook(saved, []), catalogue);
  expect(formulas).toBeGreaterThan(4);
  expect(findings.map(({ rule, sheet, cell, words }) => `${rule} ${sheet}!${cell} ${words}`)).toEqual([]);
});
