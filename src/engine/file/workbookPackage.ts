import { attributeIn, partText, setPart, walkPart } from "./partXml";
import { damaged, damagedPart, UnusableWorkbook } from "./unusableWorkbook";
import type { Attributes } from "./xmlScan";
import { readParts, type Parts } from "./zipParts";

export interface Relationship {
  readonly id: string;
  /** Last word of its type: "worksheet", "table". */
  readonly type: string;
  /** Path of the part it leads to; "" when it leads out of the file. */
  readonly path: string;
}

export interface SheetPart {
  readonly name: string;
  readonly path: string;
  readonly isHidden: boolean;
}

export interface NamePart {
  readonly name: string;
  /** As stored. */
  readonly content: string;
  /** The sheet it belongs to, undefined for the whole workbook. */
  readonly sheet: string | undefined;
}

/** A workbook's file taken apart: its parts, and what its main part says of sheets and names. */
export interface WorkbookPackage {
  readonly parts: Parts;
  readonly mainPath: string;
  /** Sheets of cells in the order of their tabs; chart sheets are left out. */
  readonly sheets: readonly SheetPart[];
  readonly names: readonly NamePart[];
}

/** "xl/worksheets/sheet1.xml" and "../tables/table1.xml" to "xl/tables/table1.xml". */
const resolvePath = (from: string, target: string): string => {
  if (target.startsWith("/")) return target.slice(1);
  const steps = from.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") steps.pop();
    else if (step !== ".") steps.push(step);
  }
  return steps.join("/");
};

/** Where the relationships of a part are kept; "" stands for the package itself. */
export const relationshipsPath = (path: string): string => {
  const slash = path.lastIndexOf("/") + 1;
  return `${path.slice(0, slash)}_rels/${path.slice(slash)}.rels`;
};

export const relationshipsOf = (parts: Parts, path: string): Relationship[] => {
  const found: Relationship[] = [];
  walkPart(parts, relationshipsPath(path), "Relationships", {
    open: (tag, { Id, Type, Target, TargetMode }) => {
      if (tag !== "Relationship") return;
      const isOutside = TargetMode?.toLowerCase() === "external";
      found.push({
        id: Id ?? "",
        type: (Type ?? "").split("/").pop()!,
        path: isOutside ? "" : resolvePath(path, Target ?? ""),
      });
    },
  });
  return found;
};

/** Relationships of a part that need not have any. */
export const someRelationshipsOf = (parts: Parts, path: string): Relationship[] =>
  relationshipsPath(path) in parts ? relationshipsOf(parts, path) : [];

const saveAs = "Open it in Excel and save it as Excel Workbook (.xlsx)";

/** By the content type of the main part: ECMA-376 part 1, 12.3.23; Microsoft's types for the kinds beside it. */
const refuseOtherKinds = (parts: Parts, mainPath: string): void => {
  let type = "";
  walkPart(parts, "[Content_Types].xml", "Types", {
    open: (tag, { PartName, ContentType = "" }) => {
      if (tag === "Override" && PartName === `/${mainPath}`) type = ContentType;
    },
  });
  if (/macroEnabled/i.test(type) || Object.keys(parts).some((path) => /vbaProject\.bin$/i.test(path))) {
    throw new UnusableWorkbook(`holds macros, which are not carried on here. ${saveAs}, without macros`);
  }
  if (/sheet\.binary/i.test(type)) throw new UnusableWorkbook(`is a workbook of the .xlsb kind. ${saveAs}`);
  if (!/spreadsheetml\.(?:sheet|template)\.main\+xml$/.test(type)) {
    throw damagedPart("[Content_Types].xml", `does not say that ${mainPath} is a workbook`);
  }
};

const mainPathOf = (parts: Parts): string => {
  if (!(relationshipsPath("") in parts)) {
    if (!("[Content_Types].xml" in parts)) throw new UnusableWorkbook("is no .xlsx workbook");
    throw damagedPart("_rels/.rels", "is missing");
  }
  const path = relationshipsOf(parts, "").find(({ type }) => type === "officeDocument")?.path;
  if (!path) throw new UnusableWorkbook("is no .xlsx workbook");
  if (!(path in parts)) throw damagedPart(path, "is missing");
  return path;
};

