import "../catalogue/palette.css";
import "./sheet.css";
import { catalogue, findRecord } from "../catalogue/catalogue";
import { namespace } from "../cells/namespace";
import { callAtCaret } from "../cells/callAtCaret";
import { areaOf, cellName } from "../cells/addresses";
import { checkView } from "./checkView";
import { speakCompletion } from "./completion";
import { describeCell, spoken, type CellWords } from "./describeCell";
import { argumentWords } from "./functionHints";
import { openGrid, type Grid } from "./grid";
import { keepWork, offerDrafts, type Work } from "./keepWork";
import { keepProtection, type Protection } from "./protection";
import { nameGridParts } from "./nameGridParts";
import { blankWorkbook, openWorkbook, type OpenedWorkbook } from "./openWorkbook";
import { resultsTable } from "./resultsTable";
import { showTabs } from "./sheetTabs";
import { byId } from "../pane/element";

const gridPlace = byId("grid");
const results = byId("results");
const tableButton = byId<HTMLButtonElement>("table-view");
const file = byId<HTMLInputElement>("file");
const workbooks = byId<HTMLDetailsElement>("workbooks");
const ids = catalogue.map(({ id }) => id);

let grid: Grid | null = null;
let opened: OpenedWorkbook | null = null;
let work: Work | null = null;
let protection: Protection | null = null;
let last: CellWords | null = null;
let lastHint = "";

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
  if (grid) showTabs(byId("tabs"), grid.tabs(), (id) => grid?.showSheet(id), leaveTabs);
};

/** What is typed after a click on a tab is meant for the sheet. */
const leaveTabs = (): void => {
  if (!isTableView()) grid?.focus();
};

const say = (words: string): void => {
  byId("live").textContent = words;
};

/** The line below the grid; spoken when the cell is another one or shows something else. */
const refreshStatus = (): void => {
  const sheet = activeSheet();
  if (!grid || !sheet) return;
  const { row, column } = grid.activeCell();
  const words = describeCell(grid, sheet, row, column, opened?.notes[sheet.getSheetId()]);
  byId("hint").textContent = lastHint = "";
  byId("status").hidden = false;
  byId("status-address").textContent = words.address;
  byId("status-formula").textContent = words.formula;
  byId("status-value").textContent = words.error ? "" : words.value + (words.unit ? ` ${words.unit}` : "");
  byId("status-error").textContent = words.error;
  byId("status-prompt").textContent = [
    words.isInput ? "Input." : "",
    words.isLink ? "Link: click it or press Enter." : "",
    words.prompt,
  ]
    .filter(Boolean)
    .join(" ");
  if (last && spoken(last) === spoken(words)) return;
  say(spoken(words));
  last = words;
};

/** While a formula is typed, the line tells of the argument at the caret instead. */
const refreshHint = (): void => {
  const typing = grid?.typing();
  const at = typing && callAtCaret(typing.text, typing.caret);
  const [space, id = ""] = at?.name.split(".") ?? [];
  const record = space === namespace ? findRecord(id) : undefined;
  const argument = at && record?.arguments[at.index];
  const words = record && argument ? `${record.id}, ${argument.name}: ${argumentWords(argument)}` : "";
  byId("hint").textContent = words;
  byId("status").hidden = words !== "";
  if (words !== "" && words !== lastHint) say(words);
  lastHint = words;
};

/** Runs once after a burst of calls; results are in the cells only after the commands that announce them. */
const soon = (work: () => void, milliseconds: number): (() => void) => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return () => {
    clearTimeout(timer);
    timer = setTimeout(work, milliseconds);
  };
};

/** The switch of the shown sheet's protection; a password can't be asked for here. */
const refreshProtection = (): void => {
  const button = byId<HTMLButtonElement>("unprotect");
  const state = protection?.state() ?? "none";
  button.hidden = state === "none";
  button.textContent = state === "off" ? "Protect sheet again" : "Unprotect sheet";
  button.setAttribute("aria-pressed", String(state === "off"));
};

const refresh = (): void => {
  refreshTabs();
  refreshProtection();
  refreshStatus();
  nameGridParts();
  if (isTableView()) fillTable();
};
const afterMove = soon(refresh, 60);
const afterChange = soon(() => {
  refresh();
  work?.changed();
}, 150);

