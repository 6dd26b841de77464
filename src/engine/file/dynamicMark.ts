import { attributeIn, partText, setPart } from "./partXml";
import { relationshipsOf, relationshipsPath, type WorkbookPackage } from "./workbookPackage";

/** Parts, names and the meaning of the mark: [MS-XLSX] 2.2.4.13 and 2.6.171; ECMA-376 part 1, 18.9. */
const contentType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";
const relationshipType = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata";
const kind = "XLDAPR";

const typeXml = `<metadataType name="${kind}" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>`;

const futureXml = `<futureMetadata name="${kind}" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray" fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>`;

const wholePart = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><metadataTypes count="1">${typeXml}</metadataTypes>${futureXml}<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`;

const elementsIn = (xml: string, tag: string): string[] => xml.match(new RegExp(`<${tag}\\b[^>]*>`, "g")) ?? [];

const addPart = ({ parts, mainPath }: WorkbookPackage): void => {
  const folder = mainPath.slice(0, mainPath.lastIndexOf("/") + 1);
  const path = `${folder}metadata.xml`;
  setPart(parts, path, wholePart);
  const relations = relationshipsPath(mainPath);
  const used = new Set(relationshipsOf(parts, mainPath).map(({ id }) => id));
  let number = used.size + 1;
  while (used.has(`rId${number}`)) number++;
  const relation = `<Relationship Id="rId${number}" Type="${relationshipType}" Target="metadata.xml"/>`;
  setPart(parts, relations, partText(parts, relations).replace(/<\/Relationships>\s*$/, `${relation}</Relationships>`));
  const types = "[Content_Types].xml";
  const override = `<Override PartName="/${path}" ContentType="${contentType}"/>`;
  setPart(parts, types, partText(parts, types).replace(/<\/Types>\s*$/, `${override}</Types>`));
};

/** The number that marks a cell's formula as one that may spill (`cm`); the part it points into is made where it lacks. */
export const dynamicMark = (file: WorkbookPackage): number => {
  const { parts, mainPath } = file;
  const path = relationshipsOf(parts, mainPath).find(({ type }) => type === "sheetMetadata")?.path;
  if (!path) {
    addPart(file);
    return 1;
  }
  let xml = partText(parts, path);
  const types = elementsIn(xml, "metadataType");
  let type = types.findIndex((tag) => attributeIn(tag, "name") === kind) + 1;
  if (type === 0) {
    type = types.length + 1;
    xml = xml
      .replace(/<metadataTypes\b[^>]*>/, `<metadataTypes count="${type}">`)
      .replace("</metadataTypes>", `${typeXml}</metadataTypes>`)
      // Kinds of future metadata stand before the lists that use them.
      .replace(/(?=<cellMetadata\b|<valueMetadata\b|<\/metadata>)/, futureXml);
  }
  const list = /<cellMetadata\b[^>]*>([^]*?)<\/cellMetadata>/.exec(xml)?.[1] ?? "";
  const marks = list.match(/<bk\b[^>]*>[^]*?<\/bk>/g) ?? [];
  const known = marks.findIndex((mark) => elementsIn(mark, "rc").some((tag) => attributeIn(tag, "t") === String(type)));
  if (known >= 0) {
    setPart(parts, path, xml);
    return known + 1;
  }
  const mark = `<bk><rc t="${type}" v="0"/></bk>`;
  xml = list
    ? xml
        .replace(/<cellMetadata\b[^>]*>/, `<cellMetadata count="${marks.length + 1}">`)
        .replace("</cellMetadata>", `${mark}</cellMetadata>`)
    : xml.replace(/(?=<valueMetadata\b|<\/metadata>)/, `<cellMetadata count="1">${mark}</cellMetadata>`);
  setPart(parts, path, xml);
  return marks.length + 1;
};
