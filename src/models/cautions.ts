/** Steps of the work that have cautions of their own, in the order of the list. */
export const cautionSteps = [
  "transfer",
  "gas supply",
  "cylinder filling",
  "drain",
  "ship",
  "receive",
  "site",
  "every result",
] as const;

export type CautionStep = (typeof cautionSteps)[number];

/** What to mind, by step: own words, common practice. The last row of each step says whose word goes before this list. */
const byStep: Readonly<Record<CautionStep, readonly string[]>> = {
  transfer: [
    "Liquid oxygen is at about −183 °C: face shield, loose dry insulated gloves, long sleeves, trousers over closed shoes.",
    "Outdoors or in moving fresh air, on clean concrete: never over asphalt, wood, oil or drains. Liquid soaked into these can explode when stepped on.",
    "No flame, spark, smoking, phone or engine near it, and none on people for half an hour after: clothes and hair hold oxygen.",
    "No oil, grease, hand cream or dust on hoses and couplings; only parts cleaned for oxygen.",
    "Fill slowly into a cool vessel with its vent open, never leave it alone, and stop at the full mark: warming liquid needs room.",
    "Never shut liquid in between two valves: a trapped litre makes some 860 litres of gas and bursts the pipe.",
    "Cold vapour pools low; fog shows only part of it. Step back and let it clear.",
    "Trained people only, licensed where that is asked, as local codes and the maker's manual say.",
  ],
  "gas supply": [
    "Measure the oxygen in what the plant delivers before patients breathe it, and keep an alarm on it: 93 % product is not pure oxygen.",
    "Keep a second supply, with its regulator on and its gauge read, for the minute in which the first fails.",
    "Open valves slowly; oil-free fittings of the right gas only, never an adapter made on the spot.",
    "Leaks enrich the room: above 23.5 % it counts as enriched, and everything burns faster. Ventilate and measure, low down too.",
    "The clinician sets and watches each patient's flow and saturation; planned flows are for planning.",
    "Local medical-gas rules, the maker's manual and licensed fitters decide what may be connected.",
  ],
  "cylinder filling": [
    "Only cylinders for medical oxygen, in date, undamaged, with the right valve and a known last use.",
    "Never above the pressure stamped on the cylinder, counted when it has settled to room temperature.",
    "Open valves slowly: oxygen rushing into a closed end heats enough to set a fitting alight.",
    "No oil, grease or tape; nobody in line with a valve outlet while pressure comes on.",
    "Chain cylinders, full and empty ones apart, away from heat, fuel and the sun.",
    "Test purity and label each cylinder as the pharmacist or local rules ask.",
    "Filling is licensed work in most countries: trained people, the maker's manual and the local authority decide.",
  ],
  drain: [
    "Outdoors, downwind, away from people, engines, drains, plants and asphalt; keep everyone back until the fog has gone.",
    "Catch liquid only in a clean open vessel made for it and larger than what is drained; never in a closed one.",
    "Let it boil away by itself: no water, no heat, no stirring.",
    "Face shield, gloves and long sleeves as for a transfer.",
    "Leave valves as the manual says while it warms, so that pressure has a way out.",
    "The maker's manual and the local environmental and fire rules decide how and where.",
  ],
  ship: [
    "Cold liquid goes only as dangerous goods with the papers, marks and carrier that the rules ask (UN 1073 liquid, UN 1072 compressed).",
    "A plant or vessel that travels as empty is drained, warmed and at no pressure, and says so on its papers.",
    "Upright, strapped, ventilated; relief valves free; never in a closed cab or cabin with people.",
    "Away from fuel, oil, food and heat, and with the tilt and shock indicators set.",
    "The carrier, the transport authority and the maker's manual decide whether it may go.",
  ],
  receive: [
    "Look at crate and indicators before signing; write a tripped one on the bill of lading and take pictures.",
    "Lift with gear rated for the load, by the points marked for it; nobody under it.",
    "Leave a doubtful machine switched off and a doubtful cylinder shut until someone qualified has seen it.",
    "Let cold gear come to room temperature dry before opening or powering it.",
    "Local rules for lifting and gas, the maker's manual and the carrier's time limits for claims decide.",
  ],
  site: [
    "At least 1.8 m (6 ft) clear on every side, level to 5°, on clean concrete or stone: never asphalt or tile.",
    "Never in an unventilated room, a cellar or beside a pit: cold vapour pools low.",
    "No fuel, paint, rubbish, smoking or open flame nearby; generators and their fuel well apart and downwind.",
    "Power, earthing and breakers by a licensed electrician; a way to cut power from outside the room.",
    "An oxygen meter with an alarm near the floor, and a sign at the door.",
    "Distances, walls and fire protection follow local codes, the maker's manual and a licensed inspector.",
  ],
  "every result": [
    "A planning figure, no better than what was entered: check inputs and units, and have a second person read them.",
    "Estimates of heat, altitude, mixing and loss can be well off: measure on site and keep a reserve.",
    "The clinician decides for the patient; local codes, the maker's manual and licensed people decide for the work.",
  ],
};

export interface Caution {
  readonly step: CautionStep;
  readonly caution: string;
}

/** All cautions in the order of the steps. */
export const cautionRows: readonly Caution[] = cautionSteps.reduce<Caution[]>(
  (rows, step) => rows.concat(byStep[step].map((caution) => ({ step, caution }))),
  [],
);
