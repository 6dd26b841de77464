import { posix } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { addressOf, areaOf, cellName, overlaps, placesIn, rangeOf, type Area } from "../../src/cells/addresses";

/**
 * What the Open XML SDK's validator lets pass and Excel does not: it repairs the file, drops the part or shows #NAME?.
 * Sources: ECMA-376 part 1 (18.3 worksheets, 18.5 tables, 18.8 styles), [MS-XLSX] 2.2.2 for the prefixes of functions,
 * "Excel specifications and limits" for the lengths. Where none is named: common practice, no source.
 */

interface Part {
  path: string;
  xml: string;
}

const unescape = (xml: string): string =>
  xml
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&apos;/g, "'")
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)))
    .replace(/&amp;/g, "&");

interface Element {
  attributes: Record<string, string>;
  content: string;
}

const elements = (xml: string, tag: string): Element[] =>
  [...xml.matchAll(new RegExp(`<${tag}((?:\\s[^>]*?)?)(?:/>|>([^]*?)</${tag}>)`, "g"))].map((found) => ({
    attributes: Object.fromEntries(
      [...found[1]!.matchAll(/([\w:]+)="([^"]*)"/g)].map((pair) => [pair[1]!, unescape(pair[2]!)]),
    ),
    content: found[2] ?? "",
  }));

const first = (xml: string, tag: string): Element | undefined => elements(xml, tag)[0];

const withoutTexts = (formula: string): string => formula.replace(/"(?:[^"]|"")*"/g, '""');

const sheetsNamedIn = (formula: string): string[] =>
  [...withoutTexts(formula).matchAll(/(?:'((?:[^']|'')+)'|([\p{L}_][\p{L}\p{N}_.]*))!/gu)].map(
    (found) => found[1]?.replace(/''/g, "'") ?? found[2]!,
  );

