/**
 * Prints the rows of CONSTANTS and every text that the builders of the sample workbooks write into a file: cells, formulas,
 * prompts, refusals.
 */
import { constantRows } from "../../src/models/constants";
import { sampleBuilders } from "../../src/tooling/buildSamples";

function textsIn(part: unknown): string[] {
  if (typeof part === "string") return [part];
  return typeof part === "object" && part !== null ? Object.values(part).flatMap(textsIn) : [];
}

for (const { name, value, unit, source } of constantRows) console.log(`${name}: ${value} ${unit}: ${source}`);
for (const { builder } of sampleBuilders())
  console.log(textsIn((require(builder) as { workbook: unknown }).workbook).join("\n"));
