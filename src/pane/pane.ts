import "../catalogue/palette.css";
import "./pane.css";
import { catalogue, findRecord } from "../catalogue/catalogue";
import { makeSearch } from "../catalogue/searchFunctions";
import type { FunctionRecord } from "../catalogue/record";
import { callsIn, parseFormula } from "../cells/formulaTree";
import { namespace } from "../cells/namespace";
import { connectWorkbook, type ActiveCell, type OpenWorkbook, type Size, type Written } from "../excel/openWorkbook";
import { byId, element } from "./element";
import { makeFunctionForm } from "./functionForm";
import { makeFunctionList } from "./functionList";
import { makeFunctionPage } from "./functionPage";
import { favourites, isFavourite, noteOpened, recent, toggleFavourite } from "./keptChoices";
import { localFormula } from "./localFormula";
import { blocksPage, checkPage, explainPage, samplesPage } from "./pages";
import { blockRows, type ReadyBlock } from "./readyBlocks";

const search = byId<HTMLInputElement>("search");
const finder = byId("finder");
const reader = byId("reader");
const live = byId("live");
const activeBar = byId("active-function");
const activeButton = byId<HTMLButtonElement>("active-function-open");
const find = makeSearch(catalogue);

let workbook: OpenWorkbook | null = null;
let decimalSign = ".";
let activeCell: ActiveCell | undefined;
/** The function shown, "page" for another page, "" for the list. */
let shownId = "";
/** What a second press may overwrite. */
let awaitingReplace = "";

/** Speaks a message, and shows it too unless the pane already shows the same in its place. */
const say = (text: string, shown = true): void => {
  live.classList.toggle("unseen", !shown);
  live.textContent = text;
};

const list = makeFunctionList(
  (id) => openFunction(id),
  () => search.focus(),
);
finder.append(list.root);

const refreshList = (): void => {
  const found = find(search.value);
  const asked = search.value.trim() !== "";
  list.show(found, asked);
  byId("none").hidden = found.length > 0;
  const count = `${found.length} ${found.length === 1 ? "function" : "functions"}`;
  byId("count").textContent = count;
  say(asked ? (found.length === 0 ? "No function found" : `${count} found`) : "", false);
  showKept();
};

const closePage = (): void => {
  shownId = "";
  reader.hidden = true;
  reader.replaceChildren();
  finder.hidden = false;
  showKept();
  say("");
  if (!list.focus()) search.focus();
};

const showPage = (id: string, page: HTMLElement, focus: string): void => {
  shownId = id;
  awaitingReplace = "";
  reader.replaceChildren(page);
  finder.hidden = true;
  reader.hidden = false;
  say("");
  window.scrollTo(0, 0);
  byId(focus).focus();
};

const formOf = (record: FunctionRecord): HTMLElement =>
  makeFunctionForm(record, {
    ...(workbook ? { workbook } : {}),
    decimalSign,
    verb: workbook ? "Insert" : "Copy",
    use: (formula, size) => void useFormula(formula, size),
    say,
  });

const openFunction = (id: string): void => {
  const record = findRecord(id);
  if (!record) return;
  noteOpened(id);
  const page = makeFunctionPage(record, {
    back: closePage,
    open: openFunction,
    verb: workbook ? "Insert" : "Copy",
    use: (formula) => void useFormula(formula, { rows: 1, columns: 1 }),
    form: formOf(record),
    isFavourite: isFavourite(id),
    toggleFavourite: () => toggleFavourite(id),
  });
  showPage(id, page, "function-name");
};

const showKept = (): void => {
  const kept = byId("kept");
  const line = (title: string, ids: readonly string[]): HTMLElement | null =>
    ids.length === 0
      ? null
      : element(
          "div",
          { class: "links", role: "group", "aria-label": title },
          element("span", { class: "note" }, title),
          ...ids.map((id) => element("button", { type: "button", class: "link", onclick: () => openFunction(id) }, id)),
        );
  const known = (ids: readonly string[]): string[] => ids.filter((id) => findRecord(id));
  const marked = known(favourites());
  const lines = [
    line("Favourites", marked),
    line(
      "Recent",
      known(recent())
        .filter((id) => !marked.includes(id))
        .slice(0, 5),
    ),
  ].filter((each) => each !== null);
  kept.hidden = lines.length === 0 || search.value.trim() !== "";
  kept.replaceChildren(...lines);
};

