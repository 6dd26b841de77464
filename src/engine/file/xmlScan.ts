export type Attributes = Readonly<Record<string, string | undefined>>;

/** Told of an XML text's pieces in their order; places are where a piece starts and ends in the text. */
export interface XmlListener {
  open?(tag: string, attributes: Attributes, start: number, end: number): void;
  /** A tag that closes itself is opened and closed at the same places. */
  close?(tag: string, start: number, end: number): void;
  text?(text: string): void;
}

export class UnsoundXml extends Error {}

const named: Readonly<Record<string, string | undefined>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

export const unescapeXml = (text: string): string =>
  text.includes("&")
    ? text.replace(
        /&(?:#x([0-9a-fA-F]{1,6})|#(\d{1,7})|(\w+));/g,
        (whole, hex?: string, digits?: string, name = "") => {
          if (hex === undefined && digits === undefined) return named[name] ?? whole;
          const code = hex === undefined ? Number(digits) : Number.parseInt(hex, 16);
          return code <= 0x10ffff ? String.fromCodePoint(code) : whole;
        },
      )
    : text;

const attributePattern = /([^\s=/]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;

const attributesIn = (inside: string): Attributes => {
  const attributes: Record<string, string> = {};
  for (const [, name, double, single] of inside.matchAll(attributePattern)) {
    attributes[name!] = unescapeXml(double ?? single ?? "");
  }
  return attributes;
};

/** The place behind a tag that starts at `from`: a ">" within an attribute's quotation marks ends nothing. */
const endOfTag = (xml: string, from: number): number => {
  let quote = "";
  for (let at = from + 1; at < xml.length; at++) {
    const character = xml.charAt(at);
    if (quote !== "") {
      if (character === quote) quote = "";
    } else if (character === '"' || character === "'") quote = character;
    else if (character === ">") return at + 1;
    else if (character === "<") break;
  }
  throw new UnsoundXml("a tag is cut off");
};

const after = (xml: string, mark: string, from: number): number => {
  const at = xml.indexOf(mark, from);
  if (at < 0) throw new UnsoundXml(`${mark} is missing`);
  return at + mark.length;
};

/**
 * Goes through XML from end to end. Every element must be closed, in its order, under one root; a document type, which a
 * workbook never has, is refused.
 * @throws UnsoundXml
 */
export const scanXml = (xml: string, listener: XmlListener): void => {
  const open: string[] = [];
  let roots = 0;
  let at = xml.charCodeAt(0) === 0xfeff ? 1 : 0;
  while (at < xml.length) {
    if (xml.charAt(at) !== "<") {
      const next = xml.indexOf("<", at);
      const end = next < 0 ? xml.length : next;
      const text = xml.slice(at, end);
      if (open.length > 0) listener.text?.(unescapeXml(text));
      else if (text.trim() !== "") throw new UnsoundXml("text stands outside the root");
      at = end;
    } else if (xml.startsWith("<?", at)) at = after(xml, "?>", at);
    else if (xml.startsWith("<!--", at)) at = after(xml, "-->", at + 4);
    else if (xml.startsWith("<![CDATA[", at) && open.length > 0) {
      const end = after(xml, "]]>", at);
      listener.text?.(xml.slice(at + 9, end - 3));
      at = end;
    } else if (xml.startsWith("<!", at)) throw new UnsoundXml("it has a document type");
    else {
      const end = endOfTag(xml, at);
      const isClosing = xml.charAt(at + 1) === "/";
      const isClosed = xml.charAt(end - 2) === "/";
      const inside = xml.slice(at + (isClosing ? 2 : 1), end - (isClosed ? 2 : 1));
      const tag = /^[^\s/<>"'=]+/.exec(inside)?.[0];
      if (tag === undefined) throw new UnsoundXml("a tag has no name");
      if (isClosing) {
        if (open.pop() !== tag) throw new UnsoundXml(`${tag} is closed out of turn`);
        listener.close?.(tag, at, end);
      } else {
        if (open.length === 0 && ++roots > 1) throw new UnsoundXml("there is a second root");
        listener.open?.(tag, attributesIn(inside.slice(tag.length)), at, end);
        if (isClosed) listener.close?.(tag, at, end);
        else open.push(tag);
      }
      at = end;
    }
  }
  if (open.length > 0 || roots === 0) throw new UnsoundXml("its end is missing");
};

const controlCode = (character: string): string =>
  `_x${character.charCodeAt(0).toString(16).padStart(4, "0").toUpperCase()}_`;

/**
 * Text for an element or an attribute. Characters that XML can't hold are written as _x0007_, and what looks like such a
 * code as _x005F_x0007_, as Excel does: ECMA-376 part 1, 22.4.2.4 "ST_Xstring".
 */
export const escapeXml = (text: string): string =>
  text
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_")
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;")
    .replace(/\p{Cc}/gu, (character) => (/[\t\n]/.test(character) ? character : controlCode(character)));

/** The text that a cell's text stands for: its codes resolved. */
export const cellTextOf = (text: string): string =>
  text.includes("_x")
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)))
    : text;
