import {
  block,
  caution,
  heading,
  note,
  subtitle,
  tabColours,
  table,
  tableCell,
  tableHeader,
  text,
  title,
  type SheetDescription,
} from "../../writer";

const functions = [
  "STOCK_PLAN",
  "PLANTS_FOR_PLAN",
  "DELIVERIES_NEEDED",
  "PLAN_CHANCE",
  "PLAN_AGAINST_LOG",
  "RESERVE_FOR_OUTAGE",
  "SURGE_DEMAND",
  "DEMAND_TABLE",
  "CENSUS_AT_LEVEL",
  "FLOW_AT_LEVEL",
  "DERATED_RATE",
  "GROSS_DRAW",
  "LIQUID_FROM_GAS",
  "STOCK_LEVELS",
  "STOCK_OUT_CHANCE",
  "ORDER_QUANTITY",
  "CIRCUIT_NEEDED",
  "CABLE_DROP",
  "GENERATOR_DERATED",
  "FUEL_RATE",
  "SERVICE_LIST",
];

const points = [
  "Net litres arrive in the vessel that is filled; gross litres leave the plant. Gross is net × draw ratio. The plan draws gross.",
  "Boil-off in the plan runs only while there is no power: a plant with power makes up its own loss.",
  "Any day with less than 24 h of power counts as one outage and one restart, whatever the clock says.",
  "What arrives or is made in a day can be drawn from the next day on, unless Inputs says yes to it.",
  "The vessels of all plants are pooled. Two half-full vessels are not one full one: check single vessels before a fill.",
  "The plan knows nothing of breakdowns and leaks. Stock plan shows it with one plant fewer and with every delivery a day late; Chance runs it 1,000 times.",
  "Generators carry all plants in the hours without mains while there is fuel above what is kept; then the plants stand still.",
  "CHECK INPUTS in a headline: an entry is blank, mistyped, out of range, outside the plan or twice. It names the first cell; the sheet Checks has all.",
  "Demand is a mean with a margin and a surge on top. The busy moment is for flows, not for volumes.",
  "Heat and altitude are an estimate (a share a degree and the pressure of the standard atmosphere).",
  "Cylinder use is taken from the log; a change in the wards is not in it.",
];

/** Rules, sources and cautions. */
export const notes: SheetDescription = {
  name: "Notes",
  columns: [26, 104],
  tab: tabColours.reference,
  freezeAt: "A4",
  print: { orientation: "landscape", titleRows: "1:1" },
  cells: {
    A1: title("Notes"),
    A2: subtitle("How the figures come about, where the rules are from, and what they do not know.", { across: 2 }),
    ...block("A4", [[heading("How to read it"), heading()], ...points.map((words) => [text(words, { across: 2 })])]),
    ...block("A17", [
      [heading("Sources"), heading()],
      [tableHeader("Function"), tableHeader("Source of its rule")],
      ...functions.map((name) => [tableCell(name)]),
    ]),
    B19: { ...tableCell(`=OXYGEN.SOURCE_OF(A19:A${18 + functions.length})`, { wrap: true }), spill: {} },
    [`A${20 + functions.length}`]: note("Defaults and constants with their sources: see the sheet Defaults.", {
      across: 2,
    }),
    ...block(`A${22 + functions.length}`, [[heading("Cautions for every transfer"), heading()]]),
    [`A${23 + functions.length}`]: table('=OXYGEN.CAUTIONS("transfer")', { wrap: true, spill: { room: 9 } }),
    [`A${34 + functions.length}`]: caution(
      "Caution: local codes, the makers' manuals and licensed practice come before anything here. The clinician decides for the patient. Have a second person read the inputs.",
      { across: 2 },
    ),
  },
};
