import { inflateSync, zipSync, type Zippable } from "fflate";
import { damaged, damagedPart, mostAllowed, tooLarge, tooMany, UnusableWorkbook } from "./unusableWorkbook";

/** The parts of a package by path, "xl/workbook.xml". */
export type Parts = Record<string, Uint8Array>;

/** Signatures and offsets below: PKWARE, APPNOTE.TXT 6.3.10, sections 4.3.7, 4.3.12 and 4.3.16. */
const signature = { entry: 0x04034b50, directory: 0x02014b50, end: 0x06054b50 };
const endLength = 22;
const longestComment = 65_535;

/** CRC-32 as zip uses it: ISO 3309, the reversed polynomial 0xEDB88320. */
const crcTable = Uint32Array.from({ length: 256 }, (_, index) => {
  let value = index;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

export const crc32 = (bytes: Uint8Array): number => {
  let crc = 0xffffffff;
  for (let at = 0; at < bytes.length; at++) crc = (crc >>> 8) ^ crcTable[(crc ^ bytes[at]!) & 0xff]!;
  return (crc ^ 0xffffffff) >>> 0;
};

const isCompoundFile = (bytes: Uint8Array): boolean =>
  [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1].every((byte, at) => bytes[at] === byte);

/** A stream's name in a compound file, in UTF-16: [MS-OFFCRYPTO] 2.3.4.4 "EncryptedPackage". */
const holdsName = (bytes: Uint8Array, name: string): boolean => {
  const wanted = Array.from(name, (letter) => letter.charCodeAt(0));
  for (let at = 0; at + wanted.length * 2 <= bytes.length; at += 2) {
    if (wanted.every((code, index) => bytes[at + index * 2] === code && bytes[at + index * 2 + 1] === 0)) return true;
  }
  return false;
};

const notZip = (bytes: Uint8Array): UnusableWorkbook => {
  if (bytes.length === 0) return new UnusableWorkbook("is empty. Take another copy");
  if (!isCompoundFile(bytes)) return new UnusableWorkbook("is no .xlsx workbook");
  return holdsName(bytes, "EncryptedPackage")
    ? new UnusableWorkbook(
        "is locked with a password. Open it in Excel, take the password off (File > Info > Protect Workbook > Encrypt with Password) and save it",
      )
    : new UnusableWorkbook(
        "is a workbook of the older .xls kind. Open it in Excel and save it as Excel Workbook (.xlsx)",
      );
};

interface Entry {
  readonly path: string;
  readonly method: number;
  readonly flags: number;
  readonly crc: number;
  readonly packed: number;
  readonly size: number;
  readonly offset: number;
}

const endOfDirectory = (view: DataView): number => {
  const last = view.byteLength - endLength;
  for (let at = last; at >= Math.max(0, last - longestComment); at--) {
    if (view.getUint32(at, true) === signature.end) return at;
  }
  throw damaged("its end is missing, as if copying it had been broken off");
};

const readDirectory = (bytes: Uint8Array): Entry[] => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOfDirectory(view);
  const count = view.getUint16(end + 10, true);
  if (count > mostAllowed.parts) throw tooMany("parts", mostAllowed.parts);
  const names = new TextDecoder();
  const entries: Entry[] = [];
  const start = view.getUint32(end + 16, true);
  let at = start;
  for (let index = 0; index < count; index++) {
    if (at + 46 > end || view.getUint32(at, true) !== signature.directory) {
      throw damaged("its list of parts can't be read");
    }
    const nameLength = view.getUint16(at + 28, true);
    entries.push({
      flags: view.getUint16(at + 8, true),
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packed: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      offset: view.getUint32(at + 42, true),
      path: names.decode(bytes.subarray(at + 46, at + 46 + nameLength)),
    });
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  const isWhole = view.getUint16(end + 8, true) === count && view.getUint32(end + 12, true) === at - start;
  if (!isWhole) throw damaged("its list of parts is not whole");
  return entries;
};

const unpack = (bytes: Uint8Array, { path, method, flags, crc, packed, size, offset }: Entry): Uint8Array => {
  if (flags & 1) throw new UnusableWorkbook(`is locked: its part ${path} is encrypted. Save it without a password`);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const isHere = offset + 30 <= bytes.length && view.getUint32(offset, true) === signature.entry;
  const nameEnd = isHere ? offset + 30 + view.getUint16(offset + 26, true) : Infinity;
  const start = isHere ? nameEnd + view.getUint16(offset + 28, true) : Infinity;
  if (start + packed > bytes.length || new TextDecoder().decode(bytes.subarray(offset + 30, nameEnd)) !== path) {
    throw damagedPart(path, "is not where the list of parts says");
  }
  const content = bytes.subarray(start, start + packed);
  let unpacked: Uint8Array;
  if (method === 0) unpacked = content;
  else if (method === 8) {
    try {
      // One byte more than stated, so that a longer content shows.
      unpacked = inflateSync(content, { out: new Uint8Array(size + 1) });
    } catch {
      throw damagedPart(path, "can't be unpacked");
    }
  } else throw new UnusableWorkbook(`is packed in a way that is not read here (${path}). Save it again in Excel`);
  if (unpacked.length !== size || crc32(unpacked) !== crc) {
    throw damagedPart(path, "is not as it was saved: its check number does not fit");
  }
  return unpacked;
};

/**
 * The parts of a zip file, each checked against its size and check number. The list of parts is believed as to sizes only
 * up to the limit, and nothing beyond a stated size is unpacked.
 * @throws UnusableWorkbook
 */
export const readParts = (bytes: Uint8Array): Parts => {
  if (bytes.length < endLength || bytes[0] !== 0x50 || bytes[1] !== 0x4b) throw notZip(bytes);
  const entries = readDirectory(bytes).filter(({ path }) => !path.endsWith("/"));
  const total = entries.reduce((sum, { size }) => sum + size, 0);
  if (total > mostAllowed.bytes) throw tooLarge(total);
  const parts: Parts = Object.create(null) as Parts;
  for (const entry of entries) {
    if (entry.path in parts) throw damaged(`it holds its part ${entry.path} twice`);
    parts[entry.path] = unpack(bytes, entry);
  }
  return parts;
};

const pack = (parts: Parts, level: 0 | 6): Uint8Array => {
  const fixed: Zippable = {};
  // The same parts give the same bytes: zip stores a time of day, so each part gets the earliest one.
  for (const [path, content] of Object.entries(parts)) fixed[path] = [content, { mtime: new Date(1980, 0, 1), level }];
  return zipSync(fixed);
};

export const packParts = (parts: Parts): Uint8Array => pack(parts, 6);

/** Parts that were checked once, for another reader: put together without packing, so that it need not unpack. */
export const storeParts = (parts: Parts): Uint8Array => pack(parts, 0);
