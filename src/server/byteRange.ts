/** The bytes asked for of a file, first and last included; "none" where the file has none of them. */
export type ByteRange = { readonly start: number; readonly end: number } | "none";

/**
 * Reads a Range header of one range of bytes: RFC 9110, 14.1.2. Undefined for any other header, which a server may ignore
 * (14.2) and answer with the whole file.
 */
export const byteRange = (header: string | undefined, size: number): ByteRange | undefined => {
  const match = /^bytes=\s*(\d*)-(\d*)\s*$/i.exec(header ?? "");
  if (!match || (match[1] === "" && match[2] === "")) return undefined;
  const [, first, last] = match;
  if (first === "") {
    const length = Math.min(Number(last), size);
    return length === 0 ? "none" : { start: size - length, end: size - 1 };
  }
  const start = Number(first);
  const end = last === "" ? size - 1 : Math.min(Number(last), size - 1);
  if (last !== "" && Number(last) < start) return undefined;
  return start < size ? { start, end } : "none";
};
