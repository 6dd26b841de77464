import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { quoteCell } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { litresPerMinute } from "../../arguments/quantity";
import { table } from "../../arguments/range";
import { text } from "../../arguments/text";
import { invalid } from "../../cells/cellValues";
import { plannedFlows } from "../../models/bedside";

export const args = cellArguments({
  kind: text,
  own_table: table({ kind: text, flow: litresPerMinute }).mayBeOmitted(),
});

const published = new Map<string, number>(
  (Object.keys(plannedFlows) as (keyof typeof plannedFlows)[]).map((kind) => [kind, plannedFlows[kind]]),
);
const publishedKinds = [...published.keys()];

const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/**
 * Flow to plan with for a kind of patient: your own table's if it names the kind, else a published planning flow.
 *
 * @customfunction PLANNED_FLOW
 * @param kind Kind of patient: severe, critical, newborn, infant, child, bubble CPAP, or a name of your own table
 * @param [own_table] Your own planning flows in two columns, kind and flow in L/min, which win over the published ones
 * @returns Planned flow of one patient [L/min]
 */
export function plannedFlow(kind: any[][], own_table?: any[][]): any[][] {
  return eachCell(args, [kind, own_table], (given) => {
    const own = (given.own_table ?? []).filter((row) => same(row.kind, given.kind));
    if (own.length > 1)
      return invalid(`own_table names "${given.kind}" ${own.length} times; keep one row for each kind`);
    const flow = own[0]?.flow ?? published.get(publishedKinds.filter((kind) => same(kind, given.kind))[0] ?? "");
    if (flow !== undefined) return flow;
    const ownKinds = (given.own_table ?? []).map((row) => row.kind);
    const known = [...ownKinds, ...publishedKinds.filter((kind) => !ownKinds.some((each) => same(each, kind)))];
    return invalid(
      `kind ${quoteCell(given.kind)} is not known; enter ${known.slice(0, 12).join(", ")}, or ${given.own_table ? "add it to own_table" : "give own_table"}`,
    );
  });
}

export const about: About = {
  gives: "gas flow",
  rule: "own table's flow of the kind; else severe 10 L/min, critical 30, newborn 1, infant 2, child 4, bubble CPAP 10",
  range: `Kinds in small or capital letters. Severe and critical are adults, as a mean over a day of the planning of a treatment centre: ward measurements have found much less (a mean of 3 L/min in one hospital), single patients on high flow need twice as much. Newborn, infant and child are the upper ends of the flows to start with, by prongs; a child who gets worse, and any child on a mask, needs more. Bubble CPAP is all gas of one machine: mixed with air it draws less oxygen (SOURCE_FLOW). Put your own figures in the table. ${blankAsZero}`,
  source:
    "WHO, Oxygen sources and distribution for COVID-19 treatment centres, interim guidance, 4 April 2020, and WHO, Oxygen therapy for children, 2016 (both read second hand); ward measurement: Hvarfner et al., PLoS One 2022",
  examples: [
    {
      formula: '=OXYGEN.PLANNED_FLOW("severe")',
      result: 10,
      source: "WHO interim guidance of 4 April 2020: 14,400 L a day",
    },
    {
      formula: '=OXYGEN.PLANNED_FLOW("critical")',
      result: 30,
      source: "WHO interim guidance of 4 April 2020: 43,200 L a day",
    },
    {
      formula: '=OXYGEN.PLANNED_FLOW({"newborn";"infant";"child";"Bubble CPAP"})',
      result: [[1], [2], [4], [10]],
      source: "WHO 2016, second hand: to start with 0.5 to 1, 1 to 2, 1 to 4 and 5 to 10 L/min, of each the most",
    },
    {
      formula: '=OXYGEN.PLANNED_FLOW("Severe",{"kind","flow";"severe",6;"burns",12})',
      result: 6,
      note: "Your own table wins",
      source: "The rule stated",
    },
    { formula: '=OXYGEN.PLANNED_FLOW("mild")', result: { error: "#VALUE!", words: "not known" } },
  ],
  seeAlso: ["DEMAND_FLOW", "DAILY_DEMAND", "FLOW_AT_LEVEL", "JOURNEY_GAS"],
  caution:
    "A planning figure; the clinician decides what each patient gets, by the saturation. Too much oxygen harms a newborn: have a mixer and a monitor.",
};