const isOn = (value: string | undefined): boolean => value === "1" || value === "true" || value === "on";

interface MainPart {
  readonly sheets: { name: string; relation: string; isHidden: boolean }[];
  readonly names: { name: string; content: string; sheetIndex: string | undefined }[];
}

const readMainPart = (parts: Parts, path: string): MainPart => {
  const main: MainPart = { sheets: [], names: [] };
  let name: { attributes: Attributes; content: string } | undefined;
  walkPart(parts, path, "workbook", {
    open: (tag, attributes) => {
      if (tag === "workbookPr" && isOn(attributes.date1904)) {
        throw new UnusableWorkbook(
          "counts dates from 1904; only 1900 is read here. In Excel: File > Options > Advanced > Use 1904 date system, take the tick off, check its dates and save it",
        );
      }
      if (tag === "sheet") {
        const { name: sheetName = "", state = "visible" } = attributes;
        main.sheets.push({
          name: sheetName,
          relation: Object.entries(attributes).find(([key]) => key.endsWith(":id"))?.[1] ?? "",
          isHidden: state !== "visible",
        });
      }
      if (tag === "definedName") name = { attributes, content: "" };
    },
    text: (text) => {
      if (name) name.content += text;
    },
    close: (tag) => {
      if (tag !== "definedName" || !name) return;
      main.names.push({
        name: name.attributes.name ?? "",
        content: name.content,
        sheetIndex: name.attributes.localSheetId,
      });
      name = undefined;
    },
  });
  return main;
};

/**
 * Takes a workbook's file apart.
 * @throws UnusableWorkbook when a part it needs is missing or damaged, or when it is another kind of file.
 */
export const openPackage = (bytes: Uint8Array): WorkbookPackage => {
  const parts = readParts(bytes);
  const mainPath = mainPathOf(parts);
  refuseOtherKinds(parts, mainPath);
  const relationships = relationshipsOf(parts, mainPath);
  for (const { path } of relationships) if (path && !(path in parts)) throw damagedPart(path, "is missing");
  const main = readMainPart(parts, mainPath);
  if (main.sheets.length === 0) throw damagedPart(mainPath, "names no sheet");
  const names = new Set<string>();
  const sheets = main.sheets.flatMap(({ name, relation, isHidden }): SheetPart[] => {
    if (name === "" || names.has(name.toLowerCase())) throw damagedPart(mainPath, `names the sheet "${name}" twice`);
    names.add(name.toLowerCase());
    const target = relationships.find(({ id }) => id === relation);
    if (!target?.path) throw damaged(`the part of its sheet ${name} is missing`);
    return target.type === "worksheet" ? [{ name, path: target.path, isHidden }] : [];
  });
  return {
    parts,
    mainPath,
    sheets,
    names: main.names.map(({ name, content, sheetIndex }) => ({
      name,
      content,
      sheet: sheetIndex === undefined ? undefined : main.sheets[Number(sheetIndex)]?.name,
    })),
  };
};

/** Takes parts out of a package, with what leads to them from the main part. */
export const dropParts = ({ parts, mainPath }: WorkbookPackage, types: readonly string[]): void => {
  const gone = relationshipsOf(parts, mainPath).filter(({ type }) => types.includes(type));
  const edit = (path: string, change: (xml: string) => string): void => {
    setPart(parts, path, change(partText(parts, path)));
  };
  for (const { id, path } of gone) {
    delete parts[path];
    edit(relationshipsPath(mainPath), (xml) =>
      xml.replace(/<Relationship\s[^>]*?\/>/g, (tag) => (attributeIn(tag, "Id") === id ? "" : tag)),
    );
    edit("[Content_Types].xml", (xml) =>
      xml.replace(/<Override\s[^>]*?\/>/g, (tag) => (attributeIn(tag, "PartName") === `/${path}` ? "" : tag)),
    );
  }
};
