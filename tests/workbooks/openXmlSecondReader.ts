import { read, utils, type CellObject } from "@e965/xlsx";

export interface ReadCell {
  /** As stored: without "=", with its prefixes. */
  formula?: string;
  /** The cells a dynamic-array formula fills. */
  fills?: string;
  dynamic: boolean;
  /** An error as `{ error: "#N/A" }`; null for a cell without a value. */
  value: number | string | boolean | null | { error: string };
}

const valueOf = ({ t, v, w }: CellObject): ReadCell["value"] => {
  if (t === "e") return { error: String(w) };
  if (v === undefined || t === "z") return null;
  return v as number | string | boolean;
};

/**
 * A workbook's cells by sheet and address ("Plan!A5") as @e965/xlsx reads them, a reader that has nothing in common with
 * the library that writes the files.
 */
export const readCells = (bytes: Uint8Array): Map<string, ReadCell> => {
  const book = read(bytes, { type: "array", cellFormula: true, cellDates: false, xlfn: true });
  return new Map(
    book.SheetNames.flatMap((name) => {
      const sheet = book.Sheets[name]!;
      return Object.entries(sheet)
        .filter(([address]) => !address.startsWith("!"))
        .map(([address, content]): [string, ReadCell] => {
          const cell = content as CellObject;
          const isFirst = cell.F === undefined || utils.encode_cell(utils.decode_range(cell.F).s) === address;
          return [
            `${name}!${address}`,
            {
              ...(isFirst && cell.f !== undefined ? { formula: cell.f } : {}),
              ...(isFirst && cell.F !== undefined ? { fills: cell.F } : {}),
              dynamic: isFirst && cell.D === true,
              value: valueOf(cell),
            },
          ];
        });
    }),
  );
};
