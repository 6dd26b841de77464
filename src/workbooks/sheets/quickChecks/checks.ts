import {
  answer,
  block,
  caution,
  heading,
  input,
  label,
  note,
  output,
  subtitle,
  tabColours,
  tableHeader,
  title,
  type CellDescription,
  type Cells,
  type ConditionalRule,
  type SheetDescription,
  type Validation,
} from "../../writer";
import { groups } from "./groups";
import type { Entry, Question } from "./question";

const entryColumns = ["C", "D", "E", "F"] as const;
const headerRow = 3;

const inCell = (validation: Validation, cell: string): Validation =>
  validation.rule.kind === "formula"
    ? { ...validation, rule: { kind: "formula", formula: validation.rule.formula.replace(/\{cell\}/g, cell) } }
    : validation;

const quoted = (words: string): string => `"${words.replace(/"/g, '""')}"`;

/** Empty first, then what VALUE_CHECK finds, then what the function itself says. Its own words no formula can read. */
const stateFormula = ({ entries, noAnswer }: Question, row: number): string => {
  const cells = entries.map((_, index) => `${entryColumns[index]}${row}`);
  const failed = `IF(ISNA(G${row}),${quoted(noAnswer ? `No answer: ${noAnswer}` : "No answer: click it, then the sign beside it")},IF(ISERROR(G${row}),"WRONG ENTRY: click the answer, then the sign beside it, to read which","ok"))`;
  const found = entries.reduceRight((rest, { label: words, kind }, index) => {
    if (!kind) return rest;
    const check = `OXYGEN.VALUE_CHECK(${cells[index]},${quoted(kind)})`;
    return `IF(${check}<>"ok",${quoted(`${words.replace(/ \[.*/, "")}: `)}&${check},${rest})`;
  }, failed);
  return `=IF(COUNTBLANK(${cells[0]}:${cells[cells.length - 1]})>0,"EMPTY: fill every yellow cell",${found})`;
};

const entryCell = ({ value, validation, format }: Entry, address: string): CellDescription =>
  input(value, { validation: inCell(validation, address), align: "right", ...(format ? { format } : {}) });

const questionCells = (question: Question, number: number, row: number): Cells => {
  const values = row + 1;
  const formula = question.formula.replace(
    /\{(\d)\}/g,
    (_, place: string) => `${entryColumns[Number(place) - 1]}${values}`,
  );
  return {
    [`A${values}`]: note(String(number), { align: "center" }),
    [`B${values}`]: label(question.words),
    ...Object.fromEntries(
      question.entries.flatMap((entry, index) => {
        const address = `${entryColumns[index]}${values}`;
        return [
          [`${entryColumns[index]}${row}`, note(entry.label)] as const,
          [address, entryCell(entry, address)] as const,
        ];
      }),
    ),
    [`G${row}`]: note(question.answer),
    [`G${values}`]: answer(formula, question.format ? { format: question.format } : {}),
    [`H${values}`]: output(stateFormula(question, values), { wrap: true }),
    [`I${values}`]: label(question.caution),
  };
};

interface Laid {
  cells: Cells;
  heights: Record<number, number>;
  rules: ConditionalRule[];
  /** Group by the row of its heading. */
  places: { name: string; row: number; questions: number }[];
}

const lay = (): Laid => {
  const laid: {
    cells: Record<string, CellDescription>;
    heights: Record<number, number>;
    rules: ConditionalRule[];
    places: Laid["places"];
  } = {
    cells: {},
    heights: {},
    rules: [],
    places: [],
  };
  let row = headerRow + 1;
  let number = 0;
  for (const { name, questions } of groups) {
    Object.assign(
      laid.cells,
      block(`A${row}`, [[heading(""), heading(name), ...Array.from({ length: 7 }, () => heading())]]),
    );
    laid.places.push({ name, row, questions: questions.length });
    laid.heights[row] = 26;
    row++;
    for (const question of questions) {
      number++;
      Object.assign(laid.cells, questionCells(question, number, row));
      laid.heights[row] = 29;
      laid.heights[row + 1] = 31;
      laid.rules.push(
        { range: `G${row + 1}`, when: `=ISERROR(G${row + 1})`, mark: "danger" },
        { range: `H${row + 1}`, when: `=H${row + 1}<>"ok"`, mark: "attention" },
      );
      row += 2;
    }
  }
  laid.cells[`A${row + 1}`] = caution(
    "Caution: figures for planning. The gauge, the maker's manual, local codes and the clinician come first. Have a second person read what you typed.",
    { across: 9 },
  );
  return laid;
};

const laid = lay();

export const groupPlaces = laid.places;

/** One question in two rows: what is asked for above, the cells below. */
export const checks: SheetDescription = {
  name: "Checks",
  columns: [5, 30, 17, 17, 17, 17, 21, 34, 46],
  rowHeights: laid.heights,
  tab: tabColours.result,
  freezeAt: `C${headerRow + 1}`,
  print: {
    orientation: "landscape",
    titleRows: `${headerRow}:${headerRow}`,
    // Whole questions to a page: a group, or seven questions of a longer one.
    breaksBefore: groupPlaces.flatMap(({ row, questions }, index) => [
      ...(index > 0 ? [row] : []),
      ...Array.from({ length: Math.ceil(questions / 7) - 1 }, (_, page) => row + 1 + 14 * (page + 1)),
    ]),
  },
  cells: {
    A1: title("Quick checks"),
    A2: subtitle(
      'Type into the yellow cells. A bare number is in the unit shown; text may carry another: 35 psi, 85 °F, 5000 ft, 10 gal. Then look at the answer and at "Entries".',
      { across: 9 },
    ),
    ...block(`A${headerRow}`, [
      [
        tableHeader("No."),
        tableHeader("Question"),
        tableHeader("Your figures", { across: 4 }),
        null,
        null,
        null,
        tableHeader("Answer"),
        tableHeader("Entries"),
        tableHeader("Mind"),
      ],
    ]),
    ...laid.cells,
  },
  conditional: laid.rules,
};
