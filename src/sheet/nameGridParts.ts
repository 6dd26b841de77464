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