const afterTyping = soon(refreshHint, 60);

const show = (workbook: OpenedWorkbook, isDraft = false): void => {
  work?.dispose();
  protection?.dispose();
  grid?.close();
  const place = document.createElement("div");
  gridPlace.replaceChildren(place);
  opened = workbook;
  last = null;
  showProblem("");
  document.title = `${workbook.title} · Oxygen Supply Functions`;
  byId("workbook-title").textContent = workbook.title;
  byId("charts-note").hidden = !Object.values(workbook.notes).some(({ hasCharts }) => hasCharts);
  gridPlace.ariaBusy = "true";
  const ready = (): void => {
    gridPlace.ariaBusy = "false";
    afterMove();
    work?.changed();
  };
  grid = openGrid(place, workbook, {
    moved: afterMove,
    changed: afterChange,
    typed: afterTyping,
    clicked: follow,
    ready,
  });
  protection = keepProtection(grid, workbook.notes, (words) => {
    showProblem(words);
    say(words);
  });
  work = keepWork(grid, workbook, isDraft, (words) => {
    byId("work").textContent = words;
  });
  if (!isTableView()) grid.focus();
  afterMove();
};

const openBytes = async (
  bytes: ArrayBuffer | Uint8Array<ArrayBuffer>,
  name: string,
  isDraft = false,
): Promise<void> => {
  try {
    show(await openWorkbook(new Uint8Array(bytes), ids, name), isDraft);
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
  await showDrafts();
};

/** Work that an earlier tab left unsaved. */
const showDrafts = (): Promise<void> =>
  offerDrafts(byId("drafts"), async ({ bytes, fileName }) => {
    if (!(await (work?.mayLeave() ?? true))) return false;
    await openBytes(new Uint8Array(bytes), fileName, true);
    return true;
  });

const save = async (kind: "formulas" | "values"): Promise<void> => {
  try {
    const words = await work?.save(kind);
    if (words) say(words);
  } catch (thrown) {
    showProblem(
      `The copy was not made: ${thrown instanceof Error ? thrown.message : String(thrown)}. The draft stays.`,
    );
  }
};
byId("save").addEventListener("click", () => void save("formulas"));
byId("save-values").addEventListener("click", () => void save("values"));
byId("unprotect").addEventListener("click", () => {
  const name = activeSheet()?.getName() ?? "";
  if (protection?.hasPassword()) {
    showProblem(`The sheet ${name} is protected with a password; open the workbook in Excel to take it off.`);
    return;
  }
  protection?.toggle();
  showProblem(
    protection?.state() === "off"
      ? `The sheet ${name} is unprotected here: a slip can overwrite a formula. A saved copy is protected as before.`
      : "",
  );
  refreshProtection();
  grid?.focus();
});

// A link to another workbook leaves the page: the page asks in its own words, the browser only where it can't.
workbooks.addEventListener("click", (event) => {
  const link = (event.target as Element).closest<HTMLAnchorElement>("a[href]");
  if (!link || event.ctrlKey || event.metaKey || event.shiftKey || !work?.isUnsaved()) return;
  event.preventDefault();
  void work.mayLeave().then((may) => {
    if (may) location.assign(link.href);
  });
});

/** Goes where the link of a cell leads; false if it has none. */
const follow = (row: number, column: number): boolean => {
  const from = activeSheet();
  const target = from && opened?.notes[from.getSheetId()]?.links[cellName(row, column)];
  if (!grid || !target) return false;
  const mark = target.lastIndexOf("!");
  const name = target.slice(0, mark).replace(/^'|'$/g, "").replace(/''/g, "'");
  const sheet = mark < 0 ? from : grid.workbook.getSheetBySheetName(name);
  if (!sheet || !/^\$?[A-Z]{1,3}\$?\d+/i.test(target.slice(mark + 1))) return false;
  const { startRow, startColumn } = areaOf(target.slice(mark + 1));
  grid.goTo(sheet.getSheetId(), startRow, startColumn);
  return true;
};

const findings = byId("findings");
const checkButton = byId<HTMLButtonElement>("check");

const leaveFindings = (): void => {
  findings.hidden = true;
  findings.replaceChildren();
  checkButton.setAttribute("aria-pressed", "false");
  gridPlace.inert = isTableView();
  if (!isTableView()) grid?.focus();
};

const check = (): void => {
  if (!findings.hidden) return leaveFindings();
  if (!grid || !opened) return;
  if (isTableView()) toggleTable();
  findings.replaceChildren(checkView(grid, opened, { leave: leaveFindings, say }));
  findings.hidden = false;
  gridPlace.inert = true;
  checkButton.setAttribute("aria-pressed", "true");
  findings.focus();
};
checkButton.addEventListener("click", check);

const toggleTable = (): void => {
  if (!findings.hidden) leaveFindings();
  results.hidden = !results.hidden;
  gridPlace.inert = isTableView();
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
  void (async () => {
    if (await (work?.mayLeave() ?? true)) await openBytes(await chosen.arrayBuffer(), chosen.name);
    file.value = "";
  })();
});

