import { ICommandService } from "@univerjs/core";
import { IFunctionService } from "@univerjs/engine-formula";
import { DeviceInputEventType } from "@univerjs/engine-render";
import { IEditorBridgeService, SetCellEditVisibleOperation } from "@univerjs/sheets-ui";
import { KeyCode } from "@univerjs/ui";
import { element } from "../pane/element";
import { ask } from "./ask";
import { deleteDraft, keepDraft, listDrafts, type Draft } from "./drafts";
import type { Grid } from "./grid";
import { openedFormats, readGrid, savedCopy, valuesCopy, type GridContent } from "./gridChanges";
import type { OpenedWorkbook } from "./openWorkbook";

/** The work on one workbook: whether it is saved, its draft, and the ways to save it. */
export interface Work {
  /** To be called when anything in the grid may have changed. */
  changed(): void;
  isUnsaved(): boolean;
  /** What the grid holds now. */
  content(): GridContent;
  /** Hands a copy to the browser to store, and says so. */
  save(kind: "formulas" | "values"): Promise<string>;
  /** Asks when work would be lost. */
  mayLeave(): Promise<boolean>;
  dispose(): void;
}

const draftAfter = 1_000;

const keyOf = ({ entries, formats }: GridContent): string =>
  JSON.stringify(
    [entries, formats].map((sheets) => [...sheets].map(([name, cells]) => [name, [...cells].map(typedOnly)])),
  );

/** A formula's result is no change of the work. */
const typedOnly = ([address, entry]: [string, unknown]): unknown => {
  const { formula, value } = entry as { formula?: string; value?: unknown };
  return typeof entry === "string" ? [address, entry] : [address, formula ?? [value ?? null]];
};

const xlsx = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

const download = (bytes: Uint8Array, name: string): void => {
  const address = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type: xlsx }));
  const link = element("a", { href: address, download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
};

const clock = (when: number): string =>
  new Date(when).toLocaleString("en-GB", { dateStyle: "medium", timeStyle: "short" });

/** The words beside the workbook's title, "" when there is nothing to say. */
export type TellWork = (words: string) => void;

export const keepWork = (grid: Grid, opened: OpenedWorkbook, isDraft: boolean, tell: TellWork): Work => {
  const id = `${Date.now()}-${Math.random()}`;
  const { saved, fileName } = opened;
  const formats = openedFormats(opened);
  const known = (): string[] => [...grid.injector.get(IFunctionService).getExecutors().keys()].map(String);
  let savedKey: string | undefined;
  let unsaved = isDraft;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isClosed = false;

  const content = (): GridContent => readGrid(grid, saved, formats);
  const words = (): string => (unsaved ? "Changes are not saved. " : "");

  const storeDraft = async (): Promise<void> => {
    try {
      await keepDraft({ id, fileName, when: Date.now(), bytes: savedCopy(saved, content(), known()) });
      if (unsaved && !isClosed) tell(`${words()}A draft is kept in this browser, on this computer only. `);
    } catch (thrown) {
      const why = thrown instanceof Error ? thrown.message : String(thrown);
      if (!isClosed) tell(`${words()}No draft can be kept (${why}): save a copy. `);
    }
  };

  const refresh = (): void => {
    if (isClosed) return;
    const key = keyOf(content());
    const isFirst = savedKey === undefined;
    savedKey ??= key;
    const now = (isDraft && isFirst) || key !== savedKey;
    if (isDraft && isFirst) savedKey = "";
    if (!now) {
      if (unsaved) void deleteDraft(id).catch(() => undefined);
      unsaved = false;
      clearTimeout(timer);
      tell("");
      return;
    }
    if (!unsaved || isFirst) {
      unsaved = true;
      tell(words());
    }
    clearTimeout(timer);
    timer = setTimeout(() => void storeDraft(), draftAfter);
  };

  /** What is being typed is taken first. */
  const finishTyping = async (): Promise<void> => {
    if (!grid.injector.get(IEditorBridgeService).isVisible().visible) return;
    await grid.injector.get(ICommandService).executeCommand(SetCellEditVisibleOperation.id, {
      visible: false,
      eventType: DeviceInputEventType.Keyboard,
      keycode: KeyCode.ENTER,
      unitId: grid.workbook.getUnitId(),
    });
    // Long enough for what depends on it to be calculated.
    await new Promise((resolve) => setTimeout(resolve, 1_000));
  };

  const save: Work["save"] = async (kind) => {
    await finishTyping();
    const now = content();
    const name = fileName.replace(/\.xlsx$/i, "");
    if (kind === "values") {
      const file = `${name} values.xlsx`;
      download(valuesCopy(saved, now, known()), file);
      return `A copy with values only went to the browser's downloads as ${file}. It holds no formulas; the work itself is not saved by it.`;
    }
    const file = `${name.replace(/ copy$/, "")} copy.xlsx`;
    download(savedCopy(saved, now, known()), file);
    savedKey = keyOf(now);
    unsaved = false;
    clearTimeout(timer);
    await deleteDraft(id).catch(() => undefined);
    const said = `A copy went to the browser's downloads as ${file}. `;
    tell(said);
    return said;
  };

  const mayLeave: Work["mayLeave"] = async () => {
    await finishTyping();
    refresh();
    if (!unsaved) return true;
    const choice = await ask(`The changes in ${opened.title} are not saved.`, [
      { value: "save", words: "Save a copy, then go on" },
      { value: "stay", words: "Stay here" },
      { value: "leave", words: "Go on without saving" },
    ]);
    if (choice === "save") await save("formulas");
    if (choice === "leave") {
      savedKey = keyOf(content());
      unsaved = false;
      clearTimeout(timer);
      await deleteDraft(id).catch(() => undefined);
    }
    return choice === "save" || choice === "leave";
  };

  const beforeUnload = (event: BeforeUnloadEvent): void => {
    if (isClosed) return;
    if (grid.typing() === null) refresh();
    if (unsaved || grid.typing() !== null) event.preventDefault();
  };
  window.addEventListener("beforeunload", beforeUnload);

  return {
    changed: refresh,
    isUnsaved: () => {
      refresh();
      return unsaved || grid.typing() !== null;
    },
    content,
    save,
    mayLeave,
    dispose: () => {
      isClosed = true;
      clearTimeout(timer);
      window.removeEventListener("beforeunload", beforeUnload);
      tell("");
    },
  };
};

/** Lists drafts of earlier tabs with ways to open and to delete them. `open` tells whether it was opened. */
export const offerDrafts = async (place: HTMLElement, open: (draft: Draft) => Promise<boolean>): Promise<void> => {
  const drafts = await listDrafts().catch((): Draft[] => []);
  place.hidden = drafts.length === 0;
  place.replaceChildren(
    ...drafts.map((draft) => {
      const done = async (isGone: Promise<unknown>): Promise<void> => {
        await isGone;
        await offerDrafts(place, open);
      };
      const what = `${draft.fileName}, ${clock(draft.when)}`;
      return element(
        "p",
        {},
        `Unsaved work on ${what}, is kept in this browser, on this computer only. `,
        element(
          "button",
          {
            type: "button",
            "aria-label": `Open the draft of ${what}`,
            onclick: () => void open(draft).then((isOpen) => (isOpen ? done(deleteDraft(draft.id)) : undefined)),
          },
          "Open it",
        ),
        " ",
        element(
          "button",
          {
            type: "button",
            "aria-label": `Delete the draft of ${what}`,
            onclick: () => void done(deleteDraft(draft.id)),
          },
          "Delete it",
        ),
      );
    }),
  );
};
