import { findRecord } from "../catalogue/catalogue";
import { firstSentence } from "../catalogue/firstSentence";
import { addressOf, placeOf } from "../cells/addresses";
import { namespace } from "../cells/namespace";
import type { BlockCell, BlockRows } from "../excel/openWorkbook";

export interface ReadyBlock {
  readonly question: string;
  readonly id: string;
}

/** The commonest questions, in the order in which a day asks them. */
export const readyBlocks: readonly ReadyBlock[] = [
  { question: "When is the vessel full?", id: "FULL_AT" },
  { question: "How many hours until it is full?", id: "HOURS_TO_FILL" },
  { question: "How many days until it is empty?", id: "DAYS_UNTIL_EMPTY" },
  { question: "What must be drawn for a fill?", id: "GROSS_DRAW" },
  { question: "How many whole fills are in it?", id: "FILLS_AVAILABLE" },
  { question: "How long does this cylinder last?", id: "MINUTES_ON_CYLINDER" },
  { question: "How many cylinders to bring?", id: "CYLINDERS_NEEDED" },
  { question: "How long does this portable vessel last?", id: "VESSEL_HOURS" },
  { question: "How much oxygen for a journey?", id: "JOURNEY_GAS" },
  { question: "For how many patients to be ready?", id: "CENSUS_AT_LEVEL" },
  { question: "What does the plant make at this heat and height?", id: "DERATED_RATE" },
  { question: "How many plants to bring?", id: "PLANTS_NEEDED" },
  { question: "How much to keep for an outage?", id: "RESERVE_FOR_OUTAGE" },
  { question: "When to order again?", id: "REORDER_POINT" },
  { question: "When is the next service?", id: "NEXT_SERVICE_DATE" },
];

const isDate = (unit: string): boolean => /date/.test(unit);

/**
 * The rows of a block whose top left cell has this address: question, an input an argument with its unit, empty where it is
 * needed, the answer, which says so until all are filled, the caution. Optional arguments without a fixed default are left out.
 */
export function blockRows({ question, id }: ReadyBlock, address: string): BlockRows {
  const record = findRecord(id)!;
  const start = placeOf(address);
  const kept = record.arguments.filter(({ optional, default: standing }) => !optional || standing !== undefined);
  const plain = (content: string): BlockCell => ({ content, look: "plain" });
  const inputs = kept.map((argument): BlockCell[] => [
    { content: argument.description.replace(/\s*\[[^\]]*\].*$/, "").replace(/, \S+ if omitted$/, ""), look: "label" },
    {
      // An example's figure in a needed cell would pass for the reader's own.
      content: argument.optional ? (argument.default ?? "") : "",
      look: "input",
      ...(isDate(argument.unit) ? { format: "yyyy-mm-dd hh:mm" } : {}),
      entry: {
        title: argument.name.replace(/_/g, " "),
        words: `${argument.description}. A number, or text with its unit; never empty.`,
      },
    },
    plain(argument.unit),
  ]);
  const at = (down: number): string => addressOf({ row: start.row + 1 + down, column: start.column + 1 });
  // An argument without a cell of its own leaves its place empty.
  const written = record.arguments.map((argument) => {
    const down = kept.indexOf(argument);
    return down < 0 ? "" : at(down);
  });
  while (written[written.length - 1] === "") written.pop();
  const inputCells = `${at(0)}:${at(kept.length - 1)}`;
  const formula = `=IF(COUNTBLANK(${inputCells})>0,"EMPTY: fill every yellow cell",${namespace}.${id}(${written.join(",")}))`;
  const result: BlockCell = {
    content: formula,
    look: "answer",
    ...(record.result.unit === "date"
      ? { format: "yyyy-mm-dd" }
      : isDate(record.result.unit)
        ? { format: "yyyy-mm-dd hh:mm" }
        : {}),
  };
  return [
    [{ content: question, look: "title" }, plain(""), plain("")],
    ...inputs,
    [
      { content: record.result.description.replace(/\s*\[[^\]]*\]/, ""), look: "title" },
      result,
      plain(record.result.unit),
    ],
    [
      {
        content: `Caution: ${record.caution ?? "a planning figure; have a second person check what was entered."} ${firstSentence(record.description)}`,
        look: "caution",
      },
      plain(""),
      plain(""),
    ],
  ];
}
