import "../catalogue/palette.css";
import "./pane.css";
import { catalogue, findRecord } from "../catalogue/catalogue";
import { namespace } from "../cells/namespace";
import { callsIn, parseFormula } from "../cells/formulaTree";
import { connectActiveCell, type ActiveCell } from "../excel/activeCell";
import { makeFunctionList } from "./functionList";
import { makeFunctionPage } from "./functionPage";
import { makeSearch } from "../catalogue/searchFunctions";
import { byId } from "./element";

const search = byId<HTMLInputElement>("search");
const finder = byId("finder");
const reader = byId("reader");
const live = byId("live");
const activeBar = byId("active-function");
const activeButton = byId<HTMLButtonElement>("active-function-open");
const find = makeSearch(catalogue);

let activeCell: ActiveCell | null = null;
let shownId = "";
/** The formula and cell a second press may overwrite. */
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
};

const closeFunction = (): void => {
  shownId = "";
  reader.hidden = true;
  reader.replaceChildren();
  finder.hidden = false;
  say("");
  if (!list.focus()) search.focus();
};

const openFunction = (id: string): void => {
  const record = findRecord(id);
  if (!record) return;
  shownId = id;
  awaitingReplace = "";
  reader.replaceChildren(
    makeFunctionPage(record, {
      back: closeFunction,
      open: openFunction,
      verb: activeCell ? "Insert" : "Copy",
      use: (formula) => void useFormula(formula),
    }),
  );
  finder.hidden = true;
  reader.hidden = false;
  say("");
  window.scrollTo(0, 0);
  byId("function-name").focus();
};

const insert = async (cell: ActiveCell, formula: string): Promise<void> => {
  const replace = awaitingReplace === formula;
  awaitingReplace = "";
  const { address, written } = await cell.write(formula, replace);
  if (written) return say(`Inserted into ${address}`);
  awaitingReplace = formula;
  say(`${address} is not empty. Press again to replace what it holds.`);
};

const useFormula = async (formula: string): Promise<void> => {
  try {
    if (activeCell) await insert(activeCell, formula);
    else {
      await navigator.clipboard.writeText(formula);
      say(`Copied ${formula}`);
    }
  } catch {
    say(
      activeCell
        ? "Excel did not take the formula. Finish editing the cell, select one cell and try again."
        : `The browser did not allow copying. The formula is ${formula}`,
    );
  }
};

const showActiveFunction = (formula: string): void => {
  awaitingReplace = "";
  const names = callsIn(parseFormula(formula)).map(({ name }) => name.toUpperCase());
  const used = names.find((name) => name.startsWith(`${namespace}.`))?.slice(namespace.length + 1) ?? "";
  activeBar.hidden = findRecord(used) === undefined;
  activeButton.textContent = used;
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
  if (event.key === "Escape" && shownId !== "") closeFunction();
  else if (event.key === "/" && document.activeElement !== search) {
    event.preventDefault();
    if (shownId !== "") closeFunction();
    search.focus();
  }
});

activeButton.addEventListener("click", () => openFunction(activeButton.textContent ?? ""));

const start = async (): Promise<void> => {
  refreshList();
  activeCell = await connectActiveCell();
  if (shownId !== "") openFunction(shownId);
  await activeCell?.watch(showActiveFunction);
};

start().catch(() => say("Excel did not answer; formulas can be copied instead."));
