import type { FunctionRecord } from "../catalogue/record";
import { firstSentence } from "../catalogue/firstSentence";
import { groups as headings } from "../catalogue/groups";
import { element } from "./element";

export interface FunctionList {
  root: HTMLElement;
  /** Shows these records, grouped by heading, or in one run when `ranked`. */
  show(records: readonly FunctionRecord[], ranked: boolean): void;
  /** Focuses the option last used, or the first. False when the list is empty. */
  focus(): boolean;
}

const titleOf = (group: string): string => headings.find(({ name }) => name === group)?.title ?? group;

/**
 * A list box with one tab stop: arrow keys, Home and End move, Enter or a click opens, Arrow up from the first
 * option calls `leave`.
 */
export const makeFunctionList = (open: (id: string) => void, leave: () => void): FunctionList => {
  const root = element("div", { id: "functions", role: "listbox", "aria-label": "Functions" });
  let options: HTMLElement[] = [];
  let current = 0;

  const makeCurrent = (index: number, focus: boolean): void => {
    options[current]?.setAttribute("tabindex", "-1");
    options[current]?.setAttribute("aria-selected", "false");
    current = index;
    options[current]?.setAttribute("tabindex", "0");
    options[current]?.setAttribute("aria-selected", "true");
    if (focus) options[current]?.focus();
  };

  const move = (event: KeyboardEvent, index: number): void => {
    event.preventDefault();
    if (index < 0) leave();
    else makeCurrent(Math.min(index, options.length - 1), true);
  };

  root.addEventListener("keydown", (event) => {
    if (event.key === "ArrowDown") move(event, current + 1);
    else if (event.key === "ArrowUp") move(event, current - 1);
    else if (event.key === "Home") move(event, 0);
    else if (event.key === "End") move(event, options.length - 1);
    else if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      open(options[current]?.dataset.id ?? "");
    }
  });

  const option = (record: FunctionRecord): HTMLElement => {
    const made = element(
      "div",
      { role: "option", tabindex: "-1", "aria-selected": "false", "data-id": record.id, class: "option" },
      element("span", { class: "name" }, record.id),
      element("span", { class: "summary" }, firstSentence(record.description)),
    );
    made.addEventListener("click", () => {
      makeCurrent(options.indexOf(made), false);
      open(record.id);
    });
    options.push(made);
    return made;
  };

  const show = (records: readonly FunctionRecord[], ranked: boolean): void => {
    const kept = options[current]?.dataset.id;
    options = [];
    const groups = new Map<string, FunctionRecord[]>();
    for (const record of records) {
      const heading = ranked ? "" : titleOf(record.group);
      groups.set(heading, [...(groups.get(heading) ?? []), record]);
    }
    root.replaceChildren(
      ...[...groups].map(([heading, members]) =>
        heading === ""
          ? element("div", { role: "presentation" }, ...members.map(option))
          : element(
              "div",
              { role: "group", "aria-label": heading, class: "group" },
              element("div", { class: "heading", "aria-hidden": "true" }, heading),
              ...members.map(option),
            ),
      ),
    );
    root.hidden = records.length === 0;
    current = 0;
    makeCurrent(
      ranked
        ? 0
        : Math.max(
            0,
            options.findIndex((made) => made.dataset.id === kept),
          ),
      false,
    );
  };

  return {
    root,
    show,
    focus: () => {
      options[current]?.focus();
      return options.length > 0;
    },
  };
};
