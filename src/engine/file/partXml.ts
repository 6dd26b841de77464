import { strToU8 } from "fflate";
import { damagedPart, UnusableWorkbook } from "./unusableWorkbook";
import { scanXml, UnsoundXml, type XmlListener } from "./xmlScan";
import type { Parts } from "./zipParts";

const byteOrders = [
  { mark: [0xff, 0xfe], encoding: "utf-16le" },
  { mark: [0xfe, 0xff], encoding: "utf-16be" },
];

/** The text of a part that must be there. */
export const partText = (parts: Parts, path: string): string => {
  const bytes = parts[path];
  if (!bytes) throw damagedPart(path, "is missing");
  const order = byteOrders.find(({ mark }) => mark.every((byte, at) => bytes[at] === byte));
  try {
    return new TextDecoder(order?.encoding ?? "utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw damagedPart(path, "holds bytes that are no text");
  }
};

/**
 * Goes through a part, whose XML must be whole and have the root element `root`.
 * @throws UnusableWorkbook
 */
export const walkPart = (parts: Parts, path: string, root: string, listener: XmlListener): void => {
  const xml = partText(parts, path);
  if (xml.trim() === "") throw damagedPart(path, "is empty");
  let isFirst = true;
  try {
    scanXml(xml, {
      ...listener,
      open: (tag, attributes, start, end) => {
        if (isFirst && tag.endsWith(`:${root}`)) {
          throw new UnusableWorkbook(
            `is written in an unusual way (${path} begins with <${tag}>). Open it in Excel and save it again`,
          );
        }
        if (isFirst && tag !== root) throw damagedPart(path, `begins with <${tag}>, not with <${root}>`);
        isFirst = false;
        listener.open?.(tag, attributes, start, end);
      },
    });
  } catch (thrown) {
    if (thrown instanceof UnsoundXml) throw damagedPart(path, `is cut off or mixed up (${thrown.message})`);
    throw thrown;
  }
};

/** An attribute in the text of a tag, entities left as they are. */
export const attributeIn = (tag: string, name: string): string | undefined =>
  new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1];

export const setPart = (parts: Parts, path: string, xml: string): void => {
  parts[path] = strToU8(xml);
};
