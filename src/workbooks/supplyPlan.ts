import { defaults } from "./sheets/supplyPlan/defaults";
import { demand } from "./sheets/supplyPlan/demand";
import { inputNames, inputs } from "./sheets/supplyPlan/inputs";
import { notes } from "./sheets/supplyPlan/notes";
import { power } from "./sheets/supplyPlan/power";
import { reorder } from "./sheets/supplyPlan/reorder";
import { service, serviceListCell, serviceNames } from "./sheets/supplyPlan/service";
import { siteAndPlants, siteNames } from "./sheets/supplyPlan/siteAndPlants";
import { start } from "./sheets/supplyPlan/start";
import { planNames, stockPlan } from "./sheets/supplyPlan/stockPlan";
import { summary } from "./sheets/supplyPlan/summary";
import type { WorkbookDescription } from "./writer";

const firstService = Number(serviceListCell.slice(1)) + 1;

/** One site's supply over sixty days, as a planner keeps it. */
export const workbook: WorkbookDescription = {
  properties: {
    title: "Supply plan",
    subject: "Oxygen supply of one site over 60 days",
    description: "Invented scenario. Stock plan, demand, reorder, power, fuel and service with the OXYGEN functions.",
  },
  names: {
    ...inputNames,
    ...siteNames,
    ...planNames,
    ...serviceNames,
    NextServiceTask: `Service calendar!A${firstService}`,
    NextServiceDate: `Service calendar!B${firstService}`,
  },
  sheets: [start, summary, inputs, siteAndPlants, demand, stockPlan, reorder, power, service, notes, defaults],
};
