import type { ICommandService, IDisposable } from "@univerjs/core";
import { SetSelectionsOperation } from "@univerjs/sheets";

/**
 * Escape in the formula bar restores the selection under the editor's own id instead of the workbook's, which throws
 * (Univer 0.25.1). This puts the workbook's id in its place.
 */
export const keepSelectionsInWorkbook = (commands: ICommandService, unitId: string): IDisposable =>
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id === SetSelectionsOperation.id) (params as { unitId: string }).unitId = unitId;
  });

/** Names for the parts of the grid's own bar that have none, and no canvas before everything else in the Tab order. */
export const nameGridParts = (): void => {
  const name = (selector: string, words: string): void => {
    for (const part of document.querySelectorAll(selector)) if (part.ariaLabel !== words) part.ariaLabel = words;
  };
  name("#grid input[type=text]", "Cell address or name");
  name("#grid [data-slot=popover-trigger]", "Names in this workbook");
  for (const link of document.querySelectorAll("#grid a[data-slot=popover-trigger]")) link.role = "button";
  name("#grid button:not([data-slot]):not(:has(:not(svg, svg *)))", "More of the formula bar");
  for (const canvas of document.querySelectorAll<HTMLElement>("canvas[tabindex='1']")) canvas.tabIndex = -1;
  document.querySelectorAll("section[aria-label^=Notifications]").forEach((section, index) => {
    section.ariaLabel = `Notifications ${index + 1}`;
  });
};
