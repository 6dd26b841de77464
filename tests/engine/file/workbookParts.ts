import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

/** A workbook with some of its parts changed; undefined takes a part out. Packed soundly, so that only the part is at fault. */
export const withParts = (
  bytes: Uint8Array,
  changes: Readonly<Record<string, ((text: string) => string) | undefined>>,
): Uint8Array => {
  const parts = unzipSync(bytes);
  for (const [path, change] of Object.entries(changes)) {
    if (!parts[path]) throw new Error(`there is no part ${path}`);
    if (change) parts[path] = strToU8(change(strFromU8(parts[path])));
    else delete parts[path];
  }
  return zipSync(parts);
};

/** Reads a part's text. */
export const partOf = (bytes: Uint8Array, path: string): string => strFromU8(unzipSync(bytes)[path]!);
