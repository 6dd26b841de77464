/** Files that are no sound workbook are refused with words that name the part and say what to do. */
import { strToU8, zipSync } from "fflate";
import { readWorkbook } from "../../../src/engine/file/readWorkbook";
import { mostAllowed, UnusableWorkbook } from "../../../src/engine/file/unusableWorkbook";
import { crc32 } from "../../../src/engine/file/zipParts";
import { smallWorkbook } from "../smallWorkbook";
import { standIns } from "../standInFunctions";
import { withParts } from "./workbookParts";

const ids = standIns.map(([id]) => id);
const small = smallWorkbook();
const sheet = "xl/worksheets/sheet1.xml";

/** The words of the refusal; a fault of any other kind fails the test. */
const refusal = (bytes: Uint8Array): string => {
  try {
    readWorkbook(bytes, ids);
  } catch (thrown) {
    if (thrown instanceof UnusableWorkbook) return thrown.message;
    throw thrown;
  }
  throw new Error("it was read");
};

const changed = (path: string, change: ((text: string) => string) | undefined): string =>
  refusal(withParts(small, { [path]: change }));

test("CRC-32 of the digits 1 to 9 is the check value that its definition gives", () => {
  // "123456789" gives CBF43926: R. Williams, "A Painless Guide to CRC Error Detection Algorithms", 1993, section 15.
  expect(crc32(strToU8("123456789"))).toBe(0xcbf43926);
});

describe("what is no workbook of this kind", () => {
  test("a text, an empty file, a picture", () => {
    expect(refusal(strToU8("Rate,Level\n1.5,40\n"))).toBe("is no .xlsx workbook");
    expect(refusal(new Uint8Array(0))).toMatch(/^is empty/);
    expect(refusal(zipSync({ "word.txt": strToU8("x") }))).toBe("is no .xlsx workbook");
  });

  // [MS-CFB] 2.2: the first eight bytes of a compound file; streams are named in UTF-16.
  const compoundFile = (stream: string): Uint8Array => {
    const bytes = new Uint8Array(1536);
    bytes.set([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]);
    Array.from(stream).forEach((letter, index) => bytes.set([letter.charCodeAt(0), 0], 1024 + index * 2));
    return bytes;
  };

  test("an .xls workbook and one with a password", () => {
    expect(refusal(compoundFile("Workbook"))).toMatch(/older \.xls kind\. Open it in Excel and save it as/);
    expect(refusal(compoundFile("EncryptedPackage"))).toMatch(/password\. Open it in Excel, take the password off/);
  });

  const main = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";
  test("a workbook with macros, a binary one, one that counts from 1904", () => {
    const kind = (other: string): string => changed("[Content_Types].xml", (text) => text.replace(main, other));
    expect(kind("application/vnd.ms-excel.sheet.macroEnabled.main+xml")).toMatch(/^holds macros.*without macros$/);
    expect(kind("application/vnd.ms-excel.sheet.binary.macroEnabled.main")).toMatch(/macros|xlsb/);
    expect(kind("text/plain")).toMatch(/\[Content_Types\]\.xml does not say/);
    expect(
      changed("xl/workbook.xml", (text) => text.replace("<sheets>", '<workbookPr date1904="1"/><sheets>')),
    ).toMatch(/^counts dates from 1904/);
  });
});

describe("damage to the file", () => {
  test("a cut is seen wherever it is", () => {
    for (let length = 1; length < small.length; length += 97) {
      expect(refusal(small.slice(0, length))).toMatch(/is damaged|is no \.xlsx/);
    }
  });

  test("a changed byte is seen, or changes nothing that is read", () => {
    const { sheets, names } = readWorkbook(small, ids);
    let seen = 0;
    for (let at = 4; at < small.length; at += 7) {
      const bytes = small.slice();
      bytes[at] = bytes[at]! ^ 0x10;
      try {
        const read = readWorkbook(bytes, ids);
        expect([read.sheets, read.names]).toEqual([sheets, names]);
      } catch (thrown) {
        expect(thrown).toBeInstanceOf(UnusableWorkbook);
        seen++;
      }
    }
    expect(seen).toBeGreaterThan(small.length / 7 / 2);
  });

  test("a part that claims to be larger than all that is allowed is not unpacked", () => {
    const bytes = zipSync({ "xl/workbook.xml": new Uint8Array(1000) });
    const view = new DataView(bytes.buffer);
    const directory = view.getUint32(bytes.length - 6, true);
    view.setUint32(directory + 24, mostAllowed.bytes + 1, true);
    expect(refusal(bytes)).toMatch(/^unpacks to 257 MB; at most 256 MB/);
    view.setUint32(directory + 24, 999, true);
    expect(refusal(bytes)).toMatch(/check number does not fit/);
  });

  test("the same part twice", () => {
    const bytes = zipSync({ "xl/a.xml": strToU8("a"), "xl/b.xml": strToU8("b") });
    const text = Buffer.from(bytes).toString("latin1").replaceAll("xl/b.xml", "xl/a.xml");
    expect(refusal(Uint8Array.from(Buffer.from(text, "latin1")))).toMatch(/holds its part xl\/a\.xml twice/);
  });
});

