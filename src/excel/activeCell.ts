/** What the pane does with the open workbook. Absent in a plain browser. */
export interface ActiveCell {
  /**
   * Writes a formula into the active cell. A cell that holds something is left alone unless `replace` is true,
   * because Excel can't undo what an add-in overwrote.
   */
  write(formula: string, replace: boolean): Promise<{ address: string; written: boolean }>;
  /** Tells the formula of the active cell now and after each move; "" when it holds none. */
  watch(tell: (formula: string) => void): Promise<void>;
}

const withoutSheet = (address: string): string => address.slice(address.lastIndexOf("!") + 1);

const readFormula = (): Promise<string> =>
  Excel.run(async (context) => {
    const cell = context.workbook.getActiveCell();
    cell.load("formulas");
    await context.sync();
    const formula: unknown = cell.formulas[0]?.[0];
    return typeof formula === "string" && formula.startsWith("=") ? formula : "";
  });

const inExcel: ActiveCell = {
  write: (formula, replace) =>
    Excel.run(async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("formulas, address");
      await context.sync();
      const address = withoutSheet(cell.address);
      if (!replace && cell.formulas[0]?.[0] !== "") return { address, written: false };
      cell.formulas = [[formula]];
      await context.sync();
      return { address, written: true };
    }),

  watch: async (tell) => {
    // A chart or picture may be selected, or a cell be in edit mode: then there is no active cell to tell about.
    const report = () => readFormula().then(tell, () => tell(""));
    await Excel.run(async (context) => {
      context.workbook.onSelectionChanged.add(report);
      await context.sync();
    });
    await report();
  },
};

/** Resolves to null in a plain browser, or when the host's library could not be loaded. */
export const connectActiveCell = async (): Promise<ActiveCell | null> => {
  if (typeof Office === "undefined") return null;
  const { host } = await Office.onReady();
  return host === Office.HostType.Excel ? inExcel : null;
};
