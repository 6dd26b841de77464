import "./sheet.css";
import { catalogue } from "../catalogue/catalogue";
import { describeCell, spoken, type CellWords } from "./describeCell";
import { openGrid, type Grid } from "./grid";
import { blankWorkbook, openWorkbook, type OpenedWorkbook } from "./openWorkbook";
import { resultsTable } from "./resultsTable";
import { showTabs } from "./sheetTabs";

const byId = <Kind extends HTMLElement>(id: string): Kind => document.getElementById(id) as Kind;

const gridPlace = byId("grid");
const results = byId("results");
const tableButton = byId<HTMLButtonElement>("table-view");
const file = byId<HTMLInputElement>("file");
const workbooks = byId<HTMLDetailsElement>("workbooks");
const ids = catalogue.map(({ id }) => id);

let grid: Grid | null = null;
let opened: OpenedWorkbook | null = null;
let last: CellWords | null = null;

const activeSheet = () => grid?.workbook.getActiveSheet() ?? null;

const showProblem = (words: string): void => {
  byId("problem").hidden = words === "";
  byId("problem").textContent = words;
};

const isTableView = (): boolean => !results.hidden;

const fillTable = (): void => {
  const sheet = activeSheet();
  if (grid && sheet) results.replaceChildren(resultsTable(grid, sheet, opened?.notes[sheet.getSheetId()]));
};

const refreshTabs = (): void => {
  if (grid) showTabs(byId("tabs"), grid.tabs(), (id) => grid?.showSheet(id));
};

/** The line below the grid; spoken when the cell is another one or shows something else. */
const refreshStatus = (): void => {
  const sheet = activeSheet();
  if (!grid || !sheet) return;
  const { row, column } = grid.activeCell();
  const words = describeCell(grid, sheet, row, column, opened?.notes[sheet.getSheetId()]);
  byId("status-address").textContent = words.address;
  byId("status-formula").textContent = words.formula;
  byId("status-value").textContent = words.error ? "" : words.value + (words.unit ? ` ${words.unit}` : "");
  byId("status-error").textContent = words.error;
  byId("status-prompt").textContent = [words.isInput ? "Input." : "", words.prompt].filter(Boolean).join(" ");
  if (last && spoken(last) === spoken(words)) return;
  byId("live").textContent = spoken(words);
  last = words;
};

/** Runs once after a burst of calls; results are in the cells only after the commands that announce them. */
const soon = (work: () => void, milliseconds: number): (() => void) => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return () => {
    clearTimeout(timer);
    timer = setTimeout(work, milliseconds);
  };
};

const afterMove = soon(() => {
  refreshTabs();
  refreshStatus();
  if (isTableView()) fillTable();
}, 60);
const afterChange = soon(() => {
  refreshTabs();
  refreshStatus();
  if (isTableView()) fillTable();
}, 150);

const show = (workbook: OpenedWorkbook): void => {
  grid?.close();
  const place = document.createElement("div");
  gridPlace.replaceChildren(place);
  opened = workbook;
  last = null;
  showProblem("");
  document.title = `${workbook.title} · Oxygen Supply Functions`;
  byId("workbook-title").textContent = workbook.title;
  byId("charts-note").hidden = !Object.values(workbook.notes).some(({ hasCharts }) => hasCharts);
  grid = openGrid(place, workbook, { moved: afterMove, changed: afterChange });
  afterMove();
};

const openBytes = async (bytes: ArrayBuffer, name: string): Promise<void> => {
  try {
    show(await openWorkbook(new Uint8Array(bytes), ids, name));
  } catch (thrown) {
    showProblem(`${name} can't be opened: ${thrown instanceof Error ? thrown.message : String(thrown)}.`);
  }
};

const openSample = async (name: string): Promise<void> => {
  const answer = await fetch(`samples/${encodeURIComponent(name)}`);
  if (!answer.ok) return showProblem(`There is no sample workbook ${name} here.`);
  await openBytes(await answer.arrayBuffer(), name);
};

const start = async (): Promise<void> => {
  const asked = new URLSearchParams(location.search);
  const first = document.querySelector<HTMLAnchorElement>('#workbooks a[href^="?open="]')?.getAttribute("href") ?? "";
  const name = asked.get("open") ?? (asked.has("blank") ? null : new URLSearchParams(first).get("open"));
  if (name === null) show(blankWorkbook());
  else await openSample(name);
};

const toggleTable = (): void => {
  results.hidden = !results.hidden;
  gridPlace.hidden = isTableView();
  tableButton.setAttribute("aria-pressed", String(isTableView()));
  if (isTableView()) {
    fillTable();
    results.focus();
  } else grid?.focus();
};

tableButton.addEventListener("click", toggleTable);

file.addEventListener("change", () => {
  const [chosen] = file.files ?? [];
  if (!chosen) return;
  void chosen.arrayBuffer().then((bytes) => openBytes(bytes, chosen.name));
  file.value = "";
});

workbooks.addEventListener("keydown", (event) => {
  if (event.key !== "Escape" || !workbooks.open) return;
  workbooks.open = false;
  workbooks.querySelector("summary")?.focus();
});
document.addEventListener("pointerdown", (event) => {
  if (!workbooks.contains(event.target as Node)) workbooks.open = false;
});

/** Before the grid sees them: F6 goes round toolbar, grid (or table) and sheet tabs; F8 shows the table. */
window.addEventListener(
  "keydown",
  (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === "F8") toggleTable();
    else if (event.key === "F6") {
      const [toolbar, tabs] = [byId("toolbar"), byId("tabs")];
      const stops = [
        { has: toolbar, go: () => toolbar.querySelector("summary")?.focus() },
        isTableView() ? { has: results, go: () => results.focus() } : { has: gridPlace, go: () => grid?.focus() },
        { has: tabs, go: () => tabs.querySelector<HTMLElement>('[tabindex="0"]')?.focus() },
      ];
      const focused = document.activeElement;
      const at = stops.findIndex(({ has }) => has.contains(focused));
      // The editor of the grid lives outside the grid's own element.
      const here = at >= 0 ? at : focused && focused !== document.body ? 1 : -1;
      stops[(here + (event.shiftKey ? stops.length - 1 : 1)) % stops.length]?.go();
    } else return;
    event.preventDefault();
    event.stopPropagation();
  },
  { capture: true },
);

start().catch((thrown: unknown) => showProblem(`The sheet did not start: ${thrown instanceof Error ? thrown.message : String(thrown)}.`));
