import { evaluateCall, parseConstantFormula } from "../../src/catalogue/constantFormula";
import { readCatalogue } from "../../src/catalogue/readCatalogue";
import { CellError } from "../../src/cells/cellValues";

const found = readCatalogue();
const callById = (id: string) => found.find(({ record }) => record.id === id)?.call;

/**
 * Limits inside rows, and whole numbers: days late, months and phases are counted whole; a rate, a capacity and an interval
 * of running hours are above 0, or there is none. By hand, as what the quantity is says.
 */
test.each([
  ['=OXYGEN.OVERDUE_DAYS("2026-03-10","2026-03-01",1.5)', "grace", "whole"],
  ['=OXYGEN.SERVICE_STATUS("2026-03-01","2026-03-05",1.5,3)', "warn", "whole"],
  ['=OXYGEN.SERVICE_STATUS("2026-03-01","2026-03-05",7,1.5)', "grace", "whole"],
  ['=OXYGEN.VISIT_FOR("2026-02-10","2026-03-20",{"2026-02-15";"2026-03-15"},1.5)', "late", "whole"],
  ["=OXYGEN.LINE_CURRENT(4.8,240,1,2.5)", "phases", "whole"],
  ["=OXYGEN.FIT_DERATING({0;0;0},{20;31.1;41.1},{2;1.76;0})", "rates", "more than 0"],
  ["=OXYGEN.FILL_ORDER({0;2;20},{0;20;40},43)", "capacities", "more than 0"],
  ['=OXYGEN.SERVICE_LIST({"filter","2026-01-31",1.5},"2026-02-01","2026-04-30")', "tasks", "whole"],
  [
    '=OXYGEN.SERVICE_LIST({"filter","2026-01-31","",0,0,100,10,"",""},"2026-02-01","2026-04-30")',
    "tasks",
    "more than 0",
  ],
  [
    '=OXYGEN.STOCK_PLAN({"2026-03-01"},{12},{"2026-03-03",20},{24},{1,"2026-03-01 06:00",12,0,60},30)',
    "plants",
    "more than 0",
  ],
])("%s is refused: %s must be %s", (formula, argument, wanted) => {
  const got = evaluateCall(parseConstantFormula(formula), callById)[0]![0] as CellError;
  expect(got).toBeInstanceOf(CellError);
  expect(got.message).toContain(argument);
  expect(got.message).toContain(wanted);
});
