import { strToU8 } from "fflate";
import { packParts } from "./zipParts";

const declaration = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n`;
const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const types = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** The least parts of a workbook with one empty sheet: ECMA-376 part 1, 12.3 and 18. */
const parts = (sheet: string): Record<string, string> => ({
  "[Content_Types].xml": `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${types}.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="${types}.worksheet+xml"/><Override PartName="/xl/styles.xml" ContentType="${types}.styles+xml"/></Types>`,
  "_rels/.rels": `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${relations}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
  "xl/workbook.xml": `<workbook xmlns="${main}" xmlns:r="${relations}"><sheets><sheet name="${sheet}" sheetId="1" r:id="rId1"/></sheets></workbook>`,
  "xl/_rels/workbook.xml.rels": `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${relations}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="${relations}/styles" Target="styles.xml"/></Relationships>`,
  "xl/styles.xml": `<styleSheet xmlns="${main}"><fonts count="1"><font><sz val="11"/><name val="Calibri"/><family val="2"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>`,
  // 136 pixels, as the sheet shows: 19 digits of 7 pixels and 3 of padding.
  "xl/worksheets/sheet1.xml": `<worksheet xmlns="${main}"><sheetFormatPr defaultColWidth="19.43" defaultRowHeight="15"/><sheetData/></worksheet>`,
});

/** An .xlsx file with one empty sheet, its name plain letters and digits. */
export const blankPackage = (sheet: string): Uint8Array =>
  packParts(Object.fromEntries(Object.entries(parts(sheet)).map(([path, xml]) => [path, strToU8(declaration + xml)])));