workbooks.addEventListener("keydown", (event) => {
  if (event.key !== "Escape" || !workbooks.open) return;
  workbooks.open = false;
  workbooks.querySelector("summary")?.focus();
});
document.addEventListener("pointerdown", (event) => {
  if (!workbooks.contains(event.target as Node)) workbooks.open = false;
});

/** Goes on to the next of toolbar, grid (or table) and sheet tabs. */
const moveFocus = (backwards: boolean): void => {
  const [toolbar, tabs] = [byId("toolbar"), byId("tabs")];
  const stops = [
    { has: toolbar, go: () => toolbar.querySelector("summary")?.focus() },
    isTableView() ? { has: results, go: () => results.focus() } : { has: gridPlace, go: () => grid?.focus() },
    { has: tabs, go: () => tabs.querySelector<HTMLElement>('[tabindex="0"]')?.focus() },
  ];
  const focused = document.activeElement;
  const at = stops.findIndex(({ has }) => has.contains(focused));
  // Lists of the grid stand outside its element.
  const here = at >= 0 ? at : focused && focused !== document.body ? 1 : -1;
  stops[(here + (backwards ? stops.length - 1 : 1)) % stops.length]?.go();
};

const goHome = (): boolean => {
  const sheet = activeSheet();
  if (sheet) grid?.goTo(sheet.getSheetId(), 0, 0);
  return sheet !== null;
};

/** Keys of the page, seen before the grid sees them; true when the key is done with. */
const takeKey = ({ key, ctrlKey, metaKey, altKey, shiftKey, target }: KeyboardEvent): boolean => {
  if (document.querySelector("dialog[open]")) return false;
  if ((ctrlKey || metaKey) && !altKey && !shiftKey && key.toLowerCase() === "s") {
    void save("formulas");
    return true;
  }
  if (altKey || metaKey) return false;
  const inGrid = gridPlace.contains(target as Node) && grid !== null && grid.typing() === null;
  if (ctrlKey) return key === "Home" && inGrid && goHome();
  if (key === "F8") toggleTable();
  else if (key === "F6") moveFocus(shiftKey);
  else if (key === "Enter" && inGrid && !shiftKey) {
    const { row, column } = grid!.activeCell();
    return target instanceof HTMLInputElement ? false : follow(row, column);
  } else return false;
  return true;
};

window.addEventListener(
  "keydown",
  (event) => {
    if (!takeKey(event)) return;
    event.preventDefault();
    event.stopPropagation();
  },
  { capture: true },
);

/** A message box of the grid leaves the focus nowhere when it closes. */
const returnFocus = ({ target }: Event): void => {
  if (!(target as Element).closest?.('[role="dialog"], [role="alertdialog"]')) return;
  setTimeout(() => {
    if (document.activeElement === document.body && !isTableView()) grid?.focus();
  }, 300);
};
document.addEventListener("keydown", returnFocus, { capture: true });
document.addEventListener("click", returnFocus, { capture: true });

speakCompletion(say);
start().catch((thrown: unknown) =>
  showProblem(`The sheet did not start: ${thrown instanceof Error ? thrown.message : String(thrown)}.`),
);
