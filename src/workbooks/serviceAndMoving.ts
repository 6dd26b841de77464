import { noRowTwice, rowsTogether, rowsWhole, withChecks } from "./checks";
import { arrivalSheet } from "./sheets/serviceAndMoving/arrival";
import { cautionsSheet } from "./sheets/serviceAndMoving/cautions";
import { logSheet, logTable, standingTable } from "./sheets/serviceAndMoving/log";
import { drainTable, loadTable, movingSheet } from "./sheets/serviceAndMoving/moving";
import { partTable, quarterChecks, quarterSheet } from "./sheets/serviceAndMoving/quarter";
import { metersOf, partsOf, serviceChecks, serviceSheet, tasksOf } from "./sheets/serviceAndMoving/service";
import { startSheet } from "./sheets/serviceAndMoving/start";
import { siteServices } from "./sheets/serviceAndMoving/tasks";
import type { WorkbookDescription } from "./writer";

/** A technician's workbook: receive, place, service, log, drain, ship. */
const sites = siteServices.map(({ sheet }) => sheet);

export const workbook: WorkbookDescription = withChecks(
  {
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
  },
  {
    before: "Cautions",
    checks: [
      ...[logTable, standingTable, drainTable, loadTable, partTable].map(rowsWhole),
      ...[logTable, standingTable, loadTable, partTable].map(rowsTogether),
      noRowTwice(loadTable, ["A"]),
      noRowTwice(partTable, ["A"]),
      ...sites.flatMap((sheet) => [
        ...[tasksOf(sheet), metersOf(sheet), partsOf(sheet)].map(rowsWhole),
        rowsTogether(tasksOf(sheet)),
        noRowTwice(tasksOf(sheet), ["A"]),
        ...serviceChecks(sheet),
      ]),
      ...quarterChecks,
      {
        at: "Drain and ship!B6",
        what: "It leaves on",
        formula: '=IF(ShipDay<AsOf,"Drain and ship!B6 is before today","ok")',
      },
    ],
    answers: [
      { at: "Receive and site!A11", what: "Crate" },
      { at: "Receive and site!A26", what: "Place" },
      { at: "Receive and site!B37", what: "Floor to mark out" },
      { at: "Quarter!B16:F25", what: "Parts" },
      { at: "Log!E13", what: "Faults of the log" },
      { at: "Log!E47", what: "Standing loss" },
      { at: "Drain and ship!G10:I13", what: "Drain plan" },
      { at: "Drain and ship!F24:G31", what: "Straps" },
      { at: "Drain and ship!B33", what: "Mass with packing" },
    ],
  },
);
