import type { CachedCell, Calculate } from "../../src/workbooks/writer";

/** Values written by hand, by "Sheet!A1": a bare value stands for one cell. */
export const calculatedFrom =
  (values: Readonly<Record<string, CachedCell | readonly (readonly CachedCell[])[]>>): Calculate =>
  () =>
    new Map(
      Object.entries(values).map(([key, value]) => [
        key,
        Array.isArray(value) ? (value as readonly (readonly CachedCell[])[]) : [[value as CachedCell]],
      ]),
    );
