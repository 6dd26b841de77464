import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from "fflate";

/** Put before the text of a cached error, so that it can be told from words that look like one. */
export const errorMark = "\uE000";

/** The calculation engine that Excel has named since 2019: with an older one it recalculates on opening. */
const calculationId = 191029;

/** Every file is dated the same. Local time, because a zip keeps local time: the bytes are the same in every zone. */
const zipTime = new Date(2026, 0, 1, 0, 0, 0);

/** Order of a font's children: ECMA-376 part 1, 18.8.22, as the Open XML SDK's schema has it. */
const fontOrder = ["b", "i", "strike", "u", "vertAlign", "sz", "color", "name", "family", "charset", "scheme"];

const inFontOrder = (styles: string): string =>
  styles.replace(/<font>([^]*?)<\/font>/g, (_, children: string) => {
    const parts = [...children.matchAll(/<(\w+)[^>]*\/>/g)].map(([xml, tag]) => ({
      xml,
      rank: fontOrder.indexOf(tag!),
    }));
    return `<font>${parts
      .sort((one, other) => one.rank - other.rank)
      .map((part) => part.xml)
      .join("")}</font>`;
  });

const withErrors = (sheet: string): string =>
  sheet.replace(
    new RegExp(`<c ([^>]*)t="str"([^>]*)>((?:<f[^>]*>[^<]*</f>)?)<v>${errorMark}([^<]*)</v>`, "g"),
    '<c $1t="e"$2>$3<v>$4</v>',
  );

/** Spilled cells hold a value and no formula, but keep text as a formula's result does (`t="str"`). */
const withoutEmptyFormulas = (sheet: string): string => sheet.replace(/<f\/>|<f><\/f>/g, "");

/** A break stands below the row it names (ECMA-376 part 1, 18.3.1.3), behind the footer (18.3.1.99). */
const withBreaks = (sheet: string, rows: readonly number[]): string => {
  if (rows.length === 0) return sheet;
  const breaks = rows.map((row) => `<brk id="${row - 1}" max="16383" man="1"/>`).join("");
  const part = `<rowBreaks count="${rows.length}" manualBreakCount="${rows.length}">${breaks}</rowBreaks>`;
  return sheet.replace("</headerFooter>", `</headerFooter>${part}`);
};

const edits: { path: RegExp; edit: (xml: string, path: string) => string }[] = [
  {
    path: /^xl\/workbook\.xml$/,
    edit: (xml) =>
      xml
        .replace(/<calcPr[^>]*\/>/, `<calcPr calcId="${calculationId}"/>`)
        .replace('windowWidth="16384" windowHeight="8192"', 'windowWidth="28800" windowHeight="15600"'),
  },
  { path: /^xl\/styles\.xml$/, edit: inFontOrder },
  { path: /^xl\/worksheets\/sheet\d+\.xml$/, edit: (xml) => withErrors(withoutEmptyFormulas(xml)) },
  {
    path: /^xl\/worksheets\/sheet1\.xml$/,
    edit: (xml) => xml.replace("<sheetView ", '<sheetView tabSelected="1" '),
  },
  { path: /^xl\/sharedStrings\.xml$/, edit: (xml) => xml.replaceAll(errorMark, "") },
  {
    path: /^docProps\/core\.xml$/,
    edit: (xml) => xml.replace("</cp:coreProperties>", "<dc:language>en-GB</dc:language></cp:coreProperties>"),
  },
  {
    path: /^docProps\/app\.xml$/,
    edit: (xml) => xml.replace(/<Application>.*?<\/Application>/, "<Application>Oxygen Supply Functions</Application>"),
  },
];

/**
 * Puts right what the library leaves open (order of font parts, calculation settings, cached errors, spilled text),
 * puts in the charts and the page breaks, and packs the parts anew so that the same description gives the same bytes.
 */
export const finishPackage = (
  bytes: Uint8Array,
  charts: readonly string[],
  breaksBefore: readonly (readonly number[])[] = [],
): Uint8Array => {
  const packed: Zippable = {};
  for (const [path, content] of Object.entries(unzipSync(bytes))) {
    const chart = /^xl\/charts\/chart(\d+)\.xml$/.exec(path);
    let xml = chart ? charts[Number(chart[1]) - 1]! : strFromU8(content);
    for (const { path: wanted, edit } of edits) if (wanted.test(path)) xml = edit(xml, path);
    const sheet = /^xl\/worksheets\/sheet(\d+)\.xml$/.exec(path);
    if (sheet) xml = withBreaks(xml, breaksBefore[Number(sheet[1]) - 1] ?? []);
    packed[path] = [strToU8(xml), { mtime: zipTime, level: 9 }];
  }
  return zipSync(packed);
};
