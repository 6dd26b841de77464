import fs from "node:fs";
import path from "node:path";
import { catalogue } from "../../src/catalogue/catalogue";
import { checkWorkbook } from "../../src/check/checkWorkbook";
import { checkedWorkbook } from "../../src/engine/checkedWorkbook";
import { readWorkbook } from "../../src/engine/file/readWorkbook";

const folder = path.join(__dirname, "..", "..", "samples");
const samples = fs.readdirSync(folder).filter((file) => file.endsWith(".xlsx"));

it.each(samples)("finds nothing wrong in %s", (file) => {
  const saved = readWorkbook(
    fs.readFileSync(path.join(folder, file)),
    catalogue.map(({ id }) => id),
  );
  const { findings, formulas } = checkWorkbook(checkedWorkbook(saved, []), catalogue);
  expect(formulas).toBeGreaterThan(30);
  expect(findings.map(({ rule, sheet, cell }) => `${rule} ${sheet}!${cell}`)).toEqual([]);
});
