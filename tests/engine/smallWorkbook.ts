import { strToU8, zipSync } from "fflate";

/**
 * A small workbook in the form Excel saves, written by hand: a spilling and a single dynamic-array formula of an add-in,
 * a shared formula, a date style, a defined name, a table, a text in the shared list and an error.
 * The add-in's stand-ins of standInFunctions.ts compute its formulas; every saved value is right unless `wrong` is set.
 */
export const smallWorkbook = (changes: { sum?: string; squares?: string; noAnswer?: string } = {}): Uint8Array => {
  const {
    sum = "14",
    squares = "9",
    noAnswer = '<c r="D5" cm="1" t="e"><f t="array" ref="D5">_xldudf_OXYGEN_NO_ANSWER(1)</f><v>#N/A</v></c>',
  } = changes;
  const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  const relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  const packageRelations = "http://schemas.openxmlformats.org/package/2006/relationships";
  const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
  const parts: Record<string, string> = {
    "[Content_Types].xml": `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/><Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/><Override PartName="/xl/sharedStrings.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml"/><Override PartName="/xl/metadata.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml"/><Override PartName="/xl/tables/table1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml"/></Types>`,
    "_rels/.rels": `<Relationships xmlns="${packageRelations}"><Relationship Id="rId1" Type="${relations}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    "xl/workbook.xml": `<workbook xmlns="${main}" xmlns:r="${relations}"><sheets><sheet name="Plan &amp; log" sheetId="1" r:id="rId1"/></sheets><definedNames><definedName name="Doubled">_xlfn.LAMBDA(_xlpm.x,_xlpm.x*2)</definedName><definedName name="Rate">'Plan &amp; log'!$B$1</definedName></definedNames><calcPr calcId="191029"/></workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${packageRelations}"><Relationship Id="rId1" Type="${relations}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="${relations}/styles" Target="styles.xml"/><Relationship Id="rId3" Type="${relations}/sharedStrings" Target="sharedStrings.xml"/><Relationship Id="rId4" Type="${relations}/sheetMetadata" Target="metadata.xml"/></Relationships>`,
    "xl/styles.xml": `<styleSheet xmlns="${main}"><numFmts count="1"><numFmt numFmtId="164" formatCode="yyyy\\-mm\\-dd"/></numFmts><fonts count="1"><font><sz val="11"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="3"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="164" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/><xf numFmtId="2" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/></cellXfs></styleSheet>`,
    "xl/sharedStrings.xml": `<sst xmlns="${main}" count="5" uniqueCount="5"><si><t>Count</t></si><si><t>n</t></si><si><t>square</t></si><si><t>kind</t></si><si><t>flow &lt;L&gt;</t></si></sst>`,
    "xl/metadata.xml": `<metadata xmlns="${main}" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`,
    "xl/tables/table1.xml": `<table xmlns="${main}" id="1" name="Kinds" displayName="Kinds" ref="F1:G3" totalsRowShown="0"><autoFilter ref="F1:G3"/><tableColumns count="2"><tableColumn id="1" name="kind"/><tableColumn id="2" name="flow &lt;L&gt;"/></tableColumns></table>`,
    "xl/worksheets/_rels/sheet1.xml.rels": `<Relationships xmlns="${packageRelations}"><Relationship Id="rId1" Type="${relations}/table" Target="../tables/table1.xml"/></Relationships>`,
    "xl/worksheets/sheet1.xml":
      `<worksheet xmlns="${main}" xmlns:r="${relations}"><dimension ref="A1:G6"/><cols><col min="1" max="1" width="20" customWidth="1"/></cols><sheetData>` +
      `<row r="1" spans="1:7"><c r="A1" t="s"><v>0</v></c><c r="B1"><v>3</v></c><c r="F1" t="s"><v>3</v></c><c r="G1" t="s"><v>4</v></c></row>` +
      `<row r="2"><c r="A2" cm="1" t="str"><f t="array" ref="A2:B5">_xldudf_OXYGEN_SQUARES(B1)</f><v>n</v></c><c r="B2" t="str"><v>square</v></c><c r="F2" t="inlineStr"><is><t>a</t></is></c><c r="G2"><v>10</v></c></row>` +
      `<row r="3"><c r="A3"><v>1</v></c><c r="B3" s="2"><v>1</v></c><c r="D3" s="2" cm="1"><f t="array" ref="D3">SUM(_xlfn.DROP(_xlfn.ANCHORARRAY(A2),1,1))</f><v>${sum}</v></c><c r="F3" t="inlineStr"><is><t>b</t></is></c><c r="G3"><v>20</v></c></row>` +
      `<row r="4"><c r="A4"><v>2</v></c><c r="B4" s="2"><v>4</v></c><c r="D4" s="1" cm="1"><f t="array" ref="D4">_xldudf_OXYGEN_DAY_OF(45000)</f><v>45000</v></c><c r="E4"><f t="shared" ref="E4:E6" si="0">G2*Rate</f><v>30</v></c></row>` +
      `<row r="5"><c r="A5"><v>3</v></c><c r="B5" s="2"><v>${squares}</v></c>${noAnswer}<c r="E5"><f t="shared" si="0"/><v>60</v></c></row>` +
      `<row r="6"><c r="D6" t="b"><f>B1=3</f><v>1</v></c><c r="E6"><f t="shared" si="0"/><v>0</v></c><c r="F6"><f>SUM(Kinds[flow &lt;L&gt;])+Doubled(1)</f><v>32</v></c></row>` +
      `</sheetData><tableParts count="1"><tablePart r:id="rId1"/></tableParts></worksheet>`,
  };
  return zipSync(Object.fromEntries(Object.entries(parts).map(([path, xml]) => [path, strToU8(head + xml)])));
};
