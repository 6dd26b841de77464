import {
  block,
  caution,
  formats,
  headingRow,
  input,
  label,
  note,
  output,
  subtitle,
  tabColours,
  tableCell,
  tableHeader,
  tableInput,
  title,
  unit,
  withUnit,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { choiceEntry, mayStayEmpty, numberEntry, quantityEntry, wholeEntry } from "../entries";
import { generator } from "../../scenario/velmar";
import { plantRows } from "./inputs";

const section = (words: string): CellDescription[] => headingRow(words, 7);

const points = generator.loadPoints.map((load, index) => [load, generator.fuelPoints[index]!] as const);

const cables: readonly [number, number][] = [
  [45, 16],
  [45, 6],
];

/** Load, feeders, generators and fuel. */
export const power: SheetDescription = {
  name: "Power and fuel",
  columns: [34, 14, 14, 15, 15, 14, 14],
  tab: tabColours.result,
  freezeAt: "A4",
  print: { titleRows: "1:1", breaksBefore: [36] },
  cells: {
    A1: title("Power and fuel"),
    A2: subtitle("Load of the plants, their feeders, and how long the fuel lasts with all plants making.", {
      across: 7,
    }),
    ...block("A4", [
      section("Load"),
      [
        label("All plants making"),
        output("=OXYGEN.POWER_LOAD(PlantCounts,PlantWatts)", { name: "MakeLoad", format: formats.kilowatts }),
      ],
      [
        label("All plants in standby, full"),
        output("=OXYGEN.POWER_LOAD(PlantCounts,StandbyWatts)", { name: "StandbyLoad", format: formats.kilowatts }),
      ],
      [
        label("Other load on the generators"),
        input(6.5, {
          name: "OtherLoad",
          format: formats.oneDecimal,
          validation: numberEntry("Other load", "Lights, cold room, pumps on the same generators, in kW.", 0, 2000),
        }),
        unit("kW"),
        note("Not the hospital's own supply.", { across: 4 }),
      ],
      [label("Load to carry"), output("=MakeLoad+OtherLoad", { name: "Load", format: formats.kilowatts })],
      [
        label("Energy for a litre of liquid"),
        output("=OXYGEN.ENERGY_PER_LITRE(MakeLoad,MakePerDay/24)", { format: withUnit(1, "kWh/L") }),
        null,
        note("At this site, in the plan's poorest month.", { across: 4 }),
      ],
      [
        label("Energy a day, plants as loaded"),
        output("=OXYGEN.DAILY_ENERGY(MakeLoad,24*MIN(1,Loading),StandbyLoad,1)", { format: formats.kilowattHours }),
        null,
        note("Making for their share of the day, standby for the rest.", { across: 4 }),
      ],
    ]),
    ...block("A12", [
      section("Feeder of one plant"),
      [
        label("Voltage"),
        input(400, {
          name: "Voltage",
          format: formats.whole,
          validation: numberEntry("Voltage", "Between lines for three phases; to neutral for one.", 12, 15000),
        }),
        unit("V"),
      ],
      [
        label("Phases"),
        input(3, { name: "Phases", format: formats.whole, validation: choiceEntry("Phases", "1 or 3.", ["1", "3"]) }),
      ],
      [
        label("Power factor"),
        input(0.85, {
          name: "PowerFactor",
          format: formats.twoDecimals,
          validation: numberEntry("Power factor", "From the plate, 0.1 to 1.", 0.1, 1),
        }),
      ],
      [
        "Kind",
        "Length one way [m]",
        "Copper [mm²]",
        "Running current [A]",
        "Circuit, NEC size [A]",
        "Voltage drop",
        "State",
      ].map((words) => tableHeader(words)),
      ...Array.from({ length: 6 }, (_, index) => {
        const [length, area] = cables[index] ?? [];
        const row = plantRows.first + index;
        return [
          tableCell(`=IF(Inputs!A${row}="","",Inputs!A${row})`),
          tableInput(length, {
            format: formats.whole,
            validation: mayStayEmpty(numberEntry("Length", "Cable length one way, in metres.", 0.5, 1000)),
          }),
          tableInput(area, {
            format: formats.oneDecimal,
            validation: mayStayEmpty(numberEntry("Copper", "Conductor area in mm².", 0.5, 500)),
          }),
          tableCell(`=IF(A${17 + index}="","",OXYGEN.LINE_CURRENT(Inputs!G${row}/1000,Voltage,PowerFactor,Phases))`, {
            format: formats.oneDecimal,
          }),
          tableCell(`=IF(A${17 + index}="","",OXYGEN.CIRCUIT_NEEDED(D${17 + index}))`, { format: formats.whole }),
          tableCell(
            `=IF(A${17 + index}="","",OXYGEN.CABLE_DROP(D${17 + index},B${17 + index},C${17 + index},Voltage,75,Phases))`,
            { format: formats.percentOneDecimal },
          ),
          tableCell(`=IF(A${17 + index}="","",IF(F${17 + index}>0.03,"over 3 %","ok"))`, { align: "center" }),
        ];
      }),
    ]),
    A23: note(
      "Running current, not starting. Circuit: next size of NEC 240.6(A) at or above 1.25 × the current. Three per cent is a usual aim for a feeder, common practice. Local code decides.",
      { across: 7 },
    ),
    ...block("A25", [
      section("Generators"),
      [
        label("Rated power each"),
        input(generator.power, {
          name: "UnitPower",
          format: formats.whole,
          validation: numberEntry("Rated power", "Prime power on the plate, in kW.", 0.5, 5000),
        }),
        unit("kW"),
        note("Prime rating, not standby rating.", { across: 4 }),
      ],
      [
        label("On site"),
        input(3, {
          name: "GeneratorCount",
          format: formats.whole,
          validation: wholeEntry("On site", "Generators of this size.", 0, 50),
        }),
        unit("generators"),
      ],
      [
        label("Running at a time"),
        input(3, {
          name: "GeneratorsRunning",
          format: formats.whole,
          validation: wholeEntry("Running", "Generators that share the load.", 1, 50),
        }),
        unit("generators"),
      ],
      [
        label("Intake air"),
        input(40, {
          name: "IntakeAir",
          format: formats.whole,
          validation: quantityEntry("Intake air", "Hottest air at the intake, in °C.", -40, 60),
        }),
        unit("°C"),
      ],
      [
        label("Lost each 300 m above 300 m"),
        input(generator.lossPer300m, {
          name: "LossPer300m",
          format: formats.percentOneDecimal,
          validation: numberEntry("Altitude loss", "The maker's figure.", 0, 0.5),
        }),
        unit("share"),
      ],
      [
        label("Lost each 5 °C above 25 °C"),
        input(generator.lossPer5c, {
          name: "LossPer5c",
          format: formats.percentOneDecimal,
          validation: numberEntry("Heat loss", "The maker's figure.", 0, 0.5),
        }),
        unit("share"),
      ],
      [
        label("Power each, here"),
        output("=OXYGEN.GENERATOR_DERATED(UnitPower,Altitude,IntakeAir,LossPer300m,LossPer5c)", {
          name: "PowerHere",
          format: formats.kilowatts,
        }),
      ],
      [
        label("Needed, with one spare"),
        output("=OXYGEN.GENERATORS_NEEDED(Load,PowerHere)", { name: "GeneratorsNeeded", format: formats.whole }),
        unit("generators"),
        note(
          '=IF(GeneratorsNeeded>GeneratorCount,"TOO FEW: "&GeneratorCount&" on site. With none spare a fault is an outage.","Enough on site.")',
          { across: 4 },
        ),
      ],
      [
        label("Start of the largest plant"),
        output("=OXYGEN.START_KVA(MAX(PlantWatts)/1000,6.3)", { format: withUnit(0, "kVA") }),
        null,
        note("Code letter H, 6.3 kVA/hp, taken as one motor. Start one after the other.", { across: 4 }),
      ],
    ]),
    ...block("A36", [
      section("Fuel"),
      [
        label("Usable fuel on site"),
        input(420, {
          name: "Fuel",
          format: formats.whole,
          validation: numberEntry("Fuel", "Litres that can be pumped out; not what the tank is called.", 0, 200000),
        }),
        unit("L"),
      ],
      [
        label("Of it kept for other uses"),
        input(300, {
          name: "FuelKeep",
          format: formats.whole,
          validation: numberEntry("Kept", "Litres not for the plants.", 0, 200000),
        }),
        unit("L"),
      ],
      [
        label("Generators carry the plants"),
        input("yes", {
          name: "CarryPlants",
          validation: choiceEntry("Carry the plants", "yes if they run all plants in an outage.", ["yes", "no"]),
        }),
        null,
        note("Hour by hour while the fuel lasts: see Fuel plan.", { across: 4 }),
      ],
      [tableHeader("Maker's points: load"), tableHeader("Fuel [L/h]")],
      ...points.map(([load, fuel]) => [
        tableInput(load, { format: formats.percent, validation: numberEntry("Load", "Share of rated power.", 0, 1.2) }),
        tableInput(fuel, {
          format: formats.oneDecimal,
          validation: numberEntry("Fuel", "Litres an hour at that load.", 0, 10000),
        }),
      ]),
      [
        label("One generator burns"),
        output("=OXYGEN.FUEL_RATE(Load/GeneratorsRunning,UnitPower,A41:A44,B41:B44)", {
          name: "FuelPerHour",
          format: withUnit(1, "L/h"),
        }),
        null,
        note("All plants making, all day: the cautious end.", { across: 4 }),
      ],
      [
        label("All running burn"),
        output("=FuelPerHour*GeneratorsRunning", { name: "FuelHourly", format: withUnit(1, "L/h") }),
      ],
      [
        label("Fuel a day"),
        output("=OXYGEN.FUEL_PER_DAY(FuelPerHour,24,GeneratorsRunning)", {
          name: "FuelDaily",
          format: withUnit(0, "L/day"),
        }),
      ],
      [
        label("Fuel on site lasts, running all day"),
        output("=OXYGEN.FUEL_DAYS(Fuel,FuelDaily,FuelKeep)", { name: "FuelLasts", format: formats.days }),
      ],
    ]),
    ...block("A49", [
      [
        label("Fuel at the lowest close"),
        output("=MIN(FuelClose)", { name: "LowestFuel", format: withUnit(0, "L") }),
        null,
        note('="in the plan; days on which plants stand without power in part: "&COUNTIF(DarkHours,"<24")', {
          across: 4,
        }),
      ],
      [
        label("Share of the plants carried"),
        output('=IF(CarryPlants="yes",1,0)', { name: "GeneratorsOn", format: formats.percent }),
      ],
    ]),
    A52: caution(
      "Caution: wiring and breakers by a licensed electrician to the local code. Fuel and exhaust well away from oxygen and downwind; the fire code says how far.",
      { across: 7 },
    ),
  },
  conditional: [
    { range: "G17:G22", when: '=AND(G17<>"ok",G17<>"")', mark: "attention" },
    { range: "B33", when: "=GeneratorsNeeded>GeneratorCount", mark: "danger" },
  ],
};