describe("damage to a part is named", () => {
  test.each([
    "[Content_Types].xml",
    "_rels/.rels",
    "xl/workbook.xml",
    "xl/_rels/workbook.xml.rels",
    "xl/styles.xml",
    "xl/sharedStrings.xml",
    "xl/metadata.xml",
    "xl/tables/table1.xml",
    sheet,
  ])("%s is missing, empty or cut", (path) => {
    expect(changed(path, undefined)).toContain(`${path} is missing`);
    if (path === "xl/metadata.xml") return;
    expect(changed(path, () => "")).toContain(`${path} is empty`);
    expect(changed(path, (text) => text.slice(0, text.length - 12))).toContain(`${path} is cut off`);
    expect(changed(path, (text) => text.slice(0, text.length >> 1))).toContain(`${path} is cut off`);
  });

  test.each<[string, (text: string) => string, RegExp]>([
    [
      "a prefix",
      (text) => text.replace("<worksheet ", "<x:worksheet ").replace("</worksheet>", "</x:worksheet>"),
      /unusual way.*<x:worksheet>/,
    ],
    ["no cells", (text) => text.replace(/<sheetData>[^]*<\/sheetData>/, ""), /has no cells part/],
    ["cells twice", (text) => text.replace("<tableParts", "<sheetData/><tableParts"), /holds its cells twice/],
    [
      "a document type",
      (text) => text.replace("<worksheet ", '<!DOCTYPE x [<!ENTITY a "b">]><worksheet '),
      /document type/,
    ],
    ["a row out of place", (text) => text.replace('<row r="3">', '<row r="1">'), /row 1 out of place/],
    ["a cell out of place", (text) => text.replace('r="B3"', 'r="A3"'), /cell A3 out of place/],
    ["a cell beyond the sheet", (text) => text.replace('r="G3"', 'r="ZZZ3"'), /has a cell "ZZZ3"/],
    [
      "a text that is not there",
      (text) => text.replace('<c r="A1" t="s"><v>0<', '<c r="A1" t="s"><v>77<'),
      /Plan & log!A1 text 77/,
    ],
    [
      "a number that is none",
      (text) => text.replace('<c r="B1"><v>3<', '<c r="B1"><v>3x<'),
      /Plan & log!B1 the value "3x"/,
    ],
    ["an unknown kind", (text) => text.replace('<c r="B1">', '<c r="B1" t="q">'), /unknown kind, "q"/],
    ["two values", (text) => text.replace("<v>3</v>", "<v>3</v><v>4</v>"), /gives B1 two values/],
    [
      "a formula without text",
      (text) => text.replace("<f>B1=3</f>", "<f></f>"),
      /formula in Plan & log!D6 whose text is missing/,
    ],
    [
      "a shared formula without its first",
      (text) => text.replace('<f t="shared" si="0"/>', '<f t="shared" si="9"/>'),
      /formula in Plan & log!E5/,
    ],
    ["an area that is none", (text) => text.replace('ref="A2:B5"', 'ref="A2:B"'), /that fills "A2:B"/],
    ["a huge area", (text) => text.replace('ref="A2:B5"', 'ref="A2:XFD1048576"'), /more than 2,000,000 cells/],
    ["wrong order of tags", (text) => text.replace("</row></sheetData>", "</sheetData></row>"), /closed out of turn/],
  ])("a sheet with %s", (_, change, words) => {
    expect(changed(sheet, change)).toMatch(words);
  });

  test.each<[string, (text: string) => string, RegExp]>([
    ["without sheets", (text) => text.replace(/<sheet .*?\/>/, ""), /names no sheet/],
    [
      "whose sheet leads nowhere",
      (text) => text.replace('r:id="rId1"', 'r:id="rId99"'),
      /part of its sheet Plan & log is missing/,
    ],
    ["with a sheet twice", (text) => text.replace(/(<sheet [^>]*?\/>)/, "$1$1"), /"Plan & log" twice/],
  ])("a workbook %s", (_, change, words) => {
    expect(changed("xl/workbook.xml", change)).toMatch(words);
  });

  test("a sheet that is kept outside the file", () => {
    const rels = "xl/_rels/workbook.xml.rels";
    const words = changed(rels, (text) =>
      text.replace('Target="worksheets/sheet1.xml"', 'Target="https://example.com/s.xml" TargetMode="External"'),
    );
    expect(words).toMatch(/part of its sheet Plan & log is missing/);
  });

  test("bytes that are no text", () => {
    const parts = withParts(small, {});
    expect(parts.length).toBeGreaterThan(0);
    const broken = zipSync({ "_rels/.rels": Uint8Array.from([0x3c, 0xff, 0xfe, 0x3e]) });
    expect(refusal(broken)).toMatch(/_rels\/\.rels holds bytes that are no text/);
  });
});
