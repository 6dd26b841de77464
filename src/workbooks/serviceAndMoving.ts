import { arrivalSheet } from "./sheets/serviceAndMoving/arrival";
import { cautionsSheet } from "./sheets/serviceAndMoving/cautions";
import { logSheet } from "./sheets/serviceAndMoving/log";
import { movingSheet } from "./sheets/serviceAndMoving/moving";
import { quarterSheet } from "./sheets/serviceAndMoving/quarter";
import { serviceSheet } from "./sheets/serviceAndMoving/service";
import { startSheet } from "./sheets/serviceAndMoving/start";
import { siteServices } from "./sheets/serviceAndMoving/tasks";
import type { WorkbookDescription } from "./writer";

/** A technician's workbook: receive, place, service, log, drain, ship. */
export const workbook: WorkbookDescription = {
  properties: {
    title: "Service and moving",
    subject: "Receipt, site, service, log, draining and shipping of oxygen plants",
    description: "Invented scenario. Needs the add-in Oxygen Supply Functions to recalculate.",
    keywords: "oxygen, service, parts, log, shipping",
  },
  names: { Visits: "Quarter!B10:F10" },
  sheets: [
    startSheet,
    arrivalSheet,
    quarterSheet,
    ...siteServices.map(serviceSheet),
    logSheet,
    movingSheet,
    cautionsSheet,
  ],
};
