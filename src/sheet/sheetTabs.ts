import type { SheetTab } from "./grid";

/** Rebuilds the row of sheet names only when it differs, so that focus stays where it is. */
export const showTabs = (
  list: HTMLElement,
  tabs: readonly SheetTab[],
  open: (id: string) => void,
  leave: () => void,
): void => {
  const key = JSON.stringify(tabs);
  if (list.dataset.shown === key) return;
  const hadFocus = list.contains(document.activeElement);
  list.dataset.shown = key;
  list.replaceChildren(
    ...tabs.map(({ id, name, active }, index) => {
      const tab = document.createElement("button");
      tab.type = "button";
      tab.role = "tab";
      tab.textContent = name;
      tab.tabIndex = active ? 0 : -1;
      tab.setAttribute("aria-selected", String(active));
      tab.setAttribute("aria-controls", "grid");
      tab.addEventListener("click", () => {
        open(id);
        leave();
      });
      tab.addEventListener("keydown", (event) => {
        const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
        const next = event.key === "Home" ? 0 : event.key === "End" ? tabs.length - 1 : step ? index + step : -1;
        if (!tabs[next]) return;
        event.preventDefault();
        open(tabs[next].id);
      });
      return tab;
    }),
  );
  if (hadFocus) list.querySelector<HTMLElement>('[tabindex="0"]')?.focus();
};