/** Writes once, or says what is in the way and waits for a second press of the same. */
const place = async (key: string, write: (replace: boolean) => Promise<Written>): Promise<void> => {
  const replace = awaitingReplace === key;
  awaitingReplace = "";
  const { address, written, full } = await write(replace);
  if (written) return say(`Inserted into ${address}`);
  awaitingReplace = key;
  say(
    full === address
      ? `${address} is not empty. Press again to replace what it holds.`
      : `${full} is in the way: it holds something. Press again to replace it, or choose another cell.`,
  );
};

const refused = "Excel did not take the formula. Finish editing the cell, select one cell and try again.";

const useFormula = async (formula: string, size: Size): Promise<void> => {
  const here = workbook;
  if (here) {
    // Excel is handed the English form whatever its language.
    await place(formula, (replace) => here.write(formula, size, replace)).catch(() => say(refused));
    return;
  }
  const { text, arrays } = localFormula(formula, decimalSign);
  try {
    await navigator.clipboard.writeText(text);
    say(`Copied ${text}${arrays ? " (lists in braces may want other signs in your language)" : ""}`);
  } catch {
    say(`The browser did not allow copying. The formula is ${text}`);
  }
};

const layBlock = (block: ReadyBlock): void => {
  const here = workbook;
  if (!here) return;
  void place(`block ${block.id}`, (replace) => here.writeBlock((address) => blockRows(block, address), replace)).catch(
    () =>
      say(
        "Excel did not take the block. Finish editing the cell, select one cell of an unprotected sheet and try again.",
      ),
  );
};

const showActiveFunction = (cell: ActiveCell | undefined): void => {
  awaitingReplace = "";
  activeCell = cell;
  const names = callsIn(parseFormula(cell?.formula ?? "")).map(({ name }) => name.toUpperCase());
  const used = names.find((name) => name.startsWith(`${namespace}.`))?.slice(namespace.length + 1) ?? "";
  activeBar.hidden = findRecord(used) === undefined;
  activeButton.textContent = used;
};

const explain = async (): Promise<void> => {
  if (!activeCell || !workbook) return;
  try {
    showPage("page", await explainPage(activeCell, workbook, { leave: closePage, open: openFunction }), "page-title");
  } catch {
    say("Excel did not answer. Finish editing the cell and try again.");
  }
};

const check = async (): Promise<void> => {
  if (!workbook) return;
  say("Reading the workbook …");
  try {
    showPage("page", await checkPage(workbook, { leave: closePage, say }), "page-title");
  } catch (fault) {
    say(`The workbook could not be read: ${fault instanceof Error ? fault.message : "Excel did not answer"}`);
  }
};

search.addEventListener("input", refreshList);
search.addEventListener("keydown", (event) => {
  if (event.key === "ArrowDown") {
    event.preventDefault();
    list.focus();
  } else if (event.key === "Enter" && search.value.trim() !== "") {
    const best = find(search.value)[0];
    if (best) openFunction(best.id);
  } else if (event.key === "Escape" && search.value !== "") {
    event.preventDefault();
    search.value = "";
    refreshList();
  }
});

document.addEventListener("keydown", (event) => {
  if (event.key === "Escape" && shownId !== "") closePage();
  else if (event.key === "/" && !(document.activeElement instanceof HTMLInputElement)) {
    event.preventDefault();
    if (shownId !== "") closePage();
    search.focus();
  }
});

activeButton.addEventListener("click", () => openFunction(activeButton.textContent ?? ""));
byId("explain").addEventListener("click", () => void explain());
byId("ways-blocks").addEventListener("click", () =>
  showPage("page", blocksPage(closePage, layBlock, workbook !== null), "page-title"),
);
byId("ways-samples").addEventListener("click", () => showPage("page", samplesPage(closePage), "page-title"));
byId("ways-check").addEventListener("click", () => void check());

const start = async (): Promise<void> => {
  refreshList();
  workbook = await connectWorkbook();
  if (workbook) {
    byId("ways-check").hidden = false;
    decimalSign = await workbook.decimalSign().catch(() => ".");
  }
  if (shownId !== "" && shownId !== "page") openFunction(shownId);
  await workbook?.watch(showActiveFunction);
};

start().catch(() => say("Excel did not answer; formulas can be copied instead."));
