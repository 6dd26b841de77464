/**
 * The invented scenario of all sample workbooks: the island district of Velmar with a field hospital, two clinics and a
 * store. Places, plants and figures are made up; none describes a real site or a maker's product.
 */

/** 2026-03-01, the first day of every plan. */
export const firstDay = 46082;

export const district = "Velmar island district (invented)";

export interface Site {
  name: string;
  /** Height above the sea [m]. */
  altitude: number;
  /** Hottest usual temperature in the plant room by month, January first [°C]. */
  monthlyHigh: readonly number[];
}

export const sites = {
  hospital: {
    name: "Karrow Point field hospital",
    altitude: 310,
    monthlyHigh: [29, 30, 32, 34, 36, 37, 37, 36, 35, 33, 31, 29],
  },
  hillClinic: {
    name: "Lunde Ridge clinic",
    altitude: 1340,
    monthlyHigh: [21, 22, 24, 26, 28, 29, 29, 28, 27, 25, 23, 21],
  },
  bayClinic: {
    name: "Sorrel Bay clinic",
    altitude: 12,
    monthlyHigh: [30, 31, 33, 35, 37, 38, 38, 37, 36, 34, 32, 30],
  },
  store: {
    name: "Harbour store",
    altitude: 6,
    monthlyHigh: [30, 31, 33, 35, 37, 38, 38, 37, 36, 34, 32, 30],
  },
} as const satisfies Record<string, Site>;

export interface PlantKind {
  name: string;
  /** Rated make [L/h] of liquid at 21.1 °C and sea level. */
  ratedRate: number;
  /** Liquid in the vessel when full [L]. */
  capacity: number;
  /** Hours from a warm start until liquid accumulates [h]. */
  startUp: number;
  /** Electrical load while making and while standing by full [W]. */
  makeWatts: number;
  standbyWatts: number;
  /** Mass [kg] and floor [m²] as shipped. */
  mass: number;
  floor: number;
  /** The floor's sides [m], length along the row that plants stand in. */
  length?: number;
  width?: number;
}

export const plants = {
  small: {
    name: "Plant S",
    ratedRate: 1.4,
    capacity: 55,
    startUp: 3,
    makeWatts: 7800,
    standbyWatts: 900,
    mass: 410,
    floor: 1.0,
    length: 1.0,
    width: 1.0,
  },
  large: {
    name: "Plant L",
    ratedRate: 3.1,
    capacity: 130,
    startUp: 5,
    makeWatts: 16500,
    standbyWatts: 1700,
    mass: 890,
    floor: 1.2,
    length: 1.2,
    width: 1.0,
  },
} as const satisfies Record<string, PlantKind>;

/** Bought used: an option that another beats in everything. */
export const usedPlant: PlantKind = {
  name: "Plant U (used)",
  ratedRate: 1.0,
  capacity: 45,
  startUp: 4,
  makeWatts: 8200,
  standbyWatts: 1000,
  mass: 480,
  floor: 1.1,
};

/** A diesel generating set; fuel points as on a maker's sheet, made up here. */
export const generator = {
  name: "Generator",
  /** Power on the plate [kW]. */
  power: 36,
  mass: 920,
  floor: 1.2,
  loadPoints: [0.25, 0.5, 0.75, 1],
  /** Fuel at these shares of full power [L/h]. */
  fuelPoints: [3.1, 5.3, 7.7, 10.3],
  /** Shares of power lost for each 300 m and each 5 °C above the thresholds. */
  lossPer300m: 0.035,
  lossPer5c: 0.02,
} as const;

/** Crowns, an invented currency: price with carriage, and parts and service a day. */
export const costs = {
  currency: "cr",
  small: { price: 62000, serviceADay: 9 },
  large: { price: 118000, serviceADay: 15 },
  used: { price: 31000, serviceADay: 22 },
  generator: { price: 14500, serviceADay: 6 },
  /** Crowns a litre: diesel, and liquid oxygen brought by boat. */
  fuel: 1.4,
  deliveredLiquid: 11,
} as const;

export const portableVessel = {
  name: "Portable vessel",
  capacity: 28,
  /** Days until a full one that stands unused is empty. */
  emptyDays: 20,
  mass: 34,
  floor: 0.25,
} as const;

export interface Ward {
  name: string;
  /** Mean number of patients on oxygen. */
  meanPatients: number;
  /** Flow each [L/min]. */
  flow: number;
}

/** Mean patients on oxygen at the hospital by ward. */
export const wards: readonly Ward[] = [
  { name: "Emergency", meanPatients: 2, flow: 8 },
  { name: "Medical", meanPatients: 6, flow: 4 },
  { name: "Children", meanPatients: 4, flow: 1.5 },
  { name: "Surgery and recovery", meanPatients: 2, flow: 5 },
  { name: "High care", meanPatients: 1.5, flow: 15 },
];
