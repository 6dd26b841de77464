import type { Example } from "../arguments/about";
import { exampleResult } from "./exampleResult";
import { firstSentence } from "./firstSentence";
import { groups } from "./groups";
import { signature } from "./readmeTable";
import type { FunctionRecord } from "./record";
import { mathML, ruleParts } from "./ruleMath";

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

/** Arithmetic as fractions and roots, the rest as it is written; in a narrow window, which a formula leaves, all as written. */
const ruleShown = (rule: string): string => {
  const parts = ruleParts(rule);
  if (parts.every((part) => "text" in part)) return escaped(rule);
  const typeset = parts.map((part) => ("text" in part ? escaped(part.text) : mathML(part.formula))).join("");
  return `<span class="typeset">${typeset}</span><span class="written">${escaped(rule)}</span>`;
};

const entry = (record: FunctionRecord, number: string): string => `
<article id="${record.id}">
<h3><span class="number">${number}</span> <a href="#${record.id}">${record.id}</a></h3>
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
<div><dt>Rule</dt><dd class="rule">${ruleShown(record.rule)}</dd></div>
<div><dt>Range</dt><dd>${escaped(record.range)}</dd></div>
<div><dt>Source</dt><dd>${escaped(record.source)}</dd></div>
</dl>
<h4>${record.examples.length === 1 ? "Example" : "Examples"}</h4>
<ul>${record.examples.map((example) => exampleEntry(example, record.result)).join("\n")}</ul>
${record.seeAlso.length > 0 ? `<p>See also ${record.seeAlso.map((id) => `<a href="#${id}">${id}</a>`).join(", ")}</p>` : ""}
</article>`;

interface Section {
  readonly name: string;
  readonly title: string;
  readonly members: readonly { readonly record: FunctionRecord; readonly number: string }[];
}

const contents = (sections: readonly Section[]): string =>
  sections
    .map(
      ({ name, title, members }, index) => `<section>
<h3><a href="#group-${name}"><span class="number">${index + 1}</span> ${escaped(title)}</a></h3>
<ul>${members
        .map(
          ({ record, number }) =>
            `<li><a href="#${record.id}">${record.id}</a> <span class="number">${number}</span> ${escaped(firstSentence(record.description))}</li>`,
        )
        .join("\n")}</ul>
</section>`,
    )
    .join("\n");

/** Words that stand in names and tell nothing by themselves. */
const unindexed = new Set(["at", "by", "for", "from", "in", "of", "on", "per", "to", "up"]);

/** Every telling word of the names, with the functions whose names hold it and where they stand. */
const wordIndex = (sections: readonly Section[]): string => {
  const places = new Map<string, string[]>();
  for (const { members } of sections) {
    for (const { record, number } of members) {
      for (const word of record.id.toLowerCase().split("_")) {
        if (unindexed.has(word)) continue;
        places.set(word, [...(places.get(word) ?? []), `<a href="#${record.id}">${record.id}</a> ${number}`]);
      }
    }
  }
  return [...places]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([word, links]) => `<div><dt>${escaped(word)}</dt><dd>${links.join(", ")}</dd></div>`)
    .join("\n");
};

/**
 * The help page: every function with its formula, units, range, source and examples, numbered by group, with contents and
 * an index. It reads and prints without its script, which only searches.
 */
export function helpPage(records: readonly FunctionRecord[], policy: string): string {
  const sections: Section[] = groups
    .map(({ name, title }) => ({ name, title, members: records.filter((record) => record.group === name) }))
    .filter(({ members }) => members.length > 0)
    .map(({ name, title, members }, group) => ({
      name,
      title,
      members: members.map((record, place) => ({ record, number: `${group + 1}.${place + 1}` })),
    }));
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
<script src="help.js" defer></script>
</head>
<body>
<header>
<h1>Oxygen Supply Functions</h1>
<p>All ${records.length} functions of the namespace OXYGEN. A number in a cell is in the unit named beside the argument; text may carry another unit, such as "85 °F" or "35 psi". Planning figures: the clinician, the plant's maker, local codes and licensed practice decide.</p>
</header>
<form id="search" role="search" hidden>
<label for="question">Search: a name, or a question in your own words</label>
<input id="question" type="search" autocomplete="off" spellcheck="false">
<p id="found" role="status"></p>
<ol id="results"></ol>
</form>
<nav aria-labelledby="contents">
<h2 id="contents">Contents</h2>
${contents(sections)}
<p><a href="#index">Index of words</a></p>
</nav>
<main>
${sections
  .map(
    ({ name, title, members }, index) =>
      `<section class="group"><h2 id="group-${name}"><span class="number">${index + 1}</span> ${escaped(title)}</h2>${members.map(({ record, number }) => entry(record, number)).join("\n")}</section>`,
  )
  .join("\n")}
<section class="group">
<h2 id="index">Index of words</h2>
<p>Numbers are those of the entries: the group, then the place in it.</p>
<dl class="index">
${wordIndex(sections)}
</dl>
</section>
</main>
</body>
</html>
`;
}