const volatile = /\b(?:NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY|OFFSET|INDIRECT|INFO|CELL)\(/i;
const newerBuiltIn =
  /(?<![\w.])(?:LET|LAMBDA|FILTER|SORT|SORTBY|UNIQUE|SEQUENCE|XLOOKUP|XMATCH|IFNA|IFS|TEXTJOIN|HSTACK|VSTACK|TAKE|DROP|CHOOSECOLS|CHOOSEROWS|MAP|REDUCE|BYROW|BYCOL|CONCAT|MAXIFS|MINIFS|SWITCH)\(/i;

const formulaFaults = (formula: string, sheetNames: readonly string[]): string[] => {
  const bare = withoutTexts(formula);
  const faults: string[] = [];
  let depth = 0;
  for (const character of bare.replace(/'[^']*'!/g, "")) {
    if (character === "(") depth++;
    if (character === ")" && --depth < 0) break;
  }
  if (depth !== 0) faults.push("its parentheses don't match");
  if (bare.startsWith("=")) faults.push('it starts with "="');
  if (volatile.test(bare)) faults.push("it is volatile");
  if (/\bOXYGEN\./i.test(bare)) faults.push("its custom function lacks the stored prefix");
  if (newerBuiltIn.test(bare)) faults.push("a newer built-in lacks its _xlfn prefix");
  if (/(?:\$?[A-Z]+\$?\d+|[)\w])#(?!REF)/.test(bare)) faults.push("it holds a typed spill reference");
  for (const name of sheetsNamedIn(formula)) {
    if (!sheetNames.includes(name)) faults.push(`it names the sheet "${name}", which is not there`);
  }
  return faults.map((fault) => `"${formula}": ${fault}`);
};

const styleFaults = (styles: string): string[] => {
  const count = (list: string, tag: string): number => elements(first(styles, list)?.content ?? "", tag).length;
  const have = { fontId: count("fonts", "font"), fillId: count("fills", "fill"), borderId: count("borders", "border") };
  const formatIds = elements(first(styles, "numFmts")?.content ?? "", "numFmt").map(({ attributes }) =>
    Number(attributes.numFmtId),
  );
  const faults = elements(first(styles, "cellXfs")?.content ?? "", "xf").flatMap(({ attributes }, index) => [
    ...Object.entries(have).flatMap(([id, many]) =>
      Number(attributes[id]) >= many ? [`style ${index} has ${id} ${attributes[id]}, of ${many}`] : [],
    ),
    ...(Number(attributes.numFmtId) >= 164 && !formatIds.includes(Number(attributes.numFmtId))
      ? [`style ${index} has a number format that is not there`]
      : []),
  ]);
  return new Set(formatIds).size === formatIds.length ? faults : [...faults, "two number formats share an id"];
};

interface Surroundings {
  sheetNames: readonly string[];
  sharedStrings: number;
  styles: number;
  differentials: number;
  cellMetadata: number;
}

const sheetFaults = (sheet: Part, around: Surroundings): string[] => {
  const faults: string[] = [];
  const arrays: { at: string; area: Area }[] = [];
  const withFormula = new Set<string>();
  let lastRow = 0;
  for (const row of elements(sheet.xml, "row")) {
    if (Number(row.attributes.r) <= lastRow) faults.push(`row ${row.attributes.r} is out of order`);
    lastRow = Number(row.attributes.r);
  }
  for (const { attributes, content } of elements(sheet.xml, "c")) {
    const { r: at = "?", s, t, cm } = attributes;
    const formula = first(content, "f");
    const value = first(content, "v");
    if (s !== undefined && Number(s) >= around.styles) faults.push(`${at} has style ${s}, of ${around.styles}`);
    if (t === "s" && !(Number(value?.content) < around.sharedStrings)) {
      faults.push(`${at} has shared string ${value?.content}, of ${around.sharedStrings}`);
    }
    if (cm !== undefined && !(Number(cm) >= 1 && Number(cm) <= around.cellMetadata)) {
      faults.push(`${at} points to cell metadata ${cm}, of ${around.cellMetadata}`);
    }
    if (value && unescape(value.content) === "#NAME?") faults.push(`${at} has #NAME? as its cached value`);
    if (t === "n" || t === undefined) {
      if (value && !/^-?\d+(\.\d+)?(e[+-]?\d+)?$/i.test(value.content)) faults.push(`${at} holds no number`);
    }
    if (!formula) continue;
    withFormula.add(at);
    if (!value) faults.push(`${at} has a formula and no cached value`);
    const text = unescape(formula.content);
    faults.push(...formulaFaults(text, around.sheetNames).map((fault) => `${at} ${fault}`));
    if (formula.attributes.t === "array") {
      const area = areaOf(formula.attributes.ref ?? at);
      if (cm === undefined) faults.push(`${at} is an array formula without the dynamic mark`);
      if (cellName(area.startRow, area.startColumn) !== at)
        faults.push(`${at} fills ${formula.attributes.ref}, which starts elsewhere`);
      const clash = arrays.find((other) => overlaps(other.area, area));
      if (clash) faults.push(`${at} and ${clash.at} fill the same cells`);
      arrays.push({ at, area });
    } else {
      if (cm !== undefined) faults.push(`${at} has the dynamic mark and a plain formula`);
      if (text.includes("_xldudf_")) faults.push(`${at} calls a custom function in a plain formula`);
    }
  }
  for (const { at, area } of arrays) {
    for (const place of placesIn(area)) {
      const address = addressOf(place);
      if (address !== at && withFormula.has(address)) faults.push(`${at} fills ${address}, which has its own formula`);
    }
  }

  for (const { attributes, content } of elements(sheet.xml, "dataValidation")) {
    const where = `the validation of ${attributes.sqref}`;
    const list = unescape(first(content, "formula1")?.content ?? "");
    if (attributes.type === "list" && list.startsWith('"') && list.length - 2 > 255) {
      faults.push(`${where} lists ${list.length - 2} characters, 255 at most`);
    }
    if (attributes.type === "list" && list === "") faults.push(`${where} has no list`);
    if ((attributes.promptTitle?.length ?? 0) > 32) faults.push(`${where} has too long a prompt title`);
    if ((attributes.errorTitle?.length ?? 0) > 32) faults.push(`${where} has too long a refusal title`);
    if ((attributes.prompt?.length ?? 0) > 255) faults.push(`${where} has too long a prompt`);
    if ((attributes.error?.length ?? 0) > 225) faults.push(`${where} has too long a refusal`);
    for (const name of sheetsNamedIn(list)) {
      if (!around.sheetNames.includes(name)) faults.push(`${where} names the sheet "${name}", which is not there`);
    }
    if (/_xldudf_|OXYGEN\./.test(content)) faults.push(`${where} calls a custom function`);
  }

  const priorities = elements(sheet.xml, "cfRule").map(({ attributes }) => attributes.priority);
  if (new Set(priorities).size !== priorities.length) faults.push("two conditional formats share a priority");
  for (const { attributes, content } of elements(sheet.xml, "cfRule")) {
    if (attributes.dxfId !== undefined && Number(attributes.dxfId) >= around.differentials) {
      faults.push(`a conditional format has look ${attributes.dxfId}, of ${around.differentials}`);
    }
    if (/_xldudf_|OXYGEN\./.test(content)) faults.push("a conditional format calls a custom function");
  }

  const merges = elements(sheet.xml, "mergeCell").map(({ attributes }) => areaOf(attributes.ref!));
  merges.forEach((merge, index) => {
    if (merges.slice(0, index).some((other) => overlaps(merge, other))) faults.push("two merged areas overlap");
    if (arrays.some(({ area }) => overlaps(merge, area) && rangeOf(area).includes(":"))) {
      faults.push("a table spills over merged cells");
    }
  });

  for (const { attributes } of elements(sheet.xml, "hyperlink")) {
    for (const name of sheetsNamedIn(attributes.location ?? "")) {
      if (!around.sheetNames.includes(name)) faults.push(`a link leads to the sheet "${name}", which is not there`);
    }
  }
  if (/<sheetProtection[^>]*(?:password|hashValue)=/.test(sheet.xml)) faults.push("it is protected with a password");
  return faults.map((fault) => `${sheet.path}: ${fault}`);
};

const relationshipFaults = (parts: ReadonlyMap<string, string>): string[] =>
  [...parts].flatMap(([path, xml]) => {
    if (!path.endsWith(".rels")) return [];
    const folder = posix.dirname(posix.dirname(path));
    const all = elements(xml, "Relationship").map(({ attributes }) => attributes);
    const ids = all.map(({ Id }) => Id);
    return [
      ...(new Set(ids).size === ids.length ? [] : [`${path}: two relationships share an id`]),
      ...all.flatMap(({ Target = "", TargetMode }) => {
        if (TargetMode === "External") return [];
        const target = Target.startsWith("/") ? Target.slice(1) : posix.join(folder, Target);
        return parts.has(target) ? [] : [`${path}: ${target} is not there`];
      }),
    ];
  });

const tableFaults = (path: string, xml: string, sheetXml: string, texts: readonly string[]): string[] => {
  const { ref = "", headerRowCount } = first(xml, "table")?.attributes ?? {};
  if (headerRowCount === "0") return [];
  const { startRow, startColumn, endColumn } = areaOf(ref);
  const columns = elements(xml, "tableColumn").map(({ attributes }) => attributes.name ?? "");
  const cells = new Map(elements(sheetXml, "c").map((cell) => [cell.attributes.r, cell]));
  const faults = columns.flatMap((name, index) => {
    const address = cellName(startRow, startColumn + index);
    const cell = cells.get(address);
    const shown = cell?.attributes.t === "s" ? texts[Number(first(cell.content, "v")?.content)] : undefined;
    return shown === name
      ? []
      : [`its column "${name}" is headed ${shown === undefined ? "by no text" : `"${shown}"`}`];
  });
  if (columns.length !== endColumn - startColumn + 1) faults.push("its columns don't fill its range");
  if (new Set(columns.map((name) => name.toLowerCase())).size !== columns.length)
    faults.push("two columns share a name");
  return faults.map((fault) => `${path}: ${fault}`);
};

/** Every fault found, in words with their place; empty for a sound workbook. */
export const workbookFaults = (bytes: Uint8Array): string[] => {
  const parts = new Map(Object.entries(unzipSync(bytes)).map(([path, content]) => [path, strFromU8(content)]));
  const part = (path: string): string => parts.get(path) ?? "";
  const workbook = part("xl/workbook.xml");
  const styles = part("xl/styles.xml");
  const sheetNames = elements(workbook, "sheet").map(({ attributes }) => attributes.name ?? "");
  const texts = elements(part("xl/sharedStrings.xml"), "si").map(({ content }) =>
    unescape(
      elements(content, "t")
        .map((text) => text.content)
        .join(""),
    ),
  );
  const around: Surroundings = {
    sheetNames,
    sharedStrings: texts.length,
    styles: elements(first(styles, "cellXfs")?.content ?? "", "xf").length,
    differentials: elements(first(styles, "dxfs")?.content ?? "", "dxf").length,
    cellMetadata: elements(first(part("xl/metadata.xml"), "cellMetadata")?.content ?? "", "bk").length,
  };
  const sheets = [...parts]
    .filter(([path]) => /^xl\/worksheets\/[^/]+\.xml$/.test(path))
    .map(([path, xml]): Part => ({ path, xml }));
  const faults = [...styleFaults(styles), ...relationshipFaults(parts)];
  for (const sheet of sheets) faults.push(...sheetFaults(sheet, around));

  const names = elements(workbook, "definedName");
  const scoped = names.map(({ attributes }) => `${attributes.localSheetId ?? ""}!${attributes.name?.toUpperCase()}`);
  if (new Set(scoped).size !== scoped.length) faults.push("two defined names are the same");
  for (const { attributes, content } of names) {
    const refersTo = unescape(content);
    for (const name of sheetsNamedIn(refersTo)) {
      if (!sheetNames.includes(name)) faults.push(`the name ${attributes.name} leads to "${name}", which is not there`);
    }
    if (refersTo.includes("#REF!") || !refersTo.includes("!")) faults.push(`the name ${attributes.name} leads nowhere`);
    const reference = refersTo.slice(refersTo.lastIndexOf("!") + 1);
    if (/(?<!\$)\b[A-Z]{1,3}\$?\d/.test(reference)) faults.push(`the name ${attributes.name} is not absolute`);
  }

  const calculation = first(workbook, "calcPr")?.attributes ?? {};
  if (calculation.fullCalcOnLoad !== undefined) faults.push("the workbook is recalculated in full on opening");
  if (!(Number(calculation.calcId) >= 191029)) faults.push(`the calculation id ${calculation.calcId} is an old one`);

  for (const [path, xml] of parts) {
    if (/webextension|vbaProject|externalLink/i.test(path)) faults.push(`${path} does not belong in a sample`);
    if (/^xl\/tables\//.test(path)) {
      const file = posix.basename(path);
      const owner = sheets.find((sheet) =>
        part(`xl/worksheets/_rels/${posix.basename(sheet.path)}.rels`).includes(`tables/${file}`),
      );
      faults.push(...tableFaults(path, xml, owner?.xml ?? "", texts));
    }
    if (/^xl\/drawings\/drawing/.test(path)) {
      const ids = elements(xml, "xdr:cNvPr").map(({ attributes }) => attributes.id);
      if (new Set(ids).size !== ids.length) faults.push(`${path}: two shapes share an id`);
    }
    if (/^xl\/charts\/chart/.test(path)) {
      for (const { content } of elements(xml, "c:f")) {
        faults.push(...formulaFaults(unescape(content), sheetNames).map((fault) => `${path}: ${fault}`));
      }
    }
  }

  const types = part("[Content_Types].xml");
  const overrides = new Set(elements(types, "Override").map(({ attributes }) => attributes.PartName));
  const defaults = new Set(elements(types, "Default").map(({ attributes }) => attributes.Extension));
  for (const path of parts.keys()) {
    const isXml = path.endsWith(".xml") && path !== "[Content_Types].xml";
    if (isXml && !overrides.has(`/${path}`)) faults.push(`${path} has no content type of its own`);
    if (!isXml && path.endsWith(".rels") && !defaults.has("rels")) faults.push("relationships have no content type");
  }
  for (const name of overrides)
    if (!parts.has(String(name).slice(1))) faults.push(`${name} has a type and is not there`);
  return faults;
};

/** Throws with every fault. */
export const assertWorkbookSound = (bytes: Uint8Array): void => {
  const faults = workbookFaults(bytes);
  if (faults.length > 0) throw new Error(`The workbook is not sound:\n${faults.join("\n")}`);
};
