import { noRowTwice, rowsTogether, rowsWhole, type BookCheck, type BookChecks } from "../../checks";
import { wardRows } from "./demand";
import { deliveryRows, fuelRows, outageRows, plantRows } from "./inputs";
import { logRows } from "./logs";
import { serviceRows } from "./service";

const plantTable = { sheet: "Inputs", ...plantRows, columns: [..."ABCDEFGH"], what: "Plants" };
const deliveryTable = { sheet: "Inputs", ...deliveryRows, columns: [..."ABCD"], what: "Deliveries" };
const outageTable = { sheet: "Inputs", ...outageRows, columns: [..."ABC"], what: "Outages" };
const fuelTable = { sheet: "Inputs", ...fuelRows, columns: ["A", "B"], what: "Fuel" };
const wardTable = { sheet: "Demand", ...wardRows, columns: ["A", "B", "C"], what: "Wards" };
const issueTable = { sheet: "Logs", ...logRows, columns: ["A", "B"], what: "Issues" };
const readTable = { sheet: "Logs", ...logRows, columns: ["D", "E"], what: "Readings" };
const taskTable = { sheet: "Service calendar", ...serviceRows, columns: ["A", "B", "C"], what: "Tasks" };
const meterTable = { sheet: "Service calendar", ...serviceRows, columns: [..."DEFG"], what: "Hour meters" };
const partTable = { sheet: "Service calendar", ...serviceRows, columns: ["H", "I"], what: "Parts" };

const tables = [plantTable, deliveryTable, outageTable, fuelTable, wardTable, issueTable, readTable, taskTable];

/** Each filled cell of a column must meet a condition on `x`, one row a value. */
const each = (
  at: { sheet: string; column: string; first: number; last: number },
  what: string,
  fault: string,
  words: string,
): BookCheck => {
  const sheet = /\W/.test(at.sheet) ? `'${at.sheet}'` : at.sheet;
  const cells = `${sheet}!${at.column}${at.first}:${at.column}${at.last}`;
  return {
    at: `${at.sheet}!${at.column}${at.first}`,
    what,
    formula: `=LET(x,${cells},bad,IF(x="",0,IF((${fault})*1>0,1,0)),IF(SUM(bad)=0,"ok","${at.sheet}!${at.column}"&(IFERROR(MATCH(1,bad,0),1)+${at.first - 1})&"${words}"))`,
  };
};

const outsidePlan = "(x<FirstDay)+(x>LastDay)";
const outside = " lies outside the plan, so it is not counted";

const one = (at: string, what: string, isWrong: string, words: string): BookCheck => ({
  at,
  what,
  formula: `=IF(${isWrong},"${at} ${words}","ok")`,
});

const column = (
  { sheet, first, last }: { sheet: string; first: number; last: number },
  letter: string,
): { sheet: string; column: string; first: number; last: number } => ({ sheet, first, last, column: letter });

