import { partText, setPart } from "./partXml";
import { openPackage, relationshipsOf } from "./workbookPackage";
import { escapeXml } from "./xmlScan";
import { packParts } from "./zipParts";

/** Number format codes by sheet name and address. */
export type FormatChanges = ReadonlyMap<string, ReadonlyMap<string, string>>;

/** Codes of a workbook's own start at 164: ECMA-376 part 1, 18.8.30. */
const firstOwnCode = 164;

const formatPattern = /<numFmt\b[^>]*\bnumFmtId="(\d+)"[^>]*>/g;
const stylePattern = /<xf\b[^>]*?(?:\/>|>[^]*?<\/xf>)/g;

/** Adds cell styles to a workbook's styles part: as another style, but with a number format. */
class StyleSheet {
  private formats = "";
  private readonly codes = new Map<string, number>();
  private readonly known = new Map<string, number>();
  private readonly styles: string[];
  private next: number;

  constructor(private readonly xml: string) {
    this.styles = /<cellXfs\b[^>]*>([^]*?)<\/cellXfs>/.exec(xml)?.[1]?.match(stylePattern) ?? [];
    const used = [...xml.matchAll(formatPattern)].map(([, id]) => Number(id));
    this.next = Math.max(firstOwnCode - 1, ...used) + 1;
  }

  styleWith(base: number, format: string): number {
    const key = `${base} ${format}`;
    const found = this.known.get(key);
    if (found !== undefined) return found;
    let code = this.codes.get(format);
    if (code === undefined) {
      code = /^general$/i.test(format) ? 0 : this.next++;
      this.codes.set(format, code);
      if (code > 0) this.formats += `<numFmt numFmtId="${code}" formatCode="${escapeXml(format)}"/>`;
    }
    const style = (this.styles[base] ?? `<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>`).replace(
      /^<xf\b[^>]*?(?=\s*\/?>)/,
      (tag) =>
        `${tag.replace(/\s(?:numFmtId|applyNumberFormat)="[^"]*"/g, "")} numFmtId="${code}" applyNumberFormat="1"`,
    );
    const index = this.styles.push(style) - 1;
    this.known.set(key, index);
    return index;
  }

  toXml(): string {
    const withStyles = this.xml.replace(
      /<cellXfs\b[^>]*>[^]*?<\/cellXfs>/,
      () => `<cellXfs count="${this.styles.length}">${this.styles.join("")}</cellXfs>`,
    );
    if (this.formats === "") return withStyles;
    const list = /<numFmts\b[^>]*>([^]*?)<\/numFmts>/.exec(withStyles);
    const all = `${list?.[1] ?? ""}${this.formats}`;
    const element = `<numFmts count="${all.match(/<numFmt\b/g)!.length}">${all}</numFmts>`;
    return list
      ? withStyles.replace(/<numFmts\b[^>]*>[^]*?<\/numFmts>/, () => element)
      : withStyles.replace(/<styleSheet\b[^>]*>/, (tag) => tag + element);
  }
}

/**
 * The same workbook with other number formats on some cells; everything else of their styles stays. Cells that the file
 * does not hold get none.
 */
export const withFormats = (bytes: Uint8Array, formats: FormatChanges): Uint8Array => {
  if ([...formats.values()].every(({ size }) => size === 0)) return bytes;
  const { parts, mainPath, sheets } = openPackage(bytes);
  const stylesPath = relationshipsOf(parts, mainPath).find(({ type }) => type === "styles")?.path;
  if (!stylesPath) return bytes;
  const styles = new StyleSheet(partText(parts, stylesPath));
  for (const { name, path } of sheets) {
    const own = formats.get(name);
    if (!own || own.size === 0) continue;
    const xml = partText(parts, path).replace(/<c\b[^>]*?(?=\s*\/?>)/g, (tag) => {
      const format = own.get(/\sr="([A-Z]+\d+)"/.exec(tag)?.[1] ?? "");
      if (format === undefined) return tag;
      const base = Number(/\ss="(\d+)"/.exec(tag)?.[1] ?? 0);
      return `${tag.replace(/\ss="\d+"/, "")} s="${styles.styleWith(base, format)}"`;
    });
    setPart(parts, path, xml);
  }
  setPart(parts, stylesPath, styles.toXml());
  return packParts(parts);
};
