/** The help page's search; the page reads and prints without it. */
import { catalogue } from "../catalogue/catalogue";
import { firstSentence } from "../catalogue/firstSentence";
import { makeSearch } from "../catalogue/searchFunctions";
import { byId, element } from "../pane/element";

const search = makeSearch(catalogue);
const form = byId<HTMLFormElement>("search");
const question = byId<HTMLInputElement>("question");
const found = byId("found");
const results = byId("results");
const most = 12;

function show(): void {
  const asked = question.value.trim();
  const hits = asked === "" ? [] : search(asked);
  results.replaceChildren(
    ...hits
      .slice(0, most)
      .map(({ id, description }) =>
        element("li", {}, element("a", { href: `#${id}` }, id), ` ${firstSentence(description)}`),
      ),
  );
  if (asked === "") found.textContent = "";
  else if (hits.length === 0) found.textContent = "Nothing found. Try other words, or look through the contents below.";
  else found.textContent = hits.length > most ? `The best ${most} of ${hits.length}.` : `${hits.length} found.`;
}

function close(): void {
  question.value = "";
  show();
}

form.hidden = false;
question.addEventListener("input", show);
form.addEventListener("submit", (event) => {
  event.preventDefault();
  const first = results.querySelector<HTMLAnchorElement>("a");
  if (!first) return;
  location.hash = first.hash;
  close();
});
results.addEventListener("click", (event) => {
  if (event.target instanceof HTMLAnchorElement) close();
});
form.addEventListener("keydown", (event) => {
  if (event.key === "Escape") close();
});