export const bookChecks: BookChecks = {
  before: "Notes",
  checks: [
    ...tables.map(rowsWhole),
    ...tables.map(rowsTogether),
    rowsWhole(meterTable),
    rowsWhole(partTable),
    noRowTwice(plantTable, ["A"]),
    noRowTwice(deliveryTable, ["B", "C"]),
    noRowTwice(outageTable, ["A", "B"]),
    noRowTwice(fuelTable),
    noRowTwice(wardTable, ["A"]),
    noRowTwice(issueTable, ["A"]),
    noRowTwice(readTable, ["D"]),
    noRowTwice(taskTable, ["A"]),
    one(
      "Inputs!B9",
      "Figures as of",
      "(Inputs!B9<FirstDay-1)+(Inputs!B9>FirstDay)>0",
      "is not the first day of the plan or the day before, for which the liquid must be read",
    ),
    one("Inputs!B10", "Liquid in the plants", "Opening>Room", "is more than all plants hold"),
    one(
      "Inputs!B21",
      "Surge",
      "(SurgeStart>PlanDays)*(SurgeFactor<>1)>0",
      "begins after the plan, so it is not counted",
    ),
    each(column(plantTable, "C"), "Plants in the plan", "x>LastDay", " lies after the plan, so the plant never counts"),
    each(column(deliveryTable, "B"), "Deliveries as ordered", outsidePlan, outside),
    each(column(deliveryTable, "E"), "Deliveries as moved", outsidePlan, outside),
    each(
      column(deliveryTable, "C"),
      "Deliveries that fit",
      "x>Room",
      " is more than all plants hold: it would be vented",
    ),
    each(column(outageTable, "A"), "Outages begin in the plan", outsidePlan, outside),
    each(column(outageTable, "B"), "Outages end in the plan", outsidePlan, outside),
    each(
      column(outageTable, "B"),
      "Outages end after they begin",
      "x<OutageFrom",
      " is before the first day of its outage",
    ),
    each(column(fuelTable, "A"), "Fuel in the plan", outsidePlan, outside),
    each(
      column(issueTable, "A"),
      "Issues in time",
      "(x>AsOf)+(x<AsOf-400)",
      " is after the as-of date or more than 400 days before it",
    ),
    one(
      "Logs!A6",
      "Issues up to now",
      "MAX(IssueDates)<AsOf-14",
      "begins a log whose last row is over two weeks before the as-of date",
    ),
    one(
      "Logs!A6",
      "Issues in one stretch",
      "MAX(IssueDates)-MIN(IssueDates)+1>2*COUNT(IssueDates)",
      "begins a log with more days missing than written: look for a wrong date",
    ),
    each(column(readTable, "D"), "Readings in the plan", outsidePlan, outside),
    each(column(readTable, "E"), "Readings that fit", "x>Room", " is more than all plants hold"),
    each(
      column(taskTable, "B"),
      "Tasks done before now",
      "(x>AsOf)+(x<AsOf-3700)",
      " is after the as-of date or over ten years before it",
    ),
    one(
      "Reorder!E5",
      "Cylinders in the store",
      "CylindersOnHand+CylindersOnOrder>CylinderPlaces",
      "and those on order are more than the store has places for",
    ),
    one(
      "Power and fuel!B28",
      "Generators running",
      "GeneratorsRunning>GeneratorCount",
      "says that more run than are on site",
    ),
    one(
      "Power and fuel!B28",
      "Generators that carry the load",
      "Load>GeneratorsRunning*PowerHere",
      "says how many run: they can't carry the load at this heat and height",
    ),
    one("Power and fuel!B38", "Fuel kept", "FuelKeep>Fuel", "is more than there is"),
    one(
      "Power and fuel!A41",
      "Points in rising order",
      "SUM(IF('Power and fuel'!A42:A44<='Power and fuel'!A41:A43,1,0))+SUM(IF('Power and fuel'!B42:B44<='Power and fuel'!B41:B43,1,0))>0",
      "begins points that don't rise",
    ),
    each(
      { sheet: "Power and fuel", column: "B", first: 17, last: 22 },
      "Cables with their plants",
      '(x<>0)*(PlantKinds="")',
      " is the cable of no plant",
    ),
    {
      at: "Power and fuel!B17",
      what: "Plants with their cables",
      formula:
        '=IF(SUM(IF(PlantKinds="",0,IF(\'Power and fuel\'!B17:B22="",1,0)+IF(\'Power and fuel\'!C17:C22="",1,0)))=0,"ok","Power and fuel!B17 begins cables with a blank: fill one row a plant")',
    },
  ],
  answers: [
    { at: "Demand!D20:F20", what: "Demand of all wards" },
    { at: "Demand!A32", what: "Demand by ward" },
    { at: "Demand!B25:B29", what: "Demand" },
    { at: "Site and plants!I12:I23", what: "Make by month" },
    { at: "Site and plants!B28:F33", what: "Plants as the plan takes them" },
    { at: "Site and plants!B38:F43", what: "One plant fewer" },
    { at: "Site and plants!A56", what: "Where the plants stand" },
    { at: "Stock plan!D6", what: "Plan as ordered" },
    { at: "Stock plan!D7", what: "Plan as moved" },
    { at: "Stock plan!D8", what: "Plan a day late" },
    { at: "Stock plan!D9", what: "Plan with one plant fewer" },
    { at: "Stock plan!J6:J7", what: "Plants for no shortage" },
    { at: "Stock plan!D14", what: "Deliveries wanted" },
    { at: "Stock plan!J20", what: "Plan shown" },
    { at: "Chance!A5", what: "Chance" },
    { at: "Plan and log!A4", what: "Plan against log" },
    { at: "Reorder!D17", what: "Use of cylinders" },
    { at: "Reorder!D21", what: "Levels of cylinders" },
    { at: "Reorder!E28:E34", what: "Cylinders" },
    { at: "Reorder!E38:E41", what: "Liquid without power" },
    { at: "Power and fuel!D17:G22", what: "Feeders" },
    { at: "Power and fuel!B32:B34", what: "Generators" },
    { at: "Power and fuel!B45:B50", what: "Fuel" },
    { at: "Fuel plan!D6:G125", what: "Fuel day by day" },
    { at: "Service calendar!J10:K24", what: "Service" },
    { at: "Service calendar!A28", what: "Service list" },
    { at: "Service calendar!H28", what: "Parts" },
  ],
};
