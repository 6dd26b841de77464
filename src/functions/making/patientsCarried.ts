import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { litresPerMinute } from "../../arguments/quantity";
import { patientsCarried as patientsOf } from "../../models/making";

export const args = cellArguments({
  supply_flow: litresPerMinute,
  flow_each: litresPerMinute.positive(),
});

/**
 * Whole patients that a supply flow carries at the same time, cut down.
 *
 * @customfunction PATIENTS_CARRIED
 * @param supply_flow Gas flow that the supply sustains [L/min]
 * @param flow_each Planned flow of one patient [L/min]
 * @returns Patients carried
 */
export function patientsCarried(supply_flow: any[][], flow_each: any[][]): any[][] {
  return eachCell(args, [supply_flow, flow_each], (given) => patientsOf(given.supply_flow, given.flow_each));
}

export const about: About = {
  gives: "patients",
  rule: "supply flow / flow each, cut down to whole patients",
  range: "Flow each above 0.",
  source: "Plain arithmetic",
  examples: [
    {
      formula: "=OXYGEN.PATIENTS_CARRIED(59,8)",
      result: 7,
      note: "The eighth would be 5 L/min short",
      source: "59 / 8 = 7.4, cut down",
    },
    { formula: '=OXYGEN.PATIENTS_CARRIED("3 m3/h",10)', result: 5, source: "50 / 10" },
  ],
  seeAlso: ["DELIVERED_FLOW", "PLANNED_FLOW", "DEMAND_FLOW"],
  caution:
    "A planning figure; the clinician decides what each patient gets. Patients need more at times: keep some in hand.",
};
