import type { Example } from "../arguments/about";
import { exampleResult } from "./exampleResult";
import { groups } from "./groups";
import { signature } from "./readmeTable";
import type { FunctionRecord } from "./record";

const escaped = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");

const resultOf = (example: Example, result: FunctionRecord["result"]): string => {
  const shown = exampleResult(example, result);
  if (shown.kind === "value") return `<b>${escaped(shown.text)}</b>`;
  if (shown.kind === "error") return `<b>${escaped(shown.code)}</b> ${escaped(shown.words)}`;
  const head = shown.head
    ? `<thead><tr>${shown.head.map((cell) => `<th scope="col">${escaped(cell)}</th>`).join("")}</tr></thead>`
    : "";
  const rows = shown.rows.map((row) => `<tr>${row.map((cell) => `<td>${escaped(cell)}</td>`).join("")}</tr>`).join("");
  return `<div class="scroll" tabindex="0" role="group" aria-label="Result table"><table>${head}<tbody>${rows}</tbody></table></div>`;
};

const exampleEntry = (example: Example, result: FunctionRecord["result"]): string =>
  `<li><code>${escaped(example.formula)}</code> gives ${resultOf(example, result)}${example.note ? `<br><small>${escaped(example.note)}</small>` : ""}${
    example.source ? `<br><small>Value from: ${escaped(example.source)}</small>` : ""
  }</li>`;

const entry = (record: FunctionRecord): string => `
<article id="${record.id}">
<h3><a href="#${record.id}">${record.id}</a></h3>
<p>${escaped(record.description)}</p>
<p class="signature"><code>=OXYGEN.${escaped(signature(record))}</code></p>
${record.caution ? `<p class="caution"><b>Caution.</b> ${escaped(record.caution)}</p>` : ""}
<dl>
${record.arguments
  .map(
    (argument) =>
      `<div><dt><code>${argument.name}</code>${argument.optional ? ' <span class="unit">optional</span>' : ""}</dt><dd>${escaped(argument.description)}${argument.choices ? ` (${escaped(argument.choices.join(", "))})` : ""}${argument.shape === "range" ? ". A range." : ""}</dd></div>`,
  )
  .join("\n")}
<div><dt>Result</dt><dd>${escaped(record.result.description)}${record.result.table ? ". A table that spills." : ""}</dd></div>
<div><dt>Rule</dt><dd>${escaped(record.rule)}</dd></div>
<div><dt>Range</dt><dd>${escaped(record.range)}</dd></div>
<div><dt>Source</dt><dd>${escaped(record.source)}</dd></div>
</dl>
<h4>${record.examples.length === 1 ? "Example" : "Examples"}</h4>
<ul>${record.examples.map((example) => exampleEntry(example, record.result)).join("\n")}</ul>
${record.seeAlso.length > 0 ? `<p>See also ${record.seeAlso.map((id) => `<a href="#${id}">${id}</a>`).join(", ")}</p>` : ""}
</article>`;

/** The help page: every function with its formula, units, range, source and examples. No script, so it prints as it is. */
export function helpPage(records: readonly FunctionRecord[], policy: string): string {
  const sections = groups
    .map(({ name, title }) => ({ name, title, members: records.filter((record) => record.group === name) }))
    .filter(({ members }) => members.length > 0);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${escaped(policy)}">
<title>Help · Oxygen Supply Functions</title>
<link rel="icon" href="icons/icon-32.png">
<link rel="stylesheet" href="palette.css">
<link rel="stylesheet" href="help.css">
</head>
<body>
<header>
<h1>Oxygen Supply Functions</h1>
<p>All ${records.length} functions of the namespace OXYGEN. A number in a cell is in the unit named beside the argument; text may carry another unit, such as "85 °F" or "35 psi". Planning figures: the clinician, the plant's maker, local codes and licensed practice decide.</p>
</header>
<nav aria-label="Functions">
${sections
  .map(
    ({ name, title, members }) =>
      `<section><h2><a href="#group-${name}">${escaped(title)}</a></h2><p>${members.map((record) => `<a href="#${record.id}">${record.id}</a>`).join(" ")}</p></section>`,
  )
  .join("\n")}
</nav>
<main>
${sections.map(({ name, title, members }) => `<section><h2 id="group-${name}">${escaped(title)}</h2>${members.map(entry).join("\n")}</section>`).join("\n")}
</main>
</body>
</html>
`;
}
