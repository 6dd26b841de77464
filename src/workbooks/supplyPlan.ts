import { withChecks } from "./checks";
import { bookChecks } from "./sheets/supplyPlan/bookChecks";
import { chance } from "./sheets/supplyPlan/chance";
import { defaults } from "./sheets/supplyPlan/defaults";
import { demand } from "./sheets/supplyPlan/demand";
import { fuelNames, fuelPlan } from "./sheets/supplyPlan/fuelPlan";
import { inputNames, inputs } from "./sheets/supplyPlan/inputs";
import { logNames, logs } from "./sheets/supplyPlan/logs";
import { notes } from "./sheets/supplyPlan/notes";
import { planAndLog } from "./sheets/supplyPlan/planAndLog";
import { power } from "./sheets/supplyPlan/power";
import { reorder } from "./sheets/supplyPlan/reorder";
import { service, serviceListCell, serviceNames } from "./sheets/supplyPlan/service";
import { siteAndPlants, siteNames } from "./sheets/supplyPlan/siteAndPlants";
import { start } from "./sheets/supplyPlan/start";
import { stockPlan } from "./sheets/supplyPlan/stockPlan";
import { summary } from "./sheets/supplyPlan/summary";
import type { WorkbookDescription } from "./writer";

const firstService = Number(serviceListCell.slice(1)) + 1;

/** One site's supply over 30 to 120 days, as a planner keeps it. */
export const workbook: WorkbookDescription = withChecks(
  {
    properties: {
      title: "Supply plan",
      subject: "Oxygen supply of one site over 30 to 120 days",
      description: "Invented scenario. Stock plan, demand, reorder, power, fuel and service with the OXYGEN functions.",
    },
    names: {
      ...inputNames,
      ...logNames,
      ...siteNames,
      ...fuelNames,
      ...serviceNames,
      NextServiceTask: `Service calendar!A${firstService}`,
      NextServiceDate: `Service calendar!B${firstService}`,
    },
    sheets: [
      start,
      summary,
      inputs,
      siteAndPlants,
      demand,
      logs,
      stockPlan,
      chance,
      planAndLog,
      reorder,
      power,
      fuelPlan,
      service,
      notes,
      defaults,
    ],
  },
  bookChecks,
);
