/** Why a file can't be used as a workbook, in words that name the part and what to do; they follow the file's name. */
export class UnusableWorkbook extends Error {}

/** What a workbook may hold here. More than any plan needs, and little enough for a page or a small computer. */
export const mostAllowed = {
  /** All parts together, unpacked. */
  bytes: 256 * 1024 * 1024,
  parts: 5_000,
  cells: 2_000_000,
  formulas: 200_000,
};

const again = "Copy or download the file again, or take an older copy";

export const damaged = (what: string): UnusableWorkbook => new UnusableWorkbook(`is damaged: ${what}. ${again}`);

export const damagedPart = (path: string, what: string): UnusableWorkbook => damaged(`its part ${path} ${what}`);

const megabytes = (bytes: number): string => `${Math.ceil(bytes / 1024 / 1024).toLocaleString("en-US")} MB`;

export const tooLarge = (bytes: number): UnusableWorkbook =>
  new UnusableWorkbook(
    `unpacks to ${megabytes(bytes)}; at most ${megabytes(mostAllowed.bytes)} are read here. Remove what is not needed, or split it`,
  );

export const tooMany = (what: string, most: number): UnusableWorkbook =>
  new UnusableWorkbook(
    `has more than ${most.toLocaleString("en-US")} ${what}, which is more than is read here. Remove what is not needed, or split it`,
  );
