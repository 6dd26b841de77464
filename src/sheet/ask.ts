import { element } from "../pane/element";

/** Asks in a dialog of the page; the first choice is the safe one and has the focus. Escape gives undefined. */
export const ask = <Choice extends string>(
  words: string,
  choices: readonly { readonly value: Choice; readonly words: string }[],
): Promise<Choice | undefined> =>
  new Promise((resolve) => {
    const before = document.activeElement as HTMLElement | null;
    let chosen: Choice | undefined;
    const buttons = choices.map(({ value, words: label }) =>
      element(
        "button",
        {
          type: "button",
          onclick: () => {
            chosen = value;
            dialog.close();
          },
        },
        label,
      ),
    );
    const dialog = element(
      "dialog",
      { class: "ask", "aria-labelledby": "ask-words" },
      element("p", { id: "ask-words" }, words),
      element("div", { class: "choices" }, ...buttons),
    );
    // The grid listens for keys of the whole page.
    for (const kind of ["keydown", "keyup", "keypress"])
      dialog.addEventListener(kind, (event) => event.stopPropagation());
    dialog.addEventListener("close", () => {
      dialog.remove();
      before?.focus?.();
      resolve(chosen);
    });
    document.body.append(dialog);
    dialog.showModal();
    buttons[0]?.focus();
  });
